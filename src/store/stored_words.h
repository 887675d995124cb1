#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <variant>

#include "bait/dose.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "quantities/bare_number.h"

/// The words that stand in the tables for the values of our enums and for the alternatives of our variants. They are
/// part of the schema: changing one needs a migration.
namespace baitwright {

inline constexpr std::array<std::string_view, 2> owner_words{"shipped", "person"};
inline constexpr std::array<std::string_view, 2> preparation_words{"as_bought", "soaked"};
inline constexpr std::array<std::string_view, 5> dose_basis_words{"per_kg_dry", "per_kg_wet", "per_litre_water",
                                                                  "per_pint_pellets", "share_of_dry"};
/// In the order of the alternatives of `PartAmount`; packs and doses know the first two.
inline constexpr std::array<std::string_view, 4> measure_words{"mass", "volume", "packs", "share"};

/// In the order of the alternatives of `FeedRhythm`, `FeedSize` and a hookbait's amount.
inline constexpr std::array<std::string_view, 5> rhythm_words{"once", "time", "put-in", "fish", "slow"};
inline constexpr std::array<std::string_view, 3> size_words{"mass", "volume", "length"};
inline constexpr std::array<std::string_view, 3> hookbait_words{"bites", "mass", "volume"};

/// In the order of the alternatives of a look's form, and of the kinds of rows in `learnt_water` and `learnt_mix`.
inline constexpr std::array<std::string_view, 2> look_words{"volume", "length"};
inline constexpr std::array<std::string_view, 4> learnt_water_words{"hand", "memory", "absorption", "gap"};
inline constexpr std::array<std::string_view, 3> learnt_mix_words{"cup_weight", "hold", "carpet"};

/// Stands before the key of a part of the composition in `ingredient_property`.
inline constexpr const char* composition_prefix = "composition.";

template <class Enum, std::size_t count>
constexpr std::string_view word_of(const std::array<std::string_view, count>& words, Enum value) {
    return words[static_cast<std::size_t>(value)];
}

template <class Enum, std::size_t count>
std::optional<Enum> value_of(const std::array<std::string_view, count>& words, std::string_view word) {
    const auto found = std::find(words.begin(), words.end(), word);
    if (found == words.end()) return std::nullopt;
    return static_cast<Enum>(found - words.begin());
}

/// A measured amount as the tables hold it: the word of its measure and its number, in SI where it has a dimension.
struct StoredAmount {
    std::string_view measure;
    double number;
};
inline StoredAmount stored(const std::variant<Mass, Volume>& amount) {
    return {measure_words[amount.index()], bare_number(amount)};
}
inline StoredAmount stored(const PartAmount& amount) {
    return {measure_words[amount.index()], bare_number(amount)};
}

/// And back: the alternative of that word; nothing where it is none of them.
template <class Alternatives, std::size_t count>
std::optional<Alternatives> stored_alternative(const std::array<std::string_view, count>& words, std::string_view word,
                                               double number) {
    const auto found = std::find(words.begin(), words.end(), word);
    return dressed_number<Alternatives>(static_cast<std::size_t>(found - words.begin()), number);
}
inline std::optional<std::variant<Mass, Volume>> mass_or_volume(std::string_view measure, double number) {
    return stored_alternative<std::variant<Mass, Volume>>(measure_words, measure, number);
}
std::optional<DoseRate> dose_rate(std::string_view basis, std::string_view measure, double each);

}  // namespace baitwright
