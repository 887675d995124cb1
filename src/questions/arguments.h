#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bait/usual.h"
#include "quantities/fault.h"

namespace baitwright {

/// What a person typed, sorted: words in order, flags by name; and what they always use.
class Arguments {
public:
    Arguments(std::vector<std::string> words, std::map<std::string, std::vector<std::string>> flags, Usual usual = {})
        : words_(std::move(words)), flags_(std::move(flags)), usual_(std::move(usual)) {}

    [[nodiscard]] const std::vector<std::string>& words() const { return words_; }
    [[nodiscard]] bool has(const std::string& flag) const { return flags_.count(flag) > 0; }
    /// The flag's value, or nothing.
    [[nodiscard]] std::optional<std::string> value(const std::string& flag) const;
    /// Every value of a repeatable flag.
    [[nodiscard]] std::vector<std::string> values(const std::string& flag) const;

    /// The flags in the order in which they were typed, one for each time.
    void know_order(std::vector<std::string> flags) { order_ = std::move(flags); }
    /// What was typed for these flags: the flag and its value, in the order typed; where that is not known, flag by
    /// flag as they are named here.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> in_typed_order(
        const std::vector<std::string>& flags) const;

    /// From now on `usual` is what the person always uses.
    void know_usual(Usual usual) { usual_ = std::move(usual); }
    /// True where the person typed the flag, and it was not given by `give_usual`.
    [[nodiscard]] bool typed(const std::string& flag) const { return has(flag) && given_usual_.count(flag) == 0; }

    /// All that is usual for the person.
    [[nodiscard]] const Usual& all_usual() const { return usual_; }
    /// The first of what is usual by that key, or nothing.
    [[nodiscard]] std::optional<std::string> usual(const std::string& key) const;
    /// All that is usual by that key, in the order in which it was said.
    [[nodiscard]] std::vector<std::string> usual_values(const std::string& key) const;
    /// Notes that what is usual by that key decided what a flag means, for `given_usual`.
    void heed_usual(const std::string& flag, const std::string& key) const { given_usual_[flag] = key; }
    /// Gives a flag that was not typed what is usual by that key; nothing is done where the flag was typed, or where
    /// nothing is usual.
    void give_usual(const std::string& flag, const std::string& key);
    /// The flags that were given what is usual, with the keys: {"--pump", "pump"}, in the order of the flags.
    [[nodiscard]] const std::map<std::string, std::string>& given_usual() const { return given_usual_; }
    /// What the person typed for flags, whatever their name, without what was given by `give_usual`.
    [[nodiscard]] std::vector<std::string> typed_values() const;

private:
    std::vector<std::string> words_;
    std::map<std::string, std::vector<std::string>> flags_;
    std::vector<std::string> order_;
    Usual usual_;
    mutable std::map<std::string, std::string> given_usual_;
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
