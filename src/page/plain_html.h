#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/told.h"

/// Told pieces as HTML that anything shows: a mail's preview, a browser of any age, one without a script or a style.
/// Of headings, paragraphs, numbered lists and tables, each closed, and of nothing else; in ASCII.
namespace baitwright {

/// Letters that would be markup, or are beyond ASCII, as references (HTML 4.01, section 5.3).
std::string html_text(std::string_view text);

std::string html_paragraph(std::string_view text);
/// A table, its first row the heads of its columns; rules are left out.
std::string html_table(const TextTable& table);

/// The pieces in their order, a section for each title and each heading, which begins it. A title is a heading of the
/// second order, a heading one of the third.
std::vector<std::string> html_sections(const std::vector<Told::Piece>& pieces);

}  // namespace baitwright
