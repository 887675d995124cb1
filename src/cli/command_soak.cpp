#include "cli/commands.h"

#include "answers/pellets/soak_pellets.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "library/open_library.h"
#include "questions/soak_question.h"
#include "report/replies.h"
#include "report/soak_plot.h"
#include "report/soak_text.h"

namespace baitwright {

namespace {

CommandResult run_soak(const Arguments& arguments, const Surroundings& around) {
    SoakRequest request = soak_request(arguments);
    check_picture(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<SoakAnswer> answers{soak_pellets(*shelf, request)};
    const bool soaked = !answers.front().soaked.empty(), pumped = !answers.front().pumped.empty();
    refuse_unfit_soak_flags(arguments, soaked, pumped);
    if (arguments.has("--compare-temps")) {
        const std::vector<Temperature> waters = waters_to_compare(arguments, request.water);
        answers.clear();
        for (const Temperature water : waters) {
            request.water = water;
            answers.push_back(soak_pellets(*shelf, request));
        }
    }
    if (arguments.has("--plot")) write_picture(arguments, soak_plot(answers));
    CommandResult result = given(arguments, arguments.has("--compare-temps") ? soak_comparison_reply(std::move(answers))
                                                                             : soak_reply(std::move(answers.front())));
    if (!pumped) result.unheeded = {"--pump", "--vessel"};
    return result;
}

}  // namespace

CommandSpec command_soak() {
    CommandSpec spec{
        "soak",
        "soak, stand and pump pellets: how long, how much water, what they come to",
        {{"PELLET", R"(its name; or with its own amount or share: "fishmeal pellet 4 mm=500g", "...=1 part")", true}},
        {{"--amount", "AMOUNT", "dry, of all together: 2pt, 500g"},
         {"--grains-of", "AMOUNT", "as many grains as \"500g of fishmeal micro pellet 2 mm\" has"},
         {"--bites", "NUMBER", "hook pellets by the bites an hour, with --length"},
         {"--length", "TIME", "of the session: 5h"},
         {"--spare", "SHARE", "extra, to be safe: 10%"},
         {"--water-temp", "TEMPERATURE", "of the water poured on: 8degC (default: 15degC)", false, "water-temp"},
         {"--compare-temps", "", "what they weigh, and the times at 5 and 20 degC side by side"},
         {"--method", "METHOD", "covered (soak and drain) or measured (just the water they take)"},
         {"--uptake", "SHARE", "of all the water they can take (default: 40%)"},
         {"--soaked", "TIME", "how long they were under water, 40min or overnight; tells how they are now"},
         {"--ready-at", "CLOCK", "when all must be ready: 08:30"},
         {"--with", "NAME=DOSE", R"(stirred into the water: "glycerol=20ml", "salt=20 g per l water")", true},
         {"--strokes", "NUMBER", "of the pump, for expanders (default: what sinks them)"},
         {"--pump", "VOLUME", "what a stroke draws (default: 100ml)", false, "pump"},
         {"--vessel", "VOLUME", "the pump's whole vessel (default: 500ml)", false, "vessel"},
         {"--air", "PRESSURE", "of the day (default: 101.3kPa)"},
         {"--cup", "SIZE", "for counting grains: 250ml, \"toss pot 25\""},
         {"--ball", "SIZE", "for counting grains: 50mm, egg"},
         {"--carpet", "LENGTH", "how wide one cupful lies (default: 1m)"},
         {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
        run_soak,
        R"(baitwright soak "fishmeal pellet 4 mm" --amount 2pt --water-temp 8degC
baitwright soak "fishmeal micro pellet 2 mm" --amount 500g --ready-at 08:30)"};
    for (const Flag& flag : picture_flags()) spec.flags.push_back(flag);
    return spec;
}

}  // namespace baitwright
