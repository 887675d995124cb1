#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"
#include "quantities/unit_table.h"

namespace baitwright {

/// Where what may be typed at a place comes from.
enum class Choice {
    mixes,
    ingredients,
    ingredients_instead,  ///< where no mix begins so
    pellets,
    strategies,
    venues,
    blends,
    retired,  ///< of the kind that the command's first word names
    feels,
    shops,
    fish,
    ball_sizes,
    vessel_sizes,
    library_files,
    any_files,
    folders
};

/// What may be typed at one place of a command line. All empty where a person writes freely: a date, a note, a new
/// name.
struct AskedFor {
    std::vector<Choice> choices;
    std::vector<std::string> words;   ///< a known set
    std::vector<Measure> measures;    ///< of the units that a number may have
    std::string_view joint = {};      ///< "=" where more follows a name: "brown crumb=400g"
    std::vector<Choice> behind = {};  ///< what may follow that
};

/// Of the flag's value.
AskedFor asked_for(const CommandSpec& command, const Flag& flag);
/// Of a word of the command that is no flag.
AskedFor asked_for(const CommandSpec& command, const Word& word);

/// True where the table says something of what is called so in help, if only that it is written freely.
bool is_known_to_ask(const CommandSpec& command, const Flag& flag);
bool is_known_to_ask(const CommandSpec& command, const Word& word);

}  // namespace baitwright
