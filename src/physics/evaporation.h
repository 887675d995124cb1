#pragma once

#include "physics/water.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// How a wet face in the open loses water, and how warm it is while it does.
namespace baitwright {

using HeatOfMass = Quantity<Dimension<0, 2, -2>>;  ///< J/kg
using HeatFlux = Quantity<Dimension<1, 0, -3>>;    ///< W/m2
using MassFlux = Quantity<Dimension<1, -2, -1>>;   ///< kg/(m2 s)
using PerTime = Quantity<Dimension<0, 0, -1>>;     ///< 1/s

/// What it takes to turn water into vapour: 2500.90 - 2.36612 t - 1.517e-4 t^2 kJ/kg, t in degC.
/// **Source**: least squares through IAPWS-95 values every 5 degC (python3-iapws). **Valid for**: 0 to 40 degC, within
/// 0.1 kJ/kg.
/// **Test**: rows LATENT_HEAT.
HeatOfMass latent_heat(Temperature temperature);

/// Mass of vapour over mass of dry air: 0.621945 pv/(p - pv).
/// **Source**: ASHRAE Handbook of Fundamentals 2017, ch. 1, eq. 20 (from memory). **Valid for**: pv < p. **Test**: rows
/// PSYCHRO-02, PSYCHRO-03.
Ratio humidity_ratio(Pressure vapour, Pressure air);

/// The same of air in which a wet bulb shows t*: W = ((2501 - 2.326 t*) Ws* - 1.006 (t - t*))/(2501 + 1.86 t - 4.186
/// t*).
/// **Source**: as above, eq. 33 (form read in public code). **Valid for**: t* from 0 degC, wet bulb not frozen.
/// **Test**: row PSYCHRO-04.
Ratio humidity_ratio_at_wet_bulb(Temperature air, Temperature wet_bulb, Pressure pressure);

/// What a wet bulb shows: the t* at which the equation above gives the air's own humidity ratio. The warmth of a wet
/// face in the shade that gets heat from the air alone. **Valid for**: air from -5 to 45 degC, humidity 0 to 1; below 0
/// degC the water is taken to stay liquid. **Test**: row PSYCHRO-07.
Temperature wet_bulb(Temperature air, Ratio relative_humidity, Pressure pressure = standard_air_pressure);

/// Water lost by an open water face as warm as that: (0.089 + 0.0782 v)(pw - pa)/hfg, with v in m/s and pressures in
/// Pa; none where the air holds more vapour than that. Over a small tub without wind it can be less by more than two
/// (natural convection, Shah 2014).
/// **Source**: Carrier 1918, in the form of the ASHRAE Handbook (as quoted by Smith et al. 1998). **Valid for**: 0 to
/// 40 degC, wind up to 10 m/s. **Test**: rows EVAPORATION.
MassFlux carrier_evaporation(Temperature water, Temperature air, Ratio relative_humidity, Speed wind);

/// Natural convection over a still water face takes this share of Carrier's rate. **Source**: the middle of what Shah
/// 2014 gives (constants from memory), 0.38 to 0.53. **Valid for**: a face as warm as the air, 5 to 30 degC, humidity
/// 30 to 90 %, within a fifth. **Test**: `tests/physics/evaporation_test.cpp`, against Shah's equation.
inline constexpr double still_air_share = 0.44;

/// The air around a face, and the sun on it.
struct Weather {
    Temperature air;
    Ratio humidity;
    Speed wind;
    HeatFlux sun;              ///< what the face gains by radiation, all told
    Ratio sheltered_to = 1.0;  ///< the share of Carrier's rate that the air gets to carry off, `still_air_share` to 1
};

/// How warm a wet face gets: where what the air and the sun bring it is what its vapour takes away,
///     k (pw(tf) - pa) = k g (t - tf) + G,    k = share (0.089 + 0.0782 v) W/(m2 Pa)
/// with G the sun's gain and g the psychrometric number cs (p - pw)(p - pa)/(0.621945 p hfg), cs = 1006 + 1860 W J/(kg
/// K), which is what heat passes for vapour where both go by the same air (Lewis). In the shade that is the wet bulb.
/// **Source**: balance of heat; Lewis 1922 (from memory). **Valid for**: as `wet_bulb`; G up to 1000 W/m2. Heat from
/// the tub's walls and from the mix itself is left out. **Test**: `tests/physics/evaporation_test.cpp`.
Temperature wet_face_temperature(const Weather& weather);

/// What a wet face loses at that warmth, never below 0. **Test**: as above.
MassFlux wet_face_loss(const Weather& weather);

/// Drying per gram: at a constant rate down to a critical moisture, then at one that falls linearly with what is left,
/// as the surface dries to a crust. From w at first, both w and the critical moisture wc in g/g, the rate r in 1/s:
///     t = (w - w1)/r  for w1 >= wc,    t = (w - wc)/r + (wc/r) ln(wc/w1)  below;  from w < wc, (wc/r) ln(w/w1).
/// **Source**: the textbooks' two periods of drying, with an equilibrium moisture of none (from memory). **Valid for**:
/// wc, r above 0. **Test**: against small steps in time.
class DryingCourse {
public:
    DryingCourse(Ratio at_first, Ratio critical, PerTime rate) : first_(at_first), critical_(critical), rate_(rate) {}

    [[nodiscard]] Ratio left_after(Time time) const;
    /// Until no more than this is left (above 0); 0 where it is there already.
    [[nodiscard]] Time time_to(Ratio left) const;
    /// What is lost per time at first.
    [[nodiscard]] PerTime first_rate() const;

private:
    Ratio first_, critical_;
    PerTime rate_;
};

}  // namespace baitwright
