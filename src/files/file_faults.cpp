#include "files/file_faults.h"

#include <algorithm>
#include <utility>

#include "files/utf8.h"

namespace baitwright {

namespace {

/// A caret under a longer line helps nobody.
constexpr std::size_t longest_line_shown = 2000;

std::string_view without_carriage_return(std::string_view line) {
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    return line;
}

std::pair<int, int> place_in_file(const Fault& fault) {
    return {fault.line, fault.column};
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
    ++count_;
    if (!tells_of(place)) return;
    const auto behind =
        std::upper_bound(faults_.begin(), faults_.end(), std::pair(place.line, place.column),
                         [](const std::pair<int, int>& at, const Fault& fault) { return at < place_in_file(fault); });
    faults_.insert(behind,
                   {std::move(code), std::move(message), std::move(hint), {}, place.line, place.column, file_name_});
    if (faults_.size() > most_faults_told) faults_.pop_back();
}

bool FileFaults::tells_of(Position place) const {
    return faults_.size() < most_faults_told || std::pair(place.line, place.column) < place_in_file(faults_.back());
}

void FileFaults::add(Position place, const Error& error) {
    for (const Fault& fault : error.faults()) add(place, fault.code, fault.message, fault.hint);
}

std::vector<Fault> FileFaults::in_file_order() const {
    std::vector<Fault> told = faults_;
    LineWalker lines(text_);
    for (Fault& fault : told) fault.source_line = lines.line(fault.line);
    return first_faults(std::move(told), count_ - faults_.size());
}

}  // namespace baitwright
