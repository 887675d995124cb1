#include "quantities/edit_distance.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

using namespace baitwright;

// "CA" to "ABC" is 3 in optimal string alignment, where the unrestricted distance is 2: the guide of the public
// repository aallam/string-similarity-kotlin (read). "kitten" to "sitting" is 3: Levenshtein's textbook case (from
// memory).
TEST_CASE("edit distances are the published ones") {
    CHECK(edit_distance("CA", "ABC") == 3);
    CHECK(edit_distance("kitten", "sitting") == 3);
}

TEST_CASE("one slip of the finger is one edit") {
    CHECK(edit_distance("crumb", "crumb") == 0);
    CHECK(edit_distance("crumb", "crum") == 1);
    CHECK(edit_distance("crumb", "crrumb") == 1);
    CHECK(edit_distance("crumb", "crunb") == 1);
    CHECK(edit_distance("crumb", "crubm") == 1);
    CHECK(edit_distance("", "egg") == 3);
}

TEST_CASE("an accented letter is one letter") {
    CHECK(letter_count("purée") == 5);
    CHECK(edit_distance("purée", "puree") == 1);
    CHECK(letter_count("\xff\x80") == 1);
    CHECK(letter_count("\x80\xff") == 2);
}

TEST_CASE("the distance is the same both ways, at most the longer word, and nothing only between equals") {
    CHECK(rc::check([](const std::string& a, const std::string& b) {
        const auto distance = edit_distance(a, b);
        RC_ASSERT(distance == edit_distance(b, a));
        RC_ASSERT(distance <= std::max(letter_count(a), letter_count(b)));
        RC_ASSERT((distance == 0) == (a == b));
    }));
}
