#include "files/csv.h"

#include "files/formula_guard.h"
#include "files/utf8.h"
#include "quantities/edit_distance.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr std::size_t most_cells = 2000000;  // an empty one costs forty bytes, and the file only one

[[noreturn]] void refuse(std::string_view text, std::size_t byte, std::string code, std::string message,
                         std::string hint) {
    const Position place = place_of_byte(text, byte);
    throw InputError(Fault{std::move(code), std::move(message), std::move(hint), {}, place.line, place.column});
}

}  // namespace

CsvRows::CsvRows(std::string_view text, std::size_t most_cells)
    : text_(text), most_cells_(most_cells), at_(text.size() - without_byte_order_mark(text).size()), counted_(at_) {}

bool CsvRows::next(CsvRow& row) {
    if (at_ == text_.size()) return false;
    row.line = line_;
    row.cells.clear();
    row.places.clear();
    do {
        if (++cells_ > most_cells_)
            refuse(text_, at_, "too-large", "the table holds more than 2,000,000 cells", "split it into several files");
        row.places.push_back(place());
        row.cells.push_back(take_cell());
    } while (take(","));
    if (take("\r\n") || take("\n")) begin_line();
    return true;
}

void CsvRows::begin_line() {
    ++line_;
    column_ = 1;
    counted_ = at_;
}

// Where the next cell begins. Only what was taken since the last question is counted.
Position CsvRows::place() {
    column_ += static_cast<int>(letter_count(text_.substr(counted_, at_ - counted_)));
    counted_ = at_;
    return {line_, column_};
}

bool CsvRows::at_cell_end() const {
    const std::string_view rest = text_.substr(at_);
    return rest.empty() || rest[0] == ',' || rest[0] == '\n' || rest.substr(0, 2) == "\r\n";
}

bool CsvRows::take(std::string_view word) {
    if (text_.substr(at_, word.size()) != word) return false;
    at_ += word.size();
    return true;
}

std::string CsvRows::take_cell() {
    return take("\"") ? take_quoted(at_ - 1) : take_plain();
}

std::string CsvRows::take_plain() {
    const std::size_t start = at_;
    for (; !at_cell_end(); ++at_)
        if (text_[at_] == '"')
            refuse(text_, at_, "stray-quote", "a quote stands inside a cell that does not begin with one",
                   "put the whole cell in quotes and double the quotes inside");
    return std::string(text_.substr(start, at_ - start));
}

std::string CsvRows::take_quoted(std::size_t start) {
    std::string cell;
    for (;;) {
        if (at_ == text_.size())
            refuse(text_, start, "unclosed-quote", "this cell begins with a quote that is never closed",
                   "close it, and double the quotes inside");
        if (take("\"\""))
            cell += '"';
        else if (take("\""))
            break;
        else {
            cell += text_[at_++];
            if (cell.back() == '\n') begin_line();
        }
    }
    if (!at_cell_end())
        refuse(text_, at_, "stray-quote", "text follows the closing quote of a cell",
               "double the quotes that belong to the text");
    return cell;
}

std::vector<CsvRow> read_csv(std::string_view text) {
    std::vector<CsvRow> rows;
    CsvRow row{};
    for (CsvRows reader(text, most_cells); reader.next(row);) rows.push_back(row);
    return rows;
}

std::string csv_row(const std::vector<std::string>& cells) {
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) row += ',';
        const std::string cell = guarded(cells[i]);
        const bool is_marked =
            without_byte_order_mark(cell).size() < cell.size();  // passed over as a file's first bytes
        if (!is_marked && cell.find_first_of(",\"\r\n") == std::string::npos) {
            row += cell;
            continue;
        }
        row += '"';
        for (const char c : cell) row += c == '"' ? std::string("\"\"") : std::string(1, c);
        row += '"';
    }
    return row + '\n';
}

}  // namespace baitwright
