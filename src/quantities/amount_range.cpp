#include "quantities/amount_range.h"

#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::int64_t dearest_minor = 100'000'000;

template <class Q>
[[noreturn]] void refuse_amount(Q amount, std::string_view least) {
    const AmountRange<Q>& range = range_of<Q>();
    std::string message = "the amount must be above zero";
    if (amount.si() > 0) message = "the amount is more than " + std::string(range.most_text);
    if (amount.si() > 0 && amount < range.least) message = "the amount is less than " + std::string(least);
    throw InputError("out-of-range", message,
                     "it can be from " + std::string(least) + " to " + std::string(range.most_text) + ", as in " +
                         std::string(range.example));
}

template <class Q>
Q checked_amount(Q amount) {
    if (!lies_in_range(amount)) refuse_amount(amount, range_of<Q>().least_text);
    return amount;
}

template <class Q>
Q checked_or_nothing(Q amount) {
    if (amount.si() == 0) return amount;
    if (amount.si() < 0)
        throw InputError("out-of-range", "the amount must not be below zero",
                         "it can be up to " + std::string(range_of<Q>().most_text) + ", as in " +
                             std::string(range_of<Q>().example));
    return checked_amount(amount);
}

}  // namespace

template <>
const AmountRange<Mass>& range_of<Mass>() {
    static const AmountRange<Mass> range{1e-6 * kilogram, 1e4 * kilogram, "1 mg", "10000 kg", "400g"};
    return range;
}
template <>
const AmountRange<Volume>& range_of<Volume>() {
    static const AmountRange<Volume> range{1e-3 * millilitre, 1e4 * litre, "0.001 ml", "10000 l", "250ml"};
    return range;
}
template <>
const AmountRange<Length>& range_of<Length>() {
    static const AmountRange<Length> range{0.01 * millimetre, 1000.0 * metre, "0.01 mm", "1000 m", "55mm"};
    return range;
}
template <>
const AmountRange<Time>& range_of<Time>() {
    static const AmountRange<Time> range{0.1 * second, 100.0 * year, "0.1 s", "100 years", "20min"};
    return range;
}
template <>
const AmountRange<Pressure>& range_of<Pressure>() {
    static const AmountRange<Pressure> range{0.1 * kilopascal, 1000.0 * kilopascal, "0.1 kPa", "1000 kPa", "101kPa"};
    return range;
}

bool lies_in_range(const Money& price) {
    return price.minor() >= 0 && price.minor() <= dearest_minor;
}

Money dearest_price(const Currency& currency) {
    return {dearest_minor, currency};
}

std::string price_range_text(const Currency& currency) {
    return "from " + money_text({0, currency}) + " to " + money_text(dearest_price(currency));
}

Mass in_range(Mass amount) {
    return checked_amount(amount);
}
Volume in_range(Volume amount) {
    return checked_amount(amount);
}
Length in_range(Length amount) {
    return checked_amount(amount);
}
Time in_range(Time amount) {
    return checked_amount(amount);
}
Pressure in_range(Pressure amount) {
    return checked_amount(amount);
}

Money in_range(const Money& price) {
    if (price.minor() < 0) throw InputError("out-of-range", "a price must not be below zero", "for example £3.40");
    if (!lies_in_range(price))
        throw InputError("out-of-range", "a price of " + money_text(price) + " is too much to be one",
                         "it can be " + price_range_text(price.currency()));
    return price;
}

Mass nothing_or_in_range(Mass amount) {
    return checked_or_nothing(amount);
}
Volume nothing_or_in_range(Volume amount) {
    return checked_or_nothing(amount);
}
Time nothing_or_in_range(Time amount) {
    return checked_or_nothing(amount);
}

}  // namespace baitwright
