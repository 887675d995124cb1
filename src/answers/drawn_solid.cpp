#include "answers/drawn_solid.h"

#include <algorithm>
#include <cmath>

#include "physics/normal_quantile.h"

namespace baitwright {

WaterMarks drawn_marks(const DoubtfulPart& part, double hand, const double* normals) {
    return marks_of_draw(part, hand * std::exp(part.sigma_absorption * normals[0]),
                         hand * std::exp(part.sigma_gap * normals[1]), std::exp(part.sigma_moisture * normals[2]));
}

void draw_body(SolidNumbers& solid, const Ingredient& ingredient, const double* normals) {
    const auto drawn = [](auto property, double normal) {
        return std::exp(log_normal_sigma(property.spread) * normal) * property.value;
    };
    constexpr double loosest = 0.98;  // a heap is never as dense as its grains
    solid.envelope = std::min(drawn(ingredient.envelope_density, normals[1]), solid.skeleton);
    solid.loose = std::min(drawn(ingredient.loose_density, normals[0]), loosest * solid.envelope);
    solid.size = drawn(ingredient.particle_size, normals[2]);
}

}  // namespace baitwright
