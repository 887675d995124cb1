#include "library/advice_rules.h"

#include <iterator>

#include "files/advice_reader.h"
#include "files/disk.h"
#include "library/shipped_files.h"

namespace baitwright {

namespace {

void append(std::vector<AdviceRule>& rules, std::vector<AdviceRule>&& more) {
    rules.insert(rules.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace

std::vector<AdviceRule> advice_rules(const LibraryPlace& place) {
    std::vector<AdviceRule> rules;
    if (place.folder)
        for (const std::filesystem::path& path : toml_files_below(*place.folder))
            append(rules, read_advice_rules(read_text_file(path), path.string()));
    if (!rules.empty()) return rules;
    for (const ShippedFile& shipped : shipped_files())
        if (shipped.name.starts_with("advice/"))
            append(rules, read_advice_rules(shipped.text, std::string(shipped.name)));
    return rules;
}

}  // namespace baitwright
