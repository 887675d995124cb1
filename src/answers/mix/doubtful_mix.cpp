#include "answers/mix/doubtful_mix.h"

#include <algorithm>
#include <cmath>

#include "bait/learned_hand.h"
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
    (first == MarkOrigin::measured ? all.measured : first == MarkOrigin::from_memory ? all.from_memory : all.other) = 1;
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
    DoubtfulMix doubtful{{}, mix.hand};
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        const SolidPart& part = mix.solids[i];
        if (!takes_water(part.ingredient.kind) || part.prepare == Preparation::soaked) continue;
        doubtful.parts.push_back(doubtful_part(i, part, mix.hand));
    }
    return doubtful;
}

WaterMarks drawn_marks(const DoubtfulPart& part, const MarkFactors& shared, const double* normals) {
    const double bag = drawn_bag(part.moisture, std::exp(part.sigma_moisture * normals[2]));
    const auto drawn = [&](const DoubtfulMark& mark, double normal) {
        return mark.median * shared.of(mark.origin) * std::exp(mark.sigma * normal);
    };
    double absorption = drawn(part.absorption, normals[0]);
    const double second = drawn(part.second, normals[1]);
    if (part.absorption.origin != MarkOrigin::measured)
        absorption = added_water_at_moisture(absorption, part.moisture, bag);
    if (part.slump_measured()) return {std::min(absorption, tightest * second), second};
    return {absorption, absorption + second * (1 - bag) / (1 - part.moisture)};
}

}  // namespace baitwright
