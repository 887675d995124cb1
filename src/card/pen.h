#pragma once

#include <cairo.h>
#include <pango/pango.h>

#include <array>
#include <map>
#include <string>
#include <vector>

namespace baitwright {

/// How a piece of text looks.
struct Lettering {
    double size;  ///< points
    enum class Weight { plain, bold } weight = Weight::plain;
    enum class Side { left, right } side = Side::left;
};

/// A width and a height, in points.
struct Extent {
    double width = 0, height = 0;
};

/// The room that a text, a box or a stroke took on the page.
struct Inked {
    double x = 0, y = 0, width = 0, height = 0;
    std::string words;  ///< of a text
};

/// Text, boxes and lines on a page of one cairo surface, in points from its upper left corner. A pen that only measures
/// leaves no ink and no tags, so that measuring and drawing are one code.
class Pen {
public:
    enum class Ink { none, black };

    explicit Pen(cairo_surface_t* surface);
    ~Pen();
    Pen(const Pen&) = delete;
    Pen& operator=(const Pen&) = delete;

    void use(Ink ink) { ink_ = ink; }
    void scale(double factor);
    /// A new page of the PDF.
    void next_page();
    /// Everything from now on stands so much further to the right.
    void move_right(double points);
    /// Where all that is drawn from now on lies is noted there, so that a test can see what would lie on what.
    void note_in(std::vector<Inked>* notes) { notes_ = notes; }

    /// The room that the text takes where it may be so wide; 0 is any width.
    Extent measure(const std::string& text, const Lettering& lettering, double width = 0);
    /// Writes it with its upper left corner there, broken into lines of that width, under a tag of the PDF's structure
    /// ("TD"); says what room it took.
    Extent write(const char* tag, const std::string& text, const Lettering& lettering, double x, double y,
                 double width);
    void box(double x, double y, double side);
    void line(double x1, double y, double x2, double thickness);
    /// Upright, thin: one of a tally.
    void stroke(double x, double y1, double y2);
    void shade(double x, double y, double width, double height);

    void open_tag(const char* tag);
    void close_tag(const char* tag);

    /// cairo's word for what went wrong, or empty.
    [[nodiscard]] std::string fault() const;

private:
    cairo_t* cairo_;
    PangoLayout* layout_;
    Ink ink_ = Ink::none;
    std::vector<Inked>* notes_ = nullptr;
    std::array<std::map<std::string, Extent>, 2> of_one_point_;  ///< of a text in one line, plain and bold

    void note(const Inked& inked);
    const Extent& in_one_line(const std::string& text, Lettering::Weight weight);
    void set(const std::string& text, const Lettering& lettering, double width);
    /// Of what is set, in letters of that size.
    [[nodiscard]] Extent extent(double size) const;
};

/// A tag for as long as it stands in scope.
class Tagged {
public:
    Tagged(Pen& pen, const char* tag) : pen_(pen), tag_(tag) { pen_.open_tag(tag_); }
    ~Tagged() { pen_.close_tag(tag_); }
    Tagged(const Tagged&) = delete;
    Tagged& operator=(const Tagged&) = delete;

private:
    Pen& pen_;
    const char* tag_;
};

}  // namespace baitwright
