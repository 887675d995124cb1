#include "cli/flag_groups.h"

#include <string>
#include <vector>

namespace baitwright {

namespace {

struct GroupedFlags {
    FlagGroup group;
    std::vector<std::string_view> flags;
};

/// "soak --bites" is that flag of that command alone, "--bites" that of all others.
const std::vector<GroupedFlags>& grouped_flags() {
    static const std::vector<GroupedFlags> groups{
        {FlagGroup::how_much,
         {"--wet-volume", "--wet-mass",  "--dry-mass", "--cups",          "--balls",        "--feeders",
          "--amount",     "--grains-of", "--batch",    "--bags",          "--rate",         "dose --as",
          "--bait",       "--spare",     "--people",   "--length",        "--without",      "soak --bites",
          "mix --with",   "--dry",       "--drained",  "log mix --water", "log add --water"}},
        {FlagGroup::how_wet,
         {"--feel", "--wetness", "--state", "--added", "--weighs", "--minutes", "--method", "--uptake", "--soaked",
          "--with", "--strokes", "--pump", "--air", "--vessel", "mix --water-temp", "soak --water-temp",
          "soak --ready-at", "log add --feel"}},
        {FlagGroup::how_it_goes_in,
         {"--cup", "--ball", "--feeder", "--loose", "--thrown", "--squeeze", "--carpet", "drop --feel",
          "log drop --feel"}},
        {FlagGroup::the_water,
         {"--depth", "--tow", "--tow-bottom", "--water", "--water-temp", "--clarity", "--bed", "--season", "--fish"}},
        {FlagGroup::the_day,
         {"--start", "--from", "--travel", "--hands", "--on", "--every", "--hours", "--ready-at", "--now", "--left",
          "--bites", "--tub", "--air-temp", "--humidity", "--wind", "--sun", "--covered"}},
        {FlagGroup::the_shed,
         {"--have", "--from-stock", "--empty-shed", "--book", "--cold", "--frozen", "--refrozen", "--best-before",
          "--reused-frozen", "mix --on"}},
        {FlagGroup::money,
         {"--price", "--is", "--pack", "--shop", "--new-shop", "--currency", "--price-pack", "--without-prices", "--at",
          "--one-shop", "--delivery", "--most-left", "--cost"}},
        {FlagGroup::what_you_saw,
         {"--absorption",
          "--slump",
          "--moisture",
          "--holds",
          "--soak-test",
          "--soaked-through",
          "--spread",
          "--how",
          "--hold",
          "--breaks-at",
          "--carpet-seen",
          "--cup-weighs",
          "--caught",
          "--believe",
          "--doubt",
          "--count",
          "--mass",
          "log catch --fish",
          "log weigh --vessel",
          "log weigh --weighs",
          "log soak --minutes"}},
        {FlagGroup::anything_else,
         {"--kind", "--like", "--set", "--at-most", "--rest-may-move", "--kit", "--venue", "--as", "--version",
          "--units", "--forget", "--planned", "--strategy", "--note", "log add --from", "--keep", "--mend"}},
        {FlagGroup::the_answer,
         {"-o",      "--to",   "--want", "--compare", "--compare-temps", "--hook",  "--plot",    "--replace",
          "--save",  "--old",  "--toml", "--dry-run", "--apply",         "--try",   "--by",      "--all",
          "--since", "--seed", "--full", "--csv",     "--json",          "--store", "--library", "--site"}},
    };
    return groups;
}

}  // namespace

const FlagGroup* flag_group(std::string_view verb, std::string_view flag) {
    const std::string of_command = std::string(verb) + " " + std::string(flag);
    const FlagGroup* found = nullptr;
    for (const GroupedFlags& row : grouped_flags())
        for (const std::string_view name : row.flags) {
            if (name == of_command) return &row.group;
            if (name == flag) found = &row.group;
        }
    return found;
}

}  // namespace baitwright
