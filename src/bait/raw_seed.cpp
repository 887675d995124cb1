#include "bait/raw_seed.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "bait/caution.h"
#include "bait/ingredient_cautions.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/loose_words.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr const char* cook_first = "cook-first";
constexpr std::array<std::string_view, 4> ways_to_cook{"cooked", "boiled", "simmered", "stewed"};

bool says_cooked(const LooseWord& word) {
    return std::find(ways_to_cook.begin(), ways_to_cook.end(), word.whole) != ways_to_cook.end();
}

/// How many words it shares with the raw one, where it is that one cooked: "cooked tiger nuts" two with
/// "tiger nuts, dry", and "cooked barley broth" none with "barley".
std::size_t words_shared(const std::vector<LooseWord>& raw, const std::vector<LooseWord>& cooked) {
    if (cooked.size() < 2 || !says_cooked(cooked.front())) return 0;
    const bool all = std::all_of(cooked.begin() + 1, cooked.end(), [&](const LooseWord& word) {
        return std::any_of(raw.begin(), raw.end(), [&](const LooseWord& other) { return same_word(word, other); });
    });
    return all ? cooked.size() - 1 : 0;
}

std::optional<std::string> cooked_from(const Ingredient& raw, const Shelf& shelf) {
    const std::vector<LooseWord> words = loose_words(raw.name);
    std::optional<std::string> best;
    std::size_t most = 0;
    for (const std::string& name : shelf.ingredient_names()) {
        const std::size_t shared = words_shared(words, loose_words(name));
        if (shared <= most) continue;
        const auto ingredient = shelf.find_ingredient(name);
        if (!ingredient || ingredient->kind != IngredientKind::particle) continue;
        most = shared;
        best = ingredient->name;
    }
    return best;
}

/// "cooked red lentils" for "red lentils, split".
std::string name_when_cooked(const std::string& raw) {
    return "cooked " + raw.substr(0, raw.find(','));
}

}  // namespace

bool is_raw_seed(const Ingredient& ingredient) {
    return ingredient.kind == IngredientKind::seed &&
           (has_caution(ingredient, "pulse") || has_caution(ingredient, "hard seed"));
}

Fault raw_seed_fault(const Ingredient& ingredient, const Shelf& shelf, std::string subject) {
    const std::string how{find_caution(has_caution(ingredient, "pulse") ? "pulse" : "hard seed")->sentence};
    const auto cooked = cooked_from(ingredient, shelf);
    const std::string then =
        cooked ? " Then name it cooked: " + in_quotes(*cooked)
               : " Then give what you cooked a name of its own" +
                     worded(R"(, for example: baitwright ingredient add ")" + name_when_cooked(ingredient.name) +
                                R"(" --kind particle --set "loose_density=700 g/l" --set "cautions=)" +
                                joined(ingredient.cautions, ", ") + "\"",
                            ", of the kind particle, with its cautions (" + joined(ingredient.cautions, ", ") +
                                "), and put that in");
    return {cook_first, in_quotes(ingredient.name) + " is never fed as it is bought", how + then, std::move(subject)};
}

bool is_of_raw_seed(const Error& error) {
    return std::any_of(error.faults().begin(), error.faults().end(),
                       [](const Fault& fault) { return fault.code == cook_first; });
}

}  // namespace baitwright
