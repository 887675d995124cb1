#include "answers/paid/what_paid.h"
#include "cli/commands.h"
#include "cli/log_flags.h"
#include "cli/result_formats.h"
#include "questions/paid_question.h"
#include "report/paid_report.h"

namespace baitwright {

namespace {

CommandResult run_paid(const Arguments& arguments, const Surroundings& around) {
    PaidRequest request = paid_request(arguments);
    const Store store = log_store(around);
    request.log = store.log().entries();
    return given(arguments, paid_reply(what_paid(request)));
}

}  // namespace

CommandSpec command_paid() {
    return {"paid",
            "which way of feeding brought most, an hour and for the money, and how sure that is",
            {{"STRATEGY", "only these, of those in the log (default: all)", true, false}},
            {{"--by", "WHAT", "hold them against each other by season, clarity, venue or temperature"},
             {"--fish", "FISH", "only catches of it: bream"},
             {"--since", "DATE", "only sessions from that day on: 2026-03-01"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_paid,
            R"(baitwright paid
baitwright paid --by clarity --fish bream)"};
}

}  // namespace baitwright
