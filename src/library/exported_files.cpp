#include "library/exported_files.h"

#include "files/library_text.h"
#include "store/content_mark.h"

namespace baitwright {

std::string file_of(const KeptTable& table) {
    return std::string(table.name) + ".csv";
}

std::vector<std::string> exported_file_names() {
    std::vector<std::string> names;
    names.reserve(exported_kinds.size());
    for (const ExportedKind& kind : exported_kinds) names.emplace_back(kind.file);
    names.push_back(file_of(entries_table()));
    for (const KeptTable& table : kept_tables()) names.push_back(file_of(table));
    return names;
}

EntryDigest digest_of(const Ingredient& ingredient) {
    Ingredient bare = ingredient, packs;
    bare.packs.clear();
    packs.packs = ingredient.packs;
    return {mark_of({toml_text({bare})}), mark_of({toml_text({packs})})};
}

EntryDigest digest_of(const Recipe& recipe) {
    return {mark_of({toml_text(recipe)}), {}};
}

EntryDigest digest_of(const Strategy& strategy) {
    return {mark_of({toml_text(strategy)}), {}};
}

EntryDigest digest_of(const Venue& venue) {
    return {mark_of({toml_text(venue)}), {}};
}

EntryDigest digest_of(const BlendSpec& blend) {
    return {mark_of({toml_text(blend)}), {}};
}

EntryDigest digest_of(const Feel& feel) {
    return {mark_of({toml_text(std::vector<Feel>{feel})}), {}};
}

EntryDigest digest_of(const std::vector<std::string>& values) {
    std::string all;
    for (const std::string& value : values) all += value + '\n';
    return {mark_of({all}), {}};
}

}  // namespace baitwright
