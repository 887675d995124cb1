#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Numbers of files are written as shortly as 1e-12 of the value allows, which is how people write. What is taken out
/// to be the same when it comes back is written with every digit it needs.
namespace baitwright {

/// Whether one of the following lives.
bool all_digits_wanted();

/// Until the end of its scope, `exact_text` and `dose_rate_text` give texts that read back to the last bit. It holds
/// for the whole process.
class AllDigitsHere {
public:
    AllDigitsHere();
    ~AllDigitsHere();
    AllDigitsHere(const AllDigitsHere&) = delete;
    AllDigitsHere& operator=(const AllDigitsHere&) = delete;

private:
    bool before_;
};

/// The shortest number of units of that size that reads back to just these bits, and nothing where there is none: the
/// next number up and down may both miss.
std::optional<std::string> number_to_the_bit(double si, double unit_in_si);

/// "453.59237 g"; where no number of grams does, in the unit of the SI: "0.45359237 kg".
std::string text_to_the_bit(double si, std::string_view unit_symbol);

/// The same of a temperature: "12.5 degC", or in K.
std::string temperature_to_the_bit(double kelvins);
/// The number of degC that reads back to just these kelvins.
std::optional<std::string> celsius_to_the_bit(double kelvins);

}  // namespace baitwright
