#pragma once

#include <map>
#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "report/json.h"

namespace baitwright {

/// Where values come from, each said once: the ingredients name it by its place.
class SourceTable {
public:
    SourceTable() = default;
    explicit SourceTable(const Json& data);
    int place_of(const Source& source);
    [[nodiscard]] const Source& at(const Json& place) const;
    [[nodiscard]] Json data() const;  ///< [[origin, detail], ...]

private:
    std::vector<Source> sources_;
    std::map<std::string, int> places_;
};

/// {name, kind, properties: [place in `visit_properties`, value, spread, source, ...], composition: likewise, colour,
/// solute, label_dose: [basis, mass or volume, number], packs: [{size, price, on, shop}], keeps: {dry, cold, frozen},
/// cautions, note}. What is not stated is left out, what was derived, too: it is derived again.
Json ingredient_data(const Ingredient& ingredient, SourceTable& sources);
/// As stated. Throws where the data are not whole.
Ingredient ingredient_in(const Json& data, const SourceTable& sources);

Json rate_data(const DoseRate& rate);
DoseRate rate_in(const Json& data);

}  // namespace baitwright
