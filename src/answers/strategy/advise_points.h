#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "answers/strategy/advise_answer.h"
#include "answers/strategy/brought_before.h"

/// What speaks for and against a strategy or a mix on a day. **Source**: common practice, no source.
namespace baitwright {

/// A rule scores once. One that speaks against forms or helpings of the strategy's feeds favours none that has any of
/// them, and is against one that has nothing else.
std::vector<AdvicePoint> points_of(const Strategy& strategy, const std::vector<AdvisedFeed>& feeds,
                                   const std::vector<AdviceRule>& holding, const Circumstances& now);
/// By its name, else by its colour or its feel: a rule scores once.
std::vector<AdvicePoint> points_of(const Recipe& recipe, const std::string& feel, const std::string& colour,
                                   const std::vector<AdviceRule>& holding, const Circumstances& now);

/// What the person's own sessions say: 1 point for half as much again as their other ways, or against the reverse; 2
/// where that is sure; never more, for where and when one fished was no fair trial.
std::optional<AdvicePoint> point_of(const BroughtBefore& brought);

/// Whether the text has the fish as a word, in the singular or the plural.
bool names_fish(std::string_view text, std::string_view fish);

/// Whether two words in small letters name one fish, in the singular or the plural: "skimmer" and "skimmers".
bool is_same_fish(std::string_view fish, std::string_view other);

}  // namespace baitwright
