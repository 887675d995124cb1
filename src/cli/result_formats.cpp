#include "cli/result_formats.h"

#include "files/csv.h"

namespace baitwright {

std::vector<NamedChange> names_of(const std::vector<EntryChange>& changes) {
    std::vector<NamedChange> names;
    for (const EntryChange& change : changes) {
        const bool added = change.kind == EntryChange::Kind::added,
                   replaced = change.kind == EntryChange::Kind::replaced;
        names.push_back({change.name, added ? "added" : replaced ? "replaced" : "unchanged", change.of});
    }
    return names;
}

CommandResult given(const Arguments& arguments, const Reply& reply, const std::string& note) {
    if (arguments.has("--json")) return {json_text(reply.json()), reply.status};
    if (arguments.has("--csv")) return {csv_of_rows(reply.rows()), reply.status};
    return {reply.told().text() + note, reply.status};
}

std::string csv_of_rows(const std::vector<std::vector<std::string>>& rows) {
    std::string text;
    for (const std::vector<std::string>& row : rows) text += csv_row(row);
    return text;
}

}  // namespace baitwright
