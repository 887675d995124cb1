#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "store/store.h"

namespace baitwright {

/// An ingredient as it stood before anything was learnt of it: its versions that the store kept, the newest first, and
/// as it is shipped.
/// **Test**: `tests/library/apply_learnt_test.cpp`.
class BeforeLearning {
public:
    BeforeLearning(const Store& store, const std::string& name);

    /// The value as it last stood before it was learnt, unstated where it was; nothing where it never stood otherwise.
    template <class Q>
    [[nodiscard]] std::optional<Property<Q>> value(Property<Q> Ingredient::*property) const {
        for (const Ingredient& version : versions_) {
            const Property<Q>& before = version.*property;
            if (before.source.origin != Origin::learned) return before.stated() ? before : Property<Q>{};
        }
        return std::nullopt;
    }

private:
    std::vector<Ingredient> versions_;
};

/// What learning starts from where an ingredient that is not shipped holds learnt marks: the same without them, so
/// that the log does not count twice. Nothing where a mark was measured, or where none was learnt.
std::optional<Ingredient> own_before_learning(const Store& store, const std::string& name);

}  // namespace baitwright
