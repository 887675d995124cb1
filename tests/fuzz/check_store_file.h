#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <vector>

#include "fuzz/fuzz_folder.h"

/// What the program promises of any file in the place of its store: it reads it, or says what is wrong with it.
///
/// The first byte says how the rest makes the file, the second which commands read it: `f` the rest is the file; `p`
/// patches of a sound store, each of three bytes for where and one to put there; `v` values for its columns, each of a
/// byte for the table, for the column, for the row and for the kind of value, and eight bytes for the value.
namespace baitwright::fuzz {

/// Takes numbers off the front of bytes; 0 where none is left.
class Taken {
public:
    explicit Taken(std::string_view bytes) : rest_(bytes) {}
    [[nodiscard]] bool empty() const { return rest_.empty(); }
    std::uint64_t number(std::size_t size) {
        std::uint64_t value = 0;
        const std::size_t there = std::min(size, rest_.size());
        std::memcpy(&value, rest_.data(), there);
        rest_.remove_prefix(there);
        return value;
    }

private:
    std::string_view rest_;
};

inline std::string patched(std::string store, Taken patches) {
    while (!patches.empty()) {
        const std::uint64_t place = patches.number(3);
        store[place % store.size()] = static_cast<char>(patches.number(1));
    }
    return store;
}

inline std::vector<std::string> texts_of(SQLite::Database& database, const std::string& sql, int column) {
    std::vector<std::string> texts;
    SQLite::Statement rows(database, sql);
    while (rows.executeStep()) texts.push_back(rows.getColumn(column).getString());
    return texts;
}

inline void bind_value(SQLite::Statement& update, std::uint64_t kind, std::uint64_t bits) {
    double real = 0;
    std::memcpy(&real, &bits, sizeof real);
    const std::string bytes(reinterpret_cast<const char*>(&bits), sizeof bits);
    switch (kind % 6) {
        case 0:
            return update.bind(1, static_cast<std::int64_t>(bits));
        case 1:
            return update.bind(1, real);
        case 2:
            return update.bind(1, bytes);
        case 3:
            return update.bind(1, bytes.data(), static_cast<int>(bytes.size()));
        case 4:
            return update.bind(1, static_cast<std::int64_t>(static_cast<std::int16_t>(bits)));
        default:
            return update.bind(1);
    }
}

/// Puts the values into the store that lies there, past its own checks.
inline void put_values(const std::string& path, Taken values) {
    SQLite::Database database(path, SQLite::OPEN_READWRITE);
    database.exec("PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF; PRAGMA synchronous = OFF");
    for (const std::string& trigger : texts_of(database, "SELECT name FROM sqlite_master WHERE type = 'trigger'", 0))
        database.exec("DROP TRIGGER " + trigger);
    const auto tables = texts_of(database, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name", 0);
    for (int put = 0; put < 8 && !values.empty(); ++put) {
        const std::string table = tables[values.number(1) % tables.size()];
        const auto columns = texts_of(database, "PRAGMA table_info(" + table + ")", 1);
        const std::string column = columns[values.number(1) % columns.size()];
        const std::uint64_t row = values.number(1), kind = values.number(1), bits = values.number(8);
        SQLite::Statement update(database, "UPDATE OR IGNORE " + table + " SET " + column + " = ?1 WHERE " +
                                               columns[0] + " = (SELECT " + columns[0] + " FROM " + table +
                                               " LIMIT 1 OFFSET " + std::to_string(row % 16) + ")");
        bind_value(update, kind, bits);
        update.tryExecuteStep();  // what SQLite itself refuses stays as it was
    }
}

/// Commands that read all that a store holds, or take it over into another.
inline const std::vector<std::vector<std::string>>& reading_commands() {
    static const std::vector<std::vector<std::string>> commands{
        {"ingredient", "export"},
        {"ingredient", "list"},
        {"recipe", "list", "--json"},
        {"recipe", "show", "silt bed", "--old"},
        {"strategy", "list"},
        {"venue", "list"},
        {"blend", "list"},
        {"mix", "silt bed", "--dry-mass", "1kg", "--json"},
        {"plan", "open carpet", "--start", "09:00"},
        {"cost", "open carpet", "--json"},
        {"shop", "open carpet"},
        {"stock", "--json"},
        {"stock", "history", "brown crumb"},
        {"stock", "history", "maize meal", "--json"},
        {"price", "list"},
        {"price", "history", "maize meal"},
        {"log", "list", "--json"},
        {"log", "notes"},
        {"log", "show", "1"},
        {"learn"},
        {"paid"},
        {"usual", "--json"},
        {"doctor", "--json"},
        {"backup", "kept.db"},
        {"merge", "baitwright/baitwright.db", "--store", "new.db"},
        {"restore", "baitwright/baitwright.db", "--store", "new.db"},
        {"export", "--all", "out"},
    };
    return commands;
}

inline std::string broken_store(std::string_view bytes) {
    const FuzzFolder& folder = fuzz_folder();
    const FuzzFolder::Inside inside(folder);
    const std::string head(bytes.substr(0, 2));
    const char way = head.empty() ? 'f' : head[0];
    bytes.remove_prefix(head.size());
    if (way == 'p')
        folder.lay(patched(folder.store(), Taken(bytes)));
    else
        folder.lay(way == 'v' ? std::string_view(folder.store()) : bytes);
    if (way == 'v') put_values(folder.place_of_store().string(), Taken(bytes));
    const auto& commands = reading_commands();
    const std::size_t first = head.size() < 2 ? 0 : static_cast<unsigned char>(head[1]);
    for (std::size_t i = 0; i < 3; ++i) {
        const auto& command = commands[(first + 7 * i) % commands.size()];
        if (std::string broken = wrong_with_run(command); !broken.empty()) return command[0] + ": " + broken;
    }
    return {};
}

}  // namespace baitwright::fuzz
