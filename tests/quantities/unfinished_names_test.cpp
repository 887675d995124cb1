#include "quantities/unfinished_names.h"

#include <catch2/catch.hpp>
#include <memory>
#include <string>
#include <vector>

using namespace baitwright;

namespace {

std::vector<std::string> unfinished_seen;

std::vector<std::string> unfinished_now() {
    unfinished_seen.clear();
    look_at_unfinished_names([](const char* name) { unfinished_seen.emplace_back(name); });
    return unfinished_seen;
}

}  // namespace

TEST_CASE("a name is known while its owner lives") {
    CHECK(unfinished_now().empty());
    {
        const UnfinishedName first("a.new");
        CHECK(unfinished_now() == std::vector<std::string>{"a.new"});
        const UnfinishedName second("b.new");
        CHECK(unfinished_now() == std::vector<std::string>{"a.new", "b.new"});
    }
    CHECK(unfinished_now().empty());
}

TEST_CASE("names that are too many or too long are not known, and do no harm") {
    std::vector<std::unique_ptr<UnfinishedName>> many;
    for (int i = 0; i < 100; ++i) many.push_back(std::make_unique<UnfinishedName>(std::to_string(i)));
    CHECK(unfinished_now().size() == 64);
    many.clear();
    const UnfinishedName endless(std::string(5000, 'a'));
    CHECK(unfinished_now().empty());
}
