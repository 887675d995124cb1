#pragma once

#include "quantities/fault.h"

namespace baitwright {

/// The first fault that an action throws; one without a code where it throws none.
template <class Action>
Fault fault_of(const Action& action) {
    try {
        action();
    } catch (const Error& error) {
        return error.faults().front();
    }
    return {};
}

}  // namespace baitwright
