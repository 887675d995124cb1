#pragma once

#include "quantities/unit_system.h"

/// The units that answers are told in. Like a locale it is set once a run, before anything is told, and holds for the
/// whole process; only what words an answer for a person heeds it. JSON and CSV never do.
namespace baitwright {

/// From here on. The imperial system takes all of its units.
void show_units(ShownUnits units);

const ShownUnits& units_shown();

/// Masses are told twice, in grams and in ounces; the same of volumes, in litres and in pints.
bool tells_both_masses();
bool tells_both_volumes();

/// Shows other units until the end of its scope: for one question among many, and for what never changes its units.
class UnitsShownHere {
public:
    explicit UnitsShownHere(ShownUnits units) : before_(units_shown()) { show_units(units); }
    ~UnitsShownHere() { show_units(before_); }
    UnitsShownHere(const UnitsShownHere&) = delete;
    UnitsShownHere& operator=(const UnitsShownHere&) = delete;

private:
    ShownUnits before_;
};

}  // namespace baitwright
