// All seeds, cooked feed and meals that are shipped: what is raw is fed by nobody, all else is.
#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "bait/bait_called.h"
#include "bait/ingredient_cautions.h"
#include "bait/raw_seed.h"
#include "library/open_library.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& seeds_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

MixAnswer half_a_kilo(const std::string& name) {
    MixRequest request;
    request.target = DryMass{0.5 * kilogram};
    return answer_mix(seeds_shelf(), bait_called(name, seeds_shelf(), BaitUse::wetted), request);
}

}  // namespace

TEST_CASE("no shipped raw seed is fed, each is told how to be cooked, and those that are shipped cooked by what name") {
    int raw = 0, named = 0;
    for (const std::string& name : seeds_shelf().ingredient_names()) {
        const Ingredient ingredient = seeds_shelf().ingredient(name);
        if (!is_raw_seed(ingredient)) continue;
        CAPTURE(name);
        ++raw;
        const Fault fault = fault_of([&] { (void)half_a_kilo(name); });
        CHECK(fault.code == "cook-first");
        CHECK_THAT(fault.hint, Catch::Contains("soak") && Catch::Contains("Then "));
        if (const auto at = fault.hint.find("Then name it cooked: '"); at != std::string::npos) {
            ++named;
            const std::string cooked = fault.hint.substr(at + 22, fault.hint.size() - at - 23);
            CAPTURE(cooked);
            CHECK(half_a_kilo(cooked).parts.at(0).name == cooked);
        }
    }
    CHECK(raw == 16);
    CHECK(named == 9);  // hemp, maize, wheat, barley, rice, tares, chickpeas, maple peas, tiger nuts
}

TEST_CASE("cooked feed of every shipped sort is mixed, and so are meals of pulses and nuts, each with its caution") {
    for (const char* cooked : {"boiled chickpeas", "cooked tares", "cooked maple peas"})
        CHECK_THAT(half_a_kilo(cooked).cautions.at(0), Catch::StartsWith("Pulses: soak"));
    for (const char* cooked : {"cooked tiger nuts", "cooked maize"})
        CHECK_THAT(half_a_kilo(cooked).cautions.at(0), Catch::StartsWith("Hard seeds"));
    for (const char* meal : {"lupin or pea meal", "chickpea flour", "tiger nut flour"}) {
        const MixAnswer answer = half_a_kilo(meal);
        CHECK(answer.water_to_add > Mass{});
        CHECK_THAT(answer.cautions.at(0), Catch::Contains("heat-treated") && !Catch::Contains("boil hard"));
    }
}
