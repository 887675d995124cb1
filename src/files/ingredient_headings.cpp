#include "files/ingredient_headings.h"

#include <algorithm>
#include <map>
#include <set>

#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

bool parted_otherwise(const CsvRow& row) {
    return row.cells.size() == 1 && row.cells[0].find_first_of(";\t") != std::string::npos;
}

int most_packs(const CsvRow& row) {
    int packs = 1;
    for (const std::string& cell : row.cells) packs = std::max(packs, pack_number(folded_name(cell)));
    return packs;
}

}  // namespace

IngredientHeadings::IngredientHeadings(const CsvRow& row, FileFaults& faults) : count_(row.cells.size()) {
    if (parted_otherwise(row)) {
        readable_ = false;
        faults.add(row.places[0], "not-commas", "the headings are not parted by commas",
                   "save the table as CSV with commas between its cells");
        return;
    }
    const std::vector<IngredientColumn> all = ingredient_columns(most_packs(row));
    std::vector<std::string> known;
    known.reserve(all.size());
    for (const IngredientColumn& column : all) known.push_back(column.heading);
    const std::set<std::string_view> known_names(known.begin(), known.end());
    std::map<std::string, std::size_t> found;
    for (std::size_t cell = 0; cell < count_; ++cell) {
        const std::string heading = folded_name(row.cells[cell]);
        if (heading.empty()) {
            unheaded_.insert(cell);
        } else if (known_names.count(heading) == 0) {
            const std::string near = faults.tells_of(row.places[cell]) ? did_you_mean(heading, known) : std::string();
            faults.add(row.places[cell], "unknown-column",
                       in_quotes(row.cells[cell]) + " is not a heading of ingredients",
                       near.empty() ? "take the column out, or put what it says into the column 'note'" : near);
        } else if (!found.emplace(heading, cell).second) {
            faults.add(row.places[cell], "set-twice", in_quotes(heading) + " heads two columns", "keep one of the two");
        }
    }
    for (const IngredientColumn& column : all)
        if (const auto at = found.find(column.heading); at != found.end()) columns_.push_back({column, at->second});
    for (const char* heading : {"name", "kind"})
        if (!cell_under(heading))
            faults.add(row.places[0], "missing-column", "there is no column " + in_quotes(heading),
                       "add it to the headings; every ingredient has a name and a kind");
}

std::optional<std::size_t> IngredientHeadings::cell_under(std::string_view heading) const {
    for (const PlacedColumn& column : columns_)
        if (column.is.heading == heading) return column.cell;
    return std::nullopt;
}

}  // namespace baitwright
