// The one door of the module: what the program looks up once it has loaded it (`sheet_printer_symbol`).
#include "card/cairo_printer.h"

extern "C" baitwright::SheetPrinter* baitwright_sheet_printer_2() {
    static baitwright::CairoPrinter printer;
    return &printer;
}
