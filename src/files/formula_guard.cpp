#include "files/formula_guard.h"

namespace baitwright {

namespace {

/// Whether a spreadsheet might run it. An apostrophe in front changes nothing of the answer: this lets `unguarded`
/// tell what `guarded` did.
bool may_be_run(std::string_view text) {
    const auto first = text.find_first_not_of(" '");
    return first != std::string_view::npos &&
           std::string_view("=+-@\t\r\n\0", 8).find(text[first]) != std::string_view::npos;
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
