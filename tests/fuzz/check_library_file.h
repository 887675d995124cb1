#pragma once

#include <string>
#include <string_view>

#include "files/advice_reader.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "files/same_record.h"

namespace baitwright {

/// What `read_library_file` promises of any text, for the fuzzer and for its seeds: it does not throw, gives each fault
/// a place and a hint, keeps them in order, and reads back what is written of its entries. Says what was broken, or
/// nothing.
inline std::string broken_promise(std::string_view text) {
    const LibraryFile file = read_library_file(text, "a.toml");
    int line = 1, column = 0;
    for (const Fault& fault : file.faults) {
        if (fault.more > 0) break;  // how many more there are, behind the others
        if (fault.line < line || (fault.line == line && fault.column < column)) return "faults are out of order";
        if (fault.code.empty() || fault.message.empty() || fault.hint.empty() || fault.column < 1)
            return "a fault lacks something";
        line = fault.line;
        column = fault.column;
    }
    if (file.faults.empty() && file.ingredients.empty() && file.recipes.empty() && file.strategies.empty() &&
        file.feels.empty() && file.venues.empty() && file.blends.empty() &&
        read_advice_rules(std::string(text), "a.toml").empty())
        return "nothing was read, and nothing is wrong";
    if (!file.ingredients.empty()) {
        const LibraryFile back = read_library_file(toml_text(file.ingredients), "b.toml");
        if (back.ingredients.size() != file.ingredients.size()) return "an ingredient was lost when written";
        for (std::size_t i = 0; i < file.ingredients.size(); ++i)
            if (!first_difference(file.ingredients[i], back.ingredients[i]).empty())
                return first_difference(file.ingredients[i], back.ingredients[i]) + " changed when written";
    }
    for (const Entry<Recipe>& entry : file.recipes) {
        const LibraryFile back = read_library_file(toml_text(entry.value), "b.toml");
        if (back.recipes.size() != 1) return "a mix was lost when written";
        const std::string different = first_difference(entry.value, back.recipes[0].value);
        if (!different.empty()) return different + " of a mix changed when written";
    }
    for (const Entry<Strategy>& entry : file.strategies) {
        const LibraryFile back = read_library_file(toml_text(entry.value), "b.toml");
        if (back.strategies.size() != 1) return "a strategy was lost when written";
        const std::string different = first_difference(entry.value, back.strategies[0].value);
        if (!different.empty()) return different + " of a strategy changed when written";
    }
    for (const Entry<Venue>& entry : file.venues)
        if (read_library_file(toml_text(entry.value), "b.toml").venues.size() != 1)
            return "a venue was lost when written";
    for (const Entry<BlendSpec>& entry : file.blends)
        if (!entry.faulty && read_library_file(toml_text(entry.value), "b.toml").blends.size() != 1)
            return "a blend was lost when written";
    return {};
}

}  // namespace baitwright
