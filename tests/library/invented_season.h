#pragma once

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "answers/learn/learn_from_log.h"
#include "answers/mix/answer_mix.h"
#include "bait/memory_shelf.h"
#include "bait/resolve_mix.h"
#include "quantities/units.h"

/// Invented anglers who write down what they mix: true values are drawn from the spreads that the ingredients state, by
/// the model of docs/method.md, Doubt and What the log teaches, apart from the code that learns.
namespace baitwright::invented {

/// How the season goes.
struct Season {
    std::vector<std::string> mixes;  ///< that they mix, without liquids and films
    double absurd = 0;               ///< share of entries with twice or half the water
    int new_bag_every = 0;           ///< weeks, of each ingredient, one after the other; 0: never
    double within = 0.05;            ///< of the wetness, how closely they read it
};

inline double sigma_of(double spread) {
    return std::sqrt(std::log1p(spread * spread));
}

/// A bag as it truly is, against the library's; and what of it is the kind's.
struct TrueBag {
    double kind_a = 0, kind_g = 0, own_a = 0, own_g = 0, moisture = 0;
};

class Angler {
public:
    Angler(std::uint64_t seed, const Season& season) : random_(seed), season_(season) {
        const double whole = sigma_of(0.12), of_day = sigma_of(0.05);
        hand_ = std::sqrt(whole * whole - of_day * of_day) * normal();
        memory_ = sigma_of(0.09) * normal();
    }

    /// A week further: another day, another mix and feel, perhaps a new bag.
    void next_week(const Shelf& shelf) {
        ++week_;
        day_ = sigma_of(0.05) * normal();
        mix_ = season_.mixes[random_() % season_.mixes.size()];
        const std::vector<Feel> feels = shelf.feels();
        feel_ = feels[random_() % feels.size()];
        if (season_.new_bag_every == 0 || bags_.empty() || week_ % season_.new_bag_every != 0) return;
        auto bag = bags_.begin();
        std::advance(bag, static_cast<std::ptrdiff_t>(random_() % bags_.size()));
        const Ingredient in = shelf.ingredient(bag->first);
        fill(bag->second, in);
        opened_.push_back({bag->first, date()});
    }

    [[nodiscard]] Date date() const { return Date(std::chrono::days(20000 + 7 * week_)); }
    [[nodiscard]] const std::string& mix() const { return mix_; }
    [[nodiscard]] const Feel& feel() const { return feel_; }
    [[nodiscard]] const std::vector<NewBag>& opened() const { return opened_; }

    /// Grams of wetting that a kilo of this week's mix needs at a wetness.
    double needs(const ResolvedMix& mix, double wetness) {
        double wanted = 0;
        for (const SolidPart& part : mix.solids)
            if (takes_water(part.ingredient.kind)) wanted += 1000 * part.share * of_bag(part.ingredient, wetness);
        return wanted;
    }

    /// What they write down of this week's mix; nothing where it is as wet as that without any water.
    std::optional<LogEntry> logged(const Shelf& shelf) {
        const ResolvedMix mix = resolve(shelf.recipe(mix_), shelf);
        double water = needs(mix, feel_.aim + season_.within * normal());
        if (std::uniform_real_distribution<double>()(random_) < season_.absurd) water *= random_() % 2 == 0 ? 2 : 0.5;
        if (water < 10) return std::nullopt;
        LoggedMix entry;
        entry.of = mix_;
        entry.feel = feel_.name;
        entry.wetness = feel_.aim;
        entry.within = season_.within;
        entry.dry = 1.0 * kilogram;
        entry.water = water * gram;
        for (const SolidPart& part : mix.solids)
            if (takes_water(part.ingredient.kind))
                entry.parts.push_back({part.ingredient.name, part.share * 1.0 * kilogram});
        LogEntry made;
        made.id = week_;
        made.on = date();
        made.what = std::move(entry);
        return made;
    }

    /// ln of A as they find it in their bag in the long run.
    double true_log_absorption(const Ingredient& in) {
        const TrueBag& bag = bag_of(in);
        const double drier = (1 - bag.moisture) / (1 - in.moisture.value);
        return std::log(
            (in.absorption.value * std::exp(shared(in.absorption) + bag.kind_a + bag.own_a) + in.moisture.value) *
                drier -
            bag.moisture);
    }

    /// A bag that is so many times the library's, whatever is drawn.
    void put_bag(const Ingredient& in, double times) {
        TrueBag& bag = bags_[in.name];
        fill(bag, in);
        bag.kind_a = std::log(times) - bag.own_a - shared(in.absorption);
    }

private:
    double normal() { return std::normal_distribution<double>()(random_); }

    [[nodiscard]] double shared(const Property<Ratio>& mark) const {
        return hand_ + (from_memory(mark.source) ? memory_ : 0);
    }

    /// Of the stated variance the bag has 6 % of its own, at most half.
    static std::pair<double, double> kind_and_own(double spread) {
        const double all = sigma_of(spread) * sigma_of(spread);
        const double own = std::min(sigma_of(0.06) * sigma_of(0.06), all / 2);
        return {std::sqrt(all - own), std::sqrt(own)};
    }

