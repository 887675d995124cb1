#include "card/cairo_printer.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>

#include <cmath>
#include <exception>
#include <memory>

#include "card/pdf_language.h"
#include "card/sheet_layout.h"
#include "card/svg_words.h"

namespace baitwright {

namespace {

constexpr double png_dots_per_inch = 200;

using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;

cairo_status_t append(void* bytes, const unsigned char* data, unsigned length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

Surface pdf_surface(std::string& bytes, const CardSheet& sheet) {
    Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, page_width, page_height),
                    cairo_surface_destroy);
    const std::string moment = sheet.day + "T00:00:00Z";
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, sheet.title.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_SUBJECT, sheet.subtitle.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "baitwright");
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, moment.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_MOD_DATE, moment.c_str());
    return surface;
}

/// A page of its own for each in a PDF; in a picture all side by side.
Surface surface_of(SheetFormat format, std::string& bytes, const CardSheet& sheet, std::size_t pages) {
    if (format == SheetFormat::pdf) return pdf_surface(bytes, sheet);
    const double width = page_width * static_cast<double>(pages);
    if (format == SheetFormat::svg)
        return {cairo_svg_surface_create_for_stream(append, &bytes, width, page_height), cairo_surface_destroy};
    const double dots = png_dots_per_inch / 72;
    return {cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(std::lround(width * dots)),
                                       static_cast<int>(std::lround(page_height * dots))),
            cairo_surface_destroy};
}

void paint_white(cairo_surface_t* surface) {
    cairo_t* cairo = cairo_create(surface);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_paint(cairo);
    cairo_destroy(cairo);
}

/// How it fits, by a surface that keeps nothing: how many pages there are decides how large a picture is.
FittedSheet fitted_before_drawing(const CardSheet& sheet) {
    const Surface nowhere(cairo_recording_surface_create(CAIRO_CONTENT_COLOR, nullptr), cairo_surface_destroy);
    Pen pen(nowhere.get());
    return fitted(pen, sheet);
}

/// Returns what went wrong, or nothing.
std::string draw_on(cairo_surface_t* surface, const FittedSheet& fit, SheetFormat format) {
    if (format != SheetFormat::pdf) paint_white(surface);
    Pen pen(surface);
    if (format == SheetFormat::png) pen.scale(png_dots_per_inch / 72);
    pen.use(Pen::Ink::black);
    const Tagged document(pen, "Document");
    for (std::size_t page = 0; page < fit.pages.size(); ++page) {
        if (page > 0) format == SheetFormat::pdf ? pen.next_page() : pen.move_right(page_width);
        draw_page(pen, fit, page);
    }
    return pen.fault();
}

void close(cairo_surface_t* surface, SheetFormat format, PrintedSheet& printed) {
    if (format == SheetFormat::png) cairo_surface_write_to_png_stream(surface, append, &printed.bytes);
    cairo_surface_finish(surface);
    const cairo_status_t status = cairo_surface_status(surface);
    if (status != CAIRO_STATUS_SUCCESS && printed.fault.empty()) printed.fault = cairo_status_to_string(status);
}

PrintedSheet printed_sheet(const CardSheet& sheet, SheetFormat format) {
    PrintedSheet printed;
    const FittedSheet fit = fitted_before_drawing(sheet);
    if (!fit.fits) {
        printed.fault = "one of its lines, or its title, fills more than an A5 page";
        return printed;
    }
    printed.letters_pt = fit.letters;
    printed.pages = fit.pages.size();
    printed.rows_left_out = fit.rows_left_out;
    const Surface surface = surface_of(format, printed.bytes, fit.sheet, fit.pages.size());
    printed.fault = draw_on(surface.get(), fit, format);
    close(surface.get(), format, printed);
    if (!printed.fault.empty()) printed.bytes.clear();
    if (format == SheetFormat::pdf) printed.bytes = with_language(std::move(printed.bytes));
    if (format == SheetFormat::svg) printed.bytes = with_words(std::move(printed.bytes), fit.sheet);
    return printed;
}

}  // namespace

PrintedSheet CairoPrinter::print(const CardSheet& sheet, SheetFormat format) {
    try {
        return printed_sheet(sheet, format);
    } catch (const std::exception& error) {
        PrintedSheet failed;
        failed.fault = error.what();
        return failed;
    }
}

}  // namespace baitwright
