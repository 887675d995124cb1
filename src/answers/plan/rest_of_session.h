#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"
#include "answers/plan/rest_put_ins.h"
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
    std::vector<RestPutIns> then;          ///< that what is left after it makes
    double kept = 0;                       ///< times that are kept for slow bites, of what is left
    bool for_slow = false;                 ///< some of it still waits for slow bites
    Mass home;                             ///< more than goes in; 0 where it is less than half of the least put-in
    Volume home_left;                      ///< the same as `left`
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

/// What is left goes in by the plan's put-ins (`rest_put_ins`), none larger or sooner than by the strategy; what is
/// more than that comes home. What the plan has no more of is spare, for when bites slow. The advice fits: no rhythm is
/// to be kept where the plan has nothing more to put in, and no top-up is asked for where there is none. Slow bites:
/// one portion now, but at most a quarter of what is left, where nothing of it is due now and there is time for more; a
/// mix firm enough goes in as a small tight ball with a pinch loose over it, everything else loose and wider. Where the
/// strategy keeps something for it, that goes in first, once, and so much of what is left of it as is reckoned for
/// later is kept back. No bites: nothing goes in until the next bite.
/// **Source**: common practice, no source. **Test**: `tests/answers/rest_of_session_test.cpp`.
/// Throws UsageError: the moment is not within the session; something is left that the strategy does not feed.
RestOfSession rest_of_session(const SessionPlan& plan, const RestRequest& request);

}  // namespace baitwright
