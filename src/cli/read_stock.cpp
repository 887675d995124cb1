#include "cli/read_stock.h"

#include <algorithm>

#include "bait/pricing.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/plain_words.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

constexpr Milligrams most{10'000'000'000};  // 10 t, as in files

/// The number before "pack" or "packs"; nothing where no such word stands there.
std::optional<double> packs_in(const std::string& text) {
    std::string_view rest = text;
    const auto number = take_number(rest);
    const std::string word = folded_name(rest);
    if (!number || (word != "pack" && word != "packs")) return std::nullopt;
    if (!(*number > 0 && *number <= 1000))
        throw InputError("out-of-range", "the number of packs must be above zero and at most 1000",
                         "for example \"2 packs\"");
    return number;
}

/// "5kg" of "2x5kg"; also with the sign for times.
bool is_counted(const std::string& text) {
    const auto cross = text.find_first_not_of("0123456789 ");
    return cross != std::string::npos && cross > 0 && (text[cross] == 'x' || text.compare(cross, 2, "\u00d7") == 0);
}

std::variant<Mass, Volume> one_pack_size(const Ingredient& ingredient) {
    const std::string hint = "say the amount by mass, as in 1kg or 2x5kg";
    if (ingredient.packs.empty()) throw InputError("no-pack", "no pack size is known for " + ingredient.name, hint);
    for (const Pack& pack : ingredient.packs)
        if (pack.size != ingredient.packs.front().size)
            throw InputError("several-packs", ingredient.name + " comes in packs of more than one size", hint);
    return ingredient.packs.front().size;
}

Milligrams weighed(const std::string& text, const StockName& of) {
    if (of.ingredient) {
        const Packs packs = read_packs(text, *of.ingredient);
        const Pack pack{packs.size, {}, {}, {}};
        return in_milligrams(packs.count * mass_in(pack, *of.ingredient));
    }
    return in_milligrams(in_range(parse<Mass>(text)));
}

void refuse_size(Milligrams mass) {
    if (mass > most) throw InputError("out-of-range", "that is more than 10 t", "check the unit: g, kg, ml, l, pt");
    if (mass <= Milligrams{})
        throw InputError("out-of-range", "that is less than a milligram", "check the unit, as in 500g or 2pt");
}

std::optional<StockName> find_stock_name(const std::string& name, Store& store) {
    const auto held = store.shed().find(name);
    auto ingredient = store.find_ingredient(name);
    if (held)
        return StockName{held->name, held->kind, held->kind == StockKind::mix ? std::nullopt : std::move(ingredient)};
    if (ingredient) return StockName{ingredient->name, StockKind::ingredient, ingredient};
    if (const auto recipe = store.find_recipe(name)) return StockName{recipe->name, StockKind::mix, std::nullopt};
    return std::nullopt;
}

std::vector<std::string> stock_names(Store& store) {
    std::vector<std::string> names = store.shed().names();
    for (std::string& name : store.ingredient_names()) names.push_back(std::move(name));
    for (std::string& name : store.recipe_names()) names.push_back(std::move(name));
    return names;
}

}  // namespace

Store store_of(const Surroundings& around) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder, and the shed and its prices are in the store",
                         "leave it out");
    return open_store(around.library);
}

Date day_of(const Arguments& arguments, const Surroundings& around) {
    const Date today = around.today;
    const auto text = arguments.value("--on");
    if (!text) return today;
    const Date date = flag_value("--on", [&] { return parse_date(*text); });
    if (date > today)
        throw UsageError("in-the-future",
                         "--on: " + date_text(date) + " has not come yet; today is " + date_text(today),
                         "enter what has happened, not what is planned");
    return date;
}

std::optional<Date> best_before_of(const Arguments& arguments, Date got_on) {
    const auto text = arguments.value("--best-before");
    if (!text) return std::nullopt;
    const Date date = flag_value("--best-before", [&] { return parse_date(*text); });
    if (date < got_on)
        throw UsageError("unfit-dates",
                         "--best-before: " + date_text(date) + " lies before the day it came, " + date_text(got_on),
                         "read the bag again, or say with --on when it came");
    return date;
}

std::optional<StockState> state_of(const Arguments& arguments) {
    if (arguments.has("--cold") && arguments.has("--frozen"))
        throw UsageError("two-states", "--cold and --frozen were both given", "give one of them");
    if (arguments.has("--cold")) return StockState::cold;
    if (arguments.has("--frozen")) return StockState::frozen;
    return std::nullopt;
}

std::string shop_of(const Arguments& arguments, const Store& store) {
    const auto named = arguments.value("--shop");
    if (!named) {
        if (arguments.has("--new-shop"))
            throw UsageError("no-shop", "--new-shop needs --shop", "for example --shop \"the mill\" --new-shop");
        return {};
    }
    if (const std::string why = refused_as_name(*named); !why.empty())
        throw UsageError("bad-name", "--shop: the name " + in_quotes(*named) + " " + why,
                         "a shop's name is a few plain words, as in --shop \"the mill\"");
    if (const auto known = store.find_shop(*named)) return *known;
    if (arguments.has("--new-shop")) return *named;
    const std::vector<std::string> shops = store.shops();
    const auto alike =
        std::find_if(shops.begin(), shops.end(), [&](const auto& shop) { return said_alike(*named, shop); });
    if (alike != shops.end()) return *alike;  // no mere beginning: the price of a new shop would go to another
    const std::string nearest = near_names_hint(*named, shops);
    throw UsageError("unknown-shop", "--shop: no price is known from " + in_quotes(*named),
                     (nearest.empty() ? "" : nearest + " ") + "add --new-shop if it is a new one");
}

Packs read_packs(const std::string& text, const Ingredient& ingredient) {
    if (const auto count = packs_in(text)) return {one_pack_size(ingredient), *count};
    if (!is_counted(text)) return {read_amount(text), 1};
    const CountedSize counted = parse_counted_size(text);
    return {read_amount(counted.size), static_cast<double>(counted.count)};
}

StockName stock_name(const std::string& word, Store& store) {
    if (auto found = find_stock_name(word, store)) return *std::move(found);
    const std::vector<std::string> names = stock_names(store);
    if (const auto meant = said_name(word, names).name)
        if (auto found = find_stock_name(*meant, store)) return *std::move(found);
    throw NotFound(fault_of_name(word, names,
                                 {"unknown-stock", "no ingredient or mix is called '" + word + "'",
                                  "see what is there with: baitwright stock; and: baitwright ingredient list"}));
}

bool is_stock_name(const std::string& word, Store& store) {
    return find_stock_name(word, store) || said_name(word, stock_names(store)).name;
}

Milligrams read_stock_mass(const std::string& text, const StockName& of) {
    const Milligrams mass = flag_value("AMOUNT", [&] { return weighed(text, of); });
    flag_value("AMOUNT", [&] { refuse_size(mass); });
    return mass;
}

Milligrams read_counted_mass(const std::string& text, const StockName& of) {
    if (folded_name(text) == "none") return {};
    try {
        if (parse<Mass>(text).si() == 0) return {};
    } catch (const InputError&) {  // packs, or a volume; read below
    }
    return read_stock_mass(text, of);
}

}  // namespace baitwright
