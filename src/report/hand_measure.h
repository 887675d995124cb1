#pragma once

#include <string>
#include <vector>

#include "answers/mix/dose_amounts.h"
#include "answers/mix/mix_answer.h"
#include "answers/pellets/soak_answer.h"
#include "answers/plan/plan_answer.h"
#include "quantities/quantity.h"

/// What is too little for a kitchen scale, which shows 1 g at best and often 5 g, as a hand can measure it: in single
/// grains, pinches, level teaspoons, drops and caps of a bottle. **Source**: common practice, no source, all of them.
namespace baitwright {

/// Below this a scale cannot tell what is dry.
inline constexpr double least_weighed_g = 5;
/// Below this a measuring jug cannot tell what is liquid; a cap of a bottle can.
inline constexpr double least_jugged_ml = 20;
/// What two fingers and a thumb take up, 0.3 to 0.5 g.
inline constexpr double pinch_g = 0.4;
/// A teaspoon for measuring, and the usual cap of a bottle.
inline constexpr double teaspoon_ml = 5;
inline constexpr double drops_in_a_millilitre = 20;
/// More than so many grains nobody counts out.
inline constexpr double most_counted = 200;

/// How much of one thing.
struct HandAmount {
    std::string name;
    Mass mass;
    Volume volume;      ///< of a liquid its own, else loose
    double grains = 0;  ///< single ones, of pellets, seeds and hookbaits; 0 of meal, powder and liquid
    bool liquid = false;
};

HandAmount hand_amount(const PartAnswer& part);
HandAmount hand_amount(const AdditiveAnswer& additive);
HandAmount hand_amount(const DoseLine& line);
HandAmount hand_amount(const PlannedTotal& total);
HandAmount hand_amount(const PlannedSoak& soak);
HandAmount hand_amount(const SteepedAdditive& additive);

/// "about 99 grains", "about 2 pinches", "about 1/2 level teaspoon", "about 12 drops", "about 1 1/2 caps (5 ml a cap)";
/// empty where a scale or a jug can tell it, and for nothing.
std::string hand_measure(const HandAmount& amount);

/// The same behind the amount, ", about 2 pinches", or empty.
std::string hand_measure_behind(const HandAmount& amount);

/// All of these that no scale can tell, as a sentence: "About 2 pinches of sweetener; about 99 grains of hemp.";
/// empty where there are none.
std::string hand_measures(const std::vector<HandAmount>& amounts);
std::string hand_measures(const std::vector<PlannedTotal>& totals);

}  // namespace baitwright
