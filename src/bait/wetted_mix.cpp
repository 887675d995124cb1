#include "bait/wetted_mix.h"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>
#include <cmath>

#include "bait/soaked_batch.h"
#include "physics/packing.h"
#include "physics/piecewise_linear.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr SpecificVolume water_volume = 1.0 * millilitre_per_gram;  // per gram; within 0.2 % from 0 to 20 degC
constexpr double densest_fill = 0.97;                               // the last air is never squeezed out by hand

using PackedClasses = boost::container::small_vector<PackedClass, 12>;

/// Sums over the additives of one coefficient, plain and weighted by their wetting.
struct AdditiveSums {
    double mass_fixed = 0, mass_by_water = 0, mass_by_wet = 0;
    double wetting_fixed = 0, wetting_by_water = 0, wetting_by_wet = 0;
};

AdditiveSums sums_of(const MixNumbers& mix) {
    AdditiveSums s;
    for (const AdditiveNumbers& a : mix.additives) {
        s.mass_fixed += a.fixed;
        s.mass_by_water += a.by_water;
        s.mass_by_wet += a.by_wet;
        s.wetting_fixed += a.wetting * a.fixed;
        s.wetting_by_water += a.wetting * a.by_water;
        s.wetting_by_wet += a.wetting * a.by_wet;
    }
    return s;
}

struct OwnLoad {
    double mass = 0, films = 0;
};

/// Per gram dry: the solids with the water they bring inside and on their surface.
OwnLoad own_load(std::span<const SolidNumbers> solids) {
    OwnLoad load;
    for (const SolidNumbers& part : solids) {
        load.mass += part.share * (1 + part.carried + part.film);
        load.films += part.share * part.film;
    }
    return load;
}

SpecificVolume dry_grain(const SolidNumbers& part) {
    return 1.0 / part.envelope;
}

SpecificVolume swollen_grain(const SolidNumbers& part, Ratio inside_water) {
    return swollen_grain(part.envelope, part.skeleton, inside_water);
}

Ratio inside_water(const SolidNumbers& part, Ratio wetness) {
    if (!part.takes_water) return part.carried;
    // A bag damper than its absorption allows has nothing more to take, and cannot shrink.
    return std::max(0.0, part.inside * part.marks.absorption * std::min<double>(wetness, 1.0));
}

PackedClass packed(const SolidNumbers& part, Ratio mass, SpecificVolume grain) {
    const double growth = std::cbrt(grain / dry_grain(part));
    return {(mass * grain).in(millilitre_per_gram), part.loose / part.envelope, growth * part.size};
}

}  // namespace

SpecificVolume pore_air(const SolidNumbers& solid, Ratio inside) {
    return std::max(SpecificVolume{}, 1.0 / solid.envelope - 1.0 / solid.skeleton - inside * water_volume);
}

MixWaterNeed water_need(std::span<const SolidNumbers> solids) {
    double share = 0, absorption = 0, slump = 0;
    for (const SolidNumbers& part : solids) {
        if (!part.takes_water) continue;
        share += part.share;
        absorption += part.share * part.marks.absorption;
        slump += part.share * part.marks.slump;
    }
    if (share <= 0) return {{0.0, 0.0}, 0.0};
    return {{absorption / share, slump / share}, share};
}

WettedMix wet(const MixNumbers& mix, Ratio wetness, Ratio already_added) {
    WettedMix result;
    result.need = water_need(mix.solids);
    const AdditiveSums s = sums_of(mix);
    const OwnLoad own = own_load(mix.solids);
    const double wanted = result.need.wetted_share * added_water_ratio(result.need.marks, wetness);
    // Two linear equations in the water W and the wet mass T; `in_tub` is T's part that does not hang on W.
    const double wet_part = 1 - s.mass_by_wet;
    const double in_tub = own.mass + s.mass_fixed + (1 + s.mass_by_water) * already_added;
    const double present_without_water =
        own.films + already_added * (1 + s.wetting_by_water) + s.wetting_fixed + s.wetting_by_wet * in_tub / wet_part;
    const double each_gram_wets = 1 + s.wetting_by_water + s.wetting_by_wet * (1 + s.mass_by_water) / wet_part;
    const double water = (wanted - present_without_water) / each_gram_wets;
    result.too_wet = result.need.wetted_share > 0 && water < -1e-12;
    result.water = std::max(0.0, water);
    result.wet_mass = (in_tub + (1 + s.mass_by_water) * result.water) / wet_part;
    result.wetting_present = present_without_water + (each_gram_wets - 1) * result.water;
    result.wetness = wetness;
    if (result.too_wet && result.need.wetted_share > 0)
        result.wetness = wetness_at(result.need.marks, result.wetting_present / result.need.wetted_share);
    for (const AdditiveNumbers& a : mix.additives)
        result.additives.emplace_back(a.fixed + a.by_water * (result.water + already_added) +
                                      a.by_wet * result.wet_mass);
    return result;
}

