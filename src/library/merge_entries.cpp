#include "library/merge_entries.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <tuple>

#include "bait/pack.h"
#include "bait/price_book.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "library/entry_references.h"
#include "library/merge_feels.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::array entry_kinds{EntryKind::ingredient, EntryKind::mix, EntryKind::strategy, EntryKind::venue,
                                 EntryKind::blend};

std::string text_of_packs(const std::vector<Pack>& packs) {
    std::string text;
    for (const Pack& pack : packs)
        text += fmt::format("{} {} {} {} {} {}\n", pack.on ? date_text(*pack.on) : "", pack.size.index(),
                            std::visit([](auto size) { return size.si(); }, pack.size),
                            pack.price ? pack.price->minor() : -1,
                            pack.price ? std::string(pack.price->currency().code) : "", pack.shop);
    return text;
}

std::string newest_price(const std::vector<Pack>& packs) {
    std::string newest;
    for (const Pack& pack : packs)
        if (pack.on && pack.price) newest = std::max(newest, date_text(*pack.on));
    return newest;
}

std::int64_t clock_in(const std::map<std::string, std::int64_t>& clocks, const std::string& folded) {
    const auto found = clocks.find(folded);
    return found == clocks.end() ? 0 : found->second;
}

/// The entry with what it refers to called as it is called now; empty where something of it is gone.
std::string text_by_names_now(const Store& store, const std::string& text) {
    try {
        LibraryFile file = read_library_file(text, "an entry");
        if (!file.faults.empty()) return {};
        follow_renames(store, file);
        std::string now;
        for (const Entry<Recipe>& entry : file.recipes) now += toml_text(entry.value);
        for (const Entry<Strategy>& entry : file.strategies) now += toml_text(entry.value);
        for (const Entry<Venue>& entry : file.venues) now += toml_text(entry.value);
        for (const Entry<BlendSpec>& entry : file.blends) now += toml_text(entry.value);
        return now;
    } catch (const InputError&) {
        return {};
    }
}

}  // namespace

const NameState* name_now(const std::map<std::string, NameState>& names, const std::string& folded) {
    std::string at = folded;
    for (int step = 0; step < 100; ++step) {
        const auto found = names.find(at);
        if (found == names.end()) return nullptr;
        if (found->second.is_there) return &found->second;
        if (found->second.became.empty()) return nullptr;
        at = folded_name(found->second.became);
    }
    return nullptr;
}

MergingEntries::MergingEntries(Store& ours, Store& theirs, Date today, MergeAnswer& answer)
    : ours_(ours),
      theirs_(theirs),
      today_(today),
      answer_(answer),
      our_packs_(ours.merging().clocks(stamp_of_packs)),
      their_packs_(theirs.merging().clocks(stamp_of_packs)) {}

void MergingEntries::merge() {
    if (const std::int64_t feels = merge_feels(ours_, theirs_, today_, answer_); feels > 0)
        answer_.entries.emplace_back("feel", feels);
    for (const EntryKind kind : entry_kinds) merge_kind(kind);
}

void MergingEntries::count(std::string_view kind) {
    for (auto& [known, number] : answer_.entries)
        if (known == kind) return static_cast<void>(++number);
    answer_.entries.emplace_back(kind, 1);
}

/// Each entry of a store contends for its name, or for the other_one that the other store has given it; what is gone,
/// too.
void MergingEntries::enter(EntryKind kind, Contests& contests, const Names& names, const Names& opposite,
                           bool is_ours) {
    const auto give_up = [&](const std::string& folded, const NameState& given_up) {
        std::optional<NameState>& gone = contests[folded].gone;
        const auto rank = [](const NameState& state) { return std::tie(state.clock, state.became, state.name); };
        if (!gone || rank(*gone) < rank(given_up)) gone = given_up;
    };
    for (const auto& [folded, state] : names) {
        if (!state.is_there) {
            give_up(folded, state);
            continue;
        }
        Version version{state, state.name, is_ours, value_in(is_ours ? ours_ : theirs_, kind, state.name), {}, 0};
        version.packs_clock = clock_in(is_ours ? our_packs_ : their_packs_, folded);
        std::string contended = folded;
        const auto there = opposite.find(folded);
        if (there != opposite.end() && !there->second.is_there && state.since < there->second.clock)
            if (const NameState* now = name_now(opposite, folded)) {
                version.state.name = now->name;
                version.state.since = now->since;
                call(version.value, kind, now->name);
                contended = folded_name(now->name);
            }
        version.text = text_without_packs(version.value);
        contests[contended].versions.push_back(std::move(version));
    }
}

