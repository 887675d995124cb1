#include "bait/bait_called.h"

#include <catch2/catch.hpp>

#include "bait/memory_shelf.h"
#include "bait/seeds.h"
#include "quantities/fault_of.h"
#include "quantities/worded.h"

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

namespace {

/// A shelf from which an ingredient was taken.
class ShelfWithoutRye : public MemoryShelf {
public:
    ShelfWithoutRye() : MemoryShelf(&draft::seeds()) {}
    [[nodiscard]] std::string what_became_of(std::string_view kind, std::string_view name) const override {
        return kind == "ingredient" && name == "rye crumb" ? "it was removed; to have it back: fetch it" : "";
    }
};

}  // namespace

TEST_CASE("what is neither mix nor ingredient says what became of it, or where else to look") {
    const ShelfWithoutRye shelf;
    const auto fault = [&](const char* name) {
        return fault_of([&] { (void)bait_called(name, shelf, BaitUse::wetted); });
    };
    CHECK(fault("rye crumb").hint == "it was removed; to have it back: fetch it");
    CHECK(fault("rye crumb").message == "no mix or ingredient is called 'rye crumb'");
    CHECK(fault("xyzzy").hint == "see them all with: baitwright recipe list");
    const WordedHere phone(WordsFor::phone);
    CHECK(fault("xyzzy").message == "no mix is called 'xyzzy'");
}
