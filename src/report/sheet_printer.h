#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

#include "report/card_sheet.h"

namespace baitwright {

enum class SheetFormat { pdf, svg, png };

inline constexpr std::array<std::string_view, 3> sheet_format_names{"pdf", "svg", "png"};
constexpr std::string_view name_of(SheetFormat format) {
    return sheet_format_names[static_cast<std::size_t>(format)];
}

/// A sheet on A5, in one format. A PDF has a page a side; a picture shows them side by side.
struct PrintedSheet {
    std::string bytes;
    double letters_pt = 0;  ///< the size of its plain text
    std::size_t pages = 0;
    std::size_t rows_left_out = 0;
    std::string fault;  ///< why there are no bytes; else empty
};

/// Draws sheets. What does so is loaded only by the command that needs it (`cli/load_module.h`). It throws nothing:
/// program and module do not share a C++ runtime.
class SheetPrinter {
public:
    SheetPrinter() = default;
    SheetPrinter(const SheetPrinter&) = delete;
    SheetPrinter& operator=(const SheetPrinter&) = delete;
    virtual ~SheetPrinter() = default;

    virtual PrintedSheet print(const CardSheet& sheet, SheetFormat format) = 0;
};

/// What the module is looked up by; a new name with every change of the class or of CardSheet.
inline constexpr const char* sheet_printer_symbol = "baitwright_sheet_printer_2";

}  // namespace baitwright
