#include <cmath>

#include "bait/beyond_range.h"
#include "bait/strategy_names.h"
#include "bait/strategy_settings.h"
#include "quantities/amount_range.h"
#include "quantities/hair.h"

namespace baitwright {

namespace {

using namespace strategy_limits;

/// Keeps the first thing that does not hold. Texts, and what depends on others, are not settings to be held to a range.
class Limits {
public:
    void hold(bool holds, const std::string& what) {
        if (!holds && first_.empty()) first_ = what;
    }
    template <class Q>
    void setting(const RangeFacts<Q>& facts, const std::optional<Q>& value, const std::string& where = {}) {
        if (value && !(*value >= facts.lowest && *value <= facts.highest))
            hold(false, where + std::string(facts.what) + " must be " +
                            std::string(facts.stored_range.empty() ? facts.range : facts.stored_range));
    }
    template <class Q>
    void setting(const RangeFacts<Q>& facts, const Q& value, const std::string& where = {}) {
        setting(facts, std::optional<Q>(value), where);
    }
    void setting(const RateFacts&, const std::optional<double>& rate) {
        hold(!rate || (*rate > 0 && *rate <= fastest_pace), "the pace must be above 0 and at most 3600 an hour");
    }
    template <class Member>
    void setting(const SettingNames&, const Member&, const std::string& = {}) {}
    [[nodiscard]] std::string first() const { return first_; }

private:
    std::string first_;
};

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
                    (!feed.when.until || (*feed.when.until >= Time{} && *feed.when.until <= length + hair)),
                its + "its begin and end must lie in the session");
    limits.hold(is_size(feed.form, feed.size), its + "a ball must be " + std::string(ball_range) + ", a vessel " +
                                                   std::string(vessel_range) + ", loose feed " + range_text<Mass>());
    visit_helping(feed, [&](const auto& facts, const auto& member) { limits.setting(facts, member, its); });
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

}  // namespace

std::string beyond_range(const Strategy& strategy) {
    Limits limits;
    visit_settings(strategy, [&](const auto& facts, const auto& member) { limits.setting(facts, member); });
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i)
        hold_feed(strategy.feeds[i], feed_subject(i + 1), strategy.length, limits);
    for (std::size_t i = 0; i < strategy.hookbaits.size(); ++i)
        hold_hookbait(strategy.hookbaits[i], hookbait_subject(i + 1), limits);
    return limits.first();
}

}  // namespace baitwright
