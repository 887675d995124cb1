#include "questions/stock_amount.h"

#include "bait/pricing.h"
#include "quantities/plain_words.h"
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

}  // namespace

Packs read_packs(const std::string& text, const Ingredient& ingredient) {
    if (const auto count = packs_in(text)) return {one_pack_size(ingredient), *count};
    if (!is_counted(text)) return {read_amount(text), 1};
    const CountedSize counted = parse_counted_size(text);
    return {read_amount(counted.size), static_cast<double>(counted.count)};
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
