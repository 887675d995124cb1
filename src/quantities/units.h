#pragma once

#include "quantities/quantity.h"

/// Units by name. Factors are exact where the law defines them.
/// **Source**: pound and gallon, Weights and Measures Act 1985, schedule 1; inch, US gallon and the rest,
/// NIST Special Publication 811, appendix B (from memory; compared with GNU units 2.22 in the tests).
namespace baitwright {

inline constexpr Unit<NoDimension> one{1.0};
inline constexpr Unit<NoDimension> percent{0.01};

inline constexpr Unit<Dimension<1, 0, 0>> kilogram{1.0};
inline constexpr Unit<Dimension<1, 0, 0>> gram{1e-3};
inline constexpr Unit<Dimension<1, 0, 0>> pound{0.45359237};
inline constexpr Unit<Dimension<1, 0, 0>> ounce{0.45359237 / 16};
inline constexpr Unit<Dimension<1, 0, 0>> stone{0.45359237 * 14};

inline constexpr Unit<Dimension<0, 1, 0>> metre{1.0};
inline constexpr Unit<Dimension<0, 1, 0>> centimetre{1e-2};
inline constexpr Unit<Dimension<0, 1, 0>> millimetre{1e-3};
inline constexpr Unit<Dimension<0, 1, 0>> foot{0.3048};
inline constexpr Unit<Dimension<0, 1, 0>> inch{0.0254};

inline constexpr Unit<Dimension<0, 3, 0>> litre{1e-3};
inline constexpr Unit<Dimension<0, 3, 0>> millilitre{1e-6};
inline constexpr Unit<Dimension<0, 3, 0>> imperial_gallon{4.54609e-3};
inline constexpr Unit<Dimension<0, 3, 0>> imperial_pint{4.54609e-3 / 8};
inline constexpr Unit<Dimension<0, 3, 0>> imperial_fluid_ounce{4.54609e-3 / 160};
inline constexpr Unit<Dimension<0, 3, 0>> us_pint{4.73176473e-4};

inline constexpr Unit<Dimension<0, 0, 1>> second{1.0};
inline constexpr Unit<Dimension<0, 0, 1>> minute{60.0};
inline constexpr Unit<Dimension<0, 0, 1>> hour{3600.0};
inline constexpr Unit<Dimension<0, 0, 1>> day{86400.0};
/// The mean month and year of the Gregorian calendar, for keeping times only.
inline constexpr Unit<Dimension<0, 0, 1>> month{86400.0 * 365.2425 / 12};
inline constexpr Unit<Dimension<0, 0, 1>> year{86400.0 * 365.2425};

inline constexpr auto gram_per_litre = gram / litre;
inline constexpr auto gram_per_millilitre = gram / millilitre;
inline constexpr auto metre_per_second = metre / second;
inline constexpr auto centimetre_per_second = centimetre / second;
inline constexpr auto square_metre_per_second = metre * metre / second;
inline constexpr auto millilitre_per_gram = millilitre / gram;
inline constexpr Unit<Dimension<1, 2, -2, 0, -1>> joule_per_mole{1.0};
inline constexpr Unit<Dimension<1, 2, -2, 0, -1>> kilojoule_per_mole{1e3};
inline constexpr Unit<Dimension<1, -1, -2>> pascal{1.0};
inline constexpr Unit<Dimension<1, -1, -2>> kilopascal{1e3};
inline constexpr Unit<Dimension<0, 0, 0, 1>> kelvin{1.0};

}  // namespace baitwright
