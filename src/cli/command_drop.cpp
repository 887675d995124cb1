#include "cli/command_drop.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "answers/drop_feed.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "questions/drop_question.h"
#include "questions/read_flags.h"
#include "report/drop_plot.h"
#include "report/drop_report.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

using Ask = std::function<DropAnswer(const DropRequest&)>;

/// The same feed in every feel, in every usual size, or in every form.
std::vector<DropAnswer> compared(const std::string& by, DropRequest request, const Shelf& shelf, const Ask& ask) {
    std::vector<DropAnswer> answers;
    const auto add = [&] { answers.push_back(ask(request)); };
    if (by == "feels") {
        for (const Feel& feel : shelf.feels()) {
            request.feel = feel.name;
            add();
        }
    } else if (by == "sizes") {
        const bool ball = std::holds_alternative<DroppedBall>(request.form);
        for (const double size :
             ball ? std::vector<double>{30, 43, 50, 60, 75} : std::vector<double>{25, 40, 100, 250, 500}) {
            request.form = ball ? DropForm(DroppedBall{size * millimetre}) : DropForm(DroppedCup{size * millilitre});
            add();
        }
    } else if (by == "forms") {
        for (const DropForm& form :
             {DropForm(DroppedCup{250.0 * millilitre}), DropForm(DroppedCup{25.0 * millilitre}),
              DropForm(DroppedBall{55.0 * millimetre}), DropForm(DroppedFeeder{30.0 * millilitre}),
              DropForm(DroppedLoose{100.0 * millilitre})}) {
            request.form = form;
            add();
        }
    } else {
        throw UsageError("unknown-comparison", "'" + by + "' cannot be compared", "--compare feels, sizes or forms");
    }
    return answers;
}

/// What is wanted of the feed, as a distance from it: 0 is right.
std::function<double(const DropAnswer&)> read_wish(const std::string& text) {
    const auto equals = text.find('=');
    const std::string what = text.substr(0, equals);
    if (equals == std::string::npos || (what != "carpet" && what != "breaks"))
        throw InputError("unknown-wish", "'" + text + "' cannot be searched for",
                         "write it as in --want carpet=1.2m or --want breaks=0.6m");
    const Length wanted = in_range(parse<Length>(text.substr(equals + 1)));
    return [what, wanted](const DropAnswer& answer) {
        if (answer.classes.empty() || answer.breaks == Breaks::bottom) return 1e9;
        const Length has = what == "carpet" ? answer.width.most : answer.breaks_depth;
        return has > Length{} ? std::abs(std::log(has / wanted)) : 1e8;
    };
}

/// Every feel in every usual cup and ball: the five that come nearest.
std::vector<DropAnswer> searched(const std::string& wish, DropRequest request, const Shelf& shelf, const Ask& ask) {
    const auto distance = flag_value("--want", [&] { return read_wish(wish); });
    std::vector<DropAnswer> answers;
    for (const char* by : {"cups", "balls"}) {
        request.form = std::string(by) == "cups" ? DropForm(DroppedCup{250.0 * millilitre})
                                                 : DropForm(DroppedBall{50.0 * millimetre});
        for (const Feel& feel : shelf.feels()) {
            request.feel = feel.name;
            for (DropAnswer& answer : compared("sizes", request, shelf, ask))
                if (answer.warnings.empty()) answers.push_back(std::move(answer));
        }
    }
    std::stable_sort(answers.begin(), answers.end(),
                     [&](const DropAnswer& a, const DropAnswer& b) { return distance(a) < distance(b); });
    constexpr std::size_t shown = 5;
    answers.resize(std::min(shown, answers.size()));
    return answers;
}

std::string told(const Arguments& arguments, const std::vector<DropAnswer>& answers, bool side_by_side) {
    if (arguments.has("--csv")) return csv_of_rows(drop_rows(answers));
    if (arguments.has("--json"))
        return json_text(side_by_side ? drop_comparison_json(answers) : drop_json(answers.front()));
    return side_by_side ? drop_comparison_text(answers) : drop_text(answers.front());
}

CommandResult run_drop(const Arguments& arguments, const Surroundings& around) {
    const DropRequest request = drop_request(arguments);
    check_picture(arguments);
    if (arguments.has("--compare") && arguments.has("--want"))
        throw UsageError("two-questions", "--compare and --want were both given", "give one of them");
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedRecipe named = recipe_argument(arguments.words().front(), *shelf);
    const Ask ask = [&](const DropRequest& one_request) {
        return with_places(named, [&] { return drop_feed(named.shelf(), named.recipe, one_request); });
    };
    const bool side_by_side = arguments.has("--compare") || arguments.has("--want");
    std::vector<DropAnswer> answers;
    if (arguments.has("--compare"))
        answers = compared(*arguments.value("--compare"), request, named.shelf(), ask);
    else if (arguments.has("--want"))
        answers = searched(*arguments.value("--want"), request, named.shelf(), ask);
    else
        answers.push_back(ask(request));
    if (!side_by_side) refuse_no_ball(request, answers.front());
    if (arguments.has("--plot")) write_picture(arguments, drop_plot(answers));
    CommandResult result{told(arguments, answers, side_by_side), 0};
    if (!side_by_side)
        for (const Warning& warning : answers.front().warnings)
            if (warning.answer_is_no) result.status = 1;
    return result;
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
         {"--tow-bottom", "SPEED", "at the bottom; on still water it runs back (default -0.3 of the top's)"},
         {"--water-temp", "TEMPERATURE", "of the lake: 8degC"},
         {"--hook", "PELLET", "tells whether this hook pellet falls with the feed"},
         {"--compare", "WHAT", "side by side: feels, sizes or forms"},
         {"--want", "WISH", "searches feels, cups and balls: carpet=1.2m, breaks=0.6m"},
         {"--hold", "TIME", "your bucket test: seconds until it fell apart"},
         {"--breaks-at", "LENGTH", "your look: how deep a cupful breaks"},
         {"--carpet-seen", "LENGTH", "your look: how wide nine tenths of it lay"},
         {"--cup-weighs", "MASS", "your scale: one level cupful, wet"},
         {"--csv", "", "the classes of grains as CSV, unrounded"}},
        run_drop,
        "baitwright drop \"silt bed\" --depth 2.5m --tow 2cm/s --cup 250ml --feel soft"};
    for (const Flag& flag : picture_flags()) spec.flags.push_back(flag);
    return spec;
}

}  // namespace baitwright
