#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "answers/mix/own_values_told.h"
#include "answers/money/cost_strategy.h"
#include "answers/plan/hot_day_answer.h"
#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/ingredient_kind.h"
#include "quantities/measured_text.h"
#include "quantities/temperature.h"

/// What a person needs to know of one session, as values: nothing here is rounded and nothing is text for show, but the
/// names of things and the sentences of rules. All amounts are of one day for everyone (`people`), the spare in them,
/// unless a comment says otherwise. Moments count from the start of the session; those before it are below zero.
namespace baitwright {

/// One put-in of one angler. Where several feeds go in at one moment, each is a put-in of its own.
struct PlannedFeed {
    Time at;
    std::string name;      ///< "silt bed", "silt bed and casters"
    std::size_t feed = 0;  ///< its place in `SessionPlan::feeds`
    FeedForm form = FeedForm::cup;
    int count = 1;
    FeedSize size;       ///< of one, as the strategy has it
    std::string with;    ///< what carries it: of the kit "cup 250", else "cup", "hand"
    int fills = 1;       ///< how often that is filled for this put-in
    Volume each_volume;  ///< of one cup, ball or portion
    Mass each_mass;
    Volume volume;  ///< of all that go in at once
    Mass mass;
};

/// One that is kept ready and goes in as bites slow, on no clock: each time so much, from `each.at` on.
struct PlannedSlowFeed {
    PlannedFeed each;
    double times = 0;  ///< how often in a session it is reckoned with, for each angler
    std::optional<Time> until;
};

/// What hands do before the start; `travel` and `bring_to_hand` only where there is a way to the water.
enum class PrepTask {
    weigh,
    pump,
    pour_on,
    drain,
    first_wetting,
    riddle,
    second_wetting,
    let_down,
    shape,
    load,
    travel,
    bring_to_hand,
    thaw,
    stir_in
};

inline constexpr std::array<std::string_view, 14> prep_task_names{
    "weigh",    "pump",        "pour on", "drain",  "first wetting", "riddle", "second wetting",
    "let down", "shape balls", "load",    "travel", "bring to hand", "thaw",   "stir in"};
constexpr std::string_view name_of(PrepTask task) {
    return prep_task_names[static_cast<std::size_t>(task)];
}

/// What of one mix or pellet a job takes, as `PrepJob::amount`.
struct PrepPortion {
    std::string of;
    Mass amount;
};

struct PrepJob {
    Time at;  ///< below zero
    PrepTask task = PrepTask::load;
    std::string subject;  ///< a mix, a pellet, several listed; empty for `load` and what comes after
    Mass amount;  ///< water for pour_on, pump, let_down and the wettings; dry mass for weigh; wet for riddle, thaw; as
                  ///< weighed for stir_in, of soaked pellets nothing; else 0
    Mass take;    ///< for let_down: of the wet mix
    std::string feel;                   ///< for let_down: that it comes to; for stir_in: once it has it; or empty
    std::vector<PrepPortion> portions;  ///< of each subject; more than one where several are done in one job
    int count = 0;                      ///< balls to shape; parts to weigh
    int pair = 1;                       ///< which pair of hands
    Time hands_on;                      ///< nothing for `travel`, whose time is `waiting`
    Time waiting;  ///< after the hands are free, before the next job on the same thing may begin, at the least
    enum class When { evening_before, on_the_day };
    When when = When::on_the_day;
};

/// How much of one ingredient. Their masses are those of `UnrolledStrategy::totals`.
struct PlannedTotal {
    std::string name;
    Mass mass;      ///< as bought: pellets before soaking
    Mass soaked;    ///< how much of it goes in soaked
    Volume volume;  ///< loose; of a liquid its own
    bool liquid = false;
    double grains = 0;  ///< single ones, of pellets, seeds and the like
    IngredientKind kind = IngredientKind::base;
};

/// What is taken out of a tub once that is wetted to its own feel, and let down with more water to a wetter one.
struct LetDown {
    std::string feel;
    std::vector<std::size_t> feeds;  ///< places in `SessionPlan::feeds`
    Mass dry;                        ///< in it
    Mass take;                       ///< of the tub's wet mix
    Mass water;                      ///< more of it to stir in
    Range<Mass> water_range;         ///< 5, 50 and 95 % points
    Mass wet_mass;
    Volume wet_volume;  ///< as it goes in
};

/// What goes in in one tub: feeds of one mix, or a pellet or a live feed that goes in as it is.
struct PlannedBatch {
    std::string name;
    std::string feel;                ///< the driest of its feeds' feels; empty where it goes in as it is
    std::vector<std::size_t> feeds;  ///< places in `SessionPlan::feeds`, the let-downs' among them
    std::vector<PlannedTotal> parts;
    std::vector<std::size_t> doses;  ///< those of `parts` that are liquids or doses
    std::vector<KeptUse> kept;       ///< of it made before; `parts`, `dry` and the water are what is still to be made
    Mass dry;
    Mass water;                      ///< to stir in: all of it, the let-downs' and what is kept's too
    Mass water_first, water_rest;    ///< to the tub's own feel: with the first pour, after the rest
    Range<Mass> water_range;         ///< 5, 50 and 95 % points of these two
    std::vector<LetDown> let_downs;  ///< the wetter feels, the driest first
    Time rest;                       ///< between the two
    Mass kept_dry;                   ///< of `dry`, wetted on the bank with its share of the water (`HotDay`)
    Mass wet_mass;
    Volume wet_volume;   ///< as it goes in
    int buckets = 1;     ///< that it is wetted in, of at most 5 kg wet
    int containers = 1;  ///< these, and one for each let-down
};

/// Pellets to soak: under water, drained, standing. Or to pump: then `strokes` is above 0 and the times are 0.
struct PlannedSoak {
    std::string name;
    std::string into;  ///< the batch it goes into; its own name where it goes in alone or on the hook
    Mass dry;
    Mass pour;
    Time soak, stand;
    Mass wet;
    int strokes = 0, lots = 1;  ///< of the pump; equal lots, pumped one after the other
    bool for_the_hook = false;
    double grains = 0;
};

/// One of the feeds of the strategy.
struct PlannedFeedTotal {
    std::string name;
    FeedForm form = FeedForm::cup;
    FeedSize size;
    int count = 1;
    std::size_t put_ins = 0;  ///< of one angler
    double portions = 0;      ///< not whole, for the spare
    Mass wet_mass;
    Volume wet_volume;
    Volume tub_volume;        ///< of all of it before it goes in: of balls loose, not yet squeezed
    std::size_t written = 0;  ///< its place in the strategy; what has the same goes in together, in one cup
};

/// What lies in one angler's swim just after a moment, were nothing eaten.
struct InTheSwim {
    Time at;
    double grains = 0;
    Mass mass;  ///< as it went in
};

/// A rule of the venue that the plan breaks. A ban has no limit.
struct PlanBreach {
    std::string rule;     ///< the rule as a sentence: "at most 2 kg of pellets, dry, for each angler"
    std::string subject;  ///< the kind or the ingredient
    std::optional<std::variant<Mass, Volume>> limit;
    std::variant<Mass, Volume> planned;
};

struct PlanAdvice {
    std::string text;
    MeasuredText reason;
};

/// A session for a person at a bench and then at the water.
struct SessionPlan {
    std::string strategy;
    std::string venue;         ///< empty where none was named
    std::optional<int> start;  ///< minutes since midnight, where a clock was given
    Time length;
    int people = 1;
    int times = 1;      ///< sessions; all but `cost` is of the first
    Temperature water;  ///< by which the pellets soak

