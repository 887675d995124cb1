#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What is kept beside the entries of the library (the shed, prices, the log, what was learnt, old versions) as tables
/// that a person can read and change: the columns, their units, and what may stand in them.
namespace baitwright {

/// How a value is written in its cell.
enum class CellForm {
    number,    ///< of an entry or a lot: whole, from 1
    whole,     ///< a whole number from `least` to `most`
    bare,      ///< a number from `least` to `most`
    name,      ///< what something is called
    line,      ///< plain letters
    prose,     ///< plain letters, in several lines where need be
    word,      ///< one of `words`, of which the first may be empty: not said
    truth,     ///< yes or no
    date,      ///< 2026-03-01
    clock,     ///< 09:30; empty: not said
    quantity,  ///< a number of `unit`, or with a unit of its own; `least` and `most` are in SI
    amount,    ///< a number with its unit, "500 g"; two values: one of `words`, for what it measures, and the SI number
    money,     ///< "£3.40"; two values: whole minor units and the currency's code
    grams,     ///< grams; the value is whole milligrams
    mark,      ///< 32 hexadecimal digits behind an m, so that no spreadsheet takes them for a number
    numbers,   ///< numbers parted by blanks; the value is their bytes, little-endian doubles
};

/// How many values stand in one such cell.
constexpr std::size_t values_in(CellForm form) {
    return form == CellForm::amount || form == CellForm::money ? 2 : 1;
}

struct KeptColumn {
    std::string heading;  ///< with its unit: "dry (g)"
    CellForm form = CellForm::line;
    bool optional = false;  ///< an empty cell says that it is not known
    double least = 0, most = 0;
    std::vector<std::string_view> words = {};
    std::string_view unit = {};
    std::string_view of = {};  ///< the table whose numbers, or names, these are
};

struct KeptTable {
    std::string_view name;  ///< of its file, without .csv
    std::vector<KeptColumn> columns;

    /// The place of that column; throws std::logic_error.
    [[nodiscard]] std::size_t column(std::string_view heading) const;
};

/// Whose the entries of the library are, and what is usual; with digests of what was written of each, by which a change
/// by hand is known.
const KeptTable& entries_table();

/// All others, each behind those that it refers to.
const std::vector<KeptTable>& kept_tables();
const KeptTable& kept_table(std::string_view name);

/// Nothing, a whole number, a number, a text or bytes.
using KeptValue = std::variant<std::monostate, std::int64_t, double, std::string>;
/// The values of a row, those of the first column first.
using KeptRow = std::vector<KeptValue>;

}  // namespace baitwright
