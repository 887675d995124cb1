#include "report/shown_units.h"

namespace baitwright {

namespace {

ShownUnits& units_in_use() {
    static ShownUnits units;
    return units;
}

/// Who measures in grams and litres is told of the other units only where they were typed.
bool has_both(bool typed) {
    const UnitSystem system = units_shown().system;
    return system == UnitSystem::both || (system == UnitSystem::metric && typed);
}

}  // namespace

void show_units(ShownUnits units) {
    if (units.system == UnitSystem::imperial) units = {UnitSystem::imperial, true, true, true, true};
    units_in_use() = units;
}

const ShownUnits& units_shown() {
    return units_in_use();
}

bool tells_both_masses() {
    return has_both(units_shown().ounces);
}

bool tells_both_volumes() {
    return has_both(units_shown().pints);
}

}  // namespace baitwright
