#pragma once

#include <optional>
#include <type_traits>
#include <variant>

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// The number by which a quantity is kept, in SI; of a struct that holds one, that; of an empty one, 0.
template <class Kept>
constexpr double bare_number(const Kept& kept) {
    if constexpr (std::is_same_v<Kept, Temperature>) {
        return kept.in_kelvin();
    } else if constexpr (std::is_arithmetic_v<Kept>) {
        return kept;
    } else if constexpr (std::is_empty_v<Kept>) {
        return 0;
    } else if constexpr (requires { kept.si(); }) {
        return kept.si();
    } else {
        const auto& [number] = kept;
        return bare_number(number);
    }
}
template <class... Alternatives>
double bare_number(const std::variant<Alternatives...>& kept) {
    return std::visit([](const auto& each) { return bare_number(each); }, kept);
}

/// And back.
template <class Kept>
constexpr Kept dressed_number(double number) {
    if constexpr (std::is_same_v<Kept, Temperature>) {
        return Temperature::from_kelvin(number);
    } else if constexpr (std::is_arithmetic_v<Kept>) {
        return static_cast<Kept>(number);
    } else if constexpr (std::is_empty_v<Kept>) {
        return {};
    } else if constexpr (requires { Kept::from_si(number); }) {
        return Kept::from_si(number);
    } else {
        Kept kept{};
        auto& [only] = kept;
        only = dressed_number<std::decay_t<decltype(only)>>(number);
        return kept;
    }
}
/// The alternative of that index with the number; nothing where there is none.
template <class Alternatives, std::size_t index = 0>
std::optional<Alternatives> dressed_number(std::size_t which, double number) {
    if constexpr (index < std::variant_size_v<Alternatives>) {
        if (which != index) return dressed_number<Alternatives, index + 1>(which, number);
        return Alternatives(std::in_place_index<index>,
                            dressed_number<std::variant_alternative_t<index, Alternatives>>(number));
    }
    return std::nullopt;
}

}  // namespace baitwright
