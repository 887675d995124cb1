#include "report/merge_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "bait/entry_kind.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "report/display.h"

namespace baitwright {

namespace {

constexpr std::size_t most_conflicts_told = 12;

std::string counted(std::int64_t number, const std::string& thing, const std::string& several) {
    return std::to_string(number) + " " + (number == 1 ? thing : several);
}

std::string counted_kind(const std::string& kind, std::int64_t number) {
    return counted(number, kind, kind == "mix" ? "mixes" : kind == "strategy" ? "strategies" : kind + "s");
}

/// What came in, in a few words.
std::string brought(const MergeAnswer& answer) {
    std::vector<std::string> things;
    for (const auto& [kind, number] : answer.entries) things.push_back(counted_kind(kind, number));
    if (answer.prices > 0) things.push_back(counted(answer.prices, "price", "prices"));
    if (answer.shed_entries > 0)
        things.push_back(counted(answer.shed_entries, "entry of the shed", "entries of the shed"));
    if (answer.log_entries > 0)
        things.push_back(counted(answer.log_entries, "entry of the log", "entries of the log") +
                         (answer.sessions > 0 ? " (" + counted(answer.sessions, "session", "sessions") + ")" : ""));
    return listed(things);
}

std::string conflict_text(const MergeConflict& conflict) {
    const bool ours = conflict.stands == MergeConflict::Stands::ours;
    std::string text = conflict.kind + " " + in_quotes(conflict.name) + ": ";
    if (conflict.is_gone && conflict.kind == "feel")
        text += "has no place among the others, so it is gone";
    else if (conflict.is_gone)
        text += ours ? "removed here later, so it is gone" : "removed there later, so it is gone";
    else
        text += ours ? "yours stands" : "theirs stands";
    return text;
}

/// How the one that does not stand comes back.
std::string way_back(const MergeConflict& conflict) {
    const std::string verb = conflict.kind == "mix" ? "recipe" : conflict.kind;
    return "baitwright " + verb + " restore \"" + conflict.name + "\"";
}

void say_conflicts(const MergeAnswer& answer, Told& told) {
    if (answer.conflicts.empty()) return;
    told.say("Changed in both; the later stands, the other is kept as an old version:");
    for (std::size_t i = 0; i < std::min(answer.conflicts.size(), most_conflicts_told); ++i)
        told.say("- " + conflict_text(answer.conflicts[i]));
    if (answer.conflicts.size() > most_conflicts_told)
        told.say("- and " + std::to_string(answer.conflicts.size() - most_conflicts_told) + " more");
    const auto named = std::find_if(answer.conflicts.begin(), answer.conflicts.end(),
                                    [](const MergeConflict& conflict) { return conflict.kind != "feel"; });
    if (named != answer.conflicts.end() && !answer.only_shown) told.say("To have the other back: " + way_back(*named));
}

/// Of packs the whole list stands that was changed last.
void say_prices_apart(const MergeAnswer& answer, Told& told) {
    if (answer.prices_apart.empty()) return;
    told.say(answer.only_shown ? "Prices were told in both; these would stand, the others be old prices:"
                               : "Prices were told in both; these stand, the others are old prices now:");
    for (std::size_t i = 0; i < std::min(answer.prices_apart.size(), most_conflicts_told); ++i)
        told.say("- of " + answer.prices_apart[i].first + " " +
                 (answer.prices_apart[i].second == MergeConflict::Stands::ours ? "yours" : "theirs"));
    if (answer.prices_apart.size() > most_conflicts_told)
        told.say("- and of " + std::to_string(answer.prices_apart.size() - most_conflicts_told) + " more");
    told.say("Look, and tell again what is right: baitwright price history \"" + answer.prices_apart.front().first +
             "\"");
}

/// What is one thing for a whole store, and goes by its later change.
void say_of_whole_store(const MergeAnswer& answer, Told& told) {
    const bool shown = answer.only_shown;
    if (!answer.usual.empty())
        told.say((shown ? "Would be usual from the other store: " : "Usual from the other store: ") +
                 listed(answer.usual) + ".");
    if (answer.learnt)
        told.say(std::string("What was learnt ") + (shown ? "would be" : "is") +
                 " the other store's, which learnt or unlearnt later.");
    if (answer.beliefs > 0)
        told.say((shown ? "Would be believed, or no more, as there: " : "Believed, or no more, as there: ") +
                 counted(answer.beliefs, "entry of the log", "entries of the log") + ".");
    if (answer.feels_as_one)
        told.say("Put together, the feels would not rise from the driest to the wettest: all are as " +
                 std::string(*answer.feels_as_one == MergeConflict::Stands::ours ? "you have" : "the other store has") +
                 " them.");
}

void say_renamed(const MergeAnswer& answer, Told& told) {
    std::vector<std::string> names;
    for (const auto& [from, to] : answer.renamed) {
        if (names.size() == most_conflicts_told) break;
        names.push_back(in_quotes(from) + " is " + in_quotes(to));
    }
    if (answer.renamed.size() > names.size())
        names.push_back(std::to_string(answer.renamed.size() - names.size()) + " more");
    if (!names.empty())
        told.say(std::string(answer.only_shown ? "Would be renamed" : "Renamed") + ", as there: " + listed(names) +
                 ".");
}

Told merge_told(const MergeAnswer& answer) {
    Told told;
    const std::string what = brought(answer);
    if (!answer.anything())
        told.say("All that " + in_quotes(answer.other) + " holds is here already.");
    else if (!what.empty())
        told.say((answer.only_shown ? "Would come in from " : "Taken in from ") + in_quotes(answer.other) + ": " +
                 what + ".");
    say_renamed(answer, told);
    say_of_whole_store(answer, told);
    say_conflicts(answer, told);
    say_prices_apart(answer, told);
    if (!answer.kept_for_use.empty())
        told.say("Removed in one, but used in the other, so it stays: " + listed(answer.kept_for_use) + ".");
    for (const auto& [name, by] : answer.overdrawn)
        told.say(fmt::format(
            "More {} was used than its bags held, by {}: count it with: baitwright stock count \"{}\" AMOUNT", name,
            shown_mass(mass_of(by)), name));
    for (const std::string& name : answer.broken_mixes)
        told.say("The mix " + in_quotes(name) +
                 " cannot be made as the two have it: look with: baitwright recipe check \"" + name + "\"");
    if (answer.only_shown) told.say("Nothing was written.");
    return told;
}

const char* stands_word(MergeConflict::Stands stands) {
    return stands == MergeConflict::Stands::ours ? "ours" : "theirs";
}

Json merge_json(const MergeAnswer& answer) {
    Json json = json_record("merge", {});
    json["dry_run"] = answer.only_shown;
    json["file"] = answer.other;
    Json entries = Json::object();
    for (const std::string_view kind : entry_kind_names) entries[std::string(kind)] = 0;
    entries["feel"] = 0;
    for (const auto& [kind, number] : answer.entries) entries[kind] = number;
    json["entries"] = std::move(entries);
    json["prices"] = answer.prices;
    json["shed_entries"] = answer.shed_entries;
    json["sessions"] = answer.sessions;
    json["log_entries"] = answer.log_entries;
    Json renamed = Json::array();
    for (const auto& [from, to] : answer.renamed) renamed.push_back({{"from", from}, {"to", to}});
    json["renamed"] = std::move(renamed);
    json["usual"] = answer.usual;
    json["learnt"] = answer.learnt;
    json["beliefs"] = answer.beliefs;
    json["feels_as_one"] = answer.feels_as_one ? Json(stands_word(*answer.feels_as_one)) : Json();
    Json conflicts = Json::array();
    for (const MergeConflict& conflict : answer.conflicts)
        conflicts.push_back({{"kind", conflict.kind},
                             {"name", conflict.name},
                             {"stands", stands_word(conflict.stands)},
                             {"gone", conflict.is_gone}});
    json["conflicts"] = std::move(conflicts);
    Json prices = Json::array();
    for (const auto& [name, stands] : answer.prices_apart)
        prices.push_back({{"name", name}, {"stands", stands_word(stands)}});
    json["prices_apart"] = std::move(prices);
    json["kept_for_use"] = answer.kept_for_use;
    Json overdrawn = Json::array();
    for (const auto& [name, by] : answer.overdrawn)
        overdrawn.push_back({{"name", name}, {"beyond_g", static_cast<double>(by.count) / 1000}});
    json["overdrawn"] = std::move(overdrawn);
    json["mixes_to_mend"] = answer.broken_mixes;
    return json;
}

}  // namespace

Reply merge_reply(MergeAnswer answer) {
    return reply_of(std::move(answer), merge_told, merge_json);
}

}  // namespace baitwright