    void fill(TrueBag& bag, const Ingredient& in) {
        bag.own_a = kind_and_own(in.absorption.spread).second * normal();
        bag.own_g = kind_and_own(in.slump.spread).second * normal();
        bag.moisture = std::min(0.9, in.moisture.value * std::exp(sigma_of(in.moisture.spread) * normal()));
    }

    TrueBag& bag_of(const Ingredient& in) {
        const auto [bag, is_new] = bags_.try_emplace(in.name);
        if (is_new) {
            bag->second.kind_a = kind_and_own(in.absorption.spread).first * normal();
            bag->second.kind_g = kind_and_own(in.slump.spread).first * normal();
            fill(bag->second, in);
        }
        return bag->second;
    }

    double of_bag(const Ingredient& in, double h) {
        const TrueBag& bag = bag_of(in);
        const double a = in.absorption.value * std::exp(day_ + shared(in.absorption) + bag.kind_a + bag.own_a);
        const double g =
            (in.slump.value - in.absorption.value) * std::exp(day_ + shared(in.slump) + bag.kind_g + bag.own_g);
        const double stated = in.moisture.value, drier = (1 - bag.moisture) / (1 - stated);
        return std::min(h, 1.0) * ((a + stated) * drier - bag.moisture) + std::max(h - 1, 0.0) * g * drier;
    }

    std::mt19937_64 random_;
    Season season_;
    double hand_ = 0, memory_ = 0, day_ = 0;
    int week_ = 0;
    std::string mix_;
    Feel feel_;
    std::map<std::string, TrueBag> bags_;
    std::vector<NewBag> opened_;
};

/// The shelf with what was learnt heeded, as `learn --apply` writes it.
inline void put_learnt(const LearnAnswer& answer, const Shelf& library, MemoryShelf& mine) {
    const LearntWater& water = answer.water;
    for (std::size_t i = 0; i < water.bags.size(); ++i) {
        const LearntWater::Bag& bag = water.bags[i];
        if (bag.mixes == 0) continue;
        Ingredient in = library.ingredient(bag.name);
        const auto spread = [&](std::size_t row) { return std::sqrt(std::expm1(water.covariance(row, row))); };
        const double absorption = std::exp(bag.log_absorption);
        in.absorption = {absorption, spread(LearntWater::absorption(i)), {Origin::learned, "a test"}};
        in.slump = {absorption + std::exp(bag.log_gap), spread(LearntWater::gap(i)), {Origin::learned, "a test"}};
        mine.put(in);
    }
    if (water.known()) mine.put(water);
}

/// Whether the water that next week's mix needs lies in the range that `mix` gives, by what was learnt so far.
inline bool is_foretold(const Shelf& library, const LearnAnswer& answer, Angler& angler) {
    MemoryShelf mine(&library);
    put_learnt(answer, library, mine);
    MixRequest request;
    request.target = DryMass{1.0 * kilogram};
    request.feel = angler.feel().name;
    const MixAnswer told = answer_mix(mine, mine.recipe(angler.mix()), request);
    const double needed = angler.needs(resolve(library.recipe(angler.mix()), library), angler.feel().aim);
    const double water = std::max(0.0, needed);
    return water >= told.doubt->water.low.in(gram)-1e-6 && water <= told.doubt->water.high.in(gram) + 1e-6;
}

/// Of how many anglers next week's water lay in the range, after so many logged mixes.
using Covered = std::map<int, int>;

inline Covered covered(const Shelf& library, const Season& season, int anglers, const std::vector<int>& after,
                       std::uint64_t seed) {
    Covered inside;
    for (int i = 0; i < anglers; ++i) {
        Angler angler(seed + static_cast<std::uint64_t>(i), season);
        LearnRequest request;
        for (int week = 0; week <= after.back(); ++week) {
            angler.next_week(library);
            if (std::find(after.begin(), after.end(), week) != after.end()) {
                request.bags = angler.opened();
                inside[week] += is_foretold(library, learn_from_log(library, request), angler);
            }
            if (auto entry = angler.logged(library)) request.log.push_back(*std::move(entry));
        }
    }
    return inside;
}

/// How far the learnt ln A of a bag a quarter thirstier than the library's lies off the truth at the median, after so
/// many mixes of it alone.
inline double median_error(const Shelf& library, const std::string& mix, const Season& season, int anglers, int after,
                           std::uint64_t seed) {
    const Ingredient in = resolve(library.recipe(mix), library).solids.front().ingredient;
    std::vector<double> errors;
    for (int i = 0; i < anglers; ++i) {
        Angler angler(seed + static_cast<std::uint64_t>(i), season);
        angler.put_bag(in, 1.25);
        LearnRequest request;
        for (int week = 0; week < after; ++week) {
            angler.next_week(library);
            if (auto entry = angler.logged(library)) request.log.push_back(*std::move(entry));
        }
        const LearntWater water = learn_from_log(library, request).water;
        errors.push_back(std::abs(water.bags.at(0).log_absorption - angler.true_log_absorption(in)));
    }
    std::nth_element(errors.begin(), errors.begin() + anglers / 2, errors.end());
    return errors[static_cast<std::size_t>(anglers) / 2];
}

}  // namespace baitwright::invented
