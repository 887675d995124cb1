#include "cli/command_groups.h"

#include <algorithm>

#include "cli/command.h"

namespace baitwright {

const std::vector<JobGroup>& job_groups() {
    static const std::vector<JobGroup> groups{
        {"Before you go",
         {{"mix", "what to weigh, how much water and when, what it costs"},
          {"plan", "a session, from the evening before to the last put-in"},
          {"soak", "pellets: how long, how much water, what they come to"},
          {"card", "the session on one A5 sheet, for the tackle box"},
          {"advise", "which strategies and mixes suit the day, and why"}}},
        {"At the tub",
         {{"water", "how wet the tub is, and what puts it right"},
          {"dose", "how much of an additive"},
          {"swap", "what to use in place of what ran out"},
          {"dry", "how an open tub dries out, and what to spray back"}}},
        {"At the water",
         {{"drop", "what a cupful or a ball does: where it breaks, how wide it lands"},
          {"page", "mix, water and plan on your phone, with no signal"}}},
        {"Shopping and money",
         {{"shop", "what to buy, in the cheapest whole packs"},
          {"cost", "what a session costs: used, to pay, left over"},
          {"compare", "strategies side by side, and what makes the difference"},
          {"price", "tell what a pack costs now"},
          {"blend", "the cheapest mix within your limits"}}},
        {"The shed", {{"stock", "what is in it"}}},
        {"The log",
         {{"log", "what you mixed, saw and caught"},
          {"learn", "what it says of your hand and your bags"},
          {"paid", "which way of feeding brought most, and how sure that is"}}},
        {"Your library",
         {{"find", "anything in it, by any word"},
          {"recipe", "your mixes"},
          {"ingredient", "what they are made of"},
          {"strategy", "ways of feeding"},
          {"venue", "rules of a water"}}},
        {"Keep it safe",
         {{"backup", "all of it into one file"},
          {"restore", "a backup in place of the store"},
          {"merge", "another store brought into yours"},
          {"doctor", "whether all of it is sound, and what to do where not"},
          {"export", "all of it as files to read and change"},
          {"import", "such files, taken in again"}}},
        {"The program",
         {{"usual", "what you always use: pump, kit, venue, currency, units"},
          {"help", "help COMMAND; or wetness feels sizes units files names terminal"},
          {"--version", "which version this is"}}},
    };
    return groups;
}

std::vector<std::string> second_words(std::string_view word) {
    std::vector<std::string> words;
    const std::string beginning = std::string(word) + " ";
    for (const CommandSpec& command : all_commands())
        if (command.verb.starts_with(beginning)) words.emplace_back(command.verb.substr(beginning.size()));
    return words;
}

bool is_command(std::string_view word) {
    return std::any_of(all_commands().begin(), all_commands().end(),
                       [&](const CommandSpec& command) { return command.verb == word; });
}

bool begins_command(std::string_view word) {
    return is_command(word) || !second_words(word).empty();
}

}  // namespace baitwright
