#include <array>
#include <utility>

#include "bait/property.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::array<std::pair<std::string_view, Origin>, 5> origin_words{{{"default", Origin::standing},
                                                                           {"published", Origin::published},
                                                                           {"learned", Origin::learned},
                                                                           {"measured", Origin::measured},
                                                                           {"derived", Origin::derived}}};

}  // namespace

std::string source_text(const Source& source) {
    for (const auto& [word, origin] : origin_words)
        if (origin == source.origin)
            return source.detail.empty() ? std::string(word) : std::string(word) + ": " + source.detail;
    return "not known";
}

bool from_memory(const Source& source) {
    return source.origin == Origin::standing && source.detail.rfind("from memory", 0) == 0;
}

Source parse_source(std::string_view text) {
    const auto colon = text.find(':');
    const std::string word = folded_name(text.substr(0, colon));
    std::string detail;
    if (colon != std::string_view::npos) {
        const auto start = text.find_first_not_of(" \t", colon + 1);
        if (start != std::string_view::npos) detail = text.substr(start);
    }
    std::vector<std::string> words;
    for (const auto& [known, origin] : origin_words) {
        if (word == known) return {origin, detail};
        words.emplace_back(known);
    }
    std::string hint = did_you_mean(word, words);
    if (hint.empty()) hint = "begin with published:, measured:, learned: or default:, then say where it comes from";
    throw InputError("unknown-source", "'" + std::string(text) + "' does not say what kind of source it is", hint);
}

}  // namespace baitwright
