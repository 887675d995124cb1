#pragma once

#include <cmath>
#include <compare>
#include <type_traits>

namespace baitwright {

/// The exponents of kilogram, metre, second, kelvin and mole: two quantities add only where all five agree.
template <int Mass, int Length, int Time, int Temperature = 0, int Amount = 0>
struct Dimension {
    static constexpr int mass = Mass, length = Length, time = Time, temperature = Temperature, amount = Amount;
};

using NoDimension = Dimension<0, 0, 0>;

template <class A, class B>
using DimensionProduct = Dimension<A::mass + B::mass, A::length + B::length, A::time + B::time,
                                   A::temperature + B::temperature, A::amount + B::amount>;
template <class A, class B>
using DimensionQuotient = Dimension<A::mass - B::mass, A::length - B::length, A::time - B::time,
                                    A::temperature - B::temperature, A::amount - B::amount>;

/// A unit of measure: how much of the SI unit one of it is. Made into a quantity by `2.5 * kilogram`.
template <class D>
struct Unit {
    double in_si;
};

/// A physical quantity held in SI; it is entered and left by naming a unit: `2.5 * kilogram`, `m.in(gram)`.
template <class D>
class Quantity {
public:
    constexpr Quantity() = default;
    static constexpr Quantity from_si(double value) {
        Quantity q;
        q.si_ = value;
        return q;
    }
    [[nodiscard]] constexpr double si() const { return si_; }
    [[nodiscard]] constexpr double in(Unit<D> unit) const { return si_ / unit.in_si; }

    constexpr Quantity& operator+=(Quantity other) {
        si_ += other.si_;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        si_ -= other.si_;
        return *this;
    }
    constexpr Quantity& operator*=(double factor) {
        si_ *= factor;
        return *this;
    }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of a defaulted <=> for a pointer
    constexpr auto operator<=>(const Quantity&) const = default;

private:
    double si_ = 0.0;
};

/// A pure number (g per g, percent, a count): converts to and from double, since nothing can be mistaken.
template <>
class Quantity<NoDimension> {
public:
    constexpr Quantity() = default;
    constexpr Quantity(double value) : si_(value) {}
    constexpr operator double() const { return si_; }
    static constexpr Quantity from_si(double value) { return {value}; }
    [[nodiscard]] constexpr double si() const { return si_; }
    [[nodiscard]] constexpr double in(Unit<NoDimension> unit) const { return si_ / unit.in_si; }

private:
    double si_ = 0.0;
};

using Ratio = Quantity<NoDimension>;

/// A dimension that plain numbers do not already cover: ratios keep to the arithmetic of double.
template <class D>
concept Dimensional = !std::is_same_v<D, NoDimension>;

template <class D>
constexpr Quantity<D> operator*(double value, Unit<D> unit) {
    return Quantity<D>::from_si(value * unit.in_si);
}
template <Dimensional D>
constexpr Quantity<D> operator+(Quantity<D> a, Quantity<D> b) {
    return a += b;
}
template <Dimensional D>
constexpr Quantity<D> operator-(Quantity<D> a, Quantity<D> b) {
    return a -= b;
}
template <Dimensional D>
constexpr Quantity<D> operator-(Quantity<D> a) {
    return Quantity<D>::from_si(-a.si());
}
template <Dimensional D>
constexpr Quantity<D> operator*(double factor, Quantity<D> a) {
    return a *= factor;
}
template <Dimensional D>
constexpr Quantity<D> operator*(Quantity<D> a, double factor) {
    return a *= factor;
}
template <Dimensional D>
constexpr Quantity<D> operator/(Quantity<D> a, double divisor) {
    return Quantity<D>::from_si(a.si() / divisor);
}
template <Dimensional D>
constexpr Quantity<DimensionQuotient<NoDimension, D>> operator/(double value, Quantity<D> divisor) {
    return Quantity<DimensionQuotient<NoDimension, D>>::from_si(value / divisor.si());
}
template <class A, class B>
constexpr Quantity<DimensionProduct<A, B>> operator*(Quantity<A> a, Quantity<B> b) {
    return Quantity<DimensionProduct<A, B>>::from_si(a.si() * b.si());
}
template <class A, class B>
constexpr Quantity<DimensionQuotient<A, B>> operator/(Quantity<A> a, Quantity<B> b) {
    return Quantity<DimensionQuotient<A, B>>::from_si(a.si() / b.si());
}
template <class A, class B>
constexpr Unit<DimensionQuotient<A, B>> operator/(Unit<A> a, Unit<B> b) {
    return {a.in_si / b.in_si};
}
template <class A, class B>
constexpr Unit<DimensionProduct<A, B>> operator*(Unit<A> a, Unit<B> b) {
    return {a.in_si * b.in_si};
}

template <class D>
bool is_finite(Quantity<D> q) {
    return std::isfinite(q.si());
}

using Mass = Quantity<Dimension<1, 0, 0>>;
using Length = Quantity<Dimension<0, 1, 0>>;
using Area = Quantity<Dimension<0, 2, 0>>;
using Volume = Quantity<Dimension<0, 3, 0>>;
using Time = Quantity<Dimension<0, 0, 1>>;
using Density = Quantity<Dimension<1, -3, 0>>;
using SpecificVolume = Quantity<Dimension<-1, 3, 0>>;
using Speed = Quantity<Dimension<0, 1, -1>>;
using Diffusivity = Quantity<Dimension<0, 2, -1>>;
using MolarEnergy = Quantity<Dimension<1, 2, -2, 0, -1>>;
using Pressure = Quantity<Dimension<1, -1, -2>>;
using Viscosity = Quantity<Dimension<1, -1, -1>>;  ///< dynamic
using SurfaceTension = Quantity<Dimension<1, 0, -2>>;
using TemperatureDifference = Quantity<Dimension<0, 0, 0, 1>>;

}  // namespace baitwright
