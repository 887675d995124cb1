#include "cli/help_topics.h"

#include <fmt/format.h>

#include <array>

#include "cli/command_groups.h"
#include "files/library_file.h"
#include "library/shipped_files.h"
#include "quantities/listed.h"
#include "quantities/named_sizes.h"
#include "quantities/quantity_text.h"
#include "quantities/unit_table.h"
#include "report/level_cup.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

struct Topic {
    std::string_view name, says;
    std::string (*text)();
};

std::string topics_topic();

std::string wetness_topic() {
    return "Wetness is how far a mix is wetted, on a scale of our own:\n\n"
           "  0    as it comes out of the bag\n"
           "  1    just holds: 3 squeezed balls of 5 hold together\n"
           "  2    will not stand: an up-ended pot of it loses a third of its height\n"
           "  3    soup, and as far as the scale goes\n\n" +
           paragraph("",
                     "The same wetness feels the same in every mix, though one takes twice the water of another. "
                     "Most ask for it by a feel; see: baitwright help feels") +
           "\n  baitwright mix \"silt bed\" --wet-volume 3l --feel firm\n"
           "  baitwright mix \"silt bed\" --wet-volume 3l --wetness 1.25\n\n" +
           paragraph("",
                     "Your bag may take more water or less than ours. Measure where it just holds, and every mix "
                     "with it comes nearer:") +
           "\n  baitwright ingredient measure \"brown crumb\" --absorption \"0.7 g/g\"\n";
}

std::string feels_topic() {
    std::string text = "How wet a mix is, by its feel, from the driest to the wettest:\n\n";
    for (const ShippedFile& file : shipped_files())
        if (file.name.starts_with("feels/"))
            for (const Feel& feel : read_library_file(file.text, {}).feels)
                text += paragraph(fmt::format("  {:<8}  {:<4}  ", feel.name, fmt::format("{:.2f}", double(feel.aim))),
                                  feel.purpose);
    return text + "\n" +
           paragraph("",
                     "The number is its wetness (baitwright help wetness). A mix has a feel of its own; --feel asks "
                     "for another. A library of yours may have feels of its own.") +
           "\n  baitwright mix \"silt bed\" --balls 20x55mm --feel firm\n"
           "  baitwright drop \"silt bed\" --depth 2.5m --cup 250ml --compare feels\n";
}

std::string size_list(const std::vector<std::pair<std::string, std::string>>& sizes) {
    std::vector<std::string> each;
    each.reserve(sizes.size());
    for (const auto& [name, size] : sizes) each.push_back(fmt::format("{} ({})", name, size));
    return baitwright::joined(each, ", ");
}

std::string sizes_topic() {
    return "Sizes that anglers name instead of measuring. Wherever a size is asked for, a\n"
           "name will do, or what you measured.\n\n" +
           paragraph("  balls, across   ", size_list(named_ball_sizes())) +
           paragraph("  cups and pots   ", size_list(named_vessel_sizes())) +
           "\nThe count stands in front, with an x:\n\n"
           "  baitwright mix \"silt bed\" --balls 12xegg\n"
           "  baitwright mix \"silt bed\" --balls 12x55mm\n"
           "  baitwright mix \"silt bed\" --cups \"3x toss pot 25\"\n\n" +
           paragraph("",
                     "Names are rough: measure your own cup once, filled level with water on the scale: 1 g is 1 ml.") +
           "\n" + paragraph("", sentence(std::string("a level cup or pot is ") + level_cup_words));
}

std::string units_topic() {
    std::string text = "An amount is a number and its unit, with a blank between or none: 3l, \"400 g\".\n\n";
    for (const Measure measure : {Measure::mass, Measure::volume, Measure::length, Measure::time, Measure::temperature,
                                  Measure::speed, Measure::density, Measure::pressure, Measure::ratio})
        text += paragraph("  ", std::string(units_that_fit(measure)));
    return text +
           "\n  in parts and fractions   1lb4oz, 8ft6in, \"2 1/2 pt\", half a kilo\n"
           "  money                    £4.20, 340p, \"3.40 EUR\"; 2.50 in your usual currency\n"
           "  a day, a time of day     2026-03-01, 09:30, 9am\n\n" +
           paragraph("",
                     "A pint is the imperial one, 568 ml, unless you write USpt. The point is the decimal sign: "
                     "write 1.5l. Behind a flag an amount needs no quotes: --dry-mass 1.5 kg.");
}

