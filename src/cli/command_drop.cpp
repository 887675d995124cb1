#include "cli/commands.h"

#include "answers/drop/compare_drops.h"
#include "answers/drop/drop_feed.h"
#include "answers/drop/own_looks.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "questions/drop_question.h"
#include "report/drop_plot.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_drop(const Arguments& arguments, const Surroundings& around) {
    const DropRequest request = drop_request(arguments);
    check_picture(arguments);
    const std::optional<DropComparison> by = drop_comparison(arguments);
    const std::optional<DropWish> wish = drop_wish(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Recipe> named = named_bait(arguments.words().front(), *shelf, BaitUse::dropped);
    const bool side_by_side = by || wish;
    const DropTelling telling = arguments.has("--full") ? DropTelling::full : DropTelling::brief;
    const std::vector<DropAnswer> answers = with_places(named, [&]() -> std::vector<DropAnswer> {
        if (by) return compare_drops(named.shelf(), named.value, request, *by);
        if (wish) return drops_wished(named.shelf(), named.value, request, *wish);
        return {drop_feed(named.shelf(), named.value, request)};
    });
    if (!side_by_side) {
        refuse_no_ball(request, answers.front());
        refuse_idle_looks(answers.front());
    }
    if (arguments.has("--plot")) write_picture(arguments, drop_plot(answers));
    return given(arguments, side_by_side ? drop_comparison_reply(answers) : drop_reply(answers.front(), telling));
}

}  // namespace

CommandSpec command_drop() {
    CommandSpec spec{
        "drop",
        "what a cupful or a ball does in the water: where it breaks, when and how wide it lands",
        {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
        {{"--depth", "LENGTH", "of the water: 2.5m"},
         {"--cup", "SIZE", "a level cup or pot, emptied: 250ml, \"toss pot 25\""},
         {"--ball", "SIZE", "a squeezed ball: 55mm, egg"},
         {"--feeder", "SIZE", "a feeder: 30ml"},
         {"--loose", "VOLUME", "a loose handful, strewn: 100ml"},
         {"--thrown", "", "the ball is thrown, not lowered or cupped"},
         {"--squeeze", "HOW", "light, firm or hard"},
         {"--feel", "FEEL", "how wet (default: the mix's own feel)"},
         {"--tow", "SPEED", "of the water at the top: 2cm/s"},
         {"--tow-bottom", "SPEED", "at the bottom, if you know it: then straight from top to bottom"},
         {"--water", "KIND", "still or river: how the tow changes with the depth (default: still below 10 cm/s)"},
         {"--water-temp", "TEMPERATURE", "of the lake: 8degC", false, "water-temp"},
         {"--hook", "PELLET", "tells whether this hook pellet falls with the feed"},
         {"--compare", "WHAT", "side by side: feels, sizes or forms (the usual ones, or as large as you say)"},
         {"--want", "WISH", "searches feels, cups and balls: carpet=1.2m, breaks=0.6m"},
         {"--hold", "TIME", "your bucket test: seconds until it fell apart"},
         {"--breaks-at", "LENGTH", "your look: how deep a cupful breaks"},
         {"--carpet-seen", "LENGTH", "your look: how wide nine tenths of it lay"},
         {"--cup-weighs", "MASS", "your scale: one level cupful, wet"},
         {"--full", "", "tells all of it: each ingredient's own fate, how thick it lies, where to fish"},
         {"--csv", "", "the classes of grains as CSV, unrounded"}},
        run_drop,
        R"(baitwright drop "silt bed" --depth 2.5m --tow 2cm/s --cup 250ml --feel soft
baitwright drop "silt bed" --depth 2.5m --cup 250ml --compare feels)"};
    for (const Flag& flag : picture_flags()) spec.flags.push_back(flag);
    return spec;
}

}  // namespace baitwright
