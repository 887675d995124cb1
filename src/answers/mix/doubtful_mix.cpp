#include "answers/mix/doubtful_mix.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/few_normals.h"
#include "bait/learned_hand.h"
#include "bait/own_values.h"
#include "physics/moisture.h"
#include "physics/normal_quantile.h"

namespace baitwright {

namespace {

constexpr double tightest = 0.98;  // A of B, in a draw where B was measured

double square(double x) {
    return x * x;
}

double sigma_of(const Property<Ratio>& mark, MarkOrigin origin) {
    return origin == MarkOrigin::measured ? std::sqrt(variance_beyond_day(mark)) : log_normal_sigma(mark.spread);
}

/// The mark takes part in what was learnt: of a learnt bag by its own row, of others by the hand's and memory's.
void take_part(DoubtfulMark& mark, const LearntWater& learnt, std::optional<std::size_t> row) {
    if (mark.origin == MarkOrigin::measured || (mark.origin == MarkOrigin::learnt && !row)) return;
    if (mark.origin == MarkOrigin::learnt) {
        mark.sigma = 0;
        mark.learnt = row_of(learnt, *row);
        return;
    }
    mark.learnt = row_of(learnt, LearntWater::hand);
    if (mark.origin == MarkOrigin::other) return;
    const std::vector<double> memory = row_of(learnt, LearntWater::memory);
    for (std::size_t k = 0; k < memory.size(); ++k) mark.learnt[k] += memory[k];
}

/// Takes away the last normals, that no mark is moved by, and gives how many are left.
std::size_t trimmed(std::vector<DoubtfulPart>& parts) {
    std::size_t most = 0;
    for (DoubtfulPart& part : parts)
        for (DoubtfulMark* mark : {&part.absorption, &part.second}) {
            while (!mark->learnt.empty() && mark->learnt.back() == 0) mark->learnt.pop_back();
            most = std::max(most, mark->learnt.size());
        }
    return most;
}

DoubtfulPart doubtful_part(std::size_t solid, const SolidPart& part, const Hand& hand) {
    const Ingredient& in = part.ingredient;
    const WaterMarks marks = known_marks(part, hand);
    const MarkOrigin absorption = absorption_origin(part), slump = slump_origin(part);
    const double second =
        slump == MarkOrigin::measured ? double(marks.slump) : double(marks.slump) - double(marks.absorption);
    return {solid,
            part.share,
            {marks.absorption, sigma_of(in.absorption, absorption), absorption},
            {second, sigma_of(in.slump, slump), slump},
            in.moisture.value,
            log_normal_sigma(in.moisture.spread)};
}

DoubtfulMix doubtful_parts(const ResolvedMix& mix) {
    DoubtfulMix doubtful{{}, mix.hand};
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        const SolidPart& part = mix.solids[i];
        if (!takes_water(part.ingredient.kind) || part.prepare == Preparation::soaked) continue;
        doubtful.parts.push_back(doubtful_part(i, part, mix.hand));
    }
    return doubtful;
}

WaterMarks marks_in_bag(const DoubtfulPart& part, double absorption, double second, double bag) {
    if (!is_of_the_bag(part.absorption.origin)) absorption = added_water_at_moisture(absorption, part.moisture, bag);
    if (part.slump_measured()) return {std::min(absorption, tightest * second), second};
    if (is_of_the_bag(part.second.origin)) return {absorption, absorption + second};
    return {absorption, absorption + second * (1 - bag) / (1 - part.moisture)};
}

}  // namespace

SharedDoubt::SharedDoubt(const Hand& hand)
    : sigma_first_(log_normal_sigma(day_spread)), hand_(std::sqrt(hand.hand_variance)) {
    const double slope = hand.covariance / hand_;
    memory_ = hand_ + slope;
    memory_beside_ = std::sqrt(std::max(0.0, hand.memory_variance - square(slope)));
}

