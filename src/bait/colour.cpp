#include "bait/colour.h"

#include <array>

#include "quantities/suggestion.h"

namespace baitwright {

namespace {

struct NamedColour {
    std::string_view word;
    Colour colour;
};

constexpr std::array<NamedColour, 13> colours{{{"black", {15, 0, 0}},
                                               {"dark brown", {25, 8, 12}},
                                               {"brown", {38, 12, 24}},
                                               {"light brown", {58, 9, 28}},
                                               {"cream", {88, 1, 16}},
                                               {"white", {95, 0, 3}},
                                               {"grey", {55, 0, 2}},
                                               {"gold", {72, 8, 50}},
                                               {"yellow", {82, 2, 62}},
                                               {"orange", {65, 35, 55}},
                                               {"red", {40, 50, 32}},
                                               {"pink", {75, 26, 6}},
                                               {"green", {45, -22, 24}}}};

}  // namespace

std::optional<Colour> colour_called(std::string_view word) {
    const std::string folded = folded_name(word);
    for (const NamedColour& named : colours)
        if (named.word == folded) return named.colour;
    return std::nullopt;
}

}  // namespace baitwright
