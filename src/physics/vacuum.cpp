#include "physics/vacuum.h"

#include <algorithm>
#include <cmath>

namespace baitwright {

Pressure pressure_after(double strokes, Volume stroke, Volume free_volume, Pressure air, Pressure vapour) {
    return std::max(std::pow(free_volume / (free_volume + stroke), strokes) * air, vapour);
}

double strokes_to_boil(Volume stroke, Volume free_volume, Pressure air, Pressure vapour) {
    return std::log(air / vapour) / std::log((free_volume + stroke) / free_volume);
}

Ratio pore_fill(Pressure reached, Pressure air, Pressure vapour) {
    return 1 - (reached - vapour) / (air - vapour);
}

}  // namespace baitwright
