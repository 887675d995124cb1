#include "library/kept_from_folder.h"

#include <algorithm>
#include <optional>

#include "answers/shared/wanted_feel.h"
#include "bait/stock.h"
#include "library/exported_files.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/progress.h"
#include "store/content_mark.h"

namespace baitwright {

namespace {

/// The place of a column's first value; nothing where the table has no such column.
std::optional<std::size_t> value_of_column(const KeptTable& table, std::string_view heading) {
    std::size_t value = 0;
    for (const KeptColumn& column : table.columns) {
        if (column.heading == heading) return value;
        value += values_in(column.form);
    }
    return std::nullopt;
}

bool says(const KeptRow& row, std::optional<std::size_t> value) {
    return value && !std::holds_alternative<std::monostate>(row[*value]);
}

/// A row that a person added has no mark yet. It gets one by what it says, so that it is the same wherever this folder
/// is taken in; what takes another back gets its mark from that one, in the store.
std::string mark_of_row(const KeptTable& table, const KeptRow& row) {
    return mark_of({"added by hand", table.name, kept_csv_row(table, row)});
}

std::string told_value(const KeptValue& value) {
    if (const auto* name = std::get_if<std::string>(&value)) return in_quotes(*name);
    return "number " + std::to_string(std::get<std::int64_t>(value));
}

/// What the store says of itself, said of the folder.
std::string without_store(std::string_view message) {
    constexpr std::string_view in_store = "in the store, ";
    if (message.starts_with(in_store)) message.remove_prefix(in_store.size());
    return std::string(message);
}

std::string file_referred_to(std::string_view table) {
    return std::string(table) + (table == "ingredients" ? ".toml" : ".csv");
}

}  // namespace

/// The values of a table by which its rows are told apart.
struct KeptFromFolder::Places {
    explicit Places(const KeptTable& table)
        : mark(value_of_column(table, "mark")),
          takes_back(value_of_column(table, "takes back")),
          session(table.name == "log" ? value_of_column(table, "session") : std::nullopt),
          feel(value_of_column(table, "feel")) {}

    [[nodiscard]] Which kind_of(const KeptRow& row) const {
        return says(row, takes_back) ? Which::taking_back : says(row, session) ? Which::of_session : Which::plain;
    }

