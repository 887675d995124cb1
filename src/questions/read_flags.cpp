#include "questions/read_flags.h"

#include "quantities/in_quotes.h"

namespace baitwright {

MassOrVolume read_amount(const std::string& text) {
    try {
        return in_range(parse<Mass>(text));
    } catch (const InputError& error) {
        if (error.faults().front().code == "no-unit")
            throw InputError("no-unit", error.faults().front().message, "write it as in 500g or 2pt");
        if (error.faults().front().code != "wrong-dimension") throw;
        return in_range(parse<Volume>(text));
    }
}

Temperature read_temperature(const Arguments& arguments, const std::string& text) {
    if (!is_bare_number(text)) return parse<Temperature>(text);
    if (arguments.usual("units") != "imperial") return Temperature::from_celsius(parse_number(text));
    throw InputError("no-unit", in_quotes(text) + " has no unit", "write it as in 12degC or 54degF");
}

Time read_hours(const std::string& text) {
    return is_bare_number(text) ? parse_number(text) * hour : parse<Time>(text);
}

std::size_t behind_amount(const std::string& text, const std::string& between, std::size_t from) {
    const std::size_t first = text.find(between, from);
    for (std::size_t at = first; at != std::string::npos; at = text.find(between, at + 1))
        if (measured_in(std::string_view(text).substr(from, at - from))) return at;
    return first;
}

Mass read_batch(const std::string& text) {
    const Mass batch = in_range(parse<Mass>(text));
    if (batch < 1.0 * gram || batch > 1e4 * kilogram)
        throw InputError("out-of-range", "a batch is from 1 g to 10000 kg", "check the unit");
    return batch;
}

const Currency* usual_currency(const Arguments& arguments) {
    const auto told = arguments.usual("currency");
    if (!told) return nullptr;
    return &flag_value("what you always use", [&]() -> const Currency& { return currency_named(*told); });
}

Money read_money(const std::string& text, const Arguments& arguments) {
    return in_range(parse_money(text, usual_currency(arguments)));
}

int read_count(const std::string& text, const char* example) {
    const double number = parse_number(text);
    if (!(number >= 1 && number <= 1000) || number != static_cast<int>(number))
        throw InputError("out-of-range", "'" + text + "' is not a whole number from 1 to 1000", example);
    return static_cast<int>(number);
}

std::uint64_t read_seed(const std::string& text) {
    const double seed = parse_number(text);
    if (seed < 0 || seed > 9e15 || seed != static_cast<double>(static_cast<std::uint64_t>(seed)))
        throw InputError("out-of-range", "'" + text + "' is not a whole number from 0 to 9e15", "for example --seed 7");
    return static_cast<std::uint64_t>(seed);
}

std::pair<std::string, std::string> parted_at_equals(const std::string& text, const char* what, const char* example) {
    const auto equals = text.rfind('=');
    if (equals == std::string::npos || equals == 0 || equals + 1 == text.size())
        throw InputError("no-amount", "'" + text + "' does not say " + what, std::string("write it as in ") + example);
    return {text.substr(0, equals), text.substr(equals + 1)};
}

}  // namespace baitwright