    std::vector<PlannedFeed> put_ins;   ///< by time
    std::vector<PlannedSlowFeed> slow;  ///< kept ready for when bites slow
    std::vector<PlannedFeedTotal> feeds;
    int hands = 1;                     ///< pairs of them
    Time travel;                       ///< the way to the water; 0 where the work is done there
    std::vector<PrepJob> prep;         ///< by time; no two of one pair of hands overlap
    Time hands_on;                     ///< of all of it
    Time begin;                        ///< the latest moment to begin on the day; below zero
    std::vector<PlannedTotal> totals;  ///< hookbaits among them; each ingredient once
    std::vector<PlannedBatch> batches;
    std::vector<PlannedSoak> soaks;
    std::vector<HookbaitNeed> hookbaits;
    std::vector<KeptUse> kept;  ///< mix from the cold or the freezer, in `batches`
    Mass dry, wet_mass;
    Volume wet_volume;
    Mass water_to_carry;            ///< for the wettings, the soaks, the pump and the sprays
    std::optional<HotDay> hot_day;  ///< where the air over the tubs is known
    int containers = 0;
    std::vector<InTheSwim> in_the_swim;  ///< after the first put-in, every half hour, and at the end
    StrategyCost cost;                   ///< of all sessions: what to buy and what is used
    std::vector<PlanBreach> breaches;
    std::vector<std::string> venue_notes;  ///< the venue's rules in free text
    std::vector<PlanAdvice> advice;
    std::vector<std::string> cautions;
    LearntUsed learnt;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
