#include "cli/names_to_type.h"

#include <algorithm>
#include <set>
#include <system_error>

#include "bait/ingredient_kind.h"
#include "cli/shipped_names.h"
#include "files/disk.h"
#include "files/library_file.h"
#include "library/advice_rules.h"
#include "library/shipped_files.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

/// More files below a folder than this are not read while somebody waits for the next letter.
constexpr std::size_t most_files = 500;

std::vector<GlancedName> names_of_file(const LibraryFile& file, EntryKind kind) {
    std::vector<GlancedName> names;
    const auto add = [&](const auto& entries) {
        for (const auto& entry : entries) names.push_back({entry.value.name, ""});
    };
    switch (kind) {
        case EntryKind::ingredient:
            for (const Ingredient& one : file.ingredients) names.push_back({one.name, std::string(name_of(one.kind))});
            break;
        case EntryKind::mix:
            for (const Entry<Recipe>& entry : file.recipes) names.push_back({entry.value.name, entry.value.feel});
            break;
        case EntryKind::strategy:
            add(file.strategies);
            break;
        case EntryKind::venue:
            add(file.venues);
            break;
        case EntryKind::blend:
            add(file.blends);
            break;
    }
    return names;
}

/// What the look brings; nothing where the store cannot be read.
template <class Look>
std::vector<GlancedName> looked_up(Look&& look) {
    try {
        return look();
    } catch (const Error&) {
        return {};
    }
}

}  // namespace

NamesToType::NamesToType(LibraryPlace place) : place_(std::move(place)) {
    std::error_code failed;
    if (place_.folder || place_.store.empty() || !fs::exists(place_.store, failed)) return;
    try {
        // Anything else, such as a pipe, could keep whoever reads it waiting.
        if (fs::is_regular_file(place_.store, failed)) store_.emplace(place_.store);
    } catch (const Error&) {
        store_.reset();
    }
    unreadable_ = !store_;
}

void NamesToType::visit_files(const Visit& visit) const {
    try {
        const std::vector<fs::path> paths = toml_files_below(*place_.folder);
        if (paths.size() > most_files) return;
        for (const fs::path& path : paths) visit(read_library_file(read_text_file(path), path.string()));
    } catch (const Error&) {
        return;  // as far as they could be read
    }
}

std::vector<GlancedName> NamesToType::names(EntryKind kind) const {
    if (unreadable_) return {};
    if (store_) return looked_up([&] { return store_->names(kind); });
    if (!place_.folder) return shipped_names(kind);
    std::vector<GlancedName> all;
    visit_files([&](const LibraryFile& file) {
        for (GlancedName& name : names_of_file(file, kind)) all.push_back(std::move(name));
    });
    return all;
}

std::vector<GlancedName> NamesToType::retired(EntryKind kind) const {
    return store_ ? looked_up([&] { return store_->retired(kind); }) : std::vector<GlancedName>();
}

std::vector<GlancedName> NamesToType::feels() const {
    if (unreadable_) return {};
    if (store_) return looked_up([&] { return store_->feels(); });
    std::vector<GlancedName> all;
    const auto collect = [&](const LibraryFile& file) {
        for (const Feel& feel : file.feels) all.push_back({feel.name, feel.purpose});
    };
    if (place_.folder) visit_files(collect);
    if (all.empty())
        for (const ShippedFile& shipped : shipped_files())
            if (shipped.name.starts_with("feels/")) collect(read_library_file(shipped.text, std::string(shipped.name)));
    return all;
}

std::vector<GlancedName> NamesToType::shops() const {
    if (unreadable_) return {};
    if (store_) return looked_up([&] { return store_->shops(); });
    if (!place_.folder) return shipped_shops();
    std::set<std::string> all;
    visit_files([&](const LibraryFile& file) {
        for (const Ingredient& ingredient : file.ingredients)
            for (const Pack& pack : ingredient.packs)
                if (!pack.shop.empty()) all.insert(pack.shop);
    });
    std::vector<GlancedName> names;
    names.reserve(all.size());
    for (const std::string& shop : all) names.push_back({shop, ""});
    return names;
}

std::vector<GlancedName> NamesToType::fish() const {
    return looked_up([&] {
        std::vector<GlancedName> names;
        std::set<std::string> known;
        for (const AdviceRule& rule : advice_rules(LibraryPlace()))
            for (const std::string& fish : rule.when.fish)
                if (known.insert(fish).second) names.push_back({fish, ""});
        return names;
    });
}

}  // namespace baitwright
