#include "card/pen.h"

#include <pango/pangocairo.h>

namespace baitwright {

namespace {

/// The first of these that the machine has; each letter that one lacks is taken from the next.
constexpr const char* families = "DejaVu Sans Condensed,DejaVu Sans,Liberation Sans,Noto Sans,sans-serif";
constexpr double shade_of_grey = 0.87;  // light enough for black letters on any printer
/// Points. All text is laid out in letters of this size and drawn larger or smaller: they are not hinted, so lines
/// break alike in every size, and Pango, which looks for fonts in two threads for each size, looks twice in all.
constexpr double set_in = 10;

double points(int pango_units) {
    return static_cast<double>(pango_units) / PANGO_SCALE;
}

}  // namespace

Pen::Pen(cairo_surface_t* surface) : cairo_(cairo_create(surface)), layout_(pango_cairo_create_layout(cairo_)) {
    // Letters are not moved onto the pixels of one device, so that lines break alike in every format.
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(pango_layout_get_context(layout_), options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(pango_layout_get_context(layout_), FALSE);
    pango_layout_set_wrap(layout_, PANGO_WRAP_WORD_CHAR);
    // A ligature hides letters from what reads a PDF's text aloud.
    PangoAttrList* attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes, pango_attr_font_features_new("liga=0, clig=0"));
    pango_layout_set_attributes(layout_, attributes);
    pango_attr_list_unref(attributes);
}

Pen::~Pen() {
    g_object_unref(layout_);
    cairo_destroy(cairo_);
}

void Pen::scale(double factor) {
    cairo_scale(cairo_, factor, factor);
    pango_cairo_update_layout(cairo_, layout_);
}

void Pen::next_page() {
    cairo_show_page(cairo_);
}

void Pen::move_right(double points) {
    cairo_translate(cairo_, points, 0);
}

void Pen::set(const std::string& text, const Lettering& lettering, double width) {
    PangoFontDescription* font = pango_font_description_new();
    pango_font_description_set_family_static(font, families);
    pango_font_description_set_absolute_size(font, set_in * PANGO_SCALE);
    pango_font_description_set_weight(
        font, lettering.weight == Lettering::Weight::bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_layout_set_font_description(layout_, font);
    pango_font_description_free(font);
    pango_layout_set_alignment(layout_,
                               lettering.side == Lettering::Side::right ? PANGO_ALIGN_RIGHT : PANGO_ALIGN_LEFT);
    pango_layout_set_width(layout_, width > 0 ? static_cast<int>(width * set_in / lettering.size * PANGO_SCALE) : -1);
    pango_layout_set_text(layout_, text.data(), static_cast<int>(text.size()));
}

Extent Pen::extent(double size) const {
    int width = 0, height = 0;
    pango_layout_get_size(layout_, &width, &height);
    return {points(width) * size / set_in, points(height) * size / set_in};
}

Extent Pen::measure(const std::string& text, const Lettering& lettering, double width) {
    if (text.empty()) return {};
    const Extent& line = in_one_line(text, lettering.weight);
    if (width <= 0 || line.width * lettering.size < width)
        return {line.width * lettering.size, line.height * lettering.size};
    set(text, lettering, width);
    return extent(lettering.size);
}

const Extent& Pen::in_one_line(const std::string& text, Lettering::Weight weight) {
    auto& known = of_one_point_[weight == Lettering::Weight::bold ? 1 : 0];
    const auto found = known.find(text);
    if (found != known.end()) return found->second;
    set(text, {1, weight}, 0);
    return known.emplace(text, extent(1)).first->second;
}

Extent Pen::write(const char* tag, const std::string& text, const Lettering& lettering, double x, double y,
                  double width) {
    if (text.empty()) return {};
    if (ink_ == Ink::none) return measure(text, lettering, width);
    set(text, lettering, width);
    const Tagged tagged(*this, tag);
    cairo_set_source_rgb(cairo_, 0, 0, 0);
    cairo_save(cairo_);
    cairo_translate(cairo_, x, y);
    cairo_scale(cairo_, lettering.size / set_in, lettering.size / set_in);
    cairo_move_to(cairo_, 0, 0);
    pango_cairo_show_layout(cairo_, layout_);
    cairo_restore(cairo_);
    const Extent taken = extent(lettering.size);
    const bool to_the_right = lettering.side == Lettering::Side::right && width > taken.width;
    note({to_the_right ? x + width - taken.width : x, y, taken.width, taken.height, text});
    return taken;
}

void Pen::box(double x, double y, double side) {
    if (ink_ == Ink::none) return;
    cairo_set_source_rgb(cairo_, 0, 0, 0);
    note({x, y, side, side, {}});
    cairo_set_line_width(cairo_, 0.9);
    cairo_rectangle(cairo_, x, y, side, side);
    cairo_stroke(cairo_);
}

void Pen::line(double x1, double y, double x2, double thickness) {
    if (ink_ == Ink::none) return;
    cairo_set_source_rgb(cairo_, 0, 0, 0);
    cairo_set_line_width(cairo_, thickness);
    cairo_move_to(cairo_, x1, y);
    cairo_line_to(cairo_, x2, y);
    cairo_stroke(cairo_);
}

void Pen::stroke(double x, double y1, double y2) {
    if (ink_ == Ink::none) return;
    cairo_set_source_rgb(cairo_, 0, 0, 0);
    note({x, y1, 0, y2 - y1, {}});
    cairo_set_line_width(cairo_, 0.6);
    cairo_move_to(cairo_, x, y1);
    cairo_line_to(cairo_, x, y2);
    cairo_stroke(cairo_);
}

void Pen::note(const Inked& inked) {
    if (notes_) notes_->push_back(inked);
}

void Pen::shade(double x, double y, double width, double height) {
    if (ink_ == Ink::none) return;
    cairo_set_source_rgb(cairo_, shade_of_grey, shade_of_grey, shade_of_grey);
    cairo_rectangle(cairo_, x, y, width, height);
    cairo_fill(cairo_);
}

void Pen::open_tag(const char* tag) {
    if (ink_ == Ink::black) cairo_tag_begin(cairo_, tag, nullptr);
}

void Pen::close_tag(const char* tag) {
    if (ink_ == Ink::black) cairo_tag_end(cairo_, tag);
}

std::string Pen::fault() const {
    const cairo_status_t status = cairo_status(cairo_);
    return status == CAIRO_STATUS_SUCCESS ? std::string() : cairo_status_to_string(status);
}

}  // namespace baitwright
