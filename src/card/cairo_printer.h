#pragma once

#include "report/sheet_printer.h"

namespace baitwright {

/// Draws sheets by Pango and Cairo: PDF with tags and real text; SVG with letters as shapes, which look alike on every
/// machine, and the words in its `desc`; PNG of 200 dots an inch.
class CairoPrinter final : public SheetPrinter {
public:
    PrintedSheet print(const CardSheet& sheet, SheetFormat format) override;
};

}  // namespace baitwright
