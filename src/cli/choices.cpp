#include "cli/choices.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "quantities/named_sizes.h"
#include "quantities/plain_words.h"
#include "quantities/unit_table.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

/// More files than this in the folder are not looked through while somebody waits for the next letter.
constexpr int most_looked_at = 2000;

char small(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

std::vector<GlancedName> sizes_to_type(const std::vector<std::pair<std::string, std::string>>& sizes) {
    std::vector<GlancedName> names;
    names.reserve(sizes.size());
    for (const auto& [name, size] : sizes) names.push_back({name, size});
    return names;
}

std::vector<GlancedName> pellets(const NamesToType& names) {
    std::vector<GlancedName> found = names.names(EntryKind::ingredient);
    found.erase(std::remove_if(found.begin(), found.end(),
                               [](const GlancedName& one) { return one.says != "pellet" && one.says != "expander"; }),
                found.end());
    return found;
}

std::vector<GlancedName> retired_of(const CommandSpec& command, const NamesToType& names) {
    for (const EntryKind kind :
         {EntryKind::ingredient, EntryKind::mix, EntryKind::strategy, EntryKind::venue, EntryKind::blend})
        if (command.verb.starts_with(command_word(kind) + " ")) return names.retired(kind);
    return {};
}

/// The library files of this folder. A path is the shell's to complete.
std::vector<GlancedName> files_here() {
    std::vector<GlancedName> found;
    std::error_code failed;
    fs::directory_iterator entry(".", failed);
    for (int looked_at = 0; !failed && entry != fs::directory_iterator() && looked_at < most_looked_at; ++looked_at) {
        const std::string name = entry->path().filename().string();
        if (std::error_code unknown; name.ends_with(".toml") && !name.starts_with(".") && unfit_in(name).empty() &&
                                     entry->is_regular_file(unknown))
            found.push_back({name, "a file"});
        entry.increment(failed);
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
    return found;
}

std::vector<GlancedName> names_of_choice(Choice choice, const CommandSpec& command, const NamesToType& names) {
    switch (choice) {
        case Choice::mixes:
            return names.names(EntryKind::mix);
        case Choice::ingredients:
        case Choice::ingredients_instead:
            return names.names(EntryKind::ingredient);
        case Choice::pellets:
            return pellets(names);
        case Choice::strategies:
            return names.names(EntryKind::strategy);
        case Choice::venues:
            return names.names(EntryKind::venue);
        case Choice::blends:
            return names.names(EntryKind::blend);
        case Choice::retired:
            return retired_of(command, names);
        case Choice::feels:
            return names.feels();
        case Choice::shops:
            return names.shops();
        case Choice::fish:
            return names.fish();
        case Choice::ball_sizes:
            return sizes_to_type(named_ball_sizes());
        case Choice::vessel_sizes:
            return sizes_to_type(named_vessel_sizes());
        case Choice::library_files:
            return files_here();
        case Choice::any_files:
        case Choice::folders:
            break;
    }
    return {};
}

OfferedFiles files_of_choice(Choice choice, const std::string& typed) {
    const bool is_path = typed.find('/') != std::string::npos || typed.starts_with("~");
    if (choice == Choice::any_files || (choice == Choice::library_files && is_path)) return OfferedFiles::files;
    return choice == Choice::folders ? OfferedFiles::folders : OfferedFiles::none;
}

/// "250" as "250ml", "250l": in each unit that fits.
void add_units(const std::vector<Measure>& measures, const std::string& typed, Completion& completion) {
    const std::string number = typed.substr(0, typed.find_first_not_of("0123456789."));
    if (number.empty()) return;
    for (const Measure measure : measures)
        for (const std::string_view unit : units_offered(measure))
            if (const std::string whole = number + std::string(unit); begins_so(whole, typed))
                completion.candidates.push_back({whole, std::string(measure_name(measure))});
}

/// "12x" of "12xeg": how many of a size.
std::string count_in_front(const std::string& typed) {
    const auto cross = typed.find_first_not_of("0123456789");
    return cross == std::string::npos || cross == 0 || typed[cross] != 'x' ? "" : typed.substr(0, cross + 1);
}

}  // namespace

bool begins_so(std::string_view whole, std::string_view typed) {
    return whole.size() >= typed.size() &&
           std::equal(typed.begin(), typed.end(), whole.begin(), [](char a, char b) { return small(a) == small(b); });
}

Completion behind(const std::string& front, Completion completion) {
    for (Candidate& candidate : completion.candidates) candidate.text.insert(0, front);
    return completion;
}

Completion chosen(const AskedFor& asked, const CommandSpec& command, const NamesToType& names,
                  const std::string& typed) {
    if (const auto joint = asked.joint.empty() ? std::string::npos : typed.find(asked.joint);
        joint != std::string::npos)
        return behind(typed.substr(0, joint + 1),
                      chosen({asked.behind, {}, {}}, command, names, typed.substr(joint + 1)));
    if (const std::string count = count_in_front(typed); !count.empty() && !asked.measures.empty())
        return behind(count, chosen(asked, command, names, typed.substr(count.size())));
    Completion completion;
    for (const std::string& word : asked.words)
        if (begins_so(word, typed)) completion.candidates.push_back({word, ""});
    for (const Choice choice : asked.choices) {
        if (choice == Choice::ingredients_instead && (typed.empty() || !completion.candidates.empty())) continue;
        for (const GlancedName& name : names_of_choice(choice, command, names))
            if (begins_so(name.name, typed))
                completion.candidates.push_back({name.name + std::string(asked.joint), name.says});
        if (const OfferedFiles files = files_of_choice(choice, typed); files != OfferedFiles::none)
            completion.files = files;
    }
    add_units(asked.measures, typed, completion);
    return completion;
}

}  // namespace baitwright
