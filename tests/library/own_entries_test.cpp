#include "library/own_entries.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <map>
#include <random>

#include "answers/strategy/unroll_strategy.h"
#include "bait/resolve_mix.h"
#include "bait/venue_names.h"
#include "files/library_text.h"
#include "library/blend_names.h"
#include "library/change_shed.h"
#include "library/edited_ingredient.h"
#include "library/named.h"
#include "library/shipped_files.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"
#include "reference/whole_file.h"
#include "store/schema.h"

using namespace baitwright;

namespace {

constexpr std::array<EntryKind, 5> all_kinds{EntryKind::ingredient, EntryKind::mix, EntryKind::strategy,
                                             EntryKind::venue, EntryKind::blend};

/// A folder with a store in it, filled once for all tests and copied.
class OwnStore {
public:
    OwnStore() {
        std::string name = (std::filesystem::temp_directory_path() / "own-XXXXXX").string();
        folder_ = mkdtemp(name.data());
        static const std::string filled = [&] {
            static_cast<void>(open_store(folder_ / "filled.db"));
            return read_whole_file(folder_ / "filled.db");
        }();
        std::FILE* file = std::fopen((folder_ / "store.db").c_str(), "wb");
        std::fwrite(filled.data(), 1, filled.size(), file);
        std::fclose(file);
    }
    ~OwnStore() { std::filesystem::remove_all(folder_); }
    OwnStore(const OwnStore&) = delete;
    OwnStore& operator=(const OwnStore&) = delete;
    [[nodiscard]] std::filesystem::path path() const { return folder_ / "store.db"; }

private:
    static std::string read_whole_file(const std::filesystem::path& path) {
        std::string bytes(std::filesystem::file_size(path), '\0');
        std::FILE* file = std::fopen(path.c_str(), "rb");
        REQUIRE(std::fread(bytes.data(), 1, bytes.size(), file) == bytes.size());
        std::fclose(file);
        return bytes;
    }
    std::filesystem::path folder_;
};

const Date this_day = parse_date("2026-11-27");

template <class Work>
std::string code_of(Work&& work) {
    try {
        work();
    } catch (const Error& error) {
        return error.faults().front().code;
    }
    return {};
}

/// Every entry can be read and used: nothing in it refers to what is not there.
void check_whole(const Store& store) {
    for (const std::string& name : store.recipe_names()) CHECK_NOTHROW(resolve(store.recipe(name), store));
    for (const std::string& name : store.strategy_names()) CHECK_NOTHROW(unroll_strategy(store, store.strategy(name)));
    for (const WrittenEntry& entry : store.entries().written(EntryKind::venue)) {
        const LibraryFile file = read_library_file(entry.text, entry.name);
        REQUIRE(file.venues.size() == 1);
        CHECK(file.venues.front().value.name == entry.name);
        CHECK(unknown_names(file.venues.front().value, store).empty());
    }
    for (const WrittenEntry& entry : store.entries().written(EntryKind::blend)) {
        const LibraryFile file = read_library_file(entry.text, entry.name);
        REQUIRE(file.blends.size() == 1);
        CHECK(file.blends.front().value.name == entry.name);
        CHECK(unfit_candidates(file.blends.front().value, store).empty());
    }
}

/// Plays a random sequence, and keeps book of the versions that must be kept.
class RandomPlay {
public:
    RandomPlay(Store& store, unsigned seed) : store_(store), dice_(seed) {}

    void play(int moves) {
        for (int move = 0; move < moves; ++move) {
            const EntryKind kind = all_kinds[at_most(all_kinds.size())];
            const int what = static_cast<int>(at_most(10));
            if (what < 4)
                rename(kind);
            else if (what < 6)
                remove(kind);
            else if (what < 8)
                restore(kind);
            else if (what < 9)
                copy(kind);
            else
                change(kind);
        }
    }

    void check_versions() const {
        for (const auto& [key, texts] : kept_) {
            std::vector<std::string> found;
            for (const RetiredEntry& entry : store_.retired(name_of(key.first), key.second))
                found.push_back(entry.text);
            std::vector<std::string> wanted = texts;
            std::sort(found.begin(), found.end());
            std::sort(wanted.begin(), wanted.end());
            CHECK(found == wanted);
        }
    }