    std::optional<std::size_t> mark, takes_back, session, feel;
};

/// An undoing takes back one entry that stands and is none itself; others take nothing back.
bool KeptFromFolder::may_take_back(const KeptTable& table, const Places& places, KeptCsvReader& reader,
                                   const KeptRow& row) {
    if (!places.takes_back) return true;
    const std::string_view undone = name_of(Happening::undone);
    const bool is_undoing = std::get<std::string>(row[table.column("what")]) == undone;
    const auto refuse = [&](const std::string& why, const std::string& hint) {
        reader.fault(table.column("takes back"), "inconsistent-values", "'takes back': " + why, hint);
        return false;
    };
    if (!says(row, places.takes_back))
        return !is_undoing || refuse("an entry that is 'undone' says which one it takes back",
                                     "write the number of that entry, or take the row out");
    const auto entry = std::get<std::int64_t>(row[0]), of = std::get<std::int64_t>(row[*places.takes_back]);
    const std::string number = std::to_string(of);
    if (!is_undoing)
        return refuse("only an entry that is 'undone' takes another back", "leave the cell empty, or write undone");
    if (undoings_[table.name].count(of) > 0)
        return refuse("entry " + number + " is itself an undoing", "enter again what happened");
    const auto [first, is_first] = undone_.try_emplace({table.name, of}, entry);
    return is_first || first->second == entry ||
           refuse("entry " + number + " is undone already, by entry " + std::to_string(first->second),
                  "take one of the two out");
}

/// Of what a person added: what came home with notes keeps the word that was written there.
bool KeptFromFolder::knows_feel(const KeptTable& table, const Places& places, KeptCsvReader& reader, KeptRow& row) {
    if (!places.feel || !says(row, places.feel)) return true;
    auto& word = std::get<std::string>(row[*places.feel]);
    const bool by_hand =
        places.mark ? !says(row, places.mark) : logged_by_hand_.count(std::get<std::int64_t>(row[0])) > 0;
    if (word.empty() || !by_hand) return true;
    try {
        word = wanted_feel(store_.feels(), Feel{}, word).name;
        return true;
    } catch (const Error& error) {
        const Fault& fault = error.faults().front();
        reader.fault(table.column("feel"), fault.code, "'feel': " + fault.message, fault.hint);
        return false;
    }
}

bool KeptFromFolder::can_write(const KeptTable& table) const {
    if (faulty_.count(table.name) > 0) return false;
    return std::none_of(table.columns.begin(), table.columns.end(),
                        [&](const KeptColumn& column) { return faulty_.count(column.of) > 0; });
}

void KeptFromFolder::take_row(const KeptTable& table, KeptCsvReader& reader, KeptRow& row) {
    using What = KeptOutcome::What;
    const KeptOutcome outcome = kept_.write(table, row);
    switch (outcome.what) {
        case What::written:
            return;
        case What::twice:
            return reader.fault(0, "set-twice", "there is a row like this one already",
                                "take one of the two out; a row of your own has a number of its own, and no mark");
        case What::unknown: {
            const KeptColumn& column = table.columns[outcome.column];
            const KeptValue& value = row[*value_of_column(table, column.heading)];
            return reader.fault(
                outcome.column, "unknown-row",
                "'" + column.heading + "': there is no " + told_value(value) + " in " + file_referred_to(column.of),
                "look at it once more, or add it there");
        }
        case What::impossible:
            return reader.fault(0, "inconsistent-values", "what this row says does not go together",
                                "look how the other rows of its kind are filled in");
    }
}

void KeptFromFolder::take(const KeptTable& table, Which which) {
    FolderFiles::File* file = files_.find(file_of(table));
    const bool writes = file && can_write(table);
    if (!file || (!writes && which != Which::all && which != Which::plain)) {
        faulty_.insert(table.name);
        return;
    }
    if ((which == Which::taking_back || which == Which::of_session) && seen_.count({table.name, which}) == 0) return;
    const std::size_t before = file->faults.count();
    const Places places(table);
    std::int64_t rows = 0;
    KeptRow row;
    KeptCsvReader reader(table, file->text, file->faults);
    Progress progress("taking in " + file_of(table),
                      static_cast<std::size_t>(std::count(file->text.begin(), file->text.end(), '\n')));
    while (reader.next(row)) {
        ++rows;
        progress.step();
        const Which is = places.kind_of(row);
        if (which == Which::plain) seen_.insert({table.name, is});
        if (which == Which::plain && is == Which::taking_back)
            undoings_[table.name].insert(std::get<std::int64_t>(row[0]));
        if (!writes || (which != Which::all && which != is)) continue;
        if (!may_take_back(table, places, reader, row) || !knows_feel(table, places, reader, row)) continue;
        if (places.mark && !says(row, places.mark) && !says(row, places.takes_back)) {
            if (table.name == "log") logged_by_hand_.insert(std::get<std::int64_t>(row[0]));
            row[*places.mark] = mark_of_row(table, row);
        }
        take_row(table, reader, row);
    }
    if (!writes || file->faults.count() > before) faulty_.insert(table.name);
    rows_[file_of(table)] = rows;
}

void KeptFromFolder::take(std::string_view table) {
    take(kept_table(table), Which::all);
}

void KeptFromFolder::take_all_but(std::string_view name) {
    for (const KeptTable& table : kept_tables()) {
        if (table.name == name || table.name == "stamps" || table.name == "log-sessions") continue;
        const bool refers_to_itself = table.name == "log" || table.name == "shed-entries";
        take(table, refers_to_itself ? Which::plain : Which::all);
        if (table.name == "log") {
            take("log-sessions");
            take(table, Which::of_session);
        }
        if (refers_to_itself) take(table, Which::taking_back);
    }
    check_log();
    check_learnt();
}

void KeptFromFolder::check_all() {
    StoreFindings findings;
    store_.check().look(findings);
    for (const StoreFinding& finding : findings.told())
        if (!finding.mendable)
            files_.add(fault_of_file(finding.code, without_store(finding.what),
                                     "put back what stood in the folder, or write what can be", files_.path_of("")));
}

void KeptFromFolder::check_log() {
    const KeptTable& table = kept_table("log");
    FolderFiles::File* file = files_.find(file_of(table));
    if (!file || !faulty_.empty()) return;
    const std::vector<std::int64_t> unwhole = kept_.unwhole_in_log();
    if (unwhole.empty()) return;
    KeptCsvReader reader(table, file->text, file->faults);
    KeptRow row;
    while (reader.next(row)) {
        const auto number = std::get<std::int64_t>(row[0]);
        if (std::find(unwhole.begin(), unwhole.end(), number) == unwhole.end()) continue;
        reader.fault(0, "inconsistent-values",
                     "entry " + std::to_string(number) + " is not whole: a '" + std::get<std::string>(row[1]) +
                         "' has a row in the table of its kind, and in no other",
                     "add that row, or take this one out");
    }
}

void KeptFromFolder::check_learnt() {
    if (!faulty_.empty()) return;
    try {
        static_cast<void>(store_.log().learnt_water());
        static_cast<void>(store_.log().learnt_mixes());
    } catch (const StorageError& error) {
        files_.add(fault_of_file("inconsistent-values", error.what(),
                                 "put back what stood there; or leave only the headings, and type: baitwright learn",
                                 files_.path_of("learnt-water.csv")));
    }
}

}  // namespace baitwright
