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
    Time gap;  ///< between them; 0 for none
};

/// The rest of a session by rules of thumb.
struct RestOfSession {
    Time now, left;
    Bites bites = Bites::steady;
    std::vector<RestOfFeed> feeds;
    std::vector<PlanAdvice> advice;
};

/// Spreads what is left evenly over the time that is left: in as many put-ins as are still planned, but of half a
/// portion to two; where none is planned, in whole portions; the last a gap before the end. Slow bites: one portion
/// now, but at most a quarter of what is left; a mix firm enough goes in as a small tight ball with a pinch loose over
/// it, everything else loose and wider. No bites: nothing goes in until the next bite.
/// **Source**: common practice, no source. **Test**: `tests/answers/plan_session_test.cpp`.
/// Throws UsageError: the moment is not within the session; something is left that the strategy does not feed.
RestOfSession rest_of_session(const SessionPlan& plan, const RestRequest& request);

}  // namespace baitwright
