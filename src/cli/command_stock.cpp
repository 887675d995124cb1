#include "cli/commands.h"

#include <limits>

#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "quantities/suggestion.h"
#include "report/stock_json.h"
#include "report/stock_text.h"

namespace baitwright {

namespace {

/// More than a person keeps, and as much as one looks through; --all, --json and --csv show everything.
constexpr std::size_t most_shown = 60;

/// A second word of the command that was mistyped: "stock byu".
void refuse_mistyped_verb(const std::string& word, Store& store) {
    if (is_stock_name(word, store)) return;
    const auto verb = nearest_name(word, {"buy", "keep", "count", "use", "waste", "undo", "history"});
    if (verb)
        throw UsageError("incomplete-command", "'stock " + word + "' is not a command",
                         "did you mean 'stock " + *verb + "'?");
}

std::vector<StockItem> items_named(const std::vector<std::string>& words, Store& store) {
    refuse_mistyped_verb(words.front(), store);
    std::vector<StockItem> items;
    for (const std::string& word : words) {
        const StockName named = stock_name(word, store);
        auto item = store.shed().find(named.name);
        if (item && !item->lots.empty()) items.push_back(*std::move(item));
    }
    return items;
}

ShedAnswer answer_of(const Arguments& arguments, Store& store, Date today) {
    if (!arguments.words().empty()) return shed_answer(items_named(arguments.words(), store), 0, today);
    const bool everything = arguments.has("--all") || arguments.has("--json") || arguments.has("--csv");
    const Shed shed = store.shed();
    std::vector<StockItem> items = shed.items(everything ? std::numeric_limits<std::size_t>::max() : most_shown);
    const std::size_t not_shown = items.size() == most_shown ? shed.item_count() - most_shown : 0;
    return shed_answer(std::move(items), not_shown, today);
}

Told none_of_that_told(const ShedAnswer&) {
    Told told;
    told.say("There is none of that in the shed.");
    return told;
}

CommandResult show_stock(const Arguments& arguments, const Surroundings& around) {
    Store store = store_of(around);
    const ShedAnswer answer = answer_of(arguments, store, around.today);
    if (answer.items.empty() && !arguments.words().empty())
        return given(arguments, reply_of(answer, none_of_that_told, shed_json, shed_rows));
    return given(arguments, reply_of(answer, shed_told, shed_json, shed_rows));
}

CommandResult stock_history(const Arguments& arguments, const Surroundings& around) {
    Store store = store_of(around);
    const StockName named = stock_name(arguments.words().front(), store);
    const StockHistory answer{named.name, store.shed().history(named.name)};
    return given(arguments, reply_of(answer, stock_history_told, stock_history_json, stock_history_rows));
}

}  // namespace

CommandSpec command_stock() {
    return {"stock",
            "what is in the shed, in the order to use it",
            {{"NAME", "only these ingredients or mixes", true, false}},
            {{"--all", "", "all of a very full shed, not just the first 60 names"},
             {"--csv", "", "as CSV for a spreadsheet, a row for each lot, unrounded"}},
            show_stock,
            R"(baitwright stock
baitwright stock "brown crumb")"};
}

CommandSpec command_stock_history() {
    return {"stock history",
            "everything of one thing that came in and went out",
            {{"NAME", "the ingredient or mix"}},
            {{"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            stock_history,
            R"(baitwright stock history "brown crumb"
baitwright stock history "silt bed" --csv)"};
}

}  // namespace baitwright
