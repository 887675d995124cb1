#include <algorithm>

#include "library/entry_references.h"
#include "library/merge_entries.h"
#include "library/the_one_entry.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr int most_rounds = 100;

/// The ingredients that venues and blends name.
std::vector<std::string> named_in_texts(const Store& store) {
    std::vector<std::string> names;
    const auto look = [&](std::string& name) {
        names.push_back(name);
        return false;
    };
    for (const EntryKind kind : {EntryKind::venue, EntryKind::blend})
        for (const WrittenEntry& entry : store.entries().written(kind)) {
            LibraryFile file = read_library_file(entry.text, entry.name);
            for (Entry<Venue>& venue : file.venues) each_name(venue.value, look);
            for (Entry<BlendSpec>& blend : file.blends) each_name(blend.value, look);
        }
    return names;
}

}  // namespace

std::map<std::string, std::string> MergingEntries::ingredients_now() const {
    std::map<std::string, std::string> now;
    const Names& names = our_names_.at(EntryKind::ingredient);
    for (const auto& [folded, state] : names)
        if (!state.is_there)
            if (const NameState* called = name_now(names, folded)) now[folded] = folded_name(called->name);
    return now;
}

void MergingEntries::mend_references() {
    for (int round = 0; round < most_rounds && mend_once(); ++round) {
    }
    follow_names();
}

bool MergingEntries::mend_once() {
    bool changed = false;
    const auto look = [&](std::vector<EntryKind> kinds, const std::string& name) {
        changed = need(std::move(kinds), name) || changed;
    };
    for (const MergeBook::Reference& reference : ours_.merging().references())
        look(reference.may_be_mix ? std::vector{EntryKind::ingredient, EntryKind::mix}
                                  : std::vector{EntryKind::ingredient},
             reference.name);
    for (const NamedEntry& item : ours_.merging().held()) look({item.kind}, item.name);
    for (const std::string& name : named_in_texts(ours_)) look({EntryKind::ingredient}, name);
    const Usual usual = ours_.usual();
    if (const auto venue = usual.find("venue"); venue != usual.end())
        for (const std::string& name : venue->second) look({EntryKind::venue}, name);
    return changed;
}

/// True where it had been removed, and is there again.
bool MergingEntries::need(std::vector<EntryKind> kinds, const std::string& name) {
    const std::string folded = folded_name(name);
    for (const EntryKind kind : kinds)
        if (name_now(our_names_[kind], folded)) return false;
    return std::any_of(kinds.begin(), kinds.end(), [&](EntryKind kind) { return bring_back(kind, folded); });
}

bool MergingEntries::bring_back(EntryKind kind, const std::string& folded) {
    const auto found = removed_[kind].find(folded);
    if (found == removed_[kind].end()) return false;
    const Version& version = found->second;
    const std::int64_t clock = our_names_[kind][folded].clock;
    put_value(ours_, kind, version.value, version.state.owner);
    if (kind == EntryKind::ingredient) ours_.entries().take_prices_back(version.state.name);
    ours_.merging().set_stamp(name_of(kind), folded, clock, version.state.since);
    if (kind == EntryKind::ingredient) ours_.merging().set_stamp(stamp_of_packs, folded, version.packs_clock, 0);
    answer_.kept_for_use.push_back(version.state.name);
    our_names_[kind] = ours_.merging().names(kind);
    return true;
}

void MergingEntries::follow_names() {
    for (auto& [kind, names] : our_names_)
        for (const auto& [former, state] : names) {
            const std::string& folded = former;
            if (state.is_there) continue;
            const NameState* now = name_now(names, folded);
            if (!now) continue;
            ours_.merging().follow(kind, folded, now->name);
            if (state.became != now->name) ours_.merging().set_gone(kind, state.name, now->name);
            if (kind == EntryKind::ingredient)
                rewrite_written(ours_, [&](std::string& name) {
                    if (folded_name(name) != folded) return false;
                    name = now->name;
                    return true;
                });
        }
}

}  // namespace baitwright
