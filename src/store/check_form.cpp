#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <map>
#include <string>

#include "store/query.h"
#include "store/schema.h"
#include "store/store_check.h"

namespace baitwright {

namespace {

constexpr const char* select_form = "SELECT name, type, sql FROM sqlite_schema WHERE sql IS NOT NULL";

struct FormPart {
    std::string type, sql;
    friend bool operator==(const FormPart&, const FormPart&) = default;
};
using Form = std::map<std::string, FormPart>;

Form made_form() {
    SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    migrate(database, migrations());
    Form form;
    SQLite::Statement rows(database, select_form);
    while (rows.executeStep())
        form[rows.getColumn(0).getString()] = {rows.getColumn(1).getString(), rows.getColumn(2).getString()};
    return form;
}

const Form& form_of_new_store() {
    static const Form form = made_form();
    return form;
}

Form form_of(StoreConnection& connection) {
    Form form;
    Query rows(connection, select_form);
    while (rows.next()) form[rows.text(0)] = {rows.text(1), rows.text(2)};
    return form;
}

/// What a new store has and this one has not, or has otherwise.
Form lacking(StoreConnection& connection) {
    const Form present = form_of(connection);
    Form missing;
    for (const auto& [name, part] : form_of_new_store())
        if (const auto found = present.find(name); found == present.end() || !(found->second == part))
            missing.emplace(name, part);
    return missing;
}

}  // namespace

void check_form(StoreConnection& connection, StoreFindings& findings) {
    const Form present = form_of(connection);
    for (const auto& [name, part] : lacking(connection)) {
        const bool is_there = present.count(name) > 0;
        const std::string what = "the " + part.type + " " + name + (is_there ? " is not as it is made" : " is missing");
        if (part.type == "table")
            findings.add({is_there ? "other-table" : "missing-table", what,
                          "put an older backup back: baitwright restore FILE", false});
        else
            findings.add({"missing-" + part.type, what, put_right_todo, true});
    }
}

void mend_form(StoreConnection& connection) {
    for (const auto& [name, part] : lacking(connection)) {
        if (part.type == "table") continue;
        connection.run_once("DROP " + part.type + " IF EXISTS " + name);
        connection.run_once(part.sql);
    }
}

}  // namespace baitwright
