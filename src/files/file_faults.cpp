#include "files/file_faults.h"

#include <algorithm>
#include <tuple>

#include "files/utf8.h"

namespace baitwright {

namespace {

/// A caret under a longer line helps nobody.
constexpr std::size_t longest_line_shown = 2000;

std::string_view without_carriage_return(std::string_view line) {
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    return line;
}

}  // namespace

LineWalker::LineWalker(std::string_view text) : rest_(without_byte_order_mark(text)) {}

std::string_view LineWalker::line(int number) {
    while (number_ < number) {
        const auto end = std::min(rest_.find('\n'), rest_.size());
        current_ = without_carriage_return(rest_.substr(0, end));
        rest_.remove_prefix(std::min(end + 1, rest_.size()));
        ++number_;
    }
    return current_.size() > longest_line_shown ? std::string_view{} : current_;
}

void FileFaults::add(Position place, std::string code, std::string message, std::string hint) {
    faults_.push_back({std::move(code), std::move(message), std::move(hint), file_name_, place.line, place.column, {}});
}

void FileFaults::add(Position place, const Error& error) {
    for (const Fault& fault : error.faults()) add(place, fault.code, fault.message, fault.hint);
}

std::vector<Fault> FileFaults::in_file_order() const {
    std::vector<Fault> sorted = faults_;
    std::stable_sort(sorted.begin(), sorted.end(), [](const Fault& a, const Fault& b) {
        return std::tie(a.line, a.column) < std::tie(b.line, b.column);
    });
    LineWalker lines(text_);
    for (Fault& fault : sorted) fault.source_line = lines.line(fault.line);
    return sorted;
}

}  // namespace baitwright
