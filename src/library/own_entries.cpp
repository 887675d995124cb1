#include "library/own_entries.h"

#include <algorithm>

#include "bait/recipe_names.h"
#include "files/library_text.h"
#include "library/all_faults.h"
#include "library/entry_references.h"
#include "library/entry_value.h"
#include "library/named.h"
#include "library/the_one_entry.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/plain_words.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// "the mix 'silt bed'"
std::string told(const NamedEntry& entry) {
    return "the " + std::string(name_of(entry.kind)) + " " + in_quotes(entry.name);
}

std::string new_name(const std::string& word) {
    std::string name(trimmed(word));
    if (const std::string why = refused_as_name(name); !why.empty())
        throw UsageError("bad-name", "the name " + in_quotes(name) + " " + why, "a name is a few plain words");
    return name;
}

/// Mixes and ingredients share their names: a part of a mix is either.
std::vector<EntryKind> kinds_sharing_names(EntryKind kind) {
    if (kind == EntryKind::ingredient || kind == EntryKind::mix) return {EntryKind::ingredient, EntryKind::mix};
    return {kind};
}

void refuse_taken(const Store& store, EntryKind kind, const std::string& name) {
    for (const EntryKind other : kinds_sharing_names(kind))
        if (const auto known = store.entries().find_name(other, name))
            throw UsageError("name-taken",
                             in_quotes(*known) + " is " + (other == EntryKind::ingredient ? "an " : "a ") +
                                 std::string(name_of(other)) + " already",
                             "take another name");
}

/// Reads text that the store kept, or that a person edited; throws its faults.
LibraryFile read_text(const Store& store, const std::string& text, const std::string& file) {
    LibraryFile read = read_library_file(text, file);
    if (!read.faults.empty()) throw InputError(all_faults(read, text, store));
    return read;
}

std::string name_in(LibraryFile& file, EntryKind kind) {
    std::string name;
    with_the_one(file, kind, [&](const auto& entry) { name = entry.name; });
    return name;
}

void set_name(LibraryFile& file, EntryKind kind, const std::string& name) {
    with_the_one(file, kind, [&](auto& entry) { entry.name = name; });
}

/// The venues and blends that name the ingredient, rewritten by `change` where it says that it changed one.
template <class Change>
void rewrite(Store& store, EntryKind kind, Change&& change) {
    for (const WrittenEntry& entry : store.entries().written(kind)) {
        LibraryFile file = read_library_file(entry.text, entry.name);
        std::string text;
        with_the_one(file, kind, [&](auto& value) {
            if constexpr (std::is_invocable_v<Change, decltype(value)>)
                if (change(value)) text = toml_text(value);
        });
        if (!text.empty()) store.entries().follow_in_text(kind, {entry.name, text});
    }
}

void rename_in_texts(Store& store, const std::string& from, const std::string& to) {
    const auto follow = [&](std::string& name) {
        if (folded_name(name) != folded_name(from)) return false;
        name = to;
        return true;
    };
    rewrite(store, EntryKind::venue, [&](Venue& venue) { return each_name(venue, follow); });
    rewrite(store, EntryKind::blend, [&](BlendSpec& blend) { return each_name(blend, follow); });
}

/// What refers to it: mixes, strategies, venues and blends.
std::vector<NamedEntry> users_of(const Store& store, EntryKind kind, const std::string& name) {
    std::vector<NamedEntry> users = store.entries().users_of(kind, name);
    if (kind != EntryKind::ingredient) return users;
    for (const EntryKind written : {EntryKind::venue, EntryKind::blend})
        for (const WrittenEntry& entry : store.entries().written(written)) {
            LibraryFile file = read_library_file(entry.text, entry.name);
            bool uses = false;
            const auto look = [&](std::string& one) {
                uses = uses || folded_name(one) == folded_name(name);
                return false;
            };
            for (Entry<Venue>& venue : file.venues) each_name(venue.value, look);
            for (Entry<BlendSpec>& blend : file.blends) each_name(blend.value, look);
            if (uses) users.push_back({written, entry.name});
        }
    return users;
}

void follow_usual(Store& store, EntryKind kind, const std::string& from, const std::string& to) {
    if (kind != EntryKind::venue) return;
    const Usual usual = store.usual();
    const auto venue = usual.find("venue");
    if (venue != usual.end() && !venue->second.empty() && folded_name(venue->second.front()) == folded_name(from))
        store.put_usual("venue", {to});
}

