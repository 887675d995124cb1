#pragma once

#include <string>
#include <vector>

#include "answers/strategy/unroll_strategy.h"
#include "bait/advice_rule.h"
#include "bait/shelf.h"

namespace baitwright {

/// A point for (above 0) or against something, and why.
struct AdvicePoint {
    int points = 0;
    std::string reason;
};

/// One feed of an advised strategy, as it is written.
struct AdvisedFeed {
    std::string name, feel;  ///< no feel where it goes in as it is
    std::string colour;      ///< that most of its dry mass has; empty: not known
    FeedForm form = FeedForm::cup;
    FeedSize size;
    int count = 1;
    std::size_t put_ins = 0;
};

struct AdvisedStrategy {
    std::string name;
    int score = 0;
    std::vector<AdvicePoint> points;
    std::vector<AdvisedFeed> feeds;
    Mass as_written;  ///< as it goes in, without spare
    Mass low, high;   ///< the share of it that the rules advise
};

struct AdvisedMix {
    std::string name, feel, colour;
    int score = 0;
    std::vector<AdvicePoint> points;
};

/// What experience says of a day and a water. All of it is advice: it changes no other answer.
struct AdviseAnswer {
    Circumstances now;
    std::vector<AdviceRule> advice;           ///< the rules that hold
    FeedShare share;                          ///< their shares multiplied
    std::vector<AdvisedStrategy> strategies;  ///< best first
    std::vector<AdvisedMix> mixes;            ///< best first
};

/// Ranks the strategies and mixes of the shelf. Rules that hold give 2 points to what they favour and take 2 from what
/// they are against, 1 to mixes of their colours and feels; a strategy gets points for water like the one it is meant
/// for, and strategies and mixes for fish that their purpose names. **Source**: common practice, no source.
/// Names in rules that are not on the shelf are passed over. Throws InputError "unknown-fish" for a fish that neither a
/// rule nor a purpose names, and what `unroll_strategy` throws.
AdviseAnswer advise(const Shelf& shelf, const std::vector<AdviceRule>& rules, const Circumstances& now);

}  // namespace baitwright
