#include <fmt/format.h>

#include <cmath>
#include <optional>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

namespace {

/// What a pack that was stated in another unit may have lost on its way through a file or a table: six digits are kept.
constexpr double lost_digits = 2e-6;

bool is_whole(double number) {
    const double nearest = std::round(number);
    return nearest > 0 && std::abs(number - nearest) < lost_digits * nearest;
}

/// "8", "1.5": whole or half a unit, if it is.
std::optional<double> wholes_and_halves(double number) {
    if (!is_whole(2 * number)) return std::nullopt;
    return std::round(2 * number) / 2;
}

/// "1 lb", "8 oz", "1 lb 4 oz"; half a pound is told in ounces.
std::optional<std::string> imperial_label(Mass mass) {
    constexpr double ounces_a_pound = 16;
    const auto pounds = wholes_and_halves(mass.in(pound)), ounces = wholes_and_halves(mass.in(ounce));
    if (pounds && *pounds >= 1) return fmt::format("{:g} lb", *pounds);
    if (!ounces) return std::nullopt;
    if (*ounces < ounces_a_pound) return fmt::format("{:g} oz", *ounces);
    return fmt::format("{:.0f} lb {:g} oz", std::floor(*ounces / ounces_a_pound), std::fmod(*ounces, ounces_a_pound));
}

/// "1 pt", "0.5 pt", "1 pt 5 fl oz"; below half a pint "5 fl oz".
std::optional<std::string> imperial_label(Volume volume) {
    constexpr double fluid_ounces_a_pint = 20;
    const auto pints = wholes_and_halves(volume.in(imperial_pint)),
               ounces = wholes_and_halves(volume.in(imperial_fluid_ounce));
    if (pints) return fmt::format("{:g} pt", *pints);
    if (!ounces) return std::nullopt;
    if (*ounces < fluid_ounces_a_pint) return fmt::format("{:g} fl oz", *ounces);
    return fmt::format("{:.0f} pt {:g} fl oz", std::floor(*ounces / fluid_ounces_a_pint),
                       std::fmod(*ounces, fluid_ounces_a_pint));
}

}  // namespace

std::string shown_pack(Mass mass) {
    if (!is_whole(mass.in(gram)))
        if (const auto label = imperial_label(mass)) return *label;
    return mass.in(gram) < 999.5 ? fmt::format("{:g} g", mass.in(gram)) : fmt::format("{:.4g} kg", mass.in(kilogram));
}

std::string shown_pack(const Pack& pack) {
    if (const Mass* mass = std::get_if<Mass>(&pack.size)) return shown_pack(*mass);
    const Volume volume = std::get<Volume>(pack.size);
    const double millilitres = volume.in(millilitre);
    if (!is_whole(millilitres)) {
        if (const auto label = imperial_label(volume)) return *label;
        return shown_volume(volume);
    }
    return millilitres < 999.5 ? fmt::format("{:g} ml", millilitres) : fmt::format("{:.4g} l", millilitres / 1000);
}

std::string typed_pack(const Pack& pack) {
    const std::string label = shown_pack(pack);
    const auto same = [&](auto size) {
        return std::abs(parse<decltype(size)>(label).si() - size.si()) <= 1e-9 * size.si();
    };
    if (std::visit(same, pack.size)) return label;
    if (const Mass* mass = std::get_if<Mass>(&pack.size)) return exact_text(*mass, gram, "g");
    return exact_text(std::get<Volume>(pack.size), millilitre, "ml");
}

}  // namespace baitwright
