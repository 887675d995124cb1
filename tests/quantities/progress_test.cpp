#include <catch2/catch.hpp>

#include "progress_heard.h"

using namespace baitwright;

TEST_CASE("work says how far it is, and that it is over; what is done within it is not heard") {
    const std::vector<std::string> heard = progress_heard_in([] {
        {
            Progress whole("mixing", 3);
            whole.step();
            {
                Progress part("weighing", 10);
                part.step();
            }
            whole.reach(3);
        }
        Progress("stirring", 1).step();
    });
    Progress("resting", 1).step();
    CHECK(heard == std::vector<std::string>{"mixing 1/3", "mixing 3/3", "stirring 1/1"});
}

TEST_CASE("work of which nobody knows how long it takes says that it goes on, and that it is over") {
    const std::vector<std::string> heard = progress_heard_in([] {
        Progress tasting("tasting", 0);
        tasting.step();
        tasting.step();
    });
    CHECK(heard == std::vector<std::string>{"tasting 1/0", "tasting 2/0", "tasting 0/0"});
}
