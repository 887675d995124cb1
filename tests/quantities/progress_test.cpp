#include "quantities/progress.h"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace baitwright;

namespace {

std::vector<std::string> progress_heard;

void hear_progress(std::string_view doing, std::size_t done, std::size_t of) {
    progress_heard.push_back(std::string(doing) + " " + std::to_string(done) + "/" + std::to_string(of));
}

}  // namespace

TEST_CASE("work says how far it is, and that it is over; what is done within it is not heard") {
    progress_heard.clear();
    listen_to_progress(hear_progress);
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
    Progress("tasting", 0).step();  // until it is right
    listen_to_progress(nullptr);
    Progress("resting", 1).step();
    CHECK(progress_heard ==
          std::vector<std::string>{"mixing 1/3", "mixing 3/3", "stirring 1/1", "tasting 1/0", "tasting 0/0"});
}
