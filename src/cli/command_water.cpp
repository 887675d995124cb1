#include "cli/commands.h"

#include "answers/mix/right_a_mix.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "questions/tub_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_water(const Arguments& arguments, const Surroundings& around) {
    const TubRequest request = tub_request(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Recipe> named = named_bait(arguments.words().front(), *shelf, BaitUse::wetted);
    const TubAnswer answer = with_places(named, [&] { return right_a_mix(named.shelf(), named.value, request); });
    return given(arguments, tub_reply(answer));
}

}  // namespace

CommandSpec command_water() {
    return {"water",
            "put a tub right: how wet it is now and settled, what to add, what it makes",
            {{"RECIPE", "the mix in the tub: its name, a TOML file, or - for standard input"}},
            {{"--dry-mass", "MASS", "the dry mix that went into the tub: 1kg"},
             {"--added", "VOLUME", "the water poured in so far: 700ml"},
             {"--weighs", "MASS",
              "instead of --added, what the wet mix weighs now, without the tub; also after drying out"},
             {"--minutes", "TIME", "since the water went in: 2, 20min (default: settled)"},
             {"--feel", "FEEL", "how wet you want it (default: the mix's own feel)"},
             {"--cups", "SIZE", "how many cups or pots of this it makes: 250ml, \"toss pot 25\""},
             {"--balls", "SIZE", "how many balls: 55mm, egg"},
             {"--feeders", "SIZE", "how many feeders: 45ml"},
             {"--water-temp", "TEMPERATURE", "of the water poured in: 8degC", false, "water-temp"},
             {"--seed", "NUMBER", "another random draw for the ranges"}},
            run_water,
            R"(baitwright water "silt bed" --dry-mass 1kg --added 820ml --minutes 5
baitwright water "silt bed" --dry-mass 1kg --weighs 1.55kg --cups 250ml)"};
}

}  // namespace baitwright
