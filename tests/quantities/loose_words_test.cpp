#include "quantities/loose_words.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <string>

using namespace baitwright;

namespace {

std::string words_of(const std::string& text) {
    std::string words;
    for (const LooseWord& word : loose_words(text)) words += (words.empty() ? "" : "|") + word.whole;
    return words;
}

bool are_the_same(const std::string& a, const std::string& b) {
    return same_words(loose_words(a), loose_words(b));
}

std::string random_word() {
    return *rc::gen::suchThat(
        rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange('a', static_cast<char>('z' + 1)))),
        [](const std::string& word) { return word.size() >= 3 && word.back() != 's'; });
}

}  // namespace

TEST_CASE("words end at blanks, commas, hyphens and brackets, and a number is a word of its own") {
    CHECK(words_of("Fishmeal, white low-fat") == "fishmeal|white|low|fat");
    CHECK(words_of("salt water (10 %)") == "salt|water|10");
    CHECK(words_of("expander 4mm") == "expander|4|mm");
    CHECK(words_of(" 0.5 mm, 2.") == "0.5|mm|2");
    CHECK(words_of("Brewer's yeast") == "brewers|yeast");
    CHECK(words_of("p\xC3\xA2t\xC3\xA9") == "p\xC3\xA2t\xC3\xA9");
    CHECK(words_of(" - , ").empty());
    CHECK(words_of("").empty());
}

TEST_CASE("a word knows where it stands") {
    const auto words = loose_words("red, 4mm");
    REQUIRE(words.size() == 3);
    CHECK((words[0].at == 0 && words[0].size == 3));
    CHECK((words[1].at == 5 && words[1].size == 1 && words[1].is_number));
    CHECK((words[2].at == 6 && words[2].size == 2 && !words[2].is_number));
}

TEST_CASE("the singular and the plural are the same word") {
    for (const auto& [singular, plural] : {std::pair{"micro", "micros"},
                                           {"pea", "peas"},
                                           {"box", "boxes"},
                                           {"glass", "glasses"},
                                           {"berry", "berries"},
                                           {"cookie", "cookies"},
                                           {"pie", "pies"},
                                           {"base", "bases"},
                                           {"pinky", "pinkies"},
                                           {"maggot", "Maggots"}}) {
        INFO(plural);
        CHECK(are_the_same(singular, plural));
    }
    CHECK_FALSE(are_the_same("glas", "glass"));
    CHECK_FALSE(are_the_same("4 m", "4 mm"));
    CHECK_FALSE(are_the_same("crumb brown", "brown crumb"));
}

TEST_CASE("a beginning has three letters at least, and no number is one") {
    const auto begins = [](const char* said, const char* word) {
        return begins_word(loose_words(said).front(), loose_words(word).front());
    };
    CHECK(begins("mol", "molasses"));
    CHECK(begins("MOLASSES", "molasses"));
    CHECK_FALSE(begins("mo", "molasses"));
    CHECK_FALSE(begins("lass", "molasses"));
    CHECK_FALSE(begins("100", "1000"));
}

TEST_CASE("whatever the word, an s behind it, capitals and hyphens change nothing") {
    CHECK(rc::check([] {
        const std::string first = random_word(), second = random_word();
        std::string capitals = first;
        capitals.front() = static_cast<char>(capitals.front() - 'a' + 'A');
        RC_ASSERT(are_the_same(first + " " + second, capitals + "s-" + second));
        RC_ASSERT(are_the_same(first + ", " + second, first + " " + second + "s"));
    }));
}