void MergingEntries::merge_kind(EntryKind kind) {
    Names& ours = our_names_[kind] = ours_.merging().names(kind);
    const Names theirs = theirs_.merging().names(kind);
    Contests contests;
    enter(kind, contests, ours, theirs, true);
    enter(kind, contests, theirs, ours, false);
    move_ours(kind, contests);
    for (auto& [folded, contest] : contests) settle(kind, folded, contest);
    our_names_[kind] = ours_.merging().names(kind);
}

/// What the other store has renamed takes its new name here, too, or makes way for what is called so already.
void MergingEntries::move_ours(EntryKind kind, const Contests& contests) {
    Names& names = our_names_[kind];
    for (const auto& [folded, contest] : contests)
        for (const Version& version : contest.versions) {
            const std::string old = folded_name(version.from);
            if (!version.is_ours || old == folded) continue;
            if (names[folded].is_there) {
                if (kind == EntryKind::ingredient) ours_.merging().lay_prices_by(version.from);
                ours_.merging().remove(kind, version.from);
            } else {
                if (kind == EntryKind::ingredient || kind == EntryKind::mix)
                    ours_.merging().join_items(kind, old, folded);
                ours_.entries().rename(kind, version.from, version.state.name);
                answer_.renamed.emplace_back(version.from, version.state.name);
                names[folded].is_there = true;
                names[folded].name = version.state.name;
                if (kind == EntryKind::venue || kind == EntryKind::blend)
                    put_value(ours_, kind, version.value, version.state.owner);
            }
            names[old].is_there = false;
        }
}

void MergingEntries::settle(EntryKind kind, const std::string& folded, Contest& contest) {
    const auto rank = [](const Version& other_one) {
        return std::tuple(other_one.state.clock, other_one.state.owner == EntryOwner::person,
                          std::string_view(other_one.text));
    };
    auto best = std::max_element(contest.versions.begin(), contest.versions.end(),
                                 [&](const Version& a, const Version& b) { return rank(a) < rank(b); });
    const bool stands = best != contest.versions.end() && (!contest.gone || best->state.clock >= contest.gone->clock);
    if (stands)
        let_stand(kind, folded, contest, *best);
    else
        let_go(kind, folded, contest);
}

void MergingEntries::let_stand(EntryKind kind, const std::string& folded, Contest& contest, Version& best) {
    std::int64_t since = 0;
    for (const Version& version : contest.versions) since = std::max(since, version.state.since);
    for (const Version& version : contest.versions)
        if (&version != &best && version.text != best.text && !differ_by_names(version, best))
            keep_loser(kind, best.state.name, version, &best);
    const bool was_there = our_names_[kind][folded].is_there;
    const auto in_ours = [&](const Version& version) { return version.is_ours && version.text == best.text; };
    const bool same = was_there && std::any_of(contest.versions.begin(), contest.versions.end(), in_ours);
    const std::int64_t packs_clock = kind == EntryKind::ingredient ? choose_packs(contest, best) : 0;
    const bool same_owner =
        std::any_of(contest.versions.begin(), contest.versions.end(), [&](const Version& other_one) {
            return in_ours(other_one) && other_one.state.owner == best.state.owner &&
                   other_one.state.name == best.state.name && folded_name(other_one.from) == folded;
        });
    if (!same) count(name_of(kind));
    if (!same || !same_owner) put_value(ours_, kind, best.value, best.state.owner);
    if (!was_there && kind == EntryKind::ingredient) ours_.entries().take_prices_back(best.state.name);
    ours_.merging().set_stamp(name_of(kind), folded, best.state.clock, since);
    if (kind == EntryKind::ingredient) ours_.merging().set_stamp(stamp_of_packs, folded, packs_clock, 0);
}

