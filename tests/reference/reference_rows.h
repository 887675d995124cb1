#pragma once

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

/// Published numbers to hold our own against, kept as CSV (RFC 4180) in `tests/reference/`: each row says where it is
/// from, and whether that was read or comes from memory.
namespace baitwright::reference {

using Row = std::map<std::string, std::string>;

namespace detail {

/// Takes one field off the front of `rest`; the comma or line end behind it stays.
inline std::string take_field(std::string_view& rest) {
    std::string field;
    if (rest.substr(0, 1) != "\"") {
        field = rest.substr(0, rest.find_first_of(",\r\n"));
        rest.remove_prefix(field.size());
        return field;
    }
    rest.remove_prefix(1);
    while (true) {
        const auto quote = rest.find('"');
        if (quote == std::string_view::npos) throw std::runtime_error("CSV: a quoted field does not end");
        field += rest.substr(0, quote);
        rest.remove_prefix(quote + 1);
        if (rest.substr(0, 1) != "\"") return field;
        field += '"';
        rest.remove_prefix(1);
    }
}

inline std::vector<std::string> take_record(std::string_view& rest) {
    std::vector<std::string> fields{take_field(rest)};
    while (rest.substr(0, 1) == ",") {
        rest.remove_prefix(1);
        fields.push_back(take_field(rest));
    }
    if (rest.substr(0, 1) == "\r") rest.remove_prefix(1);
    if (!rest.empty() && rest.front() != '\n') throw std::runtime_error("CSV: text after a quoted field");
    if (!rest.empty()) rest.remove_prefix(1);
    return fields;
}

}  // namespace detail

/// The rows of a CSV text, by the names in its first record; every record must have as many fields as that.
inline std::vector<Row> rows_of(std::string_view text) {
    const auto names = detail::take_record(text);
    std::vector<Row> rows;
    while (!text.empty()) {
        const auto fields = detail::take_record(text);
        if (fields.size() != names.size()) {
            throw std::runtime_error("CSV: row " + std::to_string(rows.size() + 1) + " has another number of fields");
        }
        Row row;
        for (std::size_t i = 0; i < names.size(); ++i) row[names[i]] = fields[i];
        rows.push_back(row);
    }
    return rows;
}

/// The rows of `tests/reference/<file>`.
inline std::vector<Row> rows_in(const std::string& file) {
    std::ifstream stream(std::string(BAITWRIGHT_SOURCE_DIR) + "/tests/reference/" + file, std::ios::binary);
    if (!stream) throw std::runtime_error("no reference file " + file);
    std::ostringstream text;
    text << stream.rdbuf();
    return rows_of(text.str());
}

}  // namespace baitwright::reference
