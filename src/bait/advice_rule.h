#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/strategy.h"
#include "quantities/measured_text.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

inline constexpr std::array<std::string_view, 4> season_names{"spring", "summer", "autumn", "winter"};
inline constexpr std::array<std::string_view, 2> bed_names{"pale", "dark"};

/// The day and the water as far as a person has said. What is not said holds no rule.
struct Circumstances {
    std::string season, clarity, bed;  ///< empty: not said
    std::optional<Temperature> temperature;
    std::optional<Length> depth;
    std::optional<Speed> tow;
    std::optional<Time> hours;
    std::vector<std::string> fish;
};

/// From so much up to, and not at, so much; either may be open.
template <class Q>
struct FromTo {
    std::optional<Q> from, below;

    [[nodiscard]] bool stated() const { return from || below; }
    [[nodiscard]] bool hold(const std::optional<Q>& value) const {
        if (!stated()) return true;
        return value && (!from || *value >= *from) && (!below || *value < *below);
    }
};

/// When a rule holds: every condition that it states must. One of a list is enough.
struct AdviceCondition {
    std::vector<std::string> season, clarity, bed, fish;
    FromTo<Temperature> temperature;
    FromTo<Length> depth;
    FromTo<Speed> tow;
    FromTo<Time> hours;
};

inline constexpr std::array<std::string_view, 6> advice_topics{"amount", "colour", "feel", "size", "feeding", "choice"};

/// A share of the feed as a strategy has it.
struct FeedShare {
    double low = 1, high = 1;
};

/// What experience says, and when. `favour` and `against` name strategies and mixes; colours are those of ingredients.
struct AdviceRule {
    std::string about;     ///< one of `advice_topics`
    std::string say, why;  ///< with "{temperature_below}" and the like where a limit of the rule stands (`measured`)
    std::string source;    ///< "common practice, no source" where the rule states none
    AdviceCondition when, unless;  ///< none of the conditions of `unless` may hold: what applies more specially wins
    std::vector<std::string> favour, against;
    std::vector<std::string> colours;     ///< mixes of these are favoured
    std::vector<std::string> feels;       ///< mixes of these are favoured
    std::vector<FeedForm> against_forms;  ///< that it speaks against
    std::optional<Volume> against_above;  ///< as the most at a time
    std::optional<FeedShare> share;
    int line = 0;  ///< where it stands, for faults
    std::string file;
};

bool holds(const AdviceRule& rule, const Circumstances& now);

/// Its `say` or `why` with the limits that it names in their places.
MeasuredText measured(const std::string& text, const AdviceRule& rule);

/// What stands in braces in the text and is no limit that the rule states.
std::vector<std::string> unknown_limits(const std::string& text, const AdviceRule& rule);

}  // namespace baitwright
