// How often the water that invented anglers need next week lies in the range that `mix` gives once it heeds their log.
// With more anglers: tests/benchmark/learnt_coverage.cpp.
#include <catch2/catch.hpp>

#include "bait/recipe.h"
#include "library/invented_season.h"
#include "library/open_library.h"

using namespace baitwright;

namespace {

constexpr int few_anglers = 200;

const std::vector<std::string> dry_mixes{"silt bed", "grey bottom", "songbird", "weighted silt"};

/// Nine in ten, give or take three standard errors of so many.
void check_nine_in_ten(int inside, int of) {
    const double share = static_cast<double>(inside) / of, error = 3 * std::sqrt(0.09 / of);
    CHECK(share >= 0.9 - error);
    CHECK(share <= 0.9 + error);
}

void check_season(const invented::Season& season, std::uint64_t seed) {
    const auto shelf = shipped_shelf();
    int all = 0;
    const invented::Covered inside = invented::covered(*shelf, season, few_anglers, {0, 1, 3, 10, 30}, seed);
    for (const auto& [after, count] : inside) {
        INFO("after " << after << " mixes");
        check_nine_in_ten(count, few_anglers);
        all += count;
    }
    check_nine_in_ten(all, 5 * few_anglers);
}

/// The shipped shelf with a mix of brown crumb alone.
void put_crumb_alone(MemoryShelf& shelf) {
    Recipe recipe;
    recipe.name = "crumb alone";
    recipe.parts = {{"brown crumb", 1.0 * kilogram}};
    shelf.put(recipe);
}

}  // namespace

TEST_CASE("next week's water lies in the range nine times in ten, however much was logged", "[coverage]") {
    check_season({dry_mixes}, 1);
}

TEST_CASE("it does where bags are used up and others opened", "[coverage]") {
    check_season({dry_mixes, 0, 2}, 100'001);
}

TEST_CASE("it does where one entry in ten is absurd", "[coverage]") {
    check_season({dry_mixes, 0.1}, 200'001);
}

TEST_CASE("a bag a quarter off the library is known to 3 % after ten mixes, absurd entries among them or not",
          "[coverage]") {
    const auto shipped = shipped_shelf();
    MemoryShelf shelf(shipped.get());
    put_crumb_alone(shelf);
    for (const double absurd : {0.0, 0.1})
        CHECK(invented::median_error(shelf, "crumb alone", {{"crumb alone"}, absurd}, few_anglers, 10, 300'001) < 0.03);
}
