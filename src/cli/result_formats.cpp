#include "cli/result_formats.h"

#include <array>

#include "files/csv.h"

namespace baitwright {

std::vector<NamedChange> names_of(const std::vector<EntryChange>& changes) {
    constexpr std::array<const char*, 4> words{"added", "replaced", "unchanged",
                                               "renamed"};  // in the order of the kinds
    std::vector<NamedChange> names;
    names.reserve(changes.size());
    for (const EntryChange& change : changes)
        names.push_back({change.name, words.at(static_cast<std::size_t>(change.kind)), change.of});
    return names;
}

CommandResult given(const Arguments& arguments, const Reply& reply, const std::string& note) {
    if (arguments.has("--json")) return {json_text(reply.json()), reply.status};
    if (arguments.has("--csv")) return {csv_of_rows(reply.rows()), reply.status};
    return {reply.told().text() + note, reply.status, OutputForm::told};
}

std::string csv_of_rows(const std::vector<std::vector<std::string>>& rows) {
    std::string text;
    for (const std::vector<std::string>& row : rows) text += csv_row(row);
    return text;
}

}  // namespace baitwright
