#include "report/log_words.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/clock.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

std::string comma(const std::string& text) {
    return text.empty() ? "" : ", " + text;
}

/// "9.5 kg", "850 g": of fish, as the scale on the bank shows them; "4 lb (1.814 kg)" where ounces come first.
std::string fish_mass(Mass mass) {
    if (mass < 1.0 * kilogram) return shown_mass(mass);
    const std::string kilograms = fmt::format("{:.4g} kg", mass.in(kilogram)), other = other_mass(mass);
    if (units_shown().ounces) return shown_ounces(mass) + in_brackets({other.empty() ? other : kilograms});
    return kilograms + in_brackets({other});
}

/// "12 bream"; the name is the person's own, and stays as it is.
std::string so_many_fish(int count, const std::string& fish) {
    if (count == 0) return fish;
    return fmt::format("{} {}", count, fish.empty() ? "fish" : fish);
}

std::string one_catch(const std::string& fish, int count, const std::optional<Mass>& mass) {
    const std::string fishes = so_many_fish(count, fish);
    if (!mass) return fishes.empty() ? "nothing" : fishes;
    return fishes + (fishes.empty() ? "" : ", ") + fish_mass(*mass);
}

std::string session_name(const LoggedSession& session) {
    return session.strategy.empty() ? "a session" : session.strategy;
}

/// By the clock, to the second: "70 s", "2 min 30 s", "10 min".
std::string time_as_told(Time time) {
    const long seconds = std::lround(time.in(second));
    if (seconds < 10) return fmt::format("{:.2g} s", time.in(second));
    if (seconds % 60 == 0 || seconds >= 3600) return shown_moment(time);
    if (seconds < 120) return fmt::format("{} s", seconds);
    return fmt::format("{} min {} s", seconds / 60, seconds % 60);
}

struct LogEntryText {
    std::string operator()(const LoggedSession& session) const {
        std::string text = session_name(session);
        if (session.length > Time{}) text += ", " + hours_and_minutes(session.length);
        if (session.anglers > 1) text += fmt::format(", {} anglers", session.anglers);
        return text;
    }
    std::string operator()(const LoggedPutIn& put_in) const {
        const std::string what = put_in.of.empty() ? "feed" : put_in.of;
        if (!put_in.at) return what + " in";
        const bool before = *put_in.at < Time{};
        return what + " in, " + hours_and_minutes(before ? Time{} - *put_in.at : *put_in.at) +
               (before ? " before the start" : " after the start");
    }
    std::string operator()(const LoggedUse& use) const {
        const auto* mass = std::get_if<Mass>(&use.amount);
        return (mass ? shown_mass(*mass) : shown_volume(std::get<Volume>(use.amount))) + " of " + use.of + " used";
    }
    std::string operator()(const LoggedCatch& caught) const {
        return one_catch(caught.fish, caught.count, caught.mass);
    }
    std::string operator()(const LoggedMix& mix) const {
        std::string text = mix.of;
        if (mix.dry) text += ", " + shown_mass(*mix.dry) + " dry";
        if (mix.water) text += (mix.dry ? " and " : ", ") + shown_water(*mix.water);
        if (mix.dry && !mix.water) text += ", water not told";
        if (mix.feel.empty() && mix.wetness) return text + fmt::format(", wetness {:.2f}", double(*mix.wetness));
        return text + comma(mix.feel);
    }
    std::string operator()(const LoggedSoak& soak) const {
        return soak.of + ", " + shown_mass(soak.dry) + " soaked " + time_as_told(soak.under_water) + ": " +
               shown_mass(soak.drained) + " drained";
    }
    std::string operator()(const LoggedWeight& weight) const {
        return weight.of + comma(weight.feel) + ": " + shown_vessel(weight.vessel) + " of it weighs " +
               shown_mass(weight.mass);
    }
    std::string operator()(const LoggedLook& look) const {
        std::string text = look.of + comma(look.feel) + ", ";
        if (const auto* cup = std::get_if<Volume>(&look.form)) text += "a cup of " + shown_helping(*cup);
        if (const auto* ball = std::get_if<Length>(&look.form))
            text += fmt::format("a ball of {:.0f} mm", ball->in(millimetre));
        std::vector<std::string> seen;
        if (look.holds) seen.push_back("held " + time_as_told(*look.holds));
        if (look.breaks_at) seen.push_back("broke at " + shown_as_told(*look.breaks_at));
        if (look.carpet) seen.push_back("lay " + shown_as_told(*look.carpet) + " wide");
        return text + ": " + joined(seen, ", ");
    }
    std::string operator()(const LoggedBag& bag) const { return "a new bag of " + bag.of; }
    std::string operator()(const LogUndone& undone) const { return fmt::format("number {} taken back", undone.entry); }
};

struct FishSum {
    std::string fish;
    int count = 0;
    std::optional<Mass> mass;
};

}  // namespace

std::string log_entry_text(const LoggedThing& what) {
    return std::visit(LogEntryText{}, what);
}

std::string caught_text(const std::vector<LogEntry>& belonging) {
    std::vector<FishSum> sums;
    for (const LogEntry& entry : belonging) {
        const auto* caught = std::get_if<LoggedCatch>(&entry.what);
        if (!caught || (caught->count == 0 && !caught->mass)) continue;
        auto sum = sums.begin();
        while (sum != sums.end() && sum->fish != caught->fish) ++sum;
        if (sum == sums.end()) sum = sums.insert(sums.end(), {caught->fish, 0, {}});
        sum->count += caught->count;
        if (caught->mass) sum->mass = sum->mass.value_or(Mass{}) + *caught->mass;
    }
    std::vector<std::string> told;
    told.reserve(sums.size());
    for (const FishSum& sum : sums) told.push_back(one_catch(sum.fish, sum.count, sum.mass));
    return told.empty() ? "a blank" : joined(told, "; ");
}

std::string log_group_text(const LoggedGroup& group) {
    std::string text = log_entry_text(group.entry.what);
    if (!std::holds_alternative<LoggedSession>(group.entry.what)) return text;
    return text + ": " + caught_text(group.belonging);
}

std::string log_kind_text(const LoggedThing& what) {
    constexpr std::array<const char*, 10> kinds{"session", "put-in",   "used", "catch",   "mix",
                                                "soak",    "weighing", "look", "new bag", "taken back"};
    return kinds.at(what.index());
}

}  // namespace baitwright
