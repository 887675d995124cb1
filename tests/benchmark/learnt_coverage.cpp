// Invented anglers (tests/library/invented_season.h), so many (2,000): how often the water that they need next week
// lies in the range that `mix` gives once it heeds their log, after 0, 1, 3, 10 and 30 mixes of the shipped ones at any
// feel; and how close the absorption of a bag a quarter off the library is known after ten mixes of it. The bars: 88 to
// 92 % of anglers; 3 %.
#include <cstdio>
#include <cstdlib>

#include "bait/pellets_alone.h"
#include "bait/recipe.h"
#include "library/invented_season.h"
#include "library/open_library.h"

using namespace baitwright;

namespace {

/// Those without liquids, doses and soaked pellets: all their wetting is the water.
std::vector<std::string> dry_mixes(const Shelf& shelf) {
    std::vector<std::string> names;
    for (const std::string& name : shelf.recipe_names()) {
        const ResolvedMix mix = resolve(shelf.recipe(name), shelf);
        const bool soaks = std::any_of(mix.solids.begin(), mix.solids.end(),
                                       [](const SolidPart& part) { return part.prepare == Preparation::soaked; });
        if (mix.liquids.empty() && mix.doses.empty() && !soaks && !is_pellets_alone(mix)) names.push_back(name);
    }
    return names;
}

bool tell_season(const Shelf& shelf, const char* what, const invented::Season& season, int anglers,
                 std::uint64_t seed) {
    bool is_good = true;
    std::printf("%-34s", what);
    for (const auto& [after, inside] : invented::covered(shelf, season, anglers, {0, 1, 3, 10, 30}, seed)) {
        const double share = 100.0 * inside / anglers;
        is_good = is_good && share >= 88 && share <= 92;
        std::printf("  %2d: %4.1f %%", after, share);
    }
    std::printf("\n");
    return is_good;
}

}  // namespace

int main(int argc, char** argv) {
    const int anglers = argc > 1 ? std::atoi(argv[1]) : 2000;
    const auto shipped = shipped_shelf();
    MemoryShelf shelf(shipped.get());
    const std::vector<std::string> mixes = dry_mixes(shelf);
    Recipe alone;
    alone.name = "crumb alone";
    alone.parts = {{"brown crumb", 1.0 * kilogram}};
    shelf.put(alone);
    std::printf("%zu mixes, %d anglers; after so many logged mixes, next week's water in the range:\n", mixes.size(),
                anglers);
    bool is_good = tell_season(shelf, "as it is", {mixes}, anglers, 1);
    is_good = tell_season(shelf, "a new bag every other week", {mixes, 0, 2}, anglers, 1'000'001) && is_good;
    is_good = tell_season(shelf, "one entry in ten absurd", {mixes, 0.1}, anglers, 2'000'001) && is_good;
    is_good = tell_season(shelf, "the feel read to 0.1", {mixes, 0, 0, 0.1}, anglers, 3'000'001) && is_good;
    for (const double absurd : {0.0, 0.1}) {
        const double error =
            invented::median_error(shelf, "crumb alone", {{"crumb alone"}, absurd}, anglers, 10, 4'000'001);
        std::printf("a bag 25 %% off, after 10 mixes, %2.0f %% of them absurd: median error %.1f %%\n", 100 * absurd,
                    100 * error);
        is_good = is_good && error < 0.03;
    }
    return is_good ? 0 : 1;
}