SharedDoubt::SharedDoubt(const Hand& hand, const std::vector<DoubtfulPart>& parts) : SharedDoubt(hand) {
    if (parts.empty()) return;
    const MarkOrigin first = parts.front().absorption.origin;
    for (const DoubtfulPart& part : parts)
        if (part.absorption.origin != first || part.second.origin != first) return;
    MarkFactors all{0, 0, 0};
    (is_of_the_bag(first) ? all.measured : first == MarkOrigin::from_memory ? all.from_memory : all.other) = 1;
    sigma_first_ = std::sqrt(variance_of(all));
    is_one_ = true;
    hand_ = memory_ = memory_beside_ = 0;
}

MarkFactors SharedDoubt::beside_first(const double* normals) const {
    if (is_one_) return {};
    return {1, std::exp(memory_ * normals[0] + memory_beside_ * normals[1]), std::exp(hand_ * normals[0])};
}

MarkFactors SharedDoubt::draw(const double* normals) const {
    const MarkFactors beside = beside_first(normals + 1);
    const double first = std::exp(sigma_first_ * normals[0]);
    return {first * beside.measured, first * beside.from_memory, first * beside.other};
}

double SharedDoubt::variance_of(const MarkFactors& sums) const {
    return square(sigma_first_ * (sums.measured + sums.from_memory + sums.other)) +
           square(hand_ * sums.other + memory_ * sums.from_memory) + square(memory_beside_ * sums.from_memory);
}

DoubtfulMix doubtful_mix(const ResolvedMix& mix) {
    if (mix.learnt) return doubtful_mix(mix, few_normals(*mix.learnt));
    return doubtful_parts(mix);
}

DoubtfulMix doubtful_mix(const ResolvedMix& mix, const LearntWater& few_normals) {
    DoubtfulMix doubtful = doubtful_parts(mix);
    for (DoubtfulPart& part : doubtful.parts) {
        const auto place = place_of_bag(few_normals, mix.solids[part.solid].ingredient.name);
        using Row = std::optional<std::size_t>;
        take_part(part.absorption, few_normals, place ? Row(LearntWater::absorption(*place)) : std::nullopt);
        take_part(part.second, few_normals, place ? Row(LearntWater::gap(*place)) : std::nullopt);
    }
    doubtful.learnt_normals = trimmed(doubtful.parts);
    return doubtful;
}

WaterMarks drawn_marks(const DoubtfulPart& part, const MarkFactors& shared, const double* normals) {
    const auto drawn = [&](const DoubtfulMark& mark, double normal) {
        return mark.median * shared.of(mark.origin) * std::exp(mark.sigma * normal);
    };
    return marks_in_bag(part, drawn(part.absorption, normals[0]), drawn(part.second, normals[1]),
                        drawn_bag(part.moisture, std::exp(part.sigma_moisture * normals[2])));
}

WaterMarks drawn_by_learnt(const DoubtfulPart& part, double day, const double* learnt, const double* normals) {
    const auto drawn = [&](const DoubtfulMark& mark, double normal) {
        return mark.median * day * std::exp(mark.log_factor(learnt, normal));
    };
    return marks_in_bag(part, drawn(part.absorption, normals[0]), drawn(part.second, normals[1]),
                        drawn_bag(part.moisture, std::exp(part.sigma_moisture * normals[2])));
}

MarkDraws::MarkDraws(const DoubtfulMix& mix)
    : mix_(mix),
      shared_(mix.hand, mix.parts),
      first_(1 + (mix.learnt_normals ? *mix.learnt_normals : shared_.normals_beside_first())) {}

void MarkDraws::draw(const double* normals, MixNumbers& numbers) const {
    const MarkFactors factors = mix_.learnt_normals ? MarkFactors{} : shared_.draw(normals);
    const double day = std::exp(log_normal_sigma(day_spread) * normals[0]);
    for (std::size_t i = 0; i < mix_.parts.size(); ++i) {
        const DoubtfulPart& part = mix_.parts[i];
        const double* own = normals + first_ + 3 * i;
        numbers.solids[part.solid].marks =
            mix_.learnt_normals ? drawn_by_learnt(part, day, normals + 1, own) : drawn_marks(part, factors, own);
    }
}

}  // namespace baitwright