    /// What was removed comes back, the last first, unless its name was taken meanwhile.
    void bring_back() {
        for (auto one = removed_.rbegin(); one != removed_.rend(); ++one) {
            if (store_.entries().find_name(one->first, one->second)) continue;
            const std::string code =
                code_of([&] { static_cast<void>(restore_entry(store_, one->first, one->second, {}, this_day)); });
            INFO(one->second << ": " << code);
            CHECK((code.empty() || code == "name-taken" || code == "unknown-" + command_word(one->first) ||
                   code == "unknown-ingredient"));
            if (code.empty()) ++brought_back;
        }
    }
    int brought_back = 0, renamed = 0, removed = 0;

private:
    using Key = std::pair<EntryKind, std::string>;

    std::size_t at_most(std::size_t count) { return std::uniform_int_distribution<std::size_t>(0, count - 1)(dice_); }
    std::string any_of(EntryKind kind) {
        const std::vector<std::string> names = names_of_kind(store_, kind);
        return names.empty() ? std::string() : names[at_most(names.size())];
    }
    std::string fresh_name() {
        if (!given_up_.empty() && at_most(4) == 0) return given_up_[at_most(given_up_.size())];
        return "Own name " + std::to_string(++count_);
    }
    std::vector<std::string>& kept(EntryKind kind, const std::string& name) { return kept_[{kind, folded_name(name)}]; }

    void rename(EntryKind kind) {
        const std::string from = any_of(kind), to = fresh_name();
        if (from.empty() || !code_of([&] { rename_entry(store_, kind, from, to); }).empty()) return;
        ++renamed;
        given_up_.push_back(from);
        std::vector<std::string> texts = std::exchange(kept(kind, from), {});
        std::vector<std::string>& now = kept(kind, to);
        now.insert(now.end(), texts.begin(), texts.end());
    }
    void remove(EntryKind kind) {
        const std::string name = any_of(kind);
        if (name.empty()) return;
        const std::string text = text_of_entry(store_, kind, name);
        const std::string code = code_of([&] { remove_entry(store_, kind, name, this_day); });
        if (!code.empty()) {
            CHECK(code == "in-use");
            return;
        }
        ++removed;
        CHECK_FALSE(store_.entries().find_name(kind, name));
        removed_.emplace_back(kind, name);
        kept(kind, name).push_back(text);
    }
    void restore(EntryKind kind) {
        std::vector<std::string> names;
        for (const auto& [key, texts] : kept_)
            if (key.first == kind && !texts.empty()) names.push_back(key.second);
        if (names.empty()) return;
        const std::string name = names[at_most(names.size())];
        const auto now = store_.entries().find_name(kind, name);
        const std::string before = now ? text_of_entry(store_, kind, *now) : std::string();
        const std::size_t version = 1 + at_most(kept(kind, name).size());
        Restored done;
        if (!code_of([&] { done = restore_entry(store_, kind, name, version, this_day); }).empty()) return;
        if (done.change == EntryChange::Kind::replaced) kept(kind, name).push_back(before);
    }
    void copy(EntryKind kind) {
        const std::string name = any_of(kind), to = fresh_name();
        if (!name.empty()) static_cast<void>(code_of([&] { copy_entry(store_, kind, name, to, this_day); }));
    }
    void change(EntryKind kind) {
        const std::string name = any_of(kind);
        if (name.empty()) return;
        const std::string before = text_of_entry(store_, kind, name);
        const std::string line = "note = \"changed " + std::to_string(++count_) + "\"\n";
        std::string text;
        for (std::size_t at = 0; at < before.size();) {
            const std::size_t end = before.find('\n', at) + 1;
            const std::string one = before.substr(at, end - at);
            if (one.rfind("note = ", 0) != 0) text += one;
            if (one.rfind("name = ", 0) == 0) text += line;
            at = end;
        }
        if (code_of([&] { put_edited(store_, kind, name, text, before, "edited", this_day); }).empty())
            kept(kind, name).push_back(before);
    }

    Store& store_;
    std::mt19937 dice_;
    int count_ = 0;
    std::map<Key, std::vector<std::string>> kept_;
    std::vector<std::string> given_up_;
    std::vector<Key> removed_;
};

}  // namespace

