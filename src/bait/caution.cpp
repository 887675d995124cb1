#include "bait/caution.h"

#include <algorithm>

#include "quantities/listed.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr std::string_view allergens_begin = "Allergens: holds ",
                           allergens_end = "; name them on the tub and wash your hands.";
constexpr std::string_view not_known_begins = "allergens not known: ";
constexpr std::string_view allergen_source = "UK declarable allergens, Regulation (EU) 1169/2011 annex II";

std::vector<Caution> make_cautions() {
    std::vector<Caution> all{
        {"pulse",
         "Pulses: soak at least 5 hours, pour that water away, then boil hard for at least 30 minutes in fresh water; "
         "raw or merely warmed beans are poisonous.",
         "Pulses: soak 5 hours, fresh water, boil hard 30 minutes.",
         "US FDA, Bad Bug Book (lectins; read as quoted by a university extension page)", false},
        {"hard seed",
         "Hard seeds and nuts: soak them fully and cook them until soft; seed that has not been soaked swells inside a "
         "fish.",
         "Hard seeds, nuts: soak fully, cook until soft.", "common practice, no source", false},
        {"raw meal",
         "Meal and flour of pulses, seeds or nuts: use only what the label calls heat-treated or fit to eat raw; raw "
         "bean meal is poisonous, and the water of a mix does not cook it.",
         "Meal of pulses, nuts: only if the label says heat-treated or fit to eat raw.",
         "US FDA, Bad Bug Book (lectins; read as quoted by a university extension page); the label: common practice, "
         "no source",
         false},
        {"dust",
         "Fine dust: tip it slowly, damp it early, do not breathe it (UK workplace limit for flour dust 10 mg/m3 over "
         "8 hours).",
         "Fine dust: damp it, do not breathe it.", "HSE EH40/2005", false},
        {"mould", "Mould: throw away bait that smells sour or shows mould; never feed it.",
         "Sour or mouldy bait: throw it away.", "common practice, no source", false},
        {"live", "Live bait: keep it cool, check that the venue allows it, take home what is left.",
         "Live bait: keep it cool, take home what is left.", "common practice, no source", false},
    };
    for (const std::string_view word : {"nuts", "peanuts", "fish", "crustacean", "molluscs", "gluten", "soya", "milk",
                                        "egg", "sesame", "lupin", "mustard", "celery", "sulphites"})
        all.push_back({word, {}, {}, allergen_source, true});
    return all;
}

}  // namespace

const std::vector<Caution>& all_cautions() {
    static const std::vector<Caution> all = make_cautions();
    return all;
}

const Caution* find_caution(std::string_view word) {
    for (const Caution& caution : all_cautions())
        if (caution.word == word) return &caution;
    return nullptr;
}

std::string allergens_not_known(std::string_view ingredient) {
    return std::string(not_known_begins) + std::string(ingredient);
}

std::vector<std::string> caution_sentences(const std::vector<std::string>& words) {
    std::vector<std::string> sentences;
    std::string allergens;
    for (const Caution& caution : all_cautions()) {
        if (std::find(words.begin(), words.end(), caution.word) == words.end()) continue;
        if (caution.allergen)
            allergens += (allergens.empty() ? "" : ", ") + std::string(caution.word);
        else
            sentences.emplace_back(caution.sentence);
    }
    if (!allergens.empty()) sentences.push_back(std::string(allergens_begin) + allergens + std::string(allergens_end));
    std::vector<std::string> not_known;
    for (const std::string& word : words)
        if (word.starts_with(not_known_begins)) {
            const std::string name = word.substr(not_known_begins.size());
            if (std::find(not_known.begin(), not_known.end(), name) == not_known.end()) not_known.push_back(name);
        }
    if (!not_known.empty())
        sentences.push_back("Allergens of " + listed(not_known) +
                            " are not known here: find out, and name them on the tub.");
    return sentences;
}

ShortCautions short_cautions(const std::vector<std::string>& sentences) {
    ShortCautions result;
    std::string dust, allergens;
    for (const std::string& sentence : sentences) {
        if (sentence == find_caution("dust")->sentence)
            dust = "fine dust";
        else if (sentence.starts_with(allergens_begin) && sentence.ends_with(allergens_end))
            allergens = "allergens (" +
                        sentence.substr(allergens_begin.size(),
                                        sentence.size() - allergens_begin.size() - allergens_end.size()) +
                        ")";
        else
            result.in_full.push_back(sentence);
    }
    std::string both = dust + (!dust.empty() && !allergens.empty() ? " and " : "") + allergens;
    if (both.empty()) return result;
    both.front() = dust.empty() ? 'A' : 'F';
    result.in_short = both + worded(", as 'mix' says in full.", ", as Mix says in full.");
    return result;
}

std::string brief_cautions(const std::vector<std::string>& sentences) {
    std::string all;
    for (const std::string& sentence : sentences) {
        std::string brief = sentence;
        for (const Caution& caution : all_cautions())
            if (!caution.allergen && caution.sentence == sentence) brief = caution.brief;
        all += (all.empty() ? "" : " ") + brief;
    }
    return all;
}

}  // namespace baitwright
