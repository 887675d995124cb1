#pragma once

#include <string>
#include <vector>

#include "bait/advice_rule.h"
#include "bait/strategy.h"
#include "quantities/measured_text.h"

namespace baitwright {

/// A point for (above 0) or against something, and why.
struct AdvicePoint {
    int points = 0;
    MeasuredText reason;
};

/// One feed of an advised strategy, as it is written.
struct AdvisedFeed {
    std::string name, feel;  ///< no feel where it goes in as it is
    std::string colour;      ///< that most of its dry mass has; empty: not known
    FeedForm form = FeedForm::cup;
    FeedSize size;
    int count = 1;
    std::size_t put_ins = 0;
    Volume each = {};  ///< of one, as it goes in
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
    std::vector<AdviceRule> advice;           ///< the rules that hold, none of which contradicts another as shipped
    FeedShare share;                          ///< their shares multiplied
    std::vector<AdvisedStrategy> strategies;  ///< best first
    std::vector<AdvisedMix> mixes;            ///< best first
    std::vector<AdvicePoint> own;             ///< of the strategies: what the person's log says
};

}  // namespace baitwright
