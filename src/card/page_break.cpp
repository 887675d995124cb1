#include "card/page_break.h"

#include <utility>

namespace baitwright {

namespace {

using PageOfSections = std::vector<CardSection>;

/// Pages that fill from the top.
class Filling {
public:
    explicit Filling(const PageRoom& room) : room_(room), y_(room.top_of_first), pages_(1) {}

    void turn() {
        pages_.emplace_back();
        y_ = room_.top_of_others;
    }
    [[nodiscard]] bool holds(double height) const { return y_ + height <= room_.bottom; }
    [[nodiscard]] bool blank() const { return pages_.back().empty(); }
    [[nodiscard]] PageOfSections& page() { return pages_.back(); }
    void take(double height) { y_ += height; }
    std::vector<PageOfSections> pages() && { return std::move(pages_); }

private:
    PageRoom room_;
    double y_;
    std::vector<PageOfSections> pages_;
};

/// Puts in the section row by row. False where a row alone does not fit.
bool fill_rows(Filling& filling, const CardSection& section, const SectionHeights& heights) {
    CardSection part = section;
    part.rows.clear();
    const auto put = [&] {
        if (!part.rows.empty()) filling.page().push_back(part);
        part.rows.clear();
    };
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        const double needed = heights.rows[i] + (part.rows.empty() ? heights.heading : 0);
        if (!filling.holds(needed)) {
            put();
            if (filling.blank()) return false;
            filling.turn();
            if (i > 0) part.heading = section.heading + ", continued";
            if (!filling.holds(heights.heading + heights.rows[i])) return false;
            filling.take(heights.heading);
        } else if (part.rows.empty()) {
            filling.take(heights.heading);
        }
        part.rows.push_back(section.rows[i]);
        filling.take(heights.rows[i]);
    }
    put();
    return true;
}

/// Two columns stay together; where they fill more than a page they become lines.
bool fill_section(Pen& pen, Filling& filling, CardSection section, const Column& column) {
    if (section.look == CardSection::Look::two_columns) {
        const double height = flow_section(pen, section, column, 0);
        if (!filling.holds(height) && !filling.blank()) filling.turn();
        if (filling.holds(height)) {
            filling.page().push_back(std::move(section));
            filling.take(height);
            return true;
        }
        section.look = CardSection::Look::lines;
    }
    return fill_rows(filling, section, heights_of(pen, section, column));
}

}  // namespace

std::optional<std::vector<std::vector<CardSection>>> paged(Pen& pen, const std::vector<CardSection>& sections,
                                                           const Column& column, const PageRoom& room, PageBreak at) {
    Filling filling(room);
    CardSection::Side side = CardSection::Side::bench;
    for (const CardSection& section : sections) {
        if (section.rows.empty()) continue;
        if (at == PageBreak::between_sides && section.side != side && !filling.blank()) filling.turn();
        side = section.side;
        if (!fill_section(pen, filling, section, column)) return std::nullopt;
    }
    return std::move(filling).pages();
}

}  // namespace baitwright
