#include <catch2/catch.hpp>

#include "bait/free_offerings.h"
#include "bait/ingredient_completion.h"
#include "files/disk.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "files/same_record.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

std::vector<LibraryFile> shipped_files() {
    const std::filesystem::path folder = std::filesystem::path(BAITWRIGHT_SOURCE_DIR) / "recipes";
    std::vector<LibraryFile> files;
    for (const char* part : {"advice", "blends", "feels", "ingredients", "mixes", "strategies", "venues"})
        for (const auto& path : toml_files_below(folder / part))
            files.push_back(read_library_file(read_text_file(path), path.filename().string()));
    return files;
}

}  // namespace

TEST_CASE("every shipped file is read without a fault") {
    const auto files = shipped_files();
    CHECK(files.size() >= 30);
    for (const LibraryFile& file : files)
        for (const Fault& fault : file.faults) {
            CAPTURE(fault.file, fault.line, fault.column, fault.source_line, fault.hint);
            FAIL_CHECK(fault.message);
        }
}

TEST_CASE("every shipped ingredient is written and read back as it was") {
    for (const LibraryFile& file : shipped_files()) {
        const LibraryFile back = read_library_file(toml_text(file.ingredients), file.name);
        if (file.ingredients.empty()) continue;
        CHECK(back.faults.empty());
        REQUIRE(back.ingredients.size() == file.ingredients.size());
        for (std::size_t i = 0; i < file.ingredients.size(); ++i) {
            CAPTURE(file.ingredients[i].name);
            CHECK(first_difference(file.ingredients[i], back.ingredients[i]) == "");
        }
    }
}

TEST_CASE("every shipped mix is written and read back as it was") {
    for (const LibraryFile& file : shipped_files())
        for (const Entry<Recipe>& entry : file.recipes) {
            const LibraryFile back = read_library_file(toml_text(entry.value), file.name);
            CHECK(back.faults.empty());
            REQUIRE(back.recipes.size() == 1);
            CHECK(first_difference(entry.value, back.recipes[0].value) == "");
        }
}

TEST_CASE("every shipped strategy is written and read back as it was") {
    std::size_t count = 0;
    for (const LibraryFile& file : shipped_files())
        for (const Entry<Strategy>& entry : file.strategies) {
            const LibraryFile back = read_library_file(toml_text(entry.value), file.name);
            CHECK(back.faults.empty());
            REQUIRE(back.strategies.size() == 1);
            CHECK(first_difference(entry.value, back.strategies[0].value) == "");
            ++count;
        }
    CHECK(count >= 8);
}

// The length is the published one of full-grown blowfly larvae, 10 to 14 mm (of Calliphora vomitoria: a school page on
// the species); 3 to 4 mm thick and the rest from memory: a body between a cone and a cylinder of that size.
TEST_CASE("a single grub weighs what grubs weigh") {
    const auto milligrams = [](const char* name) {
        for (const LibraryFile& file : shipped_files())
            for (Ingredient ingredient : file.ingredients)
                if (ingredient.name == name) {
                    complete(ingredient);
                    return 100e3 / free_offerings_in(ingredient, 100.0 * gram);
                }
        return 0.0;
    };
    for (const char* name : {"maggots", "dead maggots", "casters"}) {
        CAPTURE(name);
        CHECK(milligrams(name) > 40);
        CHECK(milligrams(name) < 100);
    }
    CHECK(milligrams("pinkies") > 10);
    CHECK(milligrams("pinkies") < 25);
    CHECK(milligrams("squatts") > 5);
    CHECK(milligrams("squatts") < milligrams("pinkies"));
}
