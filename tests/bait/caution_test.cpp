#include "bait/caution.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "quantities/worded.h"

using namespace baitwright;

TEST_CASE("every caution has a word of its own, a source, and a sentence unless it is an allergen") {
    std::set<std::string_view> words;
    for (const Caution& caution : all_cautions()) {
        CAPTURE(caution.word);
        CHECK(words.insert(caution.word).second);
        CHECK_FALSE(caution.source.empty());
        CHECK(caution.sentence.empty() == caution.allergen);
        CHECK(find_caution(caution.word) == &caution);
    }
    CHECK(find_caution("anything") == nullptr);
}

// Regulation (EU) 1169/2011 annex II names 14 (the count read at a council's page): gluten cereals, crustaceans, egg,
// fish, peanuts, soya, milk, nuts, celery, mustard, sesame, sulphites, lupin, molluscs.
TEST_CASE("the fourteen declarable allergens are known") {
    const auto& all = all_cautions();
    CHECK(std::count_if(all.begin(), all.end(), [](const Caution& caution) { return caution.allergen; }) == 14);
}

// US FDA, Bad Bug Book, quoted by a university extension page: soak at least 5 hours, boil at least 30 minutes in fresh
// water.
TEST_CASE("pulses are to be soaked 5 hours and boiled 30 minutes") {
    const auto sentences = caution_sentences({"pulse"});
    REQUIRE(sentences.size() == 1);
    CHECK_THAT(sentences.front(),
               Catch::Contains("5 hours") && Catch::Contains("30 minutes") && Catch::Contains("fresh"));
}

// As of the pulses above: what is poisonous in raw beans is so in their meal, and only boiling takes it away.
TEST_CASE("a meal of pulses or nuts goes by its label, for nobody soaks and boils a meal") {
    const auto sentences = caution_sentences({"raw meal"});
    REQUIRE(sentences.size() == 1);
    CHECK_THAT(sentences.front(), Catch::Contains("heat-treated or fit to eat raw") && Catch::Contains("poisonous") &&
                                      !Catch::Contains("soak") && !Catch::Contains("boil hard"));
    CHECK_THAT(brief_cautions(sentences), Catch::Contains("heat-treated") && Catch::Contains("label"));
}

// HSE EH40/2005: flour dust 10 mg/m3 over 8 hours.
TEST_CASE("dust is named with its workplace limit") {
    CHECK_THAT(caution_sentences({"dust"}).front(), Catch::Contains("10 mg/m3") && Catch::Contains("8 hours"));
}

TEST_CASE("each sentence is said once and the allergens are gathered in one") {
    const auto sentences = caution_sentences({"fish", "dust", "milk", "dust", "fish"});
    REQUIRE(sentences.size() == 2);
    CHECK_THAT(sentences.back(), Catch::Contains("holds fish, milk;"));
    CHECK(caution_sentences({}).empty());
}

TEST_CASE("in short dust and allergens are one line that names the allergens, and nothing else is shortened") {
    const auto all = caution_sentences({"pulse", "hard seed", "raw meal", "dust", "mould", "live", "fish", "milk"});
    const ShortCautions told = short_cautions(all);
    CHECK(told.in_full == caution_sentences({"pulse", "hard seed", "raw meal", "mould", "live"}));
    CHECK(told.in_short == "Fine dust and allergens (fish, milk), as 'mix' says in full.");
    CHECK(short_cautions(caution_sentences({"dust"})).in_short == "Fine dust, as 'mix' says in full.");
    CHECK(short_cautions(caution_sentences({"nuts"})).in_short == "Allergens (nuts), as 'mix' says in full.");
    CHECK(short_cautions(caution_sentences({"pulse"})).in_short.empty());
    const WordedHere on_phone(WordsFor::phone);
    CHECK(short_cautions(caution_sentences({"dust"})).in_short == "Fine dust, as Mix says in full.");
}
