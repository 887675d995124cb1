#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "answers/shared/merge_answer.h"
#include "library/entry_value.h"
#include "quantities/date.h"
#include "store/stamp.h"

namespace baitwright {

/// Brings the entries of another store into one, name by name: of what both have, that stands which changed last (the
/// stamps tell; of equal ones the person's before the shipped, then the greater text). What an entry was renamed to in
/// one, it is in the other, too, with what became of it there. What does not stand is kept among the old versions. All
/// of it inside one change.
class MergingEntries {
public:
    MergingEntries(Store& ours, Store& theirs, Date today, MergeAnswer& answer);

    void merge();
    /// What is used is there: a mix's parts, what the shed holds, the venue of every day; and what was renamed is
    /// called so everywhere.
    void mend_references();
    /// By the folded names that ingredients gave up, the folded ones that they have now.
    [[nodiscard]] std::map<std::string, std::string> ingredients_now() const;

private:
    using Names = std::map<std::string, NameState>;
    struct Version {
        NameState state;
        std::string from;  ///< what it was called in its store
        bool is_ours = true;
        EntryValue value;
        std::string text;
        std::int64_t packs_clock = 0;
    };
    struct Contest {
        std::vector<Version> versions;
        std::optional<NameState> gone;
    };
    using Contests = std::map<std::string, Contest>;

    void merge_kind(EntryKind kind);
    void enter(EntryKind kind, Contests& contests, const Names& names, const Names& opposite, bool is_ours);
    void move_ours(EntryKind kind, const Contests& contests);
    void settle(EntryKind kind, const std::string& folded, Contest& contest);
    void let_stand(EntryKind kind, const std::string& folded, Contest& contest, Version& best);
    void let_go(EntryKind kind, const std::string& folded, Contest& contest);
    std::int64_t choose_packs(const Contest& contest, Version& best);
    void keep_loser(EntryKind kind, const std::string& name, const Version& loser, const Version* best);
    [[nodiscard]] bool differ_by_names(const Version& one, const Version& other) const;
    [[nodiscard]] bool is_kept(EntryKind kind, const std::string& name, const Version& loser) const;
    void count(std::string_view kind);

    bool mend_once();
    bool need(std::vector<EntryKind> kinds, const std::string& name);
    bool bring_back(EntryKind kind, const std::string& folded);
    void follow_names();

    Store& ours_;
    Store& theirs_;
    Date today_;
    MergeAnswer& answer_;
    std::map<EntryKind, Names> our_names_;  ///< as they are by now
    std::map<EntryKind, std::map<std::string, Version>> removed_;
    std::map<std::string, std::int64_t> our_packs_, their_packs_;
};

/// Follows names that were given up to what there is; nothing where that was removed.
const NameState* name_now(const std::map<std::string, NameState>& names, const std::string& folded);

}  // namespace baitwright