TEST_CASE("200 random sequences of renaming, removing, restoring, copying and changing leave every reference whole") {
    int brought_back = 0, renamed = 0, removed = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        INFO("seed " << seed);
        const OwnStore own;
        Store store = open_store(own.path());
        store.change([&] {
            static_cast<void>(store.shed().add(
                Happening::bought, {"brown crumb",
                                    StockKind::ingredient,
                                    {0, StockState::dry, this_day, {}, {}, 0, Milligrams{2'000'000}, {}, ""}}));
        });
        RandomPlay play(store, seed);
        play.play(24);
        check_whole(store);
        play.check_versions();
        std::int64_t in_shed = 0;
        for (const std::string& name : store.shed().names()) in_shed += store.shed().left_of(name).count;
        CHECK(in_shed == 2'000'000);
        play.bring_back();
        check_whole(store);
        brought_back += play.brought_back;
        renamed += play.renamed;
        removed += play.removed;
    }
    CHECK(renamed > 1000);
    CHECK(removed > 300);
    CHECK(brought_back > 200);
}

TEST_CASE("an ingredient's new name is in mixes, strategies, venues, blends, the shed and its prices") {
    const OwnStore own;
    Store store = open_store(own.path());
    const Renamed done = rename_entry(store, EntryKind::ingredient, "Brown  crumb", "gold crumb");
    CHECK(done.from == "brown crumb");
    CHECK(done.followed.size() > 5);
    CHECK_FALSE(store.find_ingredient("brown crumb"));
    const std::vector<Part> parts = store.recipe("silt bed").parts;
    CHECK(std::any_of(parts.begin(), parts.end(), [](const Part& part) { return part.of == "gold crumb"; }));
    CHECK(store.find_usual("gold crumb"));  // what is shipped as brown crumb
    CHECK_FALSE(store.ingredient("gold crumb").packs.empty());
    check_whole(store);
    CHECK(code_of([&] { static_cast<void>(store.ingredient("brown crumb")); }) == "unknown-ingredient");
    CHECK(code_of([&] { known_name(store, EntryKind::ingredient, "brown crumb"); }) == "unknown-ingredient");
}

TEST_CASE("what was renamed or removed does not come back from a newer program") {
    const OwnStore own;
    {
        Store store = open_store(own.path());
        rename_entry(store, EntryKind::mix, "silt bed", "my bed");
        remove_entry(store, EntryKind::venue, "mill pool", this_day);
        store.change([&] { store.set_shipped_digest("another program's"); });
    }
    const Store again = open_store(own.path());
    CHECK_FALSE(again.find_recipe("silt bed"));
    CHECK(again.find_recipe("my bed"));
    CHECK_FALSE(again.entries().find_written(EntryKind::venue, "mill pool"));
}

