#include "bait/bait_called.h"

#include <catch2/catch.hpp>

#include "bait/seeds.h"
#include "quantities/fault_of.h"

using namespace baitwright;

TEST_CASE("raw seed is no bait by itself, wetted or dropped; cooked feed and meals of pulses are") {
    for (const BaitUse use : {BaitUse::wetted, BaitUse::dropped}) {
        const auto called = [&](const char* name) { return bait_called(name, draft::seeds(), use); };
        for (const char* raw : {"maple peas, dry", "vetches, raw", "pearl millet"}) {
            CAPTURE(raw);
            CHECK_THROWS_AS(called(raw), UsageError);
            CHECK(fault_of([&] { (void)called(raw); }).code == "cook-first");
        }
        for (const char* fit : {"cooked maple peas", "pea meal", "sesame", "cooked hemp"}) {
            CAPTURE(fit);
            CHECK(called(fit).parts.at(0).of == fit);
        }
    }
}
