// What a blend is said to cost, against what `mix` says of the same mix once it is saved, and against the till.
#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <optional>

#include "answers/blend/blend_mix.h"
#include "answers/blend/share_batch.h"
#include "answers/blending.h"
#include "answers/mix/answer_mix.h"
#include "bait/pricing.h"
#include "drawn_number.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using namespace blending;
using P = MixProperty;

Pack sold(Mass size, std::int64_t pence) {
    Pack pack;
    pack.size = size;
    pack.price = Money(pence, currency_named("GBP"));
    return pack;
}

/// Sold in one to four packs, each at a third of the price by the gram at the least, or at all of it.
std::vector<Pack> drawn_packs() {
    std::vector<Pack> packs;
    const double pence_a_gram = between(50, 600) / 1000.0;
    for (const double grams : {250.0, 1000.0, 5000.0, 25000.0})
        if (between(0, 2) > 0 || (grams == 25000.0 && packs.empty()))
            packs.push_back(
                sold(grams * gram, 1 + static_cast<std::int64_t>(grams * pence_a_gram / double(between(10, 30)) * 10)));
    return packs;
}

/// Candidates with packs, and a spec that says no price.
struct Shop {
    MemoryShelf shelf{&draft::shelf()};
    BlendSpec spec;

    explicit Shop(std::vector<BlendLimit> limits) {
        spec.name = "sack";
        spec.limits = std::move(limits);
    }

    void sell(const std::string& name, double protein, std::vector<Pack> packs) {
        Ingredient ingredient = draft::solid_of(draft::solids[0]);
        ingredient.name = name;
        ingredient.composition.protein = draft::stated<Ratio>(protein / 100);
        ingredient.packs = std::move(packs);
        shelf.put(std::move(ingredient));
        spec.candidates.push_back({name, {}, {}});
    }

    [[nodiscard]] BlendAnswer blend(Mass batch) const {
        ClpSolver solver;
        BlendRequest request;
        request.batch = batch;
        return blend_mix(shelf, spec, request, solver);
    }

    /// Nothing where whole grams would break a limit.
    [[nodiscard]] std::optional<BlendAnswer> weighed(Mass batch) const {
        try {
            return blend(batch);
        } catch (const UsageError& error) {
            if (error.faults().front().code != "batch-too-small") throw;
            return std::nullopt;
        }
    }

    /// What `mix` says of as much of it, saved.
    [[nodiscard]] MixAnswer mixed(const BlendAnswer& blend) {
        shelf.put(blend.recipe);
        MixRequest request;
        request.target = DryMass{blend.batch};
        return answer_mix(shelf, *shelf.find_recipe(blend.name), request);
    }
};

/// Candidates, packs and limits of any sort.
struct DrawnShop : Shop {
    DrawnShop() : Shop({on(P::protein, between(5, 45), between(46, 60))}) {
        const int count = between(2, 6);
        for (int i = 0; i < count; ++i) sell("made " + std::to_string(i), between(0, 70), drawn_packs());
        if (between(0, 1) == 1) spec.candidates[0].share.least = between(1, 20) / 100.0;
        if (between(0, 1) == 1) spec.goal = BlendGoal::per_litre;
    }
};

}  // namespace

TEST_CASE("a blend costs to the penny what mix says of as much of it once it is saved") {
    int blends = 0;
    CHECK(rc::check([&] {
        DrawnShop shop;
        const std::optional<BlendAnswer> possible = shop.weighed(between(1, 40000) * gram);
        if (!possible || possible->status != BlendAnswer::Status::optimal) return;
        const BlendAnswer& answer = *possible;
        const MixAnswer mixed = shop.mixed(answer);
        RC_ASSERT(mixed.cost.has_value());
        RC_ASSERT(mixed.cost->minor() == answer.cost.minor());
        for (const PartAnswer& part : mixed.parts)
            for (const BlendShare& share : answer.shares)
                if (share.ingredient.name == part.name) RC_ASSERT(part.cost->minor() == share.cost.minor());
        ++blends;
    }));
    CHECK(blends > 30);
}

TEST_CASE("the cost of a blend never falls as the batch grows, by a gram or by as much again") {
    int blends = 0;
    CHECK(rc::check([&] {
        const DrawnShop shop;
        const int grams = between(10, 30000);
        const std::optional<BlendAnswer> answer = shop.weighed(grams * gram);
        if (!answer || answer->status != BlendAnswer::Status::optimal) return;
        for (const int more : {1, between(1, 500), grams})
            if (const std::optional<BlendAnswer> larger = shop.weighed((grams + more) * gram))
                RC_ASSERT(larger->cost.minor() >= answer->cost.minor());
        ++blends;
    }));
    CHECK(blends > 30);
}

TEST_CASE("nobody pays more for what is in the bags than was paid at the till, nor than mix says") {
    int below = 0;
    CHECK(rc::check([&] {
        const DrawnShop shop;
        const std::optional<BlendAnswer> possible = shop.weighed(between(100, 40000) * gram);
        if (!possible || possible->status != BlendAnswer::Status::optimal) return;
        const BlendAnswer& answer = *possible;
        const SharedBatch shared = share_batch(shop.shelf, answer, between(1, 8));
        RC_ASSERT(shared.outlay.has_value());
        RC_ASSERT(shared.used.minor() <= shared.outlay->minor());
        RC_ASSERT(shared.used.minor() <= answer.cost.minor());
        std::int64_t heads = 0;
        for (const Money& part : shared.used_a_head) heads += part.minor();
        RC_ASSERT(heads == shared.used.minor());
        if (shared.used.minor() < answer.cost.minor()) ++below;
    }));
    CHECK(below > 5);
}

// By hand: 600 g of meal in packs of 1 kg at £4.20 and 5 kg at £17.50, and of crumb in packs of 1 kg at £2.00. A batch
// of 6 kg uses no sack of meal up: 0.6 x £4.20 + 5.4 x £2.00 = £2.52 + £10.80.
TEST_CASE("a part is not priced by a sack that the batch would hold and the part does not use up") {
    Shop shop({});
    shop.sell("meal", 60, {sold(1.0 * kilogram, 420), sold(5.0 * kilogram, 1750)});
    shop.sell("crumb", 10, {sold(1.0 * kilogram, 200)});
    shop.spec.candidates[0].share.least = 0.1;
    const BlendAnswer answer = shop.blend(6.0 * kilogram);
    REQUIRE(answer.shares.size() == 2);
    CHECK(answer.shares[1].ingredient.name == "meal");
    CHECK(answer.shares[1].price_per_kilogram == Approx(420));
    CHECK(answer.shares[1].cost.minor() == 252);
    CHECK(answer.cost.minor() == 1332);
    CHECK(shop.blend(4.9 * kilogram).cost.minor() < shop.blend(5.0 * kilogram).cost.minor());
}

}  // namespace baitwright
