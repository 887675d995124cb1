#include "library/merge_feels.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

#include "bait/feel.h"
#include "files/library_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

using Stands = MergeConflict::Stands;

struct FeelVersion {
    Feel feel;
    std::string text;
    std::int64_t clock = 0;
};

/// What the two stores have under one name.
struct FeelOfBoth {
    std::optional<FeelVersion> ours, theirs;
};
using FeelsOfBoth = std::map<std::string, FeelOfBoth>;  ///< by folded name

/// What is to stand under a name, and from when.
struct FeelChosen {
    const FeelVersion* version;
    Stands from;
    std::int64_t clock;
};
using FeelsChosen = std::map<std::string, FeelChosen>;

void enter_feels(const Store& store, FeelsOfBoth& both, std::optional<FeelVersion> FeelOfBoth::*side) {
    const auto clocks = store.merging().clocks("feel");
    for (const Feel& feel : store.feels()) {
        const std::string folded = folded_name(feel.name);
        const auto clock = clocks.find(folded);
        both[folded].*side =
            FeelVersion{feel, toml_text(std::vector<Feel>{feel}), clock == clocks.end() ? 0 : clock->second};
    }
}

FeelChosen later_of(const FeelOfBoth& both) {
    const auto& [ours, theirs] = both;
    if (!theirs) return {&*ours, Stands::ours, ours->clock};
    if (!ours) return {&*theirs, Stands::theirs, theirs->clock};
    if (ours->text == theirs->text) return {&*ours, Stands::ours, std::max(ours->clock, theirs->clock)};
    const bool takes = std::tie(ours->clock, ours->text) < std::tie(theirs->clock, theirs->text);
    return takes ? FeelChosen{&*theirs, Stands::theirs, theirs->clock} : FeelChosen{&*ours, Stands::ours, ours->clock};
}

FeelsChosen chosen_one_by_one(const FeelsOfBoth& both) {
    FeelsChosen chosen;
    for (const auto& [folded, feel] : both) chosen.emplace(folded, later_of(feel));
    return chosen;
}

bool rise(std::vector<Feel> feels) {
    sort_by_band(feels);
    return first_not_rising(feels) == nullptr;
}

std::vector<Feel> feels_in(const FeelsChosen& chosen) {
    std::vector<Feel> feels;
    for (const auto& [folded, choice] : chosen) feels.push_back(choice.version->feel);
    return feels;
}

struct FeelSide {
    Stands is;
    std::vector<Feel> feels;
    std::int64_t clock = 0, first_clock = 0;  ///< of the last change, and of the first
    std::string differing;                    ///< the texts of those that both have otherwise
};

FeelSide side_of(const FeelsOfBoth& both, Stands is) {
    FeelSide side{is, {}, 0, 0, {}};
    for (const auto& [folded, feel] : both) {
        const auto& version = is == Stands::ours ? feel.ours : feel.theirs;
        if (!version) continue;
        side.first_clock = side.feels.empty() ? version->clock : std::min(side.first_clock, version->clock);
        side.feels.push_back(version->feel);
        side.clock = std::max(side.clock, version->clock);
        if (feel.ours && feel.theirs && feel.ours->text != feel.theirs->text) side.differing += version->text;
    }
    return side;
}

/// All of them as one of the two stores has them; nothing where neither's rise.
std::optional<Stands> side_that_stands(const FeelSide& ours, const FeelSide& theirs) {
    const bool ours_rise = rise(ours.feels), theirs_rise = rise(theirs.feels);
    if (!ours_rise && !theirs_rise) return std::nullopt;
    if (ours_rise != theirs_rise) return ours_rise ? Stands::ours : Stands::theirs;
    return std::tie(ours.clock, ours.differing) < std::tie(theirs.clock, theirs.differing) ? Stands::theirs
                                                                                           : Stands::ours;
}

/// Later than all that either changed, so that nothing of it comes in one by one again; as it is, where it is so
/// already.
std::int64_t clock_as_one(const FeelSide& standing, const FeelSide& other) {
    if (standing.first_clock == standing.clock && standing.clock > other.clock) return standing.clock;
    const std::int64_t last = std::max(standing.clock, other.clock);
    return last == 0 ? 0 : last + 1;
}

