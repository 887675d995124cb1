#include "bait/raw_seed.h"

#include <catch2/catch.hpp>

#include "bait/seeds.h"
#include "quantities/worded.h"

using namespace baitwright;

namespace {

std::string hint_of_seed(const std::string& name, const Shelf& shelf = draft::seeds()) {
    return raw_seed_fault(shelf.ingredient(name), shelf).hint;
}

}  // namespace

TEST_CASE("pulses and hard seeds as bought are raw, what was cooked, meals and soft seeds are not") {
    const auto raw = [](const char* name) { return is_raw_seed(draft::seeds().ingredient(name)); };
    CHECK(raw("maple peas, dry"));
    CHECK(raw("vetches, raw"));
    CHECK(raw("pearl millet"));
    CHECK_FALSE(raw("sesame"));
    CHECK_FALSE(raw("cooked maple peas"));
    CHECK_FALSE(raw("pea meal"));
    CHECK_FALSE(raw("brown crumb"));
}

// The sentences are those of `caution_test.cpp`, with their source.
TEST_CASE("raw seed is told how to be cooked, and by what name it is fed then") {
    const Fault fault = raw_seed_fault(draft::seeds().ingredient("maple peas, dry"), draft::seeds(), "part 2");
    CHECK(fault.code == "cook-first");
    CHECK(fault.subject == "part 2");
    CHECK(fault.message == "'maple peas, dry' is never fed as it is bought");
    CHECK_THAT(fault.hint, Catch::Contains("at least 5 hours") && Catch::Contains("boil hard") &&
                               Catch::EndsWith("Then name it cooked: 'cooked maple peas'"));
    CHECK_THAT(hint_of_seed("pearl millet"), Catch::Contains("soak them fully and cook them until soft"));
    CHECK(is_of_raw_seed(InputError(fault)));
    CHECK_FALSE(is_of_raw_seed(InputError("no-solid", "no", "yes")));
}

TEST_CASE("where the shelf has no such seed cooked, the hint gives it a name") {
    CHECK_THAT(hint_of_seed("vetches, raw"), Catch::Contains("ingredient add \"cooked vetches\" --kind particle"));
    CHECK_THAT(hint_of_seed("pearl millet"), Catch::Contains("\"cooked pearl millet\""));
    CHECK_THAT(hint_of_seed("vetches, raw"), Catch::EndsWith("--set \"cautions=pulse\""));
    const WordedHere on_phone(WordsFor::phone);
    CHECK_THAT(hint_of_seed("vetches, raw"), !Catch::Contains("baitwright") && Catch::Contains("a name of its own"));
}

TEST_CASE("cooked is what is called so, of that seed and no other") {
    MemoryShelf shelf(&draft::seeds());
    const auto put = [&](const char* name, IngredientKind kind) {
        shelf.put(draft::grain(name, "sweetcorn", kind, {}));
    };
    put("cooked millet porridge", IngredientKind::particle);
    put("cooked millet", IngredientKind::base);
    put("boiled", IngredientKind::particle);
    CHECK_THAT(hint_of_seed("pearl millet", shelf), Catch::Contains("a name of its own"));
    put("boiled millet", IngredientKind::particle);
    CHECK_THAT(hint_of_seed("pearl millet", shelf), Catch::EndsWith("'boiled millet'"));
    put("stewed pearl millet", IngredientKind::particle);
    CHECK_THAT(hint_of_seed("pearl millet", shelf), Catch::EndsWith("'stewed pearl millet'"));
}
