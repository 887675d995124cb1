#include "answers/learn/water_log.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <unordered_map>

#include "bait/learned_hand.h"
#include "bait/wetness.h"
#include "physics/normal_quantile.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double scale_and_jug = 0.01;
constexpr double least_wetness = 0.05;  // drier, a feel says nothing of the water
constexpr double least_told = 0.02;     // g/g: of a mark below it nobody can tell how much it is off

using Mark = WaterSeen::Term::Mark;

double square_of(double x) {
    return x * x;
}

/// The ingredients of the logged mixes, and those that were measured; by name.
class IngredientsOfLog {
public:
    IngredientsOfLog(const Shelf& shelf, const LearnRequest& request) : shelf_(shelf), request_(request) {}

    /// The parts of a mix; false where one is not in the library.
    bool take(const LoggedMix& mix, Date on) {
        for (const WeighedPart& part : mix.parts)
            if (!known(part.of)) return false;
        if (is_pellets_alone(mix)) {
            soaked_.insert(mix.of);
            return false;
        }
        for (const WeighedPart& part : mix.parts) {
            InLog& in = of(part.of);
            in.mixed_on.insert(on);
            in.bags.moisture_told = in.bags.moisture_told || part.moisture.has_value();
        }
        return true;
    }

    /// Those that no mix held, but that were measured: they tell of the hand.
    void take_measured() {
        for (const std::string& name : shelf_.ingredient_names()) {
            if (found_.count(folded_name(name)) > 0) continue;
            auto in = shelf_.find_ingredient(name);
            if (in && has_measured_mark(*in) && takes_water(in->kind)) found_[folded_name(name)] = looked_up(name);
        }
    }

    std::vector<OpenedBags> bags_by_name(WaterLog& log) {
        tell_opened();
        std::vector<OpenedBags> all;
        std::map<std::string, std::size_t> place;
        for (auto& [key, in] : found_) {
            if (!in) continue;
            place[key] = all.size();
            keep_mixed(*in);
            all.push_back(in->bags);
        }
        for (const auto& [said, key] : said_)
            if (const auto at = place.find(key); at != place.end()) log.ingredients[said] = at->second;
        return all;
    }

    [[nodiscard]] const std::set<std::string>& unknown() const { return unknown_; }
    [[nodiscard]] const std::set<std::string>& soaked() const { return soaked_; }

private:
    struct InLog {
        OpenedBags bags;
        std::set<Date> mixed_on;
    };

    InLog& of(const std::string& name) { return *found_[said_.at(name)]; }

    /// They are soaked, not wetted to a feel, whatever was felt of them (`bait/pellets_alone.h`).
    bool is_pellets_alone(const LoggedMix& mix) {
        Mass pellets;
        for (const WeighedPart& part : mix.parts)
            if (of(part.of).bags.now.kind == IngredientKind::pellet) pellets += part.mass;
        return pellets >= 0.999 * *mix.dry;  // all but rounding
    }

    bool known(const std::string& name) {
        auto [said, is_new] = said_.try_emplace(name);
        if (is_new) {
            said->second = folded_name(name);
            if (found_.count(said->second) == 0) found_[said->second] = looked_up(name);
        }
        const bool is_known = found_.at(said->second).has_value();
        if (!is_known) unknown_.insert(name);
        return is_known;
    }

    [[nodiscard]] std::optional<InLog> looked_up(const std::string& name) const {
        auto now = shelf_.find_ingredient(name);
        if (!now) return std::nullopt;
        InLog in{{*now, *now, false, {}, false}, {}};
        const auto is_own = [](const Property<Ratio>& mark) {
            return mark.source.origin == Origin::measured || mark.source.origin == Origin::learned;
        };
        if (!is_own(now->absorption) && !is_own(now->slump)) return in;
        if (auto usual = shelf_.find_usual(name)) {
            in.bags.before = *std::move(usual);
            in.bags.usual_known = true;
        }
        return in;
    }

    void tell_opened() {
        const auto open = [&](const std::string& name, Date on) {
            const auto at = found_.find(folded_name(name));
            if (at != found_.end() && at->second && (request_.today == Date{} || on <= request_.today))
                at->second->bags.opened.push_back(on);
        };
        for (const NewBag& bag : request_.bags) open(bag.of, bag.on);
        for (const LogEntry& entry : request_.log)
            if (const auto* bag = std::get_if<LoggedBag>(&entry.what)) open(bag->of, entry.on);
    }

