#include "bait/colour.h"

#include <catch2/catch.hpp>

namespace baitwright {

TEST_CASE("colour words lie where their words say") {
    const auto of = [](std::string_view word) { return colour_called(word).value(); };
    CHECK(of("black").lightness < of("dark brown").lightness);
    CHECK(of("dark brown").lightness < of("brown").lightness);
    CHECK(of("brown").lightness < of("light brown").lightness);
    CHECK(of("light brown").lightness < of("cream").lightness);
    CHECK(of("cream").lightness < of("white").lightness);
    CHECK(of("red").redness > of("brown").redness);
    CHECK(of("green").redness < 0);
    CHECK(of("yellow").yellowness > of("cream").yellowness);
}

TEST_CASE("a colour is found whatever its case, and an unknown one is not") {
    CHECK(colour_called("Dark Brown"));
    CHECK_FALSE(colour_called("clear"));
    CHECK_FALSE(colour_called(""));
    CHECK_FALSE(colour_called("mauve"));
}

}  // namespace baitwright
