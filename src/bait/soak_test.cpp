#include "bait/soak_test.h"

#include "bait/soaked_batch.h"
#include "physics/diffusion_in_sphere.h"
#include "physics/soaked_grain.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

double gain_inside(Mass dry, Mass drained) {
    return (drained - dry) / dry - soaked_film;
}

}  // namespace

Ratio capacity_of_test(Mass dry, Mass soaked_through) {
    const double capacity = gain_inside(dry, soaked_through);
    if (!(capacity > 0 && capacity <= 10))
        throw InputError("out-of-range",
                         "soaked through, they must weigh more than dry, and not above ten times as much",
                         "weigh the same pellets dry, and drained after a night under water, as in \"100g 185g\"");
    return capacity;
}

Diffusivity diffusivity_of_test(const Ingredient& pellet, Ratio capacity, const SoakTest& test) {
    const double uptake = gain_inside(test.dry, test.drained) / capacity;
    if (!(uptake > 0))
        throw InputError("out-of-range", "by those weights they took up no water",
                         "weigh dry first, then drained: \"100g 10min 142g\"");
    if (!(uptake < 0.99))
        throw InputError(
            "out-of-range", "by those weights they were soaked through, which tells no time",
            "soak them for a shorter time, or weigh them after a night too: --soaked-through \"100g 185g\"");
    const Area diffused = diffused_for_uptake({pellet.diameter.value, pellet.length.value}, uptake);
    return diffused / test.under_water / arrhenius_factor(pellet.activation_energy.value, test.water);
}

}  // namespace baitwright
