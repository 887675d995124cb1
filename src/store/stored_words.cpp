#include "store/stored_words.h"

namespace baitwright {

std::optional<DoseRate> dose_rate(std::string_view basis, std::string_view measure, double each) {
    const auto by = value_of<DoseBasis>(dose_basis_words, basis);
    const auto amount = mass_or_volume(measure, each);
    if (!by || !amount) return std::nullopt;
    return DoseRate{*by, *amount};
}

}  // namespace baitwright
