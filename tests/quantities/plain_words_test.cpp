#include "quantities/plain_words.h"

#include <catch2/catch.hpp>

#include "quantities/in_quotes.h"

using namespace baitwright;

TEST_CASE("plain letters of any script pass the gate, and nothing that a terminal obeys or nobody sees") {
    for (const char* plain : {"silt bed", "Brösel, groß", "é", "½ pt", "鲤鱼", "😀", "\u0301"})
        CHECK(unfit_in(plain) == "");
    for (const char* unfit :
         {"a\nb",   "a\tb",   "\r",         "\x1b[31m", "\x7f",     "\u0085",       "\u009b",           "\u2028",
          "\u202e", "\u2066", "\u061c",     "\u200b",   "\u200d",   "\ufeff",       "\u00ad",           "\U000e0041",
          "\ufdd0", "\uffff", "\U0001fffe", "\xff",     "\xc0\xaf", "\xed\xa0\x80", "\xf4\x90\x80\x80", "\xe2\x82"}) {
        CAPTURE(unfit);
        CHECK_FALSE(unfit_in(unfit).empty());
    }
    CHECK(unfit_in("two\nlines", LineBreaks::allowed) == "");
    CHECK_FALSE(unfit_in("\x1b", LineBreaks::allowed).empty());
}

TEST_CASE("a name is a few plain letters, at most 200 of them, and neither path nor flag") {
    CHECK(refused_as_name(std::string(200, 'a')) == "");
    std::string umlauts;
    for (int i = 0; i < 200; ++i) umlauts += "ü";
    CHECK(refused_as_name(umlauts) == "");
    for (const std::string& bad : {std::string(201, 'a'), umlauts + "ü", std::string(), std::string(" "),
                                   std::string("a/b"), std::string("a.toml"), std::string("-a"), std::string("a\x1b")})
        CHECK_FALSE(refused_as_name(bad).empty());
}

TEST_CASE("a name that was stored before the gate is mended into one that passes it") {
    for (const std::string& bad :
         {std::string(10000, 'a'), std::string("ev\x1b[31mil"), std::string("a\nb"), std::string("\xff\xfe"),
          std::string("a.toml"), std::string("../a"), std::string("--a"), std::string("  "), std::string(".toml"),
          std::string(300, '\x01')}) {
        CAPTURE(bad);
        CHECK(refused_as_name(mended_name(bad)) == "");
    }
    CHECK(mended_name("the mill") == "the mill");
    CHECK(mended_name("ev\x1bil") == "ev\\u001bil");
}

TEST_CASE("what does not pass is written out where it is shown") {
    CHECK(written_out("a\x1b[1m\u202e\xff\U000e0041z") == "a\\u001b[1m\\u202e\\xff\\U000e0041z");
    CHECK(written_out("a\nb", LineBreaks::allowed) == "a\nb");
    CHECK(in_quotes("a\nb") == "'a\\u000ab'");
}