FeelsChosen chosen_as_one(const FeelsOfBoth& both, Stands side, std::int64_t clock) {
    const auto version_of = [](const FeelOfBoth& feel, bool ours) -> const FeelVersion* {
        const auto& version = ours ? feel.ours : feel.theirs;
        return version ? &*version : nullptr;
    };
    const bool is_ours = side == Stands::ours;
    FeelsChosen chosen;
    std::vector<std::pair<std::string, const FeelVersion*>> others;
    for (const auto& [folded, feel] : both)
        if (const FeelVersion* version = version_of(feel, is_ours))
            chosen.emplace(folded, FeelChosen{version, side, clock});
        else
            others.emplace_back(folded, version_of(feel, !is_ours));
    std::sort(others.begin(), others.end(), [](const auto& a, const auto& b) {
        return std::pair(a.second->feel.below, a.first) < std::pair(b.second->feel.below, b.first);
    });
    for (const auto& [folded, version] : others) {
        std::vector<Feel> with = feels_in(chosen);
        with.push_back(version->feel);
        if (rise(with)) chosen.emplace(folded, FeelChosen{version, is_ours ? Stands::theirs : Stands::ours, clock});
    }
    return chosen;
}

class FeelsBrought {
public:
    FeelsBrought(Store& store, Date today, MergeAnswer& answer) : store_(store), today_(today), answer_(answer) {}

    void stand(const std::string& folded, const FeelOfBoth& both, const FeelChosen& chosen) {
        keep_lost(both, chosen.version->text, chosen.version->feel.name, chosen.from, false);
        const std::int64_t our_clock = both.ours ? both.ours->clock : 0;
        const bool other = !both.ours || both.ours->text != chosen.version->text;
        if (other || (our_clock == 0 && chosen.clock > 0))
            store_.put(chosen.version->feel, chosen.clock > 0 ? EntryOwner::person : EntryOwner::shipped);
        if (other) ++changed_;
        if (both.theirs || our_clock != chosen.clock) store_.merging().set_stamp("feel", folded, chosen.clock, 0);
    }
    void go(const std::string& folded, const FeelOfBoth& both, Stands side) {
        keep_lost(both, {}, (both.ours ? both.ours : both.theirs)->feel.name, side, true);
        if (!both.ours) return;
        store_.merging().remove_feel(folded);
        ++changed_;
    }
    [[nodiscard]] std::int64_t changed() const { return changed_; }

private:
    void keep_lost(const FeelOfBoth& both, const std::string& standing, const std::string& name, Stands side,
                   bool gone) {
        for (const auto* lost : {&both.ours, &both.theirs}) {
            if (!*lost || (*lost)->clock == 0 || (*lost)->text == standing) continue;
            const std::vector<RetiredEntry> kept = store_.retired("feel", name);
            if (std::any_of(kept.begin(), kept.end(),
                            [&](const RetiredEntry& old) { return old.text == (*lost)->text; }))
                continue;
            store_.retire({"feel", name, date_text(today_), (*lost)->text});
            answer_.conflicts.push_back({"feel", name, side, gone});
        }
    }

    Store& store_;
    Date today_;
    MergeAnswer& answer_;
    std::int64_t changed_ = 0;
};

}  // namespace

std::int64_t merge_feels(Store& ours, const Store& theirs, Date today, MergeAnswer& answer) {
    FeelsOfBoth both;
    enter_feels(ours, both, &FeelOfBoth::ours);
    enter_feels(theirs, both, &FeelOfBoth::theirs);
    FeelsChosen chosen = chosen_one_by_one(both);
    std::optional<Stands> as_one;
    if (!rise(feels_in(chosen))) {
        const FeelSide our_side = side_of(both, Stands::ours), their_side = side_of(both, Stands::theirs);
        as_one = side_that_stands(our_side, their_side);
        if (as_one)
            chosen = chosen_as_one(
                both, *as_one,
                *as_one == Stands::ours ? clock_as_one(our_side, their_side) : clock_as_one(their_side, our_side));
    }
    const std::size_t conflicts_before = answer.conflicts.size();
    FeelsBrought brought(ours, today, answer);
    for (const auto& [folded, feel] : both)  // what goes makes room first
        if (chosen.count(folded) == 0) brought.go(folded, feel, *as_one);
    for (const auto& [folded, choice] : chosen) brought.stand(folded, both.at(folded), choice);
    if (brought.changed() > 0 || answer.conflicts.size() > conflicts_before) answer.feels_as_one = as_one;
    return brought.changed();
}

}  // namespace baitwright
