#pragma once

#include <string>

#include "files/csv.h"

namespace baitwright {

/// CSV as a spreadsheet saves it: a byte order mark, CRLF, every cell in quotes, a column too many.
inline std::string saved_by_spreadsheet(const std::string& text) {
    std::string saved = "\xEF\xBB\xBF";
    for (const CsvRow& row : read_csv(text)) {
        for (const std::string& cell : row.cells) {
            saved += '"';
            for (const char c : cell) saved += c == '"' ? std::string("\"\"") : std::string(1, c);
            saved += "\",";
        }
        saved += "\r\n";
    }
    return saved;
}

}  // namespace baitwright
