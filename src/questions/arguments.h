#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantities/fault.h"

namespace baitwright {

/// What a person typed, sorted: words in order, flags by name.
class Arguments {
public:
    Arguments(std::vector<std::string> words, std::map<std::string, std::vector<std::string>> flags)
        : words_(std::move(words)), flags_(std::move(flags)) {}

    [[nodiscard]] const std::vector<std::string>& words() const { return words_; }
    [[nodiscard]] bool has(const std::string& flag) const { return flags_.count(flag) > 0; }
    /// The flag's value, or nothing.
    [[nodiscard]] std::optional<std::string> value(const std::string& flag) const;
    /// Every value of a repeatable flag.
    [[nodiscard]] std::vector<std::string> values(const std::string& flag) const;

private:
    std::vector<std::string> words_;
    std::map<std::string, std::vector<std::string>> flags_;
};

/// Turns an InputError of reading a flag's value into a UsageError that names the flag.
template <class Read>
auto flag_value(std::string_view flag, Read&& read) -> decltype(read()) {
    try {
        return read();
    } catch (const InputError& error) {
        std::vector<Fault> faults = error.faults();
        for (Fault& fault : faults) fault.message = std::string(flag) + ": " + fault.message;
        throw Error(FaultClass::usage, std::move(faults));
    }
}

}  // namespace baitwright
