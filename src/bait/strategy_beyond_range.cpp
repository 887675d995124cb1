#include <cmath>

#include "bait/beyond_range.h"
#include "bait/strategy_limits.h"
#include "bait/strategy_names.h"
#include "quantities/amount_range.h"
#include "quantities/hair.h"

namespace baitwright {

namespace {

using namespace strategy_limits;

/// Keeps the first thing that does not hold.
class Limits {
public:
    void hold(bool holds, const std::string& what) {
        if (!holds && first_.empty()) first_ = what;
    }
    [[nodiscard]] std::string first() const { return first_; }

private:
    std::string first_;
};

template <class Q>
bool is_between(const std::optional<Q>& value, Q lowest, Q highest) {
    return !value || (*value >= lowest && *value <= highest);
}

bool is_rate(const std::optional<double>& rate, double most) {
    return !rate || (*rate > 0 && *rate <= most);
}

bool is_rhythm(const FeedRhythm& rhythm, Time length) {
    if (const auto* once = std::get_if<AtOnce>(&rhythm)) return once->at >= Time{} && once->at <= length + hair;
    if (const auto* every = std::get_if<EveryTime>(&rhythm))
        return every->gap >= shortest_gap && every->gap <= longest_gap;
    if (const auto* fish = std::get_if<EveryFish>(&rhythm)) return fish->fish >= 1 && fish->fish <= most_fish;
    if (const auto* slow = std::get_if<WhenSlow>(&rhythm))
        return slow->times >= fewest_slow_times && slow->times <= most_slow_times;
    return true;
}

bool is_size(FeedForm form, const FeedSize& size) {
    if (form == FeedForm::ball) {
        const auto* ball = std::get_if<Length>(&size);
        return ball && *ball >= smallest_ball && *ball <= largest_ball;
    }
    const auto* volume = std::get_if<Volume>(&size);
    if (form != FeedForm::loose) return volume && *volume >= smallest_vessel && *volume <= largest_vessel;
    if (volume) return lies_in_range(*volume);
    const auto* mass = std::get_if<Mass>(&size);
    return mass && lies_in_range(*mass);
}

void hold_feed(const Feed& feed, const std::string& which, Time length, Limits& limits) {
    const std::string its = "in " + which + ", ";
    limits.hold(is_rhythm(feed.when.rhythm, length), its + "when it goes in must lie in the session");
    limits.hold(feed.when.from >= Time{} && feed.when.from <= length + hair &&
                    is_between(feed.when.until, Time{}, length + hair),
                its + "its begin and end must lie in the session");
    limits.hold(is_size(feed.form, feed.size), its + "a ball must be " + std::string(ball_range) + ", a vessel " +
                                                   std::string(vessel_range) + ", loose feed " + range_text<Mass>());
    limits.hold(feed.count >= 1 && feed.count <= most_at_once, its + "the count must be from 1 to 1000");
    for (const FeedPart& part : feed.parts)
        limits.hold(part.share > 0 && part.share <= most_share, its + "each share must be above 0 and at most 1000000");
}

void hold_hookbait(const Hookbait& hookbait, const std::string& which, Limits& limits) {
    const bool holds = std::visit(
        [](const auto& amount) {
            if constexpr (std::is_same_v<std::decay_t<decltype(amount)>, BitesPerHour>)
                return amount.bites > 0 && amount.bites <= most_bites;
            else
                return lies_in_range(amount);
        },
        hookbait.amount);
    limits.hold(holds, "of " + which + ", the bites must be from 0 to 3600 an hour, an amount " + range_text<Mass>());
}

void hold_air(const AirSetting& air, Limits& limits) {
    limits.hold(is_between(air.temperature, Temperature::from_celsius(coldest_air_celsius),
                           Temperature::from_celsius(warmest_air_celsius)),
                "the air must be " + std::string(air_range));
    limits.hold(is_between<Ratio>(air.humidity, 0.0, 1.0), "the humidity must be " + std::string(humidity_range));
    limits.hold(is_between(air.wind, Speed{}, strongest_wind), "the wind must be " + std::string(wind_range));
}

}  // namespace

std::string beyond_range(const Strategy& strategy) {
    Limits limits;
    limits.hold(is_between<Time>(strategy.length, shortest_session, longest_session),
                "the session must be " + std::string(session_range));
    limits.hold(strategy.spare >= 0 && strategy.spare <= most_spare,
                "what is to spare must be " + std::string(spare_range));
    const WaterSetting& water = strategy.water;
    limits.hold(is_between(water.depth, shallowest, deepest), "the depth must be " + std::string(depth_range));
    limits.hold(is_between(water.temperature, Temperature::from_celsius(coldest_celsius),
                           Temperature::from_celsius(warmest_celsius)),
                "the water must be " + std::string(warmth_range));
    limits.hold(is_between(water.tow, Speed{}, fastest_tow) && is_between(water.tow_bottom, -fastest_tow, fastest_tow),
                "the tow must be at most 5 m/s");
    hold_air(strategy.air, limits);
    limits.hold(
        is_rate(strategy.pace.put_ins_per_hour, fastest_pace) && is_rate(strategy.pace.fish_per_hour, fastest_pace),
        "the pace must be above 0 and at most 3600 an hour");
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i)
        hold_feed(strategy.feeds[i], feed_subject(i + 1), strategy.length, limits);
    for (std::size_t i = 0; i < strategy.hookbaits.size(); ++i)
        hold_hookbait(strategy.hookbaits[i], hookbait_subject(i + 1), limits);
    return limits.first();
}

}  // namespace baitwright