std::string files_topic() {
    return "You need no file: the library comes with the program. Your own mixes, bags,\n"
           "strategies and waters can be written in TOML files: plain text, key = value.\n\n"
           "  try a mix            baitwright mix my-mix.toml --wet-volume 3l\n"
           "  look for slips       baitwright recipe check my-mix.toml\n"
           "  keep it              baitwright recipe add my-mix.toml\n"
           "  see how one looks    baitwright recipe show \"silt bed\"\n"
           "  bags, for a table    baitwright ingredient export --csv --to bags.csv\n\n" +
           paragraph("",
                     "What you add, the shed and the prices are kept in one file, the store: "
                     "baitwright/baitwright.db in $XDG_DATA_HOME, or in ~/.local/share. Copy that file and you have "
                     "copied everything. --store FILE uses another one for this run; --library FOLDER reads TOML "
                     "files in place of any store.") +
           "\nEvery key is told in docs/files.md, which comes with the source.\n";
}

std::string names_topic() {
    std::string text =
        "A name of several words stands in quotes. Capitals and plurals do not matter;\n"
        "\"4mm\" is 4 mm, and the beginning is enough where only one name begins so.\n\n"
        "  \"silt bed\"            a name in the library\n"
        "  my-mix.toml           a file: it ends in .toml, or holds a /\n"
        "  -                     a file on standard input\n"
        "  \"open carpet=3\"       a strategy, three sessions of it (cost, plan, shop)\n"
        "  \"brown crumb=400g\"    a name with an amount or a price (--have, --price)\n\n" +
        paragraph("",
                  "Your own names are a few plain words, at most 200 letters, without a / and not beginning with a -. "
                  "Mistype one, and you are told the nearest.");
    text += "\nTo see the names that there are:\n\n";
    for (const char* word : {"recipe", "ingredient", "strategy", "venue"})
        text += fmt::format("  baitwright {} list\n", word);
    if (begins_command("find")) text += "  baitwright find WORD\n";
    return text;
}

std::string terminal_topic() {
    return paragraph(
               "",
               "On a terminal, lines are as wide as it is, the water is in bold, warnings and errors are marked, "
               "and long lists go through a pager. In a pipe or a file there is none of it: 80 columns, as ever.") +
           "\n  --color never, or NO_COLOR=1     no colour; --color always: in a pipe too\n"
           "  --no-pager, or PAGER=cat         lists and help at once\n"
           "  COLUMNS=100                      another width, from 40 to 200\n"
           "  --dry-run                        see what a change would do; write nothing\n"
           "  --json, --csv                    for programs: unrounded, never dressed\n"
           "  --                               no flags behind it: -- \"-name\"\n"
           "  -                                standard input, or standard output\n\n" +
           paragraph("",
                     "Ctrl-C leaves nothing half-written. A terminal without UTF-8 gets plain letters, such as GBP. "
                     "Numbers have a point in every language.");
}

constexpr std::array all_topics{
    Topic{"topics", "this list", topics_topic},
    Topic{"wetness", "how it is counted, from 0 to 3", wetness_topic},
    Topic{"feels", "dusty to slop: which is which, and what for", feels_topic},
    Topic{"sizes", "an egg, a satsuma, a toss pot: how big they are", sizes_topic},
    Topic{"units", "how amounts, money and times are written", units_topic},
    Topic{"files", "your own mixes in files, and where things are kept", files_topic},
    Topic{"terminal", "width, colour, pager, and trying a change", terminal_topic},
    Topic{"names", "how mixes and the rest are named when you type", names_topic},
};

std::string topics_topic() {
    std::string text = "Help with what all commands share:\n\n";
    for (const Topic& topic : all_topics) text += fmt::format("  baitwright help {:<8}  {}\n", topic.name, topic.says);
    return text + "\nHelp with a command: baitwright mix --help. With all of them: baitwright --help\n";
}

}  // namespace

std::vector<std::string> topic_names() {
    std::vector<std::string> names;
    names.reserve(all_topics.size());
    for (const Topic& topic : all_topics) names.emplace_back(topic.name);
    return names;
}

std::string topic_text(std::string_view name) {
    for (const Topic& topic : all_topics)
        if (topic.name == name) return topic.text();
    return {};
}

}  // namespace baitwright