TEST_CASE("a store of the version before gets the shipped venues and blends, and keeps what the person made") {
    const OwnStore own;
    const std::filesystem::path old = own.path().parent_path() / "old.db";
    {
        SQLite::Database database(old.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        database.exec(whole_file(BAITWRIGHT_SOURCE_DIR "/tests/store/schema_v3.sql"));
        database.exec(
            "INSERT INTO ingredient (name, folded, kind, colour, solute, note, owner)"
            " VALUES ('Brown Crumb', 'brown crumb', 'base', 'mine', '', '', 'person');"
            "INSERT INTO meta VALUES ('shipped_digest', '" +
            std::string(shipped_files_digest()) + "')");
    }
    const Store store = open_store(old);
    CHECK(store.entries().find_written(EntryKind::venue, "long pit"));
    CHECK(store.entries().find_written(EntryKind::blend, "club sack"));
    CHECK(store.ingredient_to_mend("brown crumb")->colour == "mine");
    CHECK(store.usual().empty());
    CHECK(std::filesystem::exists(old.string() + ".before-v" + std::to_string(newest_version())));
}

TEST_CASE("what is in use is not removed, and what uses it is named") {
    const OwnStore own;
    Store store = open_store(own.path());
    try {
        remove_entry(store, EntryKind::mix, "silt bed", this_day);
        FAIL("it was removed");
    } catch (const Error& error) {
        CHECK(error.fault_class() == FaultClass::answer_is_no);
        CHECK(error.faults().front().code == "in-use");
        CHECK(error.faults().front().message.find("the strategy 'open carpet'") != std::string::npos);
    }
    CHECK(store.find_recipe("silt bed"));
}

TEST_CASE("a name is free for one thing alone") {
    const OwnStore own;
    Store store = open_store(own.path());
    CHECK(code_of([&] { rename_entry(store, EntryKind::mix, "silt bed", "Brown Crumb"); }) == "name-taken");
    CHECK(code_of([&] { copy_entry(store, EntryKind::ingredient, "brown crumb", "silt bed", this_day); }) ==
          "name-taken");
    CHECK(code_of([&] { copy_entry(store, EntryKind::venue, "long pit", "a/b", this_day); }) == "bad-name");
    CHECK(code_of([&] { rename_entry(store, EntryKind::mix, "silt bed", "Silt Bed"); }).empty());
    CHECK(store.recipe("silt bed").name == "Silt Bed");
}

TEST_CASE("an old version comes back with what it refers to under its present name, or says what it needs") {
    const OwnStore own;
    Store store = open_store(own.path());
    copy_entry(store, EntryKind::ingredient, "brown crumb", "house crumb", this_day);
    Recipe mix;
    mix.name = "house mix";
    mix.parts = {{"house crumb", 500.0 * gram}};
    put_recipes(store, {mix}, this_day);
    remove_entry(store, EntryKind::mix, "house mix", this_day);
    rename_entry(store, EntryKind::ingredient, "house crumb", "best crumb");
    CHECK(restore_entry(store, EntryKind::mix, "house mix", {}, this_day).change == EntryChange::Kind::added);
    CHECK(store.recipe("house mix").parts.front().of == "best crumb");
    remove_entry(store, EntryKind::mix, "house mix", this_day);
    remove_entry(store, EntryKind::ingredient, "best crumb", this_day);
    CHECK(code_of([&] { restore_entry(store, EntryKind::mix, "house mix", {}, this_day); }) == "unknown-ingredient");
    restore_entry(store, EntryKind::ingredient, "best crumb", {}, this_day);
    CHECK_NOTHROW(restore_entry(store, EntryKind::mix, "house mix", {}, this_day));
}

TEST_CASE("the prices that an ingredient had come back with it") {
    const OwnStore own;
    Store store = open_store(own.path());
    copy_entry(store, EntryKind::ingredient, "brown crumb", "house crumb", this_day);
    tell_price(store, "house crumb", {1.0 * kilogram, parse_money("£2.50"), this_day, ""});
    tell_price(store, "house crumb", {1.0 * kilogram, parse_money("£2.60"), parse_date("2026-11-28"), ""});
    const std::size_t before = store.old_prices("house crumb").size();
    REQUIRE(before > 0);
    remove_entry(store, EntryKind::ingredient, "house crumb", this_day);
    rename_entry(store, EntryKind::mix, "silt bed", "other bed");
    restore_entry(store, EntryKind::ingredient, "house crumb", {}, this_day);
    CHECK(store.old_prices("house crumb").size() == before);
}

TEST_CASE("the text of every shipped entry reads back to the same text") {
    const OwnStore own;
    const Store store = open_store(own.path());
    for (const EntryKind kind : all_kinds)
        for (const std::string& name : names_of_kind(store, kind)) {
            INFO(name);
            const std::string text = text_of_entry(store, kind, name);
            LibraryFile file = read_library_file(text, name);
            REQUIRE(file.faults.empty());
            std::string again;
            for (const Ingredient& one : file.ingredients) again += toml_text({one});
            for (const auto& one : file.recipes) again += toml_text(one.value);
            for (const auto& one : file.strategies) again += toml_text(one.value);
            for (const auto& one : file.venues) again += toml_text(one.value);
            for (const auto& one : file.blends) again += toml_text(one.value);
            CHECK(again == text);
        }
}

TEST_CASE("a file is added whole or not at all, with all that it holds") {
    const OwnStore own;
    Store store = open_store(own.path());
    const std::string text = toml_text({edited_ingredient("pit crumb", store.ingredient("brown crumb"), {})}) +
                             "\n[[mix]]\nname = \"pit mix\"\n[[mix.part]]\nof = \"pit crumb\"\nmass = \"1 kg\"\n"
                             "\n[[venue]]\nname = \"pit\"\n[[venue.ban]]\nof = \"pit crumb\"\n";
    const LibraryFile file = read_library_file(text, "pit.toml");
    REQUIRE(file.faults.empty());
    const std::vector<EntryChange> changes = put_file(store, file, text, this_day);
    REQUIRE(changes.size() == 3);
    CHECK(changes[1].of == "mix");
    CHECK(store.find_recipe("pit mix"));
    const std::string wrong = text + "\n[[blend]]\nname = \"pit blend\"\n[[blend.candidate]]\nof = \"nothing known\"\n";
    const LibraryFile faulty = read_library_file(wrong, "pit.toml");
    REQUIRE(faulty.faults.empty());
    const OwnStore other;
    Store untouched = open_store(other.path());
    CHECK(code_of([&] { put_file(untouched, faulty, wrong, this_day); }) == "unknown-ingredient");
    CHECK_FALSE(untouched.find_recipe("pit mix"));
}
