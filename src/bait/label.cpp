#include "bait/label.h"

#include "bait/amount.h"
#include "quantities/units.h"

namespace baitwright {

Mass dosed_mass(const DoseRate& rate, const Ingredient& additive, const DoseGround& ground) {
    const Mass each = mass_of_amount(rate.each, additive);
    switch (rate.basis) {
        case DoseBasis::per_kg_wet:
            return each * (ground.wet / (1.0 * kilogram));
        case DoseBasis::per_litre_water:
            return each * (ground.water / (1.0 * kilogram));
        case DoseBasis::per_pint_pellets:
            return each * (ground.pellets / (1.0 * imperial_pint));
        default:
            return each * (ground.dry / (1.0 * kilogram));
    }
}

std::optional<Ratio> share_of_label(const Ingredient& additive, Mass planned, const DoseGround& ground) {
    if (!additive.label_dose) return std::nullopt;
    const Mass most = dosed_mass(*additive.label_dose, additive, ground);
    if (!(most > Mass{})) return std::nullopt;
    return planned / most;
}

}  // namespace baitwright