    /// Bags that no mix held tell nothing and are not told of, but for the latest.
    static void keep_mixed(InLog& in) {
        std::vector<Date>& opened = in.bags.opened;
        std::sort(opened.begin(), opened.end());
        opened.erase(std::unique(opened.begin(), opened.end()), opened.end());
        std::vector<Date> kept;
        for (std::size_t i = 0; i < opened.size(); ++i) {
            const auto first = i == 0 ? in.mixed_on.begin() : in.mixed_on.lower_bound(opened[i - 1]);
            const bool one_before = first != in.mixed_on.end() && *first < opened[i];
            if (one_before)
                kept.push_back(opened[i]);
            else if (!kept.empty())
                kept.back() = opened[i];
        }
        opened = std::move(kept);
    }

    const Shelf& shelf_;
    const LearnRequest& request_;
    std::unordered_map<std::string, std::string> said_;  // as the log writes it: its key
    std::map<std::string, std::optional<InLog>> found_;  // by key; nothing: not in the library
    std::set<std::string> unknown_, soaked_;
};

/// So that the order in which entries were written down does not matter, not in the last bit.
bool comes_before(const LogEntry& a, const LogEntry& b) {
    const auto &x = std::get<LoggedMix>(a.what), &y = std::get<LoggedMix>(b.what);
    const auto numbers = [](const LogEntry& entry, const LoggedMix& mix) {
        return std::make_tuple(entry.on, mix.water->si(), mix.dry->si(), double(*mix.wetness), double(mix.within),
                               mix.wetting.si(), mix.parts.size(), entry.believed);
    };
    const auto of_a = numbers(a, x), of_b = numbers(b, y);
    if (of_a != of_b) return of_a < of_b;
    if (x.of != y.of) return x.of < y.of;
    for (std::size_t i = 0; i < x.parts.size(); ++i) {
        const WeighedPart &p = x.parts[i], &q = y.parts[i];
        if (p.of != q.of) return p.of < q.of;
        if (p.mass != q.mass) return p.mass < q.mass;
        if (p.moisture != q.moisture) return p.moisture.value_or(0.0) < q.moisture.value_or(0.0);
    }
    return a.id < b.id;
}

WaterSeen seen_mix(const WaterLog& log, const LogEntry& entry, std::size_t place) {
    const auto& mix = std::get<LoggedMix>(entry.what);
    WaterSeen seen;
    seen.terms = water_terms(log, mix, entry.on);
    seen.log_seen = std::log((*mix.water + mix.wetting).in(gram));
    seen.sigma = sigma_of_reading(seen.terms, mix);
    seen.entry = place;
    seen.is_sure = entry.believed;
    return seen;
}

void add_measured(WaterLog& log, const OpenedBags& in, std::size_t ingredient) {
    log.measured_absorption.push_back(in.now.absorption.source.origin == Origin::measured);
    log.measured_slump.push_back(in.now.slump.source.origin == Origin::measured);
    const WaterUnknowns& unknowns = log.problem.unknowns;
    const std::size_t latest = bag_on(unknowns, ingredient, std::nullopt);
    const BagOfWater& bag = unknowns.bags[latest];
    const auto add = [&](const Property<Ratio>& mark, double library, std::vector<WaterSeen::Term> terms) {
        if (!(std::min<double>(mark.value, library) > least_told)) return;
        // Made on one day, it holds that day's hand: the whole of its spread, not what goes beyond a day's.
        const double sigma = std::max(scale_and_jug, log_normal_sigma(mark.spread));
        log.problem.seen.push_back({std::move(terms), std::log(double(mark.value)), sigma, {}, {}, true});
    };
    if (!in.usual_known || !bag.takes_water()) return;
    const WaterSeen::Term absorption{bag.absorption, bag.on_absorption, latest, Mark::absorption},
        gap{bag.gap, bag.on_gap, latest, Mark::gap};
    if (log.measured_absorption.back()) add(in.now.absorption, bag.absorption, {absorption});
    if (log.measured_slump.back()) add(in.now.slump, bag.absorption + bag.gap, {absorption, gap});
}

void warn_of_left_out(const std::set<std::string>& unknown, const std::set<std::string>& soaked, WaterLog& log) {
    if (!unknown.empty())
        log.warnings.push_back({"unknown-ingredient", "the library no longer has " + *unknown.begin() +
                                                          (unknown.size() > 1 ? " and others" : "") +
                                                          ": the mixes with it teach nothing"});
    if (!soaked.empty())
        log.warnings.push_back({"soaked-alone", "the mixes of " + listed({soaked.begin(), soaked.end()}) +
                                                    " teach nothing: pellets alone are soaked, not wetted to a feel; "
                                                    "a weighed soak does"});
}

