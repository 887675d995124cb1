#include "library/edited_ingredient.h"

#include <algorithm>
#include <cctype>

#include "bait/ingredient_facts.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "files/toml_writer.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// Keys whose values stand bare in TOML.
bool is_bare(const std::string& key) {
    return key == "binder" || key == "particle_spread";
}

bool has_spread_and_source(const std::string& key) {
    bool found = false;
    const Ingredient any;
    visit_properties(any, [&](const auto& facts, const auto&) { found = found || facts.key == key; });
    return found;
}

/// "hard seed, peanuts", parted as a table has them or as they are said.
std::string toml_list(std::string_view words) {
    std::string list;
    while (!words.empty()) {
        const std::size_t end = std::min(words.find_first_of(",;"), words.size());
        std::string_view word = words.substr(0, end);
        words.remove_prefix(std::min(end + 1, words.size()));
        word.remove_prefix(std::min(word.find_first_not_of(' '), word.size()));
        word = word.substr(0, word.find_last_not_of(' ') + 1);
        if (!word.empty()) list += (list.empty() ? "" : ", ") + toml_quoted(std::string(word));
    }
    return "[" + list + "]";
}

std::string toml_value(const KeyValue& given) {
    if (given.key == "cautions") return toml_list(given.value);
    std::string value = is_bare(given.key) ? given.value : toml_quoted(given.value);
    if (!has_spread_and_source(given.key) || given.source.empty()) return value;
    std::string text = "{ value = " + value + ", source = " + toml_quoted(given.source);
    if (!given.spread.empty()) text += ", spread = " + toml_quoted(given.spread);
    return text + " }";
}

bool begins_with_key(const std::string& line, const std::vector<KeyValue>& values) {
    return std::any_of(values.begin(), values.end(),
                       [&](const KeyValue& one) { return line.starts_with(one.key + " = "); });
}

/// The model's TOML, one key a line as we write it, without its name and what is to be replaced, packs left last.
std::string without(const Ingredient& like, const std::vector<KeyValue>& values, std::string& packs) {
    std::string text = toml_text({like}), kept;
    bool in_packs = false;
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = text.find('\n', start);
        const std::string line = text.substr(start, end - start) + "\n";
        start = end + 1;
        in_packs = in_packs || line.starts_with("[[ingredient.pack]]");
        if (in_packs)
            packs += line;
        else if (!line.starts_with("name = ") && !line.starts_with("[[") && !begins_with_key(line, values))
            kept += line;
    }
    return kept;
}

}  // namespace

Ingredient edited_ingredient(const std::string& name, const std::optional<Ingredient>& like,
                             const std::vector<KeyValue>& values) {
    std::string packs, text = "[[ingredient]]\nname = " + toml_quoted(name) + "\n";
    if (like) text += without(*like, values, packs);
    for (const KeyValue& given : values) text += given.key + " = " + toml_value(given) + "\n";
    LibraryFile read = read_library_file(text + packs, {});
    if (!read.faults.empty() || read.ingredients.size() != 1) {
        for (Fault& fault : read.faults) {  // places in a text that nobody has written help nobody
            fault.line = fault.column = 0;
            fault.source_line.clear();
        }
        throw InputError(std::move(read.faults));
    }
    return std::move(read.ingredients.front());
}

}  // namespace baitwright