Renamed renamed(Store& store, EntryKind kind, const std::string& known, const std::string& to) {
    Renamed done{known, to, users_of(store, kind, known), false};
    const bool in_both = kind == EntryKind::ingredient || kind == EntryKind::mix;
    const auto item = in_both ? store.shed().find(known) : std::nullopt;
    done.in_shed = item && (item->kind == StockKind::ingredient) == (kind == EntryKind::ingredient);
    LibraryFile own;
    if (kind == EntryKind::venue || kind == EntryKind::blend)
        own = read_text(store, text_of_entry(store, kind, known), known);
    store.entries().rename(kind, known, to);
    set_name(own, kind, to);
    for (const Entry<Venue>& venue : own.venues)
        store.entries().put_written(kind, {to, toml_text(venue.value)}, EntryOwner::person);
    for (const Entry<BlendSpec>& blend : own.blends)
        store.entries().put_written(kind, {to, toml_text(blend.value)}, EntryOwner::person);
    if (kind == EntryKind::ingredient) rename_in_texts(store, known, to);
    follow_usual(store, kind, known, to);
    return done;
}

void refuse_new_name(Store& store, EntryKind kind, const std::string& known, const std::string& to) {
    if (folded_name(known) == folded_name(to)) return;
    refuse_taken(store, kind, to);
    if (kind != EntryKind::ingredient && kind != EntryKind::mix) return;
    if (store.shed().find(known) && store.shed().find(to))
        throw UsageError("name-taken", "the shed has held something called " + in_quotes(to) + " before",
                         "take another name, so that the two are not taken for one");
}

[[noreturn]] void refuse_in_use(const std::string& name, const std::vector<std::string>& users) {
    std::string list;
    for (std::size_t i = 0; i < users.size() && i < 8; ++i)
        list += (i == 0 ? "" : i + 1 == users.size() ? " and " : ", ") + users[i];
    if (users.size() > 8) list += " and " + std::to_string(users.size() - 8) + " more";
    throw Error(FaultClass::answer_is_no,
                Fault{"in-use", in_quotes(name) + " is used by " + list, "take it out of these first"});
}

}  // namespace

std::vector<std::string> names_of_kind(const Store& store, EntryKind kind) {
    if (kind == EntryKind::ingredient) return store.ingredient_names();
    if (kind == EntryKind::mix) return store.recipe_names();
    if (kind == EntryKind::strategy) return store.strategy_names();
    std::vector<std::string> names;
    for (const WrittenEntry& entry : store.entries().written(kind)) names.push_back(entry.name);
    return names;
}

std::string known_name(const Store& store, EntryKind kind, const std::string& word) {
    const EntryRegister entries = store.entries();
    if (auto name = entries.find_name(kind, word)) return *std::move(name);
    if (kind == EntryKind::venue || kind == EntryKind::blend)
        if (const std::string gone = entries.told_of_gone(kind, word); !gone.empty())
            throw NotFound("unknown-" + command_word(kind),
                           "no " + std::string(name_of(kind)) + " is called " + in_quotes(word) + " any more", gone);
    if (kind == EntryKind::ingredient) return store.ingredient(word).name;
    if (kind == EntryKind::mix) return store.recipe(word).name;
    if (kind == EntryKind::strategy) return store.strategy(word).name;
    return written_name(store, kind, word);
}

std::string text_of_entry(const Store& store, EntryKind kind, const std::string& name) {
    return text_of(value_in(store, kind, name));
}

EntryChange copy_entry(Store& store, EntryKind kind, const std::string& name, const std::string& as, Date today) {
    const std::string to = new_name(as);
    EntryChange change;
    store.change([&] {
        const std::string known = known_name(store, kind, name);
        refuse_taken(store, kind, to);
        LibraryFile file = read_text(store, text_of_entry(store, kind, known), known);
        set_name(file, kind, to);
        check_file(file, {}, store);
        change = put_checked(store, file, today).front();
    });
    return change;
}

Renamed rename_entry(Store& store, EntryKind kind, const std::string& from, const std::string& to) {
    const std::string name = new_name(to);
    Renamed done;
    store.change([&] {
        const std::string known = known_name(store, kind, from);
        refuse_new_name(store, kind, known, name);
        done = renamed(store, kind, known, name);
    });
    return done;
}

