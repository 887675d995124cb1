#include "bait/feel.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* delete_feel = "DELETE FROM feel WHERE folded = ?1";
constexpr const char* insert_feel =
    "INSERT INTO feel (below, folded, name, aim, purpose, owner) VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
constexpr const char* insert_retired =
    "INSERT INTO retired (kind, folded, name, retired_on, text) VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr const char* delete_usual = "DELETE FROM usual WHERE key = ?1";
constexpr const char* insert_usual = "INSERT INTO usual VALUES (?1, ?2, ?3)";
constexpr const char* put_digest = "INSERT OR REPLACE INTO meta VALUES ('shipped_digest', ?1)";

}  // namespace

void write_feel(StoreConnection& connection, const Feel& feel, EntryOwner owner) {
    const std::string folded = folded_name(feel.name);
    if (owner == EntryOwner::person) stamp(connection, "feel", folded);
    Query(connection, delete_feel, folded).run();
    Query(connection, insert_feel, feel.below.si(), folded, feel.name, feel.aim.si(), feel.purpose,
          word_of(owner_words, owner))
        .run();
}

void write_retired(StoreConnection& connection, const RetiredEntry& entry) {
    Query(connection, insert_retired, entry.kind, folded_name(entry.name), entry.name, entry.retired_on, entry.text)
        .run();
}

void write_usual(StoreConnection& connection, const std::string& key, const std::vector<std::string>& values) {
    stamp(connection, stamp_of_usual, key);
    Query(connection, delete_usual, key).run();
    std::int64_t position = 0;
    for (const std::string& value : values) Query(connection, insert_usual, key, ++position, value).run();
}

void write_shipped_digest(StoreConnection& connection, std::string_view digest) {
    Query(connection, put_digest, digest).run();
}

}  // namespace baitwright
