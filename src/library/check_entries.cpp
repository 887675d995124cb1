#include "library/check_entries.h"

#include <string>
#include <vector>

#include "bait/feel.h"
#include "library/change_library.h"
#include "library/entry_references.h"
#include "library/own_entries.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

/// Every entry, by kind and name.
template <class Work>
void each_entry(const Store& store, Work&& work) {
    for (const EntryKind kind :
         {EntryKind::ingredient, EntryKind::mix, EntryKind::strategy, EntryKind::venue, EntryKind::blend})
        for (const std::string& name : names_of_kind(store, kind)) work(kind, name);
}

/// Calls `take` with each name of an ingredient or a mix that the file's entries refer to.
template <class Take>
void each_reference(LibraryFile& file, Take&& take) {
    for (Entry<Recipe>& entry : file.recipes) {
        for (const Part& part : entry.value.parts) take(part.of);
        for (const Dose& dose : entry.value.doses) take(dose.of);
    }
    for (Entry<Strategy>& entry : file.strategies) {
        for (const Feed& feed : entry.value.feeds)
            for (const FeedPart& part : feed.parts) take(part.of);
        for (const Hookbait& hookbait : entry.value.hookbaits) take(hookbait.of);
    }
    const auto look = [&](const std::string& name) {
        take(name);
        return false;
    };
    for (Entry<Venue>& entry : file.venues) each_name(entry.value, look);
    for (Entry<BlendSpec>& entry : file.blends) each_name(entry.value, look);
}

/// An entry that is removed and kept as it was last.
struct KeptEntry {
    EntryKind kind;
    std::string name;
};

/// What a missing name may be put right by: it was given up for another, or what had it is kept.
struct Missing {
    bool renamed = false;
    std::vector<KeptEntry> kept;
};

Missing missing_in(const Store& store, LibraryFile& file) {
    const EntryRegister entries = store.entries();
    Missing missing;
    each_reference(file, [&](const std::string& name) {
        if (name.empty() || entries.find_name(EntryKind::ingredient, name) || entries.find_name(EntryKind::mix, name))
            return;
        for (const EntryKind kind : {EntryKind::ingredient, EntryKind::mix}) {
            const auto became = entries.became(kind, name);
            if (became && !became->empty() && entries.find_name(kind, *became)) {
                missing.renamed = true;
                return;
            }
            if ((!became || became->empty()) && !store.retired(name_of(kind), name).empty()) {
                missing.kept.push_back({kind, name});
                return;
            }
        }
    });
    return missing;
}

LibraryFile as_file(const Store& store, EntryKind kind, const std::string& name, std::string& text) {
    text = text_of_entry(store, kind, name);
    return read_library_file(text, name);
}

/// Throws what is wrong with it.
void check_entry(const Store& store, EntryKind kind, const std::string& name, bool& mendable) {
    if (kind == EntryKind::ingredient) {
        static_cast<void>(store.find_ingredient(name));
        return;
    }
    if (kind == EntryKind::mix) static_cast<void>(store.find_recipe(name));
    if (kind == EntryKind::strategy) static_cast<void>(store.find_strategy(name));
    std::string text;
    LibraryFile file = as_file(store, kind, name, text);
    if (!file.faults.empty()) throw InputError(std::move(file.faults));
    const Missing missing = missing_in(store, file);
    mendable = missing.renamed || !missing.kept.empty();
    check_file(file, text, store);
}

StoreFinding finding_of(const Fault& fault, EntryKind kind, const std::string& name, bool mendable) {
    const bool says_where = fault.code == "stored-out-of-range" || fault.code == "damaged-store";
    const std::string where = "the " + std::string(name_of(kind)) + " " + in_quotes(name) + ": ";
    return {fault.code, (says_where ? "" : where) + fault.message, mendable ? put_right_todo : fault.hint, mendable};
}

// A mix that counts by packs waits for a person to say which pack: nothing is wrong with the store.
bool is_about_packs(const Fault& fault) {
    return fault.code == "several-packs" || fault.code == "no-pack";
}

void check_usual_venue(const Store& store, StoreFindings& findings) {
    const Usual usual = store.usual();
    const auto venue = usual.find("venue");
    if (venue == usual.end()) return;
    for (const std::string& name : venue->second)
        if (!store.entries().find_name(EntryKind::venue, name))
            findings.add({"unknown-venue", "your usual venue " + in_quotes(name) + " is not in the library",
                          "no longer take it: baitwright usual --forget venue", false});
}

/// Of feels that can be feels, each for itself.
void check_feels(const Store& store, StoreFindings& findings) {
    const std::vector<Feel> feels = store.feels();
    for (const Feel& feel : feels)
        if (first_not_rising({feel})) return;
    const std::string wrong = told_not_rising(feels);
    if (!wrong.empty())
        findings.add(
            {"not-rising", wrong,
             "write all feels, the driest first, into a file with a mix, and add it: baitwright recipe add FILE",
             false});
}

bool mend_entry(Store& store, EntryKind kind, const std::string& name, Date today) {
    std::string text;
    LibraryFile file = as_file(store, kind, name, text);
    if (!file.faults.empty()) return false;
    const Missing missing = missing_in(store, file);
    for (const KeptEntry& kept : missing.kept) restore_entry(store, kept.kind, kept.name, std::nullopt, today);
    if (missing.renamed) {
        follow_renames(store, file);
        put_file(store, file, text, today);
    }
    return missing.renamed || !missing.kept.empty();
}

}  // namespace

void check_entries(const Store& store, StoreFindings& findings) {
    each_entry(store, [&](EntryKind kind, const std::string& name) {
        bool mendable = false;
        try {
            check_entry(store, kind, name, mendable);
        } catch (const Error& error) {
            if (error.fault_class() == FaultClass::try_again) throw;
            for (const Fault& fault : error.faults())
                if (!is_about_packs(fault)) findings.add(finding_of(fault, kind, name, mendable));
        }
    });
    check_usual_venue(store, findings);
    check_feels(store, findings);
}

void mend_references(Store& store, Date today) {
    constexpr int most_rounds = 10;  // what is put back may itself refer to what was removed
    bool again = true;
    for (int round = 0; again && round < most_rounds; ++round) {
        again = false;
        each_entry(store, [&](EntryKind kind, const std::string& name) {
            if (kind == EntryKind::ingredient) return;
            try {
                again = mend_entry(store, kind, name, today) || again;
            } catch (const Error& error) {
                if (error.fault_class() == FaultClass::try_again || error.fault_class() == FaultClass::input_output)
                    throw;
            }
        });
    }
}

}  // namespace baitwright
