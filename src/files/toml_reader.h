#pragma once

#include <toml++/toml.h>

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "files/file_faults.h"
#include "quantities/date.h"
#include "quantities/plain_words.h"

namespace baitwright {

Position place_of(const toml::node& node);

/// A value as a message shows it: "the number 400", "the text '4 g'", "true", "a date", "a list", "a block".
std::string shown(const toml::node& node);

/// One table of a file. It remembers the keys it was asked for, so that at the end every other key is a fault. What a
/// question cannot be answered with becomes a fault at its place, and the answer is nothing.
class TableReader {
public:
    /// `what` names it in messages: "an ingredient".
    TableReader(const toml::table& table, Position place, std::string_view what, FileFaults& faults)
        : table_(table), place_(place), what_(what), faults_(faults) {}

    /// Names it otherwise from here on.
    void call(std::string_view what) { what_ = what; }
    [[nodiscard]] FileFaults& faults() const { return faults_; }
    [[nodiscard]] Position place() const { return place_; }
    [[nodiscard]] const toml::table& table() const { return table_; }
    [[nodiscard]] bool has(std::string_view key) const { return table_.contains(key); }
    /// The place of the key, or that of the table where it has no such key.
    [[nodiscard]] Position place_of_key(std::string_view key) const;
    [[nodiscard]] Position place_of_value(std::string_view key) const;

    const toml::node* find(std::string_view key);
    const toml::node* required(std::string_view key, std::string_view example);

    /// Text of plain letters (`plain_words.h`).
    std::optional<std::string> text(std::string_view key, LineBreaks line_breaks = LineBreaks::refused);
    std::string prose(std::string_view key) { return text(key, LineBreaks::allowed).value_or(std::string()); }
    /// What entries are called by; it must be there.
    std::optional<std::string> name(std::string_view key);
    /// What something else is called by, such as a shop: by the same rules, but it may be left out.
    std::string other_name(std::string_view key);
    /// A number without a unit; it must lie in the range.
    std::optional<double> number(std::string_view key, double lowest, double highest);
    /// One of the words.
    std::optional<std::string> word(std::string_view key, const std::vector<std::string>& words);
    /// true or false.
    std::optional<bool> truth(std::string_view key);
    /// A table in braces or below a heading.
    std::optional<TableReader> inner(std::string_view key, std::string_view what);
    /// A day as "2026-03-01".
    std::optional<Date> date(std::string_view key);

    /// Calls `visit` for each block headed [[key]]. A single [key] is a fault, and still visited for its own.
    void each_block(std::string_view key, std::string_view what, const std::function<void(TableReader&)>& visit);

    void refuse_unknown_keys() const;

private:
    const toml::table& table_;
    Position place_;
    std::string what_;
    FileFaults& faults_;
    std::vector<std::string> known_;
};

/// The text of a value, or a fault: "wrong-type", which shows the example, or "unfit-letter".
std::optional<std::string> text_of(const toml::node& node, std::string_view key, std::string_view example,
                                   FileFaults& faults, LineBreaks line_breaks = LineBreaks::refused);

/// The number of a value, or a fault "wrong-type", "not-finite" or "out-of-range".
std::optional<double> number_of(const toml::node& node, std::string_view key, double lowest, double highest,
                                FileFaults& faults);

}  // namespace baitwright
