#pragma once

#include <map>
#include <stdexcept>
#include <string>

#include "answers/blend/linear_programme.h"
#include "reference/reference_rows.h"

namespace baitwright::reference {

/// A programme of `linear_programmes.csv`, with the places of its columns and rows by name.
struct NamedProgramme {
    LinearProgramme programme;
    std::map<std::string, std::size_t> columns, rows;
};

inline Bounds bounds_in(const Row& row) {
    const std::string &lowest = row.at("lowest"), &highest = row.at("highest");
    return {lowest.empty() ? -without_limit : std::stod(lowest), highest.empty() ? without_limit : std::stod(highest)};
}

inline NamedProgramme programme_called(const std::string& name) {
    NamedProgramme named;
    LinearProgramme& programme = named.programme;
    for (const Row& row : rows_in("linear_programmes.csv")) {
        if (row.at("programme") != name) continue;
        const std::string &column = row.at("column"), &its_row = row.at("row");
        if (column.empty()) {
            named.rows[its_row] = programme.rows.size();
            programme.rows.push_back(bounds_in(row));
        } else if (its_row.empty()) {
            named.columns[column] = programme.columns.size();
            programme.columns.push_back({std::stod(row.at("value")), bounds_in(row), {}});
        } else {
            programme.columns.at(named.columns.at(column))
                .entries.push_back({named.rows.at(its_row), std::stod(row.at("value"))});
        }
    }
    if (programme.columns.empty()) throw std::runtime_error("no programme " + name);
    return named;
}

/// What the row of that id in `linear_optima.csv` expects.
inline std::string expected_of(const std::string& id) {
    for (const Row& row : rows_in("linear_optima.csv"))
        if (row.at("id") == id) return row.at("expected");
    throw std::runtime_error("no row " + id);
}

}  // namespace baitwright::reference
