#include "physics/vacuum.h"

#include <cmath>

namespace baitwright {

Pressure pressure_after(double strokes, Volume stroke, Volume air_volume, Pressure outside, Pressure vapour) {
    return vapour + std::pow(air_volume / (air_volume + stroke), strokes) * (outside - vapour);
}

Ratio pore_fill(Pressure reached, Pressure outside, Pressure vapour) {
    return 1 - (reached - vapour) / (outside - vapour);
}

}  // namespace baitwright
