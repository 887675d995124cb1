#include "report/level_cup.h"

#include <algorithm>

namespace baitwright {

bool feeds_level_cups(const SessionPlan& plan) {
    return std::any_of(plan.feeds.begin(), plan.feeds.end(), [](const PlannedFeedTotal& feed) {
        return feed.form == FeedForm::cup || feed.form == FeedForm::pot;
    });
}

}  // namespace baitwright
