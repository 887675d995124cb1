#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "store/merge_tables.h"
#include "store/query.h"

namespace baitwright {

namespace {

/// A table of the log beside `log_entry`: its columns, without the entry's number; and those of them that are no names.
struct LogColumns {
    const char* table;
    std::vector<std::string> all, told;
};

std::vector<LogColumns> log_columns() {
    const auto same = [](const char* table, const std::vector<std::string>& all) {
        return LogColumns{table, all, all};
    };
    return {{"log_session",
             {"start", "length", "anglers", "page", "venue", "venue_folded", "clarity", "temperature", "cost_minor",
              "currency", "note"},
             {"start", "length", "anglers", "page", "clarity", "temperature", "cost_minor", "currency", "note"}},
            same("log_use", {"measure", "amount"}),
            same("log_catch", {"count", "mass"}),
            same("log_mix", {"feel", "wetness", "within", "dry", "water", "wetting"}),
            {"log_part", {"position", "name", "folded", "mass", "moisture"}, {"position", "mass", "moisture"}},
            same("log_soak", {"dry", "drained", "under_water", "temperature"}),
            same("log_weight", {"feel", "vessel", "mass"}),
            same("log_look", {"feel", "measure", "size", "squeeze", "depth", "holds", "breaks_at", "carpet"})};
}

std::string listed_columns(const std::vector<std::string>& columns, const std::string& front) {
    std::string list;
    for (const std::string& column : columns) list += fmt::format("{}{}{}", list.empty() ? "" : ", ", front, column);
    return list;
}

constexpr std::array map_log{
    "CREATE TEMP TABLE merged_log (other_id INTEGER PRIMARY KEY, id INTEGER NOT NULL, is_new INTEGER NOT NULL)",
    "CREATE TEMP TABLE unlike (id INTEGER PRIMARY KEY, other_id INTEGER NOT NULL)",
    "INSERT INTO merged_log SELECT o.id, m.id, 0 FROM other.log_entry o CROSS JOIN main.log_entry m ON m.mark = o.mark",
    "INSERT INTO merged_log SELECT o.id, (SELECT ifnull(max(id), 0) FROM main.log_entry) + row_number()"
    " OVER (ORDER BY o.id), 1 FROM other.log_entry o WHERE o.id NOT IN (SELECT other_id FROM merged_log)",
    "INSERT INTO main.log_entry (id, what, happened_on, session_id, name, folded, at, undoes, believed, mark)"
    " SELECT m.id, o.what, o.happened_on, s.id, o.name, o.folded, o.at, u.id, o.believed, o.mark FROM merged_log m"
    " CROSS JOIN other.log_entry o ON o.id = m.other_id LEFT JOIN merged_log s ON s.other_id = o.session_id"
    " LEFT JOIN merged_log u ON u.other_id = o.undoes WHERE m.is_new",
    "UPDATE main.log_entry AS e SET happened_on = o.happened_on FROM other.log_entry o JOIN merged_log m"
    " ON m.other_id = o.id WHERE o.undoes IS NOT NULL AND NOT m.is_new AND e.id = m.id AND o.happened_on < e.happened_on",
    "UPDATE main.log_entry AS e SET name = o.name, folded = o.folded FROM merged_log m JOIN other.log_entry o"
    " ON o.id = m.other_id WHERE NOT m.is_new AND e.id = m.id AND (o.folded, o.name) > (e.folded, e.name)",
};

constexpr const char* find_beliefs =
    "CREATE TEMP TABLE belief AS SELECT e.id, o.believed FROM other.stamp s JOIN other.log_entry o ON o.mark = s.folded"
    " JOIN main.log_entry e ON e.mark = o.mark WHERE s.kind = 'believed' AND o.believed <> e.believed"
    " AND (s.clock, o.believed) > (ifnull((SELECT t.clock FROM main.stamp t WHERE t.kind = 'believed'"
    " AND t.folded = s.folded), 0), e.believed)";
constexpr const char* count_beliefs = "SELECT count(*) FROM temp.belief";

// Of what both have, belief goes by its last stamp; names are the greater where they are not one.
constexpr std::array settle_log_names{
    "UPDATE main.log_entry AS e SET believed = b.believed FROM temp.belief b WHERE e.id = b.id",
    "UPDATE main.log_session AS e SET venue = o.venue, venue_folded = o.venue_folded FROM merged_log m"
    " JOIN other.log_session o ON o.entry_id = m.other_id WHERE NOT m.is_new AND e.entry_id = m.id"
    " AND m.id NOT IN (SELECT id FROM unlike) AND (o.venue_folded, o.venue) > (e.venue_folded, e.venue)",
    "UPDATE main.log_part AS e SET name = o.name, folded = o.folded FROM merged_log m JOIN other.log_part o"
    " ON o.entry_id = m.other_id WHERE NOT m.is_new AND e.entry_id = m.id AND e.position = o.position"
    " AND m.id NOT IN (SELECT id FROM unlike) AND (o.folded, o.name) > (e.folded, e.name)",
};

constexpr const char* count_new_logged =
    "SELECT count(*), count(*) FILTER (WHERE o.what = 'session') FROM merged_log m JOIN other.log_entry o"
    " ON o.id = m.other_id WHERE m.is_new";

/// SQL of the digest of all that the tables say of an entry, but names.
std::string digest_of_logged(const std::string& schema, const std::string& id) {
    std::string parts;
    for (const LogColumns& one : log_columns())
        parts += fmt::format(
            ", (SELECT group_concat(x) FROM (SELECT mark_of({}) AS x FROM {}.{} WHERE entry_id = {} ORDER BY x))",
            listed_columns(one.told, ""), schema, one.table, id);
    return "mark_of(''" + parts + ")";
}

/// Of what both have, the entries of which a table says something else.
void find_unlike(StoreConnection& connection, const LogColumns& columns) {
    const bool has_position = columns.all.front() == "position";
    const auto unlike = [&](const std::string& left, const std::string& right, const char* left_id,
                            const char* right_id) {
        const std::string table = columns.table;
        std::string differs;
        for (const std::string& column : columns.told)
            differs += fmt::format("{}b.{} IS NOT a.{}", differs.empty() ? "" : " OR ", column, column);
        connection.run_once("INSERT OR IGNORE INTO unlike SELECT m.id, m.other_id FROM merged_log m CROSS JOIN " +
                            left + "." + table + " a ON a.entry_id = m." + left_id + " LEFT JOIN " + right + "." +
                            table + " b ON b.entry_id = m." + right_id +
                            (has_position ? " AND b.position = a.position" : "") + " WHERE NOT m.is_new AND (" +
                            differs + ")");
    };
    unlike("other", "main", "other_id", "id");
    if (has_position) unlike("main", "other", "id", "other_id");
}

void bring_log_table(StoreConnection& connection, const LogColumns& columns) {
    const std::string table = columns.table;
    connection.run_once("INSERT INTO main." + table + " (entry_id, " + listed_columns(columns.all, "") +
                        ") SELECT m.id, " + listed_columns(columns.all, "o.") + " FROM merged_log m JOIN other." +
                        table + " o ON o.entry_id = m.other_id WHERE m.is_new");
}

void take_unlike(StoreConnection& connection) {
    connection.run_once("CREATE TEMP TABLE taken AS SELECT id, other_id FROM unlike u WHERE " +
                        digest_of_logged("other", "u.other_id") + " > " + digest_of_logged("main", "u.id"));
    std::vector<LogColumns> tables = log_columns();
    std::reverse(tables.begin(), tables.end());  // parts before what they belong to
    for (const LogColumns& one : tables)
        connection.run_once("DELETE FROM main." + std::string(one.table) + " WHERE entry_id IN (SELECT id FROM taken)");
    std::reverse(tables.begin(), tables.end());
    for (const LogColumns& one : tables)
        connection.run_once("INSERT INTO main." + std::string(one.table) + " (entry_id, " +
                            listed_columns(one.all, "") + ") SELECT t.id, " + listed_columns(one.all, "o.") +
                            " FROM taken t JOIN other." + one.table + " o ON o.entry_id = t.other_id");
}

}  // namespace

void bring_log(StoreConnection& connection, RowsBrought& brought) {
    for (const char* sql : map_log) connection.run_once(sql);
    for (const LogColumns& table : log_columns()) find_unlike(connection, table);
    for (const LogColumns& table : log_columns()) bring_log_table(connection, table);
    take_unlike(connection);
    connection.run_once(find_beliefs);
    {
        Query row(connection, count_beliefs);
        row.next();
        brought.beliefs = row.whole(0);
    }
    for (const char* sql : settle_log_names) connection.run_once(sql);
    {
        Query row(connection, count_new_logged);
        row.next();
        brought.log_entries = row.whole(0);
        brought.sessions = row.whole(1);
    }
    for (const char* table : {"merged_log", "unlike", "taken", "belief"})
        connection.run_once("DROP TABLE temp." + std::string(table));
}

}  // namespace baitwright