void number_days(const std::vector<LogEntry>& entries, WaterProblem& problem) {
    std::optional<Date> last;
    for (WaterSeen& seen : problem.seen) {
        if (!seen.entry) continue;
        const Date on = entries[*seen.entry].on;
        if (last != on) ++problem.days;
        last = on;
        seen.day = problem.days - 1;
    }
}

}  // namespace

const LoggedMix* observed_mix(const LogEntry& entry) {
    const auto* mix = std::get_if<LoggedMix>(&entry.what);
    const bool is_full = mix && mix->wetness && *mix->wetness > least_wetness && mix->dry && mix->water &&
                         *mix->water + mix->wetting > Mass{} && !mix->parts.empty();
    return is_full ? mix : nullptr;
}

std::size_t bag_on(const WaterUnknowns& unknowns, std::size_t ingredient, std::optional<Date> on) {
    const auto [from, to] = unknowns.bags_of[ingredient];
    std::size_t bag = to - 1;
    while (on && bag > from && unknowns.bags[bag].since > *on) --bag;
    return bag;
}

std::vector<WaterSeen::Term> water_terms(const WaterLog& log, const LoggedMix& mix, std::optional<Date> on) {
    std::vector<WaterSeen::Term> terms;
    const double to_hold = std::min<double>(*mix.wetness, 1), beyond = std::max(0.0, double(*mix.wetness) - 1);
    const WaterUnknowns& unknowns = log.problem.unknowns;
    for (const WeighedPart& part : mix.parts) {
        const std::size_t place = bag_on(unknowns, log.ingredients.at(part.of), on);
        const BagOfWater& bag = unknowns.bags[place];
        WaterMarks marks{bag.absorption, bag.absorption + bag.gap};
        if (part.moisture) marks = marks_at_moisture(marks, bag.moisture, *part.moisture);
        const auto add = [&](double grams, std::size_t form, Mark mark) {
            if (grams > 0) terms.push_back({grams, form, place, mark});
        };
        const double grams = part.mass.in(gram);
        add(grams * to_hold * marks.absorption, part.moisture ? bag.dry_absorption : bag.on_absorption,
            Mark::absorption);
        add(grams * beyond * (marks.slump - marks.absorption), part.moisture ? bag.dry_gap : bag.on_gap, Mark::gap);
    }
    return terms;
}

double sigma_of_reading(const std::vector<WaterSeen::Term>& terms, const LoggedMix& mix) {
    const double h = *mix.wetness;
    double all = 0, beyond = 0;
    for (const WaterSeen::Term& term : terms) {
        all += term.weight;
        if (term.mark == Mark::gap) beyond += term.weight;
    }
    const double slope = h > 1 ? beyond / (h - 1) / all : 1 / h;  // of ln w(h)
    return std::sqrt(square_of(mix.within * slope) + square_of(scale_and_jug));
}

WaterLog water_log(const Shelf& shelf, const LearnRequest& request) {
    WaterLog log;
    IngredientsOfLog ingredients(shelf, request);
    std::vector<std::size_t> mixes;
    for (std::size_t i = 0; i < request.log.size(); ++i) {
        const LoggedMix* mix = observed_mix(request.log[i]);
        if (mix && ingredients.take(*mix, request.log[i].on)) mixes.push_back(i);
    }
    log.has_mixes = !mixes.empty();
    warn_of_left_out(ingredients.unknown(), ingredients.soaked(), log);
    if (!log.has_mixes) return log;
    ingredients.take_measured();
    const std::vector<OpenedBags> bags = ingredients.bags_by_name(log);
    log.problem.unknowns = water_unknowns(bags);
    for (std::size_t i = 0; i < bags.size(); ++i) add_measured(log, bags[i], i);
    std::sort(mixes.begin(), mixes.end(),
              [&](std::size_t a, std::size_t b) { return comes_before(request.log[a], request.log[b]); });
    for (const std::size_t place : mixes) {
        WaterSeen seen = seen_mix(log, request.log[place], place);
        if (!seen.terms.empty()) log.problem.seen.push_back(std::move(seen));
    }
    number_days(request.log, log.problem);
    return log;
}

}  // namespace baitwright
