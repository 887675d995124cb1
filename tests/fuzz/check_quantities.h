#pragma once

#include <string>
#include <string_view>

#include "bait/dose.h"
#include "fuzz/check_faults.h"
#include "quantities/amount_words.h"
#include "quantities/clock.h"
#include "quantities/date.h"
#include "quantities/loose_words.h"
#include "quantities/money.h"
#include "quantities/plain_words.h"
#include "quantities/quantity_text.h"
#include "quantities/said_name.h"
#include "quantities/units.h"
#include "questions/read_flags.h"

/// What the readers of amounts promise of any text: they give a finite value, which is read back from its own text, or
/// refuse in words.
namespace baitwright::fuzz {

/// Where the text that is written of a value stays within what is read: "too-large" is above 1e300 of any unit.
inline bool is_writable(double value) {
    return value == 0 || (std::abs(value) > 1e-280 && std::abs(value) < 1e280);
}

template <class Q, class U>
std::string broken_by(std::string_view text, U unit, std::string_view symbol) {
    return wrong_with([&]() -> std::string {
        const Q value = parse<Q>(text);
        if (!std::isfinite(value.si())) return "a value that is not finite, in " + std::string(symbol);
        if (!is_writable(value.si())) return {};
        const std::string written = exact_text(value, unit, symbol);
        const Q back = parse<Q>(written);
        if (std::abs(back.si() - value.si()) <= 1e-12 * std::abs(value.si())) return {};
        return "another value was read back from " + written;
    });
}

inline std::string broken_temperature(std::string_view text) {
    return wrong_with([&]() -> std::string {
        const Temperature value = parse<Temperature>(text);
        if (!std::isfinite(value.in_kelvin())) return "a temperature that is not finite";
        if (!is_writable(value.in_kelvin())) return {};
        const Temperature back = parse<Temperature>(exact_text(value));
        const double apart = std::abs(back.in_kelvin() - value.in_kelvin());
        return apart <= 1e-12 * std::abs(value.in_kelvin()) ? "" : "another temperature was read back";
    });
}

inline std::string broken_day_or_clock(std::string_view text) {
    std::string broken = wrong_with([&]() -> std::string {
        const Date day = parse_date(text);
        return parse_date(date_text(day)) == day ? "" : "another day was read back";
    });
    if (broken.empty())
        broken = wrong_with([&]() -> std::string {
            const int minutes = parse_clock(text);
            if (minutes < 0 || minutes >= 24 * 60) return "a time beyond the day";
            return parse_clock(clock_text(minutes)) == minutes ? "" : "another time was read back";
        });
    if (broken.empty()) broken = wrong_with([&] { return is_clock(text) ? std::string() : std::string(); });
    return broken;
}

inline std::string broken_money(std::string_view text) {
    for (const Currency* bare : {static_cast<const Currency*>(nullptr), &currency_named("EUR")}) {
        const std::string broken = wrong_with([&]() -> std::string {
            const Money money = parse_money(text, bare);
            return parse_money(money_text(money)) == money ? "" : "another sum was read back from " + money_text(money);
        });
        if (!broken.empty()) return broken;
    }
    return {};
}

inline std::string broken_dose(std::string_view text) {
    return wrong_with([&]() -> std::string {
        const DoseRate rate = parse_dose_rate(text);
        const auto si = [](const DoseRate& of) { return std::visit([](auto each) { return each.si(); }, of.each); };
        if (!std::isfinite(si(rate))) return "a rate that is not finite";
        if (!is_writable(si(rate))) return {};
        const DoseRate back = parse_dose_rate(dose_rate_text(rate));
        const bool same = back.basis == rate.basis && std::abs(si(back) - si(rate)) <= 1e-11 * std::abs(si(rate));
        return same ? "" : "another rate was read back from " + dose_rate_text(rate);
    });
}

/// Sizes and counts, and what flags read.
inline std::string broken_flag_amount(std::string_view text) {
    const std::string typed(text);
    const Arguments nothing({}, {}), imperial({}, {}, {{"units", {"imperial"}}, {"currency", {"EUR"}}});
    std::string broken;
    const auto read = [&](auto&& reading) {
        if (broken.empty()) broken = wrong_with([&] { return reading(), std::string(); });
    };
    read([&] { static_cast<void>(parse_counted_size(text)); });
    read([&] { static_cast<void>(parse_count(text)); });
    read([&] { static_cast<void>(parse_ball_size(text)); });
    read([&] { static_cast<void>(parse_vessel_size(text)); });
    read([&] { static_cast<void>(parse_number(text)); });
    read([&] { static_cast<void>(measured_in(text)); });
    read([&] { static_cast<void>(unit_used(text)); });
    read([&] { static_cast<void>(amount_in_words(text)); });
    read([&] { static_cast<void>(read_amount(typed)); });
    read([&] { static_cast<void>(read_temperature(nothing, typed)); });
    read([&] { static_cast<void>(read_temperature(imperial, typed)); });
    read([&] { static_cast<void>(read_hours(typed)); });
    read([&] { static_cast<void>(read_batch(typed)); });
    read([&] { static_cast<void>(read_money(typed, imperial)); });
    read([&] { static_cast<void>(read_count(typed, "3")); });
    read([&] { static_cast<void>(read_seed(typed)); });
    read([&] { static_cast<void>(parted_at_equals(typed, "a", "b=c")); });
    read([&] { static_cast<void>(behind_amount(typed, " of ")); });
    return broken;
}

inline std::string broken_words(std::string_view text) {
    return wrong_with([&]() -> std::string {
        static const std::vector<std::string> names{"brown crumb", "fishmeal, brown", "fishmeal pellet 4 mm",
                                                    "silt bed"};
        const SaidName said = said_name(text, names);
        if (said.name && !said.several.empty()) return "one name, and several";
        for (const LooseWord& word : loose_words(text))
            if (word.at + word.size > text.size()) return "a word beyond the text";
        // What cannot be shown is written out; it stays so when it is written out again.
        const std::string shown = written_out(text);
        if (!unfit_in(shown).empty()) return "what was written out still holds " + unfit_in(shown);
        if (written_out(shown) != shown) return "what was written out is written out once more";
        if (const std::string name = mended_name(std::string(text)); !refused_as_name(name).empty())
            return "a mended name is refused: it " + refused_as_name(name);
        return {};
    });
}

inline std::string broken_amount(std::string_view text) {
    std::string broken = broken_by<Mass>(text, gram, "g");
    const auto next = [&](auto&& check) {
        if (broken.empty()) broken = check();
    };
    next([&] { return broken_by<Length>(text, millimetre, "mm"); });
    next([&] { return broken_by<Volume>(text, millilitre, "ml"); });
    next([&] { return broken_by<Time>(text, second, "s"); });
    next([&] { return broken_by<Density>(text, gram_per_litre, "g/l"); });
    next([&] { return broken_by<Speed>(text, centimetre_per_second, "cm/s"); });
    next([&] { return broken_by<Diffusivity>(text, square_metre_per_second, "m2/s"); });
    next([&] { return broken_by<MolarEnergy>(text, kilojoule_per_mole, "kJ/mol"); });
    next([&] { return broken_by<Pressure>(text, kilopascal, "kPa"); });
    next([&] { return broken_by<Ratio>(text, percent, "%"); });
    next([&] { return broken_temperature(text); });
    next([&] { return broken_day_or_clock(text); });
    next([&] { return broken_money(text); });
    next([&] { return broken_dose(text); });
    next([&] { return broken_flag_amount(text); });
    next([&] { return broken_words(text); });
    return broken;
}

}  // namespace baitwright::fuzz
