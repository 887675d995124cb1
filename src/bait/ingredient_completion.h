#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "quantities/fault.h"

namespace baitwright {

/// What is wrong with an ingredient as stated: required properties missing, properties its kind cannot have, slump
/// not above absorption, envelope not above loose density, skeleton below envelope. Every fault at once; the code
/// names the rule and the hint the way out. `message` begins with the key concerned in quotes.
struct PropertyFault {
    std::string key;
    Fault fault;
};
std::vector<PropertyFault> faults_of(const Ingredient& ingredient);

/// Fills in what was not stated by the rules of `docs/method.md` ("derived"), marks it so and gives it a wide spread.
/// **Valid for**: an ingredient without faults.
void complete(Ingredient& ingredient);

}  // namespace baitwright
