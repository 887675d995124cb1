#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "library/store_doctor.h"
#include "report/kept_store_report.h"

namespace baitwright {

namespace {

CommandResult run_doctor(const Arguments& arguments, const Surroundings& around) {
    const bool tried = arguments.has("--dry-run");
    const DoctorTask task = arguments.has("--mend") && !tried ? DoctorTask::mend : DoctorTask::look;
    return given(arguments, doctor_reply(examine_store(store_file(around), task, around.today)),
                 tried ? "Nothing was written.\n" : "");
}

}  // namespace

CommandSpec command_doctor() {
    return {"doctor",
            "looks over all that is kept, and says what is wrong and what to do",
            {},
            {{"--mend", "", "put right what can be, after a copy"},
             {"--dry-run", "", "only say what --mend would find to put right"}},
            run_doctor,
            "baitwright doctor\nbaitwright doctor --mend",
            Effect::keeps};
}

}  // namespace baitwright
