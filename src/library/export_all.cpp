#include "library/export_all.h"

#include "files/about_export.h"
#include "files/kept_csv.h"
#include "files/library_text.h"
#include "files/new_folder.h"
#include "library/entry_value.h"
#include "library/exported_files.h"
#include "quantities/all_digits.h"
#include "quantities/fault.h"
#include "quantities/progress.h"
#include "store/schema.h"

namespace baitwright {

namespace {

/// What is written of an entry.
struct EntryToWrite {
    std::string text;
    EntryDigest digest;
};

EntryToWrite to_write(const Ingredient& ingredient) {
    return {toml_text({ingredient}), digest_of(ingredient)};
}

template <class Entry>
EntryToWrite to_write(const Entry& entry) {
    return {toml_text(entry), digest_of(entry)};
}

/// Its text stands as it is kept; the digest is that of what will be read of it.
EntryToWrite to_write(EntryKind kind, const WrittenEntry& entry) {
    const std::string& text = entry.text;
    LibraryFile file = read_library_file(text, "");
    EntryToWrite written{text, {}};
    if (kind == EntryKind::venue && file.venues.size() == 1) written.digest = digest_of(file.venues.front().value);
    if (kind == EntryKind::blend && file.blends.size() == 1) written.digest = digest_of(file.blends.front().value);
    return written;
}

class AllOut {
public:
    AllOut(const Store& store, NewFolder& folder) : store_(store), kept_(store.kept()), folder_(folder) {
        for (Feel& feel : store.feels()) feels_.push_back(std::move(feel));
    }

    void library() {
        const std::vector<OwnedEntry> entries = kept_.entries();
        for (const ExportedKind& kind : exported_kinds) {
            begin(std::string(kind.file));
            folder_.add(kind.begins);
            for (const OwnedEntry& entry : entries)
                if (entry.kind == kind.kind) put_entry(entry);
        }
        const Usual usual = store_.usual();
        for (const auto& [key, values] : usual)
            if (!values.empty()) note({"usual", key, EntryOwner::person}, digest_of(values));
        begin(file_of(entries_table()));
        folder_.add(kept_headings(entries_table()));
        for (const KeptRow& row : notes_) {
            folder_.add(kept_csv_row(entries_table(), row));
            ++answer_.back().second;
        }
    }

    void tables() {
        std::int64_t rows = 0;
        for (const KeptTable& table : kept_tables()) rows += kept_.count(table);
        Progress progress("writing all of it", static_cast<std::size_t>(rows));
        for (const KeptTable& table : kept_tables()) {
            begin(file_of(table));
            folder_.add(kept_headings(table));
            kept_.each(table, [&](const KeptRow& row) {
                progress.step();
                folder_.add(kept_csv_row(table, row));
                ++answer_.back().second;
            });
        }
    }

    void about(const std::string& made_by, Date today) {
        AboutExport about;
        about.format = newest_export_format;
        about.made_by = made_by;
        about.made_on = today;
        about.store_version = newest_version();
        about.clock = kept_.clock();
        about.shipped = store_.shipped_digest();
        about.rows = answer_;
        folder_.begin(export_about);
        folder_.add(about_text(about));
    }

    [[nodiscard]] std::vector<std::pair<std::string, std::int64_t>> files() && { return std::move(answer_); }

private:
    void begin(const std::string& file) {
        folder_.begin(file);
        answer_.emplace_back(file, 0);
    }

    EntryToWrite entry_to_write(const OwnedEntry& entry) const {
        if (entry.kind == "ingredient")
            return to_write(std::get<Ingredient>(value_in(store_, EntryKind::ingredient, entry.name)));
        if (entry.kind == "mix") return to_write(std::get<Recipe>(value_in(store_, EntryKind::mix, entry.name)));
        if (entry.kind == "strategy")
            return to_write(std::get<Strategy>(value_in(store_, EntryKind::strategy, entry.name)));
        if (entry.kind == "feel") {
            for (const Feel& feel : feels_)
                if (feel.name == entry.name) return {toml_text(std::vector<Feel>{feel}), digest_of(feel)};
            throw std::logic_error("a feel that is not there");
        }
        const EntryKind kind = entry.kind == "venue" ? EntryKind::venue : EntryKind::blend;
        return to_write(kind, std::get<WrittenEntry>(value_in(store_, kind, entry.name)));
    }

    void put_entry(const OwnedEntry& entry) {
        const EntryToWrite written = entry_to_write(entry);
        folder_.add("\n" + written.text);
        ++answer_.back().second;
        note(entry, written.digest);
    }

    void note(const OwnedEntry& entry, const EntryDigest& digest) {
        const auto mark = [](const std::string& one) { return one.empty() ? KeptValue{} : KeptValue{one}; };
        notes_.push_back({entry.kind, entry.name, std::string(entry.owner == EntryOwner::person ? "person" : "shipped"),
                          mark(digest.text), mark(digest.packs)});
    }

    const Store& store_;
    KeptRows kept_;
    NewFolder& folder_;
    std::vector<Feel> feels_;
    std::vector<KeptRow> notes_;
    std::vector<std::pair<std::string, std::int64_t>> answer_;
};

}  // namespace

ExportAnswer export_all(const Store& store, const std::filesystem::path& folder, const std::string& made_by, Date today,
                        Doing doing) {
    const std::filesystem::path target =
        folder_to_replace(folder, exported_file_names(), export_about, is_about_export);
    const AllDigitsHere exactly;
    NewFolder made(target);
    ExportAnswer answer{doing, folder.string(), {}};
    store.look([&] {
        AllOut out(store, made);
        out.library();
        out.tables();
        out.about(made_by, today);
        answer.files = std::move(out).files();
    });
    if (doing == Doing::done) made.take_place();
    return answer;
}

}  // namespace baitwright
