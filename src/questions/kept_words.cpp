#include "questions/kept_words.h"

#include <algorithm>
#include <cctype>
#include <variant>
#include <vector>

#include "bait/feel.h"
#include "quantities/in_quotes.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// Takes a word off the end of the text where it stands there by itself.
bool take_last(std::string& text, const std::string& word) {
    const std::string folded = folded_name(text), last = " " + folded_name(word);
    if (folded.size() < last.size() || folded.compare(folded.size() - last.size(), last.size(), last) != 0)
        return false;
    text = folded.substr(0, folded.size() - last.size());
    return true;
}

std::vector<std::string> names_of_feels(const Shelf& shelf) {
    const std::vector<Feel> feels = shelf.feels();
    std::vector<std::string> names;
    names.reserve(feels.size());
    for (const Feel& feel : feels) names.push_back(feel.name);
    return names;
}

bool take_state(std::string& text, KeptMix& kept) {
    for (const StockState state : {StockState::cold, StockState::frozen})
        if (take_last(text, std::string(name_of(state)))) {
            kept.state = state;
            return true;
        }
    return false;
}

void take_feel(std::string& text, KeptMix& kept, const std::vector<std::string>& feels) {
    for (const std::string& feel : feels)
        if (kept.feel.empty() && take_last(text, feel)) kept.feel = feel;
}

/// "600g frozn": an amount with a word behind it that says nothing.
void refuse_word(const std::string& text, const std::vector<std::string>& feels) {
    const auto blank = text.find_last_of(' ');
    if (blank == std::string::npos || blank + 1 == text.size() ||
        !std::isalpha(static_cast<unsigned char>(text[blank + 1])))
        return;
    std::string before = text.substr(0, blank);
    KeptMix ignored;
    take_feel(before, ignored, feels);
    take_state(before, ignored);
    try {
        static_cast<void>(parse<Mass>(before));
    } catch (const InputError&) {
        return;  // the amount itself is amiss
    }
    const std::string word = text.substr(blank + 1);
    std::vector<std::string> names{"cold", "frozen"};
    names.insert(names.end(), feels.begin(), feels.end());
    if (std::any_of(names.begin(), names.end(), [&](const std::string& name) { return folded_name(word) == name; }))
        throw InputError("said-twice", "how the mix is kept, or how wet it is, is said twice: " + in_quotes(text),
                         "say each once, as in --have \"silt bed=600g frozen soft\"");
    throw InputError(fault_of_name(word, names,
                                   {"unknown-word", in_quotes(word) + " is neither a way to keep a mix nor a feel",
                                    "write it as in --have \"silt bed=600g frozen\""}));
}

}  // namespace

KeptMix read_kept(const std::string& mix, const std::string& text, const Shelf& shelf) {
    const std::vector<std::string> feels = names_of_feels(shelf);
    KeptMix kept;
    kept.of = mix;
    std::string amount = text;
    const bool told = take_state(amount, kept);
    take_feel(amount, kept, feels);
    if (!told) take_state(amount, kept);
    refuse_word(amount, feels);
    const MassOrVolume read = read_amount(amount);
    if (!std::holds_alternative<Mass>(read))
        throw InputError("no-mass",
                         "a made-up mix is told by what it weighs, and " + in_quotes(amount) + " is a volume",
                         "weigh it, and write it as in --have \"silt bed=600g frozen\"");
    kept.mass = std::get<Mass>(read);
    return kept;
}

void refuse_kept(const std::string& ingredient, const std::string& text) {
    std::string amount = text;
    KeptMix kept;
    if (!take_state(amount, kept)) return;
    throw InputError("no-mix",
                     in_quotes(ingredient) + " is an ingredient; cold or frozen is told of a made-up mix alone",
                     "leave the word out, as in --have \"brown crumb=400g\"");
}

}  // namespace baitwright
