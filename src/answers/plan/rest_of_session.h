#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"
#include "answers/plan/rest_request.h"

namespace baitwright {

/// How one feed is best spread over the time that is left. All of one angler.
struct RestOfFeed {
    std::string name;
    Volume left;
    Mass left_mass;
    Volume goes_in;        ///< the same as it goes in: squeezed where it does so as balls
    Volume still_planned;  ///< of the put-ins that are still to come
    Mass still_planned_mass;
    std::size_t planned_put_ins = 0;
    Volume top_up;                         ///< to go in now; 0 for none
    FeedForm top_up_as = FeedForm::loose;  ///< ball or loose
    Length ball;                           ///< of a ball to top up with
    int put_ins = 0;                       ///< that what is left after it makes
    Volume each;
    Time gap;         ///< between them; 0 for none
    double kept = 0;  ///< times that are kept for slow bites, of what is left
};

/// What is kept for when bites slow, called for now.
struct SlowTopUp {
    PlannedFeed each;
    double more = 0;  ///< times that it can still go in after this: by what is left, else as reckoned
};

/// The rest of a session by rules of thumb.
struct RestOfSession {
    Time now, left;
    Bites bites = Bites::steady;
    std::vector<SlowTopUp> put_in_now;  ///< as bites slow, what the strategy keeps for it
    std::vector<RestOfFeed> feeds;
    std::vector<PlanAdvice> advice;
};

/// Spreads what is left evenly over the time that is left: in as many put-ins as are still planned, but of half a
/// portion to two; where none is planned, in whole portions; the last a gap before the end. Slow bites: one portion
/// now, but at most a quarter of what is left; a mix firm enough goes in as a small tight ball with a pinch loose over
/// it, everything else loose and wider. Where the strategy keeps something for it, that goes in first, once, and so
/// much of what is left of it as is reckoned for later is kept back. No bites: nothing goes in until the next bite.
/// **Source**: common practice, no source. **Test**: `tests/answers/plan_session_test.cpp`.
/// Throws UsageError: the moment is not within the session; something is left that the strategy does not feed.
RestOfSession rest_of_session(const SessionPlan& plan, const RestRequest& request);

}  // namespace baitwright
