#pragma once

#include <string>
#include <string_view>
#include <vector>

/// A page of the manual in roff's `man` macros: whatever stands in the texts, none of it is taken for a request.
namespace baitwright {

/// Every letter as itself: a hyphen is one that can be typed, a quote is straight, and a line may begin with a point.
std::string in_roff(std::string_view text);

class RoffPage {
public:
    /// `title` as in "baitwright-mix"; the day in ISO 8601, and what the page belongs to, "baitwright 0.1.0".
    RoffPage(std::string_view title, std::string_view day, std::string_view of);

    void section(std::string_view heading);
    /// "baitwright-mix - what to weigh": how programs that list pages want it.
    void name_line(std::string_view name, std::string_view says);
    void subsection(std::string_view heading);
    void prose(std::string_view text);
    /// A synopsis: what is typed as it stands, then what stands for something else, each on its line.
    void synopsis(std::string_view typed, const std::vector<std::string>& stands_for);
    /// What is explained: as typed, with what it takes; then the explanation.
    void item(std::string_view typed, std::string_view takes, std::string_view text);
    /// Lines as they are typed.
    void typed(const std::vector<std::string>& lines);
    /// Other pages of section 1.
    void see_also(const std::vector<std::string>& pages);

    [[nodiscard]] const std::string& text() const { return text_; }

private:
    /// A heading begins a paragraph by itself.
    [[nodiscard]] bool below_heading() const;

    std::string text_;
};

}  // namespace baitwright
