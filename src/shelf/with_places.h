#pragma once

#include "files/library_file.h"
#include "quantities/fault.h"

namespace baitwright {

/// Runs the work; an InputError out of it gets the places of the file that what was named came from, if any, before it
/// goes on. `named` is a NamedRecipe, a NamedStrategy or a NamedBlend.
template <class Named, class Work>
auto with_places(const Named& named, Work&& work) {
    try {
        return work();
    } catch (const InputError& error) {
        if (named.file.empty()) throw;
        std::vector<Fault> faults = error.faults();
        place_faults(faults, named.places, named.text, named.file);
        throw InputError(std::move(faults));
    }
}

}  // namespace baitwright
