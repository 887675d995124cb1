#include "cli/ways_out.h"

#include <algorithm>
#include <array>
#include <string_view>

#include <fmt/format.h>

#include "cli/command_groups.h"
#include "cli/help_topics.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

struct WayOut {
    std::string_view word;  ///< what was typed, in the singular
    std::string_view want, command;
};

/// Things that a person looks for, by their name; an s behind them does not matter.
constexpr std::array ways_out{
    WayOut{"mixe", "the mixes", "recipe list"},
    WayOut{"groundbait", "the mixes", "recipe list"},
    WayOut{"recipe", "the mixes", "recipe list"},
    WayOut{"ingredient", "the ingredients", "ingredient list"},
    WayOut{"bait", "what bait is made of", "ingredient list"},
    WayOut{"pellet", "the pellets", "ingredient list --kind pellet"},
    WayOut{"liquid", "the liquids", "ingredient list --kind liquid"},
    WayOut{"additive", "the additives", "ingredient list --kind liquid"},
    WayOut{"strategy", "the ways of feeding", "strategy list"},
    WayOut{"strategie", "the ways of feeding", "strategy list"},
    WayOut{"venue", "the waters whose rules are known", "venue list"},
    WayOut{"rule", "the rules of a water", "venue list"},
    WayOut{"blend", "the blends", "blend --help"},
    WayOut{"session", "a session", "plan \"open carpet\" --start 09:30"},
    WayOut{"shed", "what is in the shed", "stock"},
    WayOut{"price", "the prices", "price list"},
    WayOut{"shopping", "what to buy", "shop \"open carpet\""},
    WayOut{"fish", "what suits a fish", "advise --fish bream"},
    WayOut{"version", "the version", "--version"},
};

const WayOut* way_out_of(const std::string& word) {
    std::string name = folded_name(word);
    const auto found = [&] {
        return std::find_if(ways_out.begin(), ways_out.end(), [&](const WayOut& way) { return way.word == name; });
    };
    if (found() == ways_out.end() && name.ends_with('s')) name.pop_back();
    const auto* way = found();
    return way == ways_out.end() ? nullptr : way;
}

std::vector<std::string> first_words() {
    std::vector<std::string> words;
    for (const JobGroup& group : job_groups())
        for (const JobLine& line : group.lines)
            if (begins_command(line.word)) words.emplace_back(line.word);
    return words;
}

/// "list" as a command: "baitwright recipe list", and the others that end so.
std::vector<std::string> commands_ending_in(const std::string& word) {
    std::vector<std::string> found;
    if (is_command(word)) return found;  // it is one by itself, and was typed otherwise
    for (const std::string& first : first_words())
        for (const std::string& second : second_words(first))
            if (second == word) found.push_back(fmt::format("baitwright {} {}", first, second));
    return found;
}

/// All commands that a mistyped word may have meant: "mix", "recipe list", "recipe".
std::vector<std::string> typeable() {
    std::vector<std::string> verbs;
    for (const std::string& first : first_words()) {
        verbs.push_back(first);
        for (const std::string& second : second_words(first)) verbs.push_back(fmt::format("{} {}", first, second));
    }
    return verbs;
}

bool is_topic(const std::string& word) {
    return !topic_text(word).empty();
}

std::string hint_for(const std::string& word) {
    if (const WayOut* way = way_out_of(word))
        return "to see " + std::string(way->want) + ": baitwright " + std::string(way->command);
    const std::string folded = folded_name(word);
    if (folded != word && (is_command(folded) || begins_command(folded))) return "did you mean '" + folded + "'?";
    const std::vector<std::string> ending = commands_ending_in(folded);
    if (ending.size() == 1) return "type: " + ending.front();
    if (!ending.empty()) return "say of what:\n    " + baitwright::joined(ending, "\n    ");
    if (is_topic(word)) return "see: baitwright help " + word;
    const std::string near = did_you_mean(word, typeable());
    return near.empty() ? "see: baitwright --help" : near;
}

/// What a second word that is none may have meant: a near one, or undo for what takes out.
std::string meant_second(const std::string& word, const std::vector<std::string>& seconds) {
    const std::string folded = folded_name(word);
    const bool takes_out = folded == "remove" || folded == "delete" || folded == "forget";
    const auto has = [&](const char* second) {
        return std::find(seconds.begin(), seconds.end(), second) != seconds.end();
    };
    if (takes_out && !has("remove") && has("undo")) return "undo";
    return nearest_name(word, seconds).value_or(std::string());
}

[[noreturn]] void refuse_half_a_command(const std::vector<std::string>& given) {
    const std::vector<std::string> seconds = second_words(given[0]);
    const std::string meant = given.size() > 1 ? meant_second(given[1], seconds) : std::string();
    if (!meant.empty())
        throw UsageError("incomplete-command", "'" + given[0] + " " + given[1] + "' is not a command",
                         "did you mean: baitwright " + given[0] + " " + meant);
    std::string lines;
    for (const std::string& second : seconds) lines.append("\n    baitwright ").append(given[0]).append(" " + second);
    throw UsageError("incomplete-command",
                     "'" + given[0] + "' needs a subcommand: " + baitwright::joined(seconds, ", ") +
                         (given.size() > 1 ? "; '" + given[1] + "' is none of them" : ""),
                     "one of these:" + lines);
}

}  // namespace

void refuse_command(const std::vector<std::string>& given) {
    if (!is_command(given[0]) && begins_command(given[0])) refuse_half_a_command(given);
    if (given[0].starts_with("-"))
        throw UsageError("unknown-command", "'" + given[0] + "' stands before any command",
                         "flags come after it, as in: baitwright mix \"silt bed\" --json");
    throw UsageError("unknown-command", "'" + given[0] + "' is not a command", hint_for(given[0]));
}

void refuse_help(const std::vector<std::string>& words) {
    std::vector<std::string> names = topic_names();
    for (std::string& verb : typeable()) names.push_back(std::move(verb));
    const bool flag = words[0].starts_with("-");
    const auto near = nearest_name(words[0], names);
    std::string hint = "see: baitwright --help; or: baitwright help topics";
    if (way_out_of(words[0]) || !commands_ending_in(folded_name(words[0])).empty())
        hint = hint_for(words[0]);
    else if (near && !flag)
        hint = "did you mean: baitwright help " + *near;
    throw UsageError("unknown-command", "'" + words[0] + "' is neither a command nor a topic", hint);
}

}  // namespace baitwright
