#include "bait/log_limits.h"

#include "bait/strategy_limits.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time longest_logged = 72.0 * hour, earliest_moment = -24.0 * hour;
constexpr Length widest_carpet = 20.0 * metre;
constexpr int most_anglers = 1000, most_fish_logged = 100000;
constexpr double most_water = 3, most_taken_up = 6;  // times the dry mass
constexpr double driest_logged = 0.05, wettest_logged = 3, dampest_bag = 0.9;
constexpr Mass least_mix = 1.0 * gram;
constexpr Density lightest = 50.0 * gram_per_litre, heaviest = 3000.0 * gram_per_litre;

class LogFaults {
public:
    void operator()(const LoggedSession& session) {
        require(session.length >= Time{} && session.length <= longest_logged, "length",
                "a session lasts 72 hours at most here", "check the unit, as in 5h");
        require(session.anglers >= 1 && session.anglers <= most_anglers, "anglers",
                "the anglers must be a whole number from 1 to 1000", "count who fed and caught what is told");
        if (session.water) water_temperature(*session.water);
    }
    void operator()(const LoggedPutIn& put_in) { moment(put_in.at); }
    void operator()(const LoggedUse&) {}
    void operator()(const LoggedCatch& caught) {
        moment(caught.at);
        require(caught.count >= 0 && caught.count <= most_fish_logged, "count",
                "the fish must be a whole number from 0 to 100000", "leave it out where they were not counted");
    }
    void operator()(const LoggedMix& mix) {
        if (mix.dry && mix.water)
            require(mix.water->si() <= most_water * mix.dry->si(), "water",
                    "that is more than three times the dry mass in water",
                    "check the units, as in 1 kg dry and 720 ml of water");
        if (mix.wetness)
            require(*mix.wetness >= driest_logged && *mix.wetness <= wettest_logged, "wetness",
                    "a wetness must be from 0.05, hardly damp, to 3, soup", "see: baitwright help wetness");
        require(!mix.dry || *mix.dry >= least_mix, "dry", "a mix weighs 1 g dry at the least here",
                "check the unit, as in 1 kg");
        Mass parts;
        for (const WeighedPart& part : mix.parts) parts += part.mass;
        require(!mix.dry || parts <= 1.001 * *mix.dry, "part", "its parts weigh more than all of it did dry",
                "change dry and the parts together, or leave the parts out: the recipe tells them");
        for (const WeighedPart& part : mix.parts)
            if (part.moisture)
                require(*part.moisture >= 0 && *part.moisture <= dampest_bag, "part",
                        "the moisture of a bag must be from 0 to 90 %", "as in 9 %");
    }
    void operator()(const LoggedSoak& soak) {
        const double times = soak.drained.si() / soak.dry.si();
        require(times > 1, "drained", "drained they weigh no more than they did dry",
                "weigh them dry, then again when they have drained, as in 100 g and 138 g");
        require(times <= most_taken_up, "drained", "drained they weigh more than six times what they did dry",
                "weigh them dry, then again when they have drained, as in 100 g and 138 g");
        require(soak.under_water >= 1.0 * second && soak.under_water <= longest_logged, "under_water",
                "a soak takes from 1 s to 72 h here", "check the unit, as in 6 min");
        water_temperature(soak.water);
    }
    void operator()(const LoggedWeight& weight) {
        const Density density = weight.mass / weight.vessel;
        require(density >= lightest && density <= heaviest, "weighs",
                "no bait weighs less than 50 g or more than 3 kg a litre", "weigh what is in the vessel, without it");
    }
    void operator()(const LoggedLook& look) {
        require(look.holds || look.breaks_at || look.carpet, "of", "nothing was seen of it",
                "say how long it held, how deep it broke or how wide it lay");
        require(look.depth >= Length{} && look.depth <= strategy_limits::deepest, "depth",
                "the water must be from 0 to 100 m deep", "check the unit, as in 2 m");
        require(!look.holds || *look.holds <= strategy_limits::longest_gap, "hold",
                "it is watched for 24 hours at most", "check the unit, as in 40 s");
        require(!look.breaks_at || look.depth <= Length{} || *look.breaks_at <= look.depth, "breaks_at",
                "it broke deeper than the water is", "give how deep it broke, at most the depth, as in 0.6 m of 2 m");
        require(!look.carpet || *look.carpet <= widest_carpet, "carpet_seen", "that is wider than 20 m",
                "check the unit, as in 1.1 m");
        form(look.form);
    }
    void operator()(const LoggedBag&) {}
    void operator()(const LogUndone&) {}

    std::vector<Fault> faults;

private:
    void require(bool fits, const char* key, const char* message, const char* hint) {
        if (!fits) faults.push_back({"out-of-range", message, hint, key});
    }
    void water_temperature(Temperature water) {
        require(water >= Temperature::from_celsius(strategy_limits::coldest_celsius) &&
                    water <= Temperature::from_celsius(strategy_limits::warmest_celsius),
                "water_temperature", "the water must be from 0 to 40 degC", "check the unit, as in 12 degC");
    }
    void moment(const std::optional<Time>& at) {
        require(!at || (*at >= earliest_moment && *at <= longest_logged), "at",
                "that is more than 24 hours before the start, or 72 hours after it", "check the unit, as in 75 min");
    }
    void form(const std::variant<Volume, Length>& form) {
        using namespace strategy_limits;
        if (const auto* cup = std::get_if<Volume>(&form))
            require(*cup >= smallest_vessel && *cup <= largest_vessel, "cup", "a cup holds from 0.5 ml to 20 l",
                    "check the unit, as in 250 ml");
        if (const auto* ball = std::get_if<Length>(&form))
            require(*ball >= smallest_ball && *ball <= largest_ball, "ball", "a ball is from 5 to 200 mm across",
                    "check the unit, as in 55 mm");
    }
};

}  // namespace

std::vector<Fault> log_faults(const LoggedThing& what) {
    LogFaults faults;
    std::visit(faults, what);
    return std::move(faults.faults);
}

}  // namespace baitwright