std::string remove_entry(Store& store, EntryKind kind, const std::string& name, Date today) {
    std::string known;
    store.change([&] {
        known = known_name(store, kind, name);
        std::vector<std::string> users;
        for (const NamedEntry& user : users_of(store, kind, known)) users.push_back(told(user));
        const bool in_both = kind == EntryKind::ingredient || kind == EntryKind::mix;
        if (in_both && store.shed().left_of(known) > Milligrams{}) users.emplace_back("the shed, which holds some");
        const Usual usual = store.usual();
        if (const auto venue = usual.find("venue"); kind == EntryKind::venue && venue != usual.end())
            for (const std::string& name_kept : venue->second)
                if (folded_name(name_kept) == folded_name(known))
                    users.emplace_back("your usual (baitwright usual --forget venue)");
        if (!users.empty()) refuse_in_use(known, users);
        store.retire({std::string(name_of(kind)), known, date_text(today), text_of_entry(store, kind, known)});
        store.entries().remove(kind, known);
    });
    return known;
}

namespace {

Restored restored(Store& store, EntryKind kind, const std::string& name, std::optional<std::size_t> version,
                  Date today) {
    const EntryRegister entries = store.entries();
    auto now = entries.find_name(kind, name);
    if (!now && !entries.became(kind, name) && store.retired(name_of(kind), name).empty())
        now = known_name(store, kind, name);
    if (const auto became = entries.became(kind, name); !now && became && !became->empty())
        throw NotFound("unknown-" + command_word(kind),
                       "no " + std::string(name_of(kind)) + " is called " + in_quotes(name) + " any more",
                       entries.told_of_gone(kind, name));
    const std::vector<RetiredEntry> kept = store.retired(name_of(kind), now.value_or(name));
    if (kept.empty()) {
        const std::string known = now ? *now : known_name(store, kind, name);
        throw NotFound("no-old-version", in_quotes(known) + " is as it came: no older version of it is kept",
                       "a version is kept each time that it is changed or removed");
    }
    if (version && (*version < 1 || *version > kept.size()))
        throw UsageError("out-of-range",
                         "there is no version " + std::to_string(*version) + " of " + in_quotes(kept.back().name),
                         "they are numbered from 1, the oldest, to " + std::to_string(kept.size()));
    const std::size_t number = version.value_or(kept.size());
    const RetiredEntry& chosen = kept[number - 1];
    Restored done{now.value_or(chosen.name), chosen.retired_on, number, kept.size(), {}};
    LibraryFile file = read_text(store, chosen.text, "version " + std::to_string(number) + " of " + chosen.name);
    set_name(file, kind, done.name);
    if (!now) refuse_taken(store, kind, done.name);
    follow_renames(store, file);
    check_file(file, chosen.text, store);
    done.change = put_checked(store, file, today).front().kind;
    if (kind == EntryKind::ingredient && !now) store.entries().take_prices_back(done.name);
    return done;
}

}  // namespace

Restored restore_entry(Store& store, EntryKind kind, const std::string& name, std::optional<std::size_t> version,
                       Date today) {
    Restored done;
    store.change([&] { done = restored(store, kind, name, version, today); });
    return done;
}

std::vector<EntryChange> put_edited(Store& store, EntryKind kind, const std::string& name, const std::string& text,
                                    const std::string& before, const std::string& file_name, Date today) {
    LibraryFile file = read_text(store, text, file_name);
    const std::string to = name_in(file, kind);
    if (to.empty())
        throw InputError(fault_of_file(
            "not-the-one", "the text no longer holds just the " + std::string(name_of(kind)) + " " + in_quotes(name),
            "keep that one; others have a file of their own", file_name));
    std::vector<EntryChange> changes;
    store.change([&] {
        if (!store.entries().find_name(kind, name) || text_of_entry(store, kind, name) != before)
            throw Error(FaultClass::try_again,
                        Fault{"changed-meanwhile", in_quotes(name) + " was changed elsewhere while you edited it",
                              "look at it once more"});
        if (to != name) {
            refuse_new_name(store, kind, name, to);
            renamed(store, kind, name, to);
        }
        check_file(file, text, store);
        changes = put_checked(store, file, today);
        for (EntryChange& change : changes)
            if (to != name && change.name == to && change.kind == EntryChange::Kind::unchanged)
                change.kind = EntryChange::Kind::renamed;
    });
    return changes;
}

}  // namespace baitwright
