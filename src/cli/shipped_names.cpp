#include "cli/shipped_names.h"

#include <algorithm>
#include <functional>
#include <set>
#include <string_view>

#include "library/shipped_files.h"

namespace baitwright {

namespace {

std::string_view shipped_folder(EntryKind kind) {
    switch (kind) {
        case EntryKind::ingredient:
            return "ingredients/";
        case EntryKind::mix:
            return "mixes/";
        case EntryKind::strategy:
            return "strategies/";
        case EntryKind::venue:
            return "venues/";
        case EntryKind::blend:
            break;
    }
    return "blends/";
}

/// Calls `visit(key, value)` for each line `key = "value"` of the shipped files of that kind.
void visit_words(EntryKind kind, const std::function<void(std::string_view, std::string_view)>& visit) {
    for (const ShippedFile& shipped : shipped_files()) {
        if (!shipped.name.starts_with(shipped_folder(kind))) continue;
        for (std::string_view rest = shipped.text; !rest.empty();) {
            const std::string_view line = rest.substr(0, rest.find('\n'));
            rest.remove_prefix(std::min(line.size() + 1, rest.size()));
            const auto equals = line.find(" = \"");
            if (equals != std::string_view::npos && line.ends_with('"') && line.size() > equals + 4)
                visit(line.substr(0, equals), line.substr(equals + 4, line.size() - equals - 5));
        }
    }
}

}  // namespace

std::vector<GlancedName> shipped_names(EntryKind kind) {
    const std::string_view told_apart_by = kind == EntryKind::ingredient ? "kind"
                                           : kind == EntryKind::mix      ? "feel"
                                                                         : "";
    std::vector<GlancedName> names;
    visit_words(kind, [&](std::string_view key, std::string_view value) {
        if (key == "name")
            names.push_back({std::string(value), ""});
        else if (!told_apart_by.empty() && key == told_apart_by && !names.empty() && names.back().says.empty())
            names.back().says = value;
    });
    return names;
}

std::vector<GlancedName> shipped_shops() {
    std::set<std::string> all;
    visit_words(EntryKind::ingredient, [&](std::string_view key, std::string_view value) {
        if (key == "shop") all.emplace(value);
    });
    std::vector<GlancedName> names;
    names.reserve(all.size());
    for (const std::string& shop : all) names.push_back({shop, ""});
    return names;
}

}  // namespace baitwright
