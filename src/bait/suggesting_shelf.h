#pragma once

#include "bait/shelf_over.h"
#include "quantities/fault.h"

namespace baitwright {

/// Finds what another shelf has, and lists no names: nothing is suggested from it, so that an unknown name costs no
/// more than looking for it.
class NamelessShelf : public ShelfOver {
public:
    using ShelfOver::ShelfOver;

    [[nodiscard]] std::vector<std::string> ingredient_names() const override { return {}; }
    [[nodiscard]] std::vector<std::string> recipe_names() const override { return {}; }
    [[nodiscard]] std::vector<std::string> strategy_names() const override { return {}; }
};

/// The shelf to ask where names may be wrong: with its names for the faults that are told, without for those that are
/// only counted. A suggestion looks through every name there is; for each of thousands of slips that would take
/// minutes.
class SuggestingShelf {
public:
    explicit SuggestingShelf(const Shelf& shelf) : shelf_(shelf), nameless_(shelf) {}

    [[nodiscard]] const Shelf& after(std::size_t faults) const {
        if (faults < most_faults_told) return shelf_;
        return nameless_;
    }

private:
    const Shelf& shelf_;
    NamelessShelf nameless_;
};

}  // namespace baitwright
