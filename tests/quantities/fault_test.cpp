#include "quantities/fault.h"

#include <catch2/catch.hpp>
#include <string>

using namespace baitwright;

namespace {

std::vector<Fault> so_many(std::size_t count) {
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < count; ++i)
        faults.push_back({"slip", "slip " + std::to_string(i), "mend it", {}, static_cast<int>(i) + 1, 1, "a.toml"});
    return faults;
}

}  // namespace

TEST_CASE("twenty faults are told as they are") {
    const std::vector<Fault> told = first_faults(so_many(20));
    REQUIRE(told.size() == 20);
    CHECK(told.back().message == "slip 19");
}

TEST_CASE("of more faults the first twenty are told, and how many more there are") {
    const std::vector<Fault> told = first_faults(so_many(23));
    REQUIRE(told.size() == 21);
    CHECK(told[19].message == "slip 19");
    CHECK(told[20].code == "more-faults");
    CHECK(told[20].message == "3 more things are wrong");
    CHECK(told[20].file == "a.toml");
    CHECK_FALSE(told[20].hint.empty());
    CHECK(first_faults(so_many(21)).back().message == "1 more thing is wrong");
}

TEST_CASE("what was told as so many more before is counted on") {
    std::vector<Fault> faults = first_faults(so_many(30));
    for (Fault& fault : first_faults(so_many(25), 4)) faults.push_back(std::move(fault));
    CHECK(first_faults(faults).back().message == "39 more things are wrong");
}

TEST_CASE("every error tells at most twenty faults") {
    CHECK(InputError(so_many(1000)).faults().size() == 21);
    CHECK(InputError(so_many(1000)).faults().back().more == 980);
}
