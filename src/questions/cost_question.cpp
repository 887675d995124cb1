#include "questions/cost_question.h"

#include <cctype>

#include "bait/amount.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "quantities/date.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "quantities/worded.h"
#include "questions/kept_words.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// "£4/kg", "£3.10/900 g", "£2/pt": a pack of that size at that price.
Pack read_rate(const std::string& text, const Arguments& arguments) {
    const auto slash = text.find('/');
    if (slash == std::string::npos || slash + 1 == text.size())
        throw InputError("no-amount", "'" + text + "' does not say what that is the price of",
                         "write it as in --price \"brown crumb=£2.10/kg\"");
    Pack pack;
    pack.price = read_money(text.substr(0, slash), arguments);
    std::string size = text.substr(slash + 1);
    size.erase(0, size.find_first_not_of(' '));
    if (size.empty() || !std::isdigit(static_cast<unsigned char>(size.front()))) size = "1 " + size;
    pack.size = read_amount(size);
    return pack;
}

StrategyRequest::Price read_price(const std::string& text, const Arguments& arguments) {
    const auto [name, rate] = parted_at_equals(text, "what it costs", "--price \"brown crumb=£2.10/kg\"");
    return {name, read_rate(rate, arguments)};
}

/// The mix of that name, where no ingredient is said to have it.
std::optional<std::string> mix_called(const std::string& name, const Shelf& shelf) {
    if (shelf.find_ingredient(name)) return std::nullopt;
    if (const auto recipe = shelf.find_recipe(name)) return recipe->name;
    if (said_name(name, shelf.ingredient_names()).name) return std::nullopt;
    return said_name(name, shelf.recipe_names()).name;
}

/// The hint of a name that nothing has, with mixes among those that may be meant.
InputError unknown_in_shed(const std::string& name, const NotFound& error, const Shelf& shelf) {
    std::vector<Fault> faults = error.faults();
    const std::string near = near_names_hint(name, shelf.recipe_names());
    if (!near.empty() && faults.front().code == "unknown-ingredient" &&
        near_names_hint(name, shelf.ingredient_names()).empty())
        faults.front().hint = near;
    return InputError(std::move(faults));
}

/// As `Shelf::ingredient`, but what is wrong is wrong with the flag's value.
Ingredient ingredient_called(const std::string& name, const Shelf& shelf) {
    try {
        return shelf.ingredient(name);
    } catch (const NotFound& error) {
        throw unknown_in_shed(name, error, shelf);
    }
}

void put_told(StockOnHand& stock, const std::string& name, const std::string& amount, const Shelf& shelf) {
    if (const auto mix = mix_called(name, shelf)) return stock.put(read_kept(*mix, amount, shelf));
    const Ingredient ingredient = ingredient_called(name, shelf);
    refuse_kept(ingredient.name, amount);
    stock.put(ingredient.name, {mass_of_amount(read_amount(amount), ingredient)});
}

}  // namespace

CostRequest cost_request(const Arguments& arguments, Date today) {
    CostRequest request;
    request.on = today;
    request.usual_currency = usual_currency(arguments);
    StrategyRequest& what_if = request.what_if;
    read_flag(arguments, "--length", [&](const std::string& text) { what_if.length = in_range(read_hours(text)); });
    what_if.feel = arguments.value("--feel");
    what_if.without = arguments.values("--without");
    for (const std::string& text : arguments.values("--price"))
        what_if.prices.push_back(flag_value("--price", [&] { return read_price(text, arguments); }));
    read_flag(arguments, "--people",
              [&](const std::string& text) { what_if.people = read_count(text, "for example --people 4"); });
    read_flag(arguments, "--reused-frozen", [&](const std::string& text) { what_if.reused = parse<Ratio>(text); });
    read_flag(arguments, "--on", [&](const std::string& text) { request.on = parse_date(text); });
    read_flag(arguments, "--seed", [&](const std::string& text) { request.seed = read_seed(text); });
    return request;
}

StockOnHand stock_told(const Arguments& arguments, const Shelf& shelf) {
    StockOnHand stock;
    for (const std::string& text : arguments.values("--have")) {
        flag_value("--have", [&] {
            const auto [name, amount] = parted_at_equals(text, "how much there is", "--have \"brown crumb=400g\"");
            put_told(stock, name, amount, shelf);
            return 0;
        });
    }
    return stock;
}

TimedWord timed_word(const std::string& word) {
    const auto equals = word.rfind('=');
    if (equals == std::string::npos) return {word, 1};
    try {
        return {word.substr(0, equals), read_count(word.substr(equals + 1), "as in \"open carpet=3\"")};
    } catch (const InputError& error) {
        std::vector<Fault> faults = error.faults();
        faults.front().message = "'" + word + "' does not say how many sessions: " + faults.front().message;
        throw Error(FaultClass::usage, std::move(faults));
    }
}

std::vector<TimedWord> compared_words(const Arguments& arguments) {
    if (arguments.words().size() < 2)
        throw UsageError("missing-word", "there is nothing to compare '" + arguments.words().front() + "' with",
                         worded("name two or more; to see what one costs: baitwright cost", "choose two or more"));
    std::vector<TimedWord> words;
    for (const std::string& word : arguments.words()) words.push_back(timed_word(word));
    return words;
}

void refuse_twins(const std::vector<TimedWord>& words, const std::vector<std::string>& meant) {
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (words[i].times == words[j].times && meant[i] == meant[j])
                throw UsageError("twice", "'" + words[i].strategy + "' is compared with itself",
                                 "name another in its place; or the same for more sessions: \"open carpet=3\"");
}

}  // namespace baitwright
