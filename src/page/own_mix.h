#pragma once

#include "bait/recipe.h"
#include "bait/shelf.h"
#include "report/json.h"

namespace baitwright {

/// A mix that was made on the phone: {name, feel, purpose, note, parts: [{of, share: 3 | mass: "400 g" | volume: "1 pt"
/// | packs: 1, prepare: "soaked"}], doses: [{of, amount: "25 ml per kg dry"}]}. What is left out, empty or null is not
/// said. The shelf knows all its parts. Throws InputError with every fault, each with what it is a fault of: "name",
/// "feel", "part 2", "dose 1".
Recipe own_mix(const Json& told, const Shelf& shelf);

}  // namespace baitwright
