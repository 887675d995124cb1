#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <variant>

#include "files/toml_reader.h"
#include "quantities/quantity.h"
#include "quantities/quantity_text.h"

namespace baitwright {

/// A mass or a volume, whichever the unit says; throws InputError.
std::variant<Mass, Volume> parse_mass_or_volume(std::string_view text);

/// What the hint of a bare number says: which units fit. `read` is the reader that the text would have gone to.
template <class Read>
void refuse_bare_number(const toml::node& node, std::string_view key, std::string_view example, FileFaults& faults,
                        Read&& read) {
    std::string code = "no-unit", hint = "write it in quotes, with its unit";
    try {
        read("1");
    } catch (const Error& error) {
        code = error.faults().front().code;
        hint = error.faults().front().hint;
    }
    faults.add(place_of(node), code,
               "'" + std::string(key) + "' must be text such as \"" + std::string(example) + "\", not " + shown(node),
               hint);
}

/// What `read` makes of the text of a value; whatever it has to say against it becomes a fault at the value.
template <class Read>
auto parsed(const toml::node& node, std::string_view key, std::string_view example, FileFaults& faults, Read&& read)
    -> std::optional<std::decay_t<decltype(read(std::string_view{}))>> {
    if (node.is_number()) {
        refuse_bare_number(node, key, example, faults, read);
        return std::nullopt;
    }
    const auto text = text_of(node, key, example, faults);
    if (!text) return std::nullopt;
    try {
        return read(std::string_view(*text));
    } catch (const Error& error) {
        faults.add(place_of(node), error);
        return std::nullopt;
    }
}

template <class Read>
auto parsed(TableReader& table, std::string_view key, std::string_view example, Read&& read)
    -> std::optional<std::decay_t<decltype(read(std::string_view{}))>> {
    const toml::node* node = table.find(key);
    if (!node) return std::nullopt;
    return parsed(*node, key, example, table.faults(), read);
}

/// A fault where an amount lies outside the range of its measure (`amount_range.h`).
void check_amount(const toml::node& node, std::string_view key, Mass amount, FileFaults& faults);
void check_amount(const toml::node& node, std::string_view key, Volume amount, FileFaults& faults);
void check_amount(const toml::node& node, std::string_view key, Time amount, FileFaults& faults);

/// An amount above 0: a mass, a volume or a time.
template <class Q>
std::optional<Q> amount_of(TableReader& table, std::string_view key, std::string_view example) {
    const auto amount = parsed(table, key, example, [](std::string_view text) { return parse<Q>(text); });
    if (amount) check_amount(*table.find(key), key, *amount, table.faults());
    return amount;
}

}  // namespace baitwright
