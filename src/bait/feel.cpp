#include "bait/feel.h"

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

}  // namespace baitwright
