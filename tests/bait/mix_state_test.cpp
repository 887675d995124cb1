#include "bait/mix_state.h"

#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("a state is found by name and no other") {
    for (const MixState state : {MixState::riddled, MixState::cupped, MixState::squeezed})
        CHECK(find_mix_state(name_of(state)) == state);
    CHECK(find_mix_state(" Squeezed") == MixState::squeezed);
    CHECK_FALSE(find_mix_state("pressed").has_value());
}

TEST_CASE("a ball needs a wetness from 0.85 to 1.6, a riddle one up to 1.6, a cup takes anything") {
    CHECK_FALSE(can_be(MixState::squeezed, 0.84));
    CHECK(can_be(MixState::squeezed, 0.85));
    CHECK(can_be(MixState::squeezed, 1.6));
    CHECK_FALSE(can_be(MixState::squeezed, 1.61));
    CHECK(can_be(MixState::riddled, 0.0));
    CHECK(can_be(MixState::riddled, 1.6));
    CHECK_FALSE(can_be(MixState::riddled, 1.61));
    CHECK(can_be(MixState::cupped, 0.0));
    CHECK(can_be(MixState::cupped, 3.0));
}

TEST_CASE("a limit is not missed by the rounding of a sum") {
    CHECK(can_be(MixState::squeezed, 0.1 + 0.2 + 0.55));
    CHECK(can_be(MixState::riddled, 1.6 * (1 + 1e-15)));
}

TEST_CASE("a mix is riddled unless it is too wet for that") {
    CHECK(usual_state(0.7) == MixState::riddled);
    CHECK(usual_state(1.6) == MixState::riddled);
    CHECK(usual_state(1.7) == MixState::cupped);
}
