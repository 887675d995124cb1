#include "cli/commands.h"

#include "answers/mix/dry_out.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "questions/dry_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_dry(const Arguments& arguments, const Surroundings& around) {
    const DryRequest request = dry_request(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Recipe> named = named_bait(arguments.words().front(), *shelf, BaitUse::wetted);
    const DryAnswer answer = with_places(named, [&] { return dry_out(named.shelf(), named.value, request); });
    return given(arguments, dry_reply(answer));
}

}  // namespace

CommandSpec command_dry() {
    return {"dry",
            "how an open tub dries out: water lost, when it leaves its feel, what to spray back",
            {{"RECIPE", "the mix in the tub: its name, a TOML file, or - for standard input"}},
            {{"--tub", "SIZE", "its open face: 40x30cm, or 35cm across for a round one", false, "tub"},
             {"--hours", "TIME", "how long it stands: 5, 90min"},
             {"--dry-mass", "MASS", "the dry mix in it (default: 1kg)"},
             {"--feel", "FEEL", "how wet it starts (default: the mix's own feel)"},
             {"--air-temp", "TEMPERATURE", "of the air (default: 18degC)"},
             {"--humidity", "SHARE", "of the air (default: 60%)"},
             {"--wind", "SPEED", "over the tub (default: 2m/s)"},
             {"--covered", "", "it has a lid on"},
             {"--sun", "", "it stands in the sun"}},
            run_dry,
            R"(baitwright dry "silt bed" --tub 40x30cm --hours 5 --air-temp 24degC
baitwright dry "silt bed" --tub "35cm across" --hours 3 --covered)"};
}

}  // namespace baitwright