/// The packs have a stamp of their own: a price told on one side stands beside a change of the rest on the other.
std::int64_t MergingEntries::choose_packs(const Contest& contest, Version& best) {
    const auto packs_of = [](const Version& version) -> const std::vector<Pack>& {
        return std::get<Ingredient>(version.value).packs;
    };
    const auto rank = [&](const Version* one) {
        return std::tuple(one->packs_clock, newest_price(packs_of(*one)), text_of_packs(packs_of(*one)));
    };
    const Version* chosen = &best;
    for (const Version& version : contest.versions)
        if (rank(chosen) < rank(&version)) chosen = &version;
    const std::vector<Pack> packs = packs_of(*chosen);
    const std::int64_t clock = chosen->packs_clock;
    // Ours may be called by its new name by now.
    const PriceBook book{packs,
                         chosen->is_ours ? ours_.old_prices(chosen->state.name) : theirs_.old_prices(chosen->from)};
    for (const Version& version : contest.versions)
        if (version.is_ours != chosen->is_ours && tell_more(packs_of(version), book))
            answer_.prices_apart.emplace_back(
                best.state.name, chosen->is_ours ? MergeConflict::Stands::ours : MergeConflict::Stands::theirs);
    for (const Version& version : contest.versions)
        if (version.is_ours && text_of_packs(packs_of(version)) != text_of_packs(packs)) {
            ours_.put_packs(version.state.name, packs);
            ++answer_.prices;
        }
    std::get<Ingredient>(best.value).packs = packs;
    return clock;
}

void MergingEntries::let_go(EntryKind kind, const std::string& folded, Contest& contest) {
    const bool is_there = our_names_[kind][folded].is_there;
    for (const Version& version : contest.versions) keep_loser(kind, version.state.name, version, nullptr);
    if (!contest.versions.empty())
        removed_[kind][folded] =
            *std::max_element(contest.versions.begin(), contest.versions.end(), [](const Version& a, const Version& b) {
                return std::tie(a.state.clock, a.text) < std::tie(b.state.clock, b.text);
            });
    if (is_there) {
        ours_.merging().remove(kind, our_names_[kind][folded].name);
        count(name_of(kind));
    }
    ours_.merging().set_gone(kind, contest.gone->name, contest.gone->became);
    ours_.merging().set_stamp(name_of(kind), folded, contest.gone->clock, 0);
    if (kind == EntryKind::ingredient) ours_.merging().set_stamp(stamp_of_packs, folded, 0, 0);
}

/// What was renamed in one store is called so in all that refers to it there: nobody has changed that.
bool MergingEntries::differ_by_names(const Version& one, const Version& other) const {
    if (one.state.clock != other.state.clock) return false;
    const std::string now = text_by_names_now(ours_, one.text);
    return !now.empty() && now == text_by_names_now(ours_, other.text);
}

bool MergingEntries::is_kept(EntryKind kind, const std::string& name, const Version& loser) const {
    for (const std::string& called : {name, loser.from})
        for (const RetiredEntry& old : ours_.retired(name_of(kind), called)) {
            if (old.text == text_of(loser.value) || old.text == loser.text) return true;
            if (kind != EntryKind::ingredient) continue;
            LibraryFile file = read_library_file(old.text, old.name);
            if (file.ingredients.size() != 1 || !file.faults.empty()) continue;
            file.ingredients.front().name = loser.state.name;
            if (text_without_packs(file.ingredients.front()) == loser.text) return true;
        }
    return false;
}

void MergingEntries::keep_loser(EntryKind kind, const std::string& name, const Version& loser, const Version* best) {
    if (loser.state.clock == 0 && loser.state.owner == EntryOwner::shipped) return;
    if (is_kept(kind, name, loser)) return;
    ours_.retire({std::string(name_of(kind)), name, date_text(today_), text_of(loser.value)});
    if (loser.state.clock == 0) return;
    const bool ours_stands = best ? best->is_ours : !loser.is_ours;
    answer_.conflicts.push_back({std::string(name_of(kind)), name,
                                 ours_stands ? MergeConflict::Stands::ours : MergeConflict::Stands::theirs,
                                 best == nullptr});
}

}  // namespace baitwright
