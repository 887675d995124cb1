#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "answers/strategy/advise_answer.h"

/// What speaks for and against a strategy or a mix on a day. **Source**: common practice, no source.
namespace baitwright {

std::vector<AdvicePoint> points_of(const Strategy& strategy, const std::vector<AdviceRule>& holding,
                                   const Circumstances& now);
std::vector<AdvicePoint> points_of(const Recipe& recipe, const std::string& feel, const std::string& colour,
                                   const std::vector<AdviceRule>& holding, const Circumstances& now);

/// Whether the text has the fish as a word, in the singular or the plural.
bool names_fish(std::string_view text, std::string_view fish);

/// Whether two words in small letters name one fish, in the singular or the plural: "skimmer" and "skimmers".
bool is_same_fish(std::string_view fish, std::string_view other);

}  // namespace baitwright