SpecificVolume dry_volume(const MixNumbers& mix) {
    PackedClasses classes;
    SpecificVolume grains;
    for (const SolidNumbers& part : mix.solids) {
        classes.push_back(packed(part, part.share, dry_grain(part)));
        grains += part.share * dry_grain(part);
    }
    return grains / packing_density({classes.data(), classes.size()});
}

std::vector<WetGrain> wet_grains(const MixNumbers& mix, const WettedMix& wetted) {
    std::vector<WetGrain> grains;
    for (const SolidNumbers& part : mix.solids) {
        const Ratio inside = inside_water(part, wetted.wetness);
        const SpecificVolume swollen = swollen_grain(part, inside);
        grains.push_back({part.share, swollen, std::cbrt(swollen / dry_grain(part)), inside});
    }
    return grains;
}

WetPacking pack(const MixNumbers& mix, const WettedMix& wetted) {
    PackedClasses classes;
    WetPacking result;
    result.cup_weight = mix.cup_weight;
    SpecificVolume soft;
    double drunk = 0, solids_mass = 0;
    for (const SolidNumbers& part : mix.solids) {
        const Ratio inside = inside_water(part, wetted.wetness);
        if (part.takes_water) drunk += part.share * inside;
        solids_mass += part.share * (1 + part.carried + part.film);
        classes.push_back(packed(part, part.share, swollen_grain(part, inside)));
        result.solids += part.share * swollen_grain(part, inside);
        if (part.film > 0) soft += part.share * swollen_grain(part, inside);
        if (part.springy) result.pressed_out += (1 - left_by_a_squeeze) * part.share * pore_air(part, inside);
    }
    double free_water = wetted.wet_mass - solids_mass + own_load(mix.solids).films - drunk;
    for (std::size_t i = 0; i < mix.additives.size(); ++i) {
        const AdditiveNumbers& additive = mix.additives[i];
        const Ratio mass = wetted.additives[i];
        free_water -= mass;
        if (additive.liquid) {
            result.between += mass / additive.density;
        } else {
            classes.push_back(packed(additive.as_solid, mass, dry_grain(additive.as_solid)));
            result.solids += mass * dry_grain(additive.as_solid);
        }
    }
    result.between = std::max(SpecificVolume{}, result.between + free_water * water_volume);
    result.packing = packing_density({classes.data(), classes.size()});
    if (result.solids > SpecificVolume{}) result.soft = soft / result.solids;
    return result;
}

SpecificVolume solids_in(const WetPacking& packing, MixState state) {
    return state == MixState::squeezed ? packing.solids - packing.pressed_out : packing.solids;
}

SpecificVolume wet_volume(const WetPacking& packing, MixState state, Ratio wetness) {
    constexpr std::array<Knot, 4> loosened{{{0, 0}, {0.6, 0.18}, {1.0, 0.18}, {1.6, 0}}};
    constexpr std::array<Knot, 4> pressed{{{0, 0.60}, {0.7, 0.72}, {1.2, 0.80}, {2, 0.84}}};
    const double poured = packing.packing;
    const std::array<Knot, 3> filled{{{0, poured}, {1, 0.60}, {2, 0.74}}};
    double density = poured * (1 - piecewise_linear(loosened, wetness));
    if (state == MixState::cupped) density = std::max(poured, piecewise_linear(filled, wetness));
    if (state == MixState::squeezed) {
        density = std::max(poured, piecewise_linear(pressed, wetness));
        density += packing.soft * std::max(0.0, pressed_pellets - density);
    }
    const SpecificVolume solids = solids_in(packing, state);
    const SpecificVolume volume = std::max(solids / density, (solids + packing.between) / densest_fill);
    return state == MixState::cupped ? volume / packing.cup_weight : volume;
}

Ratio saturation(const WetPacking& packing, SpecificVolume volume) {
    const SpecificVolume pores = volume - packing.solids;
    return pores > SpecificVolume{} ? std::min<double>(1.0, packing.between / pores) : 1.0;
}

}  // namespace baitwright
