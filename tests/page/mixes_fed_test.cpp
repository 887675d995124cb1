#include "page/mixes_fed.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "answers/plan/plan_session.h"
#include "bait/memory_shelf.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

bool is_among(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

}  // namespace

TEST_CASE("a page offers the mixes that the plan makes, and no other") {
    const auto shelf = shipped_shelf();
    for (const std::string& name : shelf->strategy_names()) {
        INFO(name);
        const Strategy strategy = shelf->strategy(name);
        const MixesFed fed = mixes_fed(strategy, *shelf);
        std::vector<std::string> batches;
        for (const PlannedBatch& batch : plan_session(*shelf, strategy, {}, {}).batches) {
            batches.push_back(batch.name);
            if (!batch.feel.empty()) CHECK(is_among(fed.names, batch.name));
        }
        for (const std::string& one : fed.names) CHECK(is_among(batches, one));
    }
}

TEST_CASE("a mix of several things takes the water that the plan has for it") {
    const auto shelf = shipped_shelf();
    const Strategy strategy = shelf->strategy("tight balls");
    const MixesFed fed = mixes_fed(strategy, *shelf);
    REQUIRE(fed.names == std::vector<std::string>{"silt bed and casters"});
    REQUIRE(fed.together.size() == 1);
    const PlannedBatch batch = plan_session(*shelf, strategy, {}, {}).batches.front();
    MixRequest request;
    request.target = DryMass{batch.dry};
    request.feel = batch.feel;
    const MixAnswer answer = answer_mix(*shelf, fed.together.front(), request);
    CHECK(answer.water_to_add.in(gram) == Approx(batch.water.in(gram)));
    REQUIRE(answer.doubt);
    CHECK(answer.doubt->first_pour.in(gram) == Approx(batch.water_first.in(gram)));
}
