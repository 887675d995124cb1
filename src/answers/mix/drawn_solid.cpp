#include "answers/mix/drawn_solid.h"

#include <algorithm>
#include <cmath>

#include "physics/normal_quantile.h"

namespace baitwright {

DoubtfulBody::DoubtfulBody(const Ingredient& ingredient)
    : loose_(ingredient.loose_density.value),
      envelope_(ingredient.envelope_density.value),
      size_(ingredient.particle_size.value),
      sigma_loose_(log_normal_sigma(ingredient.loose_density.spread)),
      sigma_envelope_(log_normal_sigma(ingredient.envelope_density.spread)),
      sigma_size_(log_normal_sigma(ingredient.particle_size.spread)) {}

void DoubtfulBody::draw(SolidNumbers& solid, const double* normals) const {
    constexpr double loosest = 0.98;  // a heap is never as dense as its grains
    solid.envelope = std::min(std::exp(sigma_envelope_ * normals[1]) * envelope_, solid.skeleton);
    solid.loose = std::min(std::exp(sigma_loose_ * normals[0]) * loose_, loosest * solid.envelope);
    solid.size = std::exp(sigma_size_ * normals[2]) * size_;
}

std::vector<DoubtfulBody> doubtful_bodies(const ResolvedMix& mix) {
    std::vector<DoubtfulBody> bodies;
    for (const SolidPart& part : mix.solids) bodies.emplace_back(part.ingredient);
    return bodies;
}

}  // namespace baitwright
