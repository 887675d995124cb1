#include "cli/commands.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/money/cost_strategy.h"
#include "answers/shared/stale_prices.h"
#include "cli/cost_flags.h"
#include "cli/output_file.h"
#include "cli/result_formats.h"
#include "files/disk.h"
#include "library/advice_rules.h"
#include "library/named.h"
#include "page/bank_data.h"
#include "page/bank_page.h"
#include "page/plain_words.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"
#include "report/json.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string page_file(const Arguments& arguments) {
    const auto path = arguments.value("-o");
    if (!path) throw UsageError("no-file", "where is the page to go?", "say it with -o bank.html");
    if (!path->ends_with(".html"))
        throw UsageError("unfit-page", in_quotes(*path) + " does not end in .html", "a page is one file: -o bank.html");
    keep_unless_told(*path, arguments);
    return *path;
}

/// The strategies, each sound and each once.
std::vector<Named<Strategy>> strategies_of(const Arguments& arguments, const Shelf& shelf) {
    std::vector<Named<Strategy>> named;
    for (const std::string& word : arguments.words()) {
        named.push_back(named_strategy(word, shelf));
        const std::string& name = named.back().value.name;
        if (std::count_if(named.begin(), named.end(), [&](const Named<Strategy>& one) {
                return folded_name(one.value.name) == folded_name(name);
            }) > 1)
            throw UsageError("named-twice", in_quotes(name) + " is named twice", "name each strategy once");
    }
    return named;
}

BankContents contents_of(const Arguments& arguments, const Surroundings& around, const Shelf& shelf,
                         const std::vector<Named<Strategy>>& named) {
    BankContents contents;
    contents.library = &shelf;
    contents.made_on = around.today;
    contents.version = around.version;
    contents.usual_currency = usual_currency(arguments);
    contents.always = arguments.all_usual();
    read_flag(arguments, "--start", [&](const std::string& text) { contents.start = parse_clock(text); });
    read_flag(arguments, "--people",
              [&](const std::string& text) { contents.people = read_count(text, "for example --people 4"); });
    for (const Named<Strategy>& one : named) {
        with_places(one, [&] { return unroll_strategy(one.shelf(), one.value); });  // tells what is wrong with it
        contents.strategies.push_back({&one.shelf(), one.value});
    }
    contents.advice = advice_rules(around.library);
    contents.venues = all_venues(around.library);
    contents.stock = stock_on_hand(arguments, named.front().shelf(), around);
    return contents;
}

/// By whose rules the plan is told in plain words; nothing where none is usual.
std::optional<Venue> usual_venue(const Arguments& arguments, const Surroundings& around, const Shelf& shelf) {
    const auto word = arguments.usual("venue");
    if (!word) return std::nullopt;
    return named_venue(*word, around.library, shelf).value;
}

/// What the page's sums will leave out.
std::vector<Warning> unpriced_on_page(const BankContents& contents) {
    std::vector<std::string> names;
    std::vector<Warning> warnings;
    CostRequest request;
    request.on = contents.made_on;
    request.usual_currency = contents.usual_currency;
    request.what_if.people = contents.people;
    request.ranges = CostRequest::Ranges::left_out;
    for (const CarriedStrategy& carried : contents.strategies) {
        const StrategyCost cost = cost_strategy(*carried.shelf, carried.strategy, contents.stock, request);
        for (const std::string& name : priced_nowhere(cost.unpriced, cost.elsewhere))
            if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
        if (cost.elsewhere.empty()) continue;
        const std::string cost_there = "the cost of " + in_quotes(carried.strategy.name) + " on the page";
        warnings.push_back(
            other_currency_warning(cost.elsewhere, *cost.currency, leaves_out(cost_there, cost.elsewhere.size())));
    }
    if (auto unpriced = no_price_warning(names, "the cost on the page"))
        warnings.insert(warnings.begin(), *std::move(unpriced));
    return warnings;
}

Told page_told(const std::vector<std::string>& names, const std::string& file, std::size_t bytes,
               const std::vector<Warning>& warnings) {
    Told told;
    told.say(fmt::format("The bank page of {} is in {} ({:.0f} kB).", listed(names), file,
                         std::round(static_cast<double>(bytes) / 1000)));
    told.say(
        "Send it to the phone and open it there once before you leave: it needs no signal and no other file. What you enter on it "
        "stays on the phone.");
    told.mind(warnings);
    return told;
}

CommandResult run_page(const Arguments& arguments, const Surroundings& around) {
    const std::string file = page_file(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::vector<Named<Strategy>> named = strategies_of(arguments, *shelf);
    const BankContents contents = contents_of(arguments, around, *shelf, named);
    const Json data = bank_data(contents);
    const std::string page =
        bank_page(bank_template(), plain_words(contents, usual_venue(arguments, around, named.front().shelf())), data);
    write_text_file(file, page);
    const std::vector<Warning> warnings = unpriced_on_page(contents);
    const auto record = [&] {
        Json json = json_record("page", warnings);
        json["file"] = file;
        json["bytes"] = page.size();
        for (const char* key : {"id", "made_on", "start", "people", "strategies", "have"}) json[key] = data[key];
        return json;
    };
    return given(arguments,
                 {warnings.empty() ? 0 : 1,
                  [&] { return page_told(data["strategies"].texts(), file, page.size(), warnings); }, record});
}

}  // namespace

CommandSpec command_page() {
    return {"page",
            "the same engine on a phone with no signal: one file to open at the water",
            {{"STRATEGY", "one or more: names or TOML files", true}},
            {{"-o", "FILE", "where to: bank.html"},
             {"--replace", "", "lets -o write over a file that is there"},
             {"--start", "CLOCK", "the first put-in: 09:30 (default: chosen on the phone)"},
             {"--people", "NUMBER", "how many anglers, each feeding all of it", false, "people"},
             have_flag(),
             {"--empty-shed", "", "as if nothing were in the shed"}},
            run_page,
            R"(baitwright page "open carpet" --start 09:30 -o bank.html
baitwright page "open carpet" "tight balls" -o bank.html)"};
}

}  // namespace baitwright
