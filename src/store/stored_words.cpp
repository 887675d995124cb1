#include "store/stored_words.h"

namespace baitwright {

namespace {

struct Number {
    double operator()(Mass mass) const { return mass.si(); }
    double operator()(Volume volume) const { return volume.si(); }
    double operator()(WholePacks packs) const { return packs.count; }
    double operator()(Share share) const { return share.parts; }
    double operator()(Length length) const { return length.si(); }
};

}  // namespace

StoredAmount stored(const std::variant<Mass, Volume>& amount) {
    return {measure_words[amount.index()], std::visit(Number{}, amount)};
}

StoredAmount stored(const PartAmount& amount) {
    return {measure_words[amount.index()], std::visit(Number{}, amount)};
}

std::optional<std::variant<Mass, Volume>> mass_or_volume(std::string_view measure, double number) {
    if (measure == measure_words[0]) return Mass::from_si(number);
    if (measure == measure_words[1]) return Volume::from_si(number);
    return std::nullopt;
}

std::optional<PartAmount> part_amount(std::string_view measure, double number) {
    if (measure == measure_words[0]) return Mass::from_si(number);
    if (measure == measure_words[1]) return Volume::from_si(number);
    if (measure == measure_words[2]) return WholePacks{number};
    if (measure == measure_words[3]) return Share{number};
    return std::nullopt;
}

StoredAmount stored(const FeedSize& size) {
    return {size_words[size.index()], std::visit(Number{}, size)};
}

std::optional<FeedSize> feed_size(std::string_view measure, double number) {
    if (measure == size_words[0]) return Mass::from_si(number);
    if (measure == size_words[1]) return Volume::from_si(number);
    if (measure == size_words[2]) return Length::from_si(number);
    return std::nullopt;
}

std::optional<FeedRhythm> feed_rhythm(std::string_view word, double number) {
    if (word == rhythm_words[0]) return AtOnce{Time::from_si(number)};
    if (word == rhythm_words[1]) return EveryTime{Time::from_si(number)};
    if (word == rhythm_words[2]) return EveryPutIn{};
    if (word == rhythm_words[3]) return EveryFish{static_cast<int>(number)};
    if (word == rhythm_words[4]) return WhenSlow{number};
    return std::nullopt;
}

std::optional<DoseRate> dose_rate(std::string_view basis, std::string_view measure, double each) {
    const auto by = value_of<DoseBasis>(dose_basis_words, basis);
    const auto amount = mass_or_volume(measure, each);
    if (!by || !amount) return std::nullopt;
    return DoseRate{*by, *amount};
}

}  // namespace baitwright
