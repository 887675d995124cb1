#include "quantities/sort_stably.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <memory>
#include <string>

using namespace baitwright;

namespace {

using Entry = std::pair<int, std::string>;

bool lower(const Entry& a, const Entry& b) {
    return a.first < b.first;
}

}  // namespace

TEST_CASE("any entries are sorted as the standard library sorts them, equal ones as they stood") {
    CHECK(rc::check([] {
        auto entries = *rc::gen::container<std::vector<Entry>>(
            rc::gen::pair(rc::gen::inRange(0, 6), rc::gen::container<std::string>(rc::gen::inRange('a', 'z'))));
        auto expected = entries;
        std::stable_sort(expected.begin(), expected.end(), lower);
        sort_stably(entries.begin(), entries.end(), lower);
        RC_ASSERT(entries == expected);
    }));
}

TEST_CASE("a part of a list is sorted alone") {
    std::vector<int> numbers{9, 3, 2, 1, 0};
    sort_stably(numbers.begin() + 1, numbers.end() - 1, std::less<>());
    CHECK(numbers == std::vector<int>{9, 1, 2, 3, 0});
}

TEST_CASE("what can only be moved is sorted") {
    std::vector<std::unique_ptr<int>> held;
    for (const int number : {3, 1, 2}) held.push_back(std::make_unique<int>(number));
    sort_stably(held.begin(), held.end(), [](const auto& a, const auto& b) { return *a < *b; });
    CHECK(*held[0] == 1);
    CHECK(*held[1] == 2);
    CHECK(*held[2] == 3);
}

TEST_CASE("a hundred thousand entries take no more than twenty comparisons each") {
    std::vector<unsigned> numbers(100000);
    unsigned word = 1;
    for (unsigned& number : numbers)
        number = word = word * 1664525U + 1013904223U;  // Knuth's "quick and dirty" generator
    std::size_t comparisons = 0;
    sort_stably(numbers.begin(), numbers.end(), [&](unsigned a, unsigned b) {
        ++comparisons;
        return a < b;
    });
    CHECK(std::is_sorted(numbers.begin(), numbers.end()));
    CHECK(comparisons < 20 * numbers.size());
}
