#include "bait/feel.h"

#include <algorithm>
#include <utility>

#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

const Feel* find_feel(const std::vector<Feel>& feels, std::string_view name) {
    const std::string wanted = folded_name(name);
    for (const Feel& feel : feels)
        if (folded_name(feel.name) == wanted) return &feel;
    return nullptr;
}

const Feel& feel_of(const std::vector<Feel>& feels, Ratio wetness) {
    for (const Feel& feel : feels)
        if (wetness < feel.below) return feel;
    return feels.back();
}

const Feel* first_not_rising(const std::vector<Feel>& feels) {
    Ratio edge = 0.0;
    for (const Feel& feel : feels) {
        if (feel.aim < edge || feel.aim >= feel.below || feel.below <= edge) return &feel;
        edge = feel.below;
    }
    return nullptr;
}

std::string told_not_rising(const std::vector<Feel>& feels) {
    const Feel* wrong = first_not_rising(feels);
    if (wrong == nullptr) return {};
    std::string told = "the feels do not rise from the driest to the wettest: " + in_quotes(wrong->name) +
                       " is aimed at " + number_text(wrong->aim.si()) + " and ends at " +
                       number_text(wrong->below.si());
    if (wrong != feels.data()) {
        const Feel& before = *(wrong - 1);
        told += ", and " + in_quotes(before.name) + " before it ends at " + number_text(before.below.si());
    }
    return told;
}

void sort_by_band(std::vector<Feel>& feels) {
    std::sort(feels.begin(), feels.end(), [](const Feel& a, const Feel& b) {
        return std::pair(a.below, folded_name(a.name)) < std::pair(b.below, folded_name(b.name));
    });
}

}  // namespace baitwright
