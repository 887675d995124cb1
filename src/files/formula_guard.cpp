#include "files/formula_guard.h"

#include <algorithm>

namespace baitwright {

namespace {

/// "-12.5", "-1e-05": what our own columns hold, and to a spreadsheet a number and no formula.
bool is_plain_number(std::string_view text) {
    const auto digits = [&] {
        const auto end = std::min(text.find_first_not_of("0123456789"), text.size());
        text.remove_prefix(end);
        return end > 0;
    };
    const auto take = [&](std::string_view one_of) {
        if (text.empty() || one_of.find(text.front()) == std::string_view::npos) return false;
        text.remove_prefix(1);
        return true;
    };
    take("-");
    if (!digits() || (take(".") && !digits())) return false;
    if (take("e")) {
        take("+-");
        if (!digits()) return false;
    }
    return text.empty();
}

/// Whether a spreadsheet might run it. An apostrophe in front changes nothing of the answer: this lets `unguarded`
/// tell what `guarded` did.
bool may_be_run(std::string_view text) {
    const auto first = text.find_first_not_of(" '");
    return first != std::string_view::npos &&
           std::string_view("=+-@\t\r\n\0", 8).find(text[first]) != std::string_view::npos &&
           !is_plain_number(text.substr(first));
}

}  // namespace

std::string guarded(std::string_view text) {
    return may_be_run(text) ? "'" + std::string(text) : std::string(text);
}

std::string unguarded(std::string_view cell) {
    if (!cell.empty() && cell.front() == '\'' && may_be_run(cell)) cell.remove_prefix(1);
    return std::string(cell);
}

}  // namespace baitwright
