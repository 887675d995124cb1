// Blends against printed optima (tests/reference/linear_optima.csv), against sums by hand, and each price of a limit
// against what moving the limit does to the cost.
#include "answers/blend/blend_mix.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "answers/blend/blend_programme.h"
#include "answers/blend/resolved_blend.h"
#include "answers/blending.h"
#include "bait/seeds.h"
#include "drawn_number.h"
#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"
#include "reference/numbers_in.h"
#include "solver/reference_programmes.h"

namespace baitwright {

namespace {

using namespace blending;
using P = MixProperty;

std::vector<Made> random_candidates() {
    std::vector<Made> all;
    const int count = between(2, 6);
    for (int i = 0; i < count; ++i)
        all.push_back({"made " + std::to_string(i), double(between(0, 70)), double(between(0, 25)),
                       double(between(0, 8)), between(50, 400)});
    return all;
}

BlendSpec random_spec(const std::vector<Made>& all) {
    BlendSpec spec = spec_of(
        all, {on(P::protein, between(5, 45)), on(P::fibre, {}, between(3, 15)), on(P::salt, {}, between(1, 6))});
    if (between(0, 1) == 1) spec.candidates[0].share.most = between(10, 60) / 100.0;
    if (between(0, 1) == 1) spec.candidates[1].share.least = between(1, 20) / 100.0;
    if (between(0, 1) == 1) spec.goal = BlendGoal::per_litre;
    return spec;
}

LinearSolution solved(const std::vector<Made>& all, const BlendSpec& spec) {
    ClpSolver solver;
    const MadeShelf shelf(all);
    return solver.solve(programme_of(resolve_blend(spec, shelf, usual_batch)).programme);
}

/// The spec with one end of a limit moved.
BlendSpec moved(BlendSpec spec, const BlendLimitEnd& end, double by) {
    const auto move = [&](Limits& bounds) {
        std::optional<double>& bound = end.end == BlendLimitEnd::End::least ? bounds.least : bounds.most;
        *bound += by;
    };
    if (end.property) {
        for (BlendLimit& limit : spec.limits)
            if (limit.on == end.property) move(limit.bounds);
    } else {
        for (BlendCandidate& candidate : spec.candidates)
            if (candidate.of == end.of.front()) move(candidate.share);
    }
    return spec;
}

}  // namespace

TEST_CASE("the feed of a textbook is blended as another solver mixes it") {
    // LP-09 in tenths of a cent; calcium stands as the salt.
    const std::vector<Made> feed{{"limestone", 0, 0, 38, 100}, {"corn", 9, 2, 0.1, 305}, {"soybean", 50, 8, 0.2, 900}};
    const BlendAnswer answer =
        blended(feed, spec_of(feed, {on(P::salt, 0.8, 1.2), on(P::protein, 22), on(P::fibre, {}, 5)}));
    const std::vector<double> expected = reference::numbers_in(reference::expected_of("LP-09"));
    REQUIRE(answer.status == BlendAnswer::Status::optimal);
    REQUIRE(expected.size() == 4);
    CHECK(share_in(answer, "limestone") == Approx(expected[0]).margin(1e-6));
    CHECK(share_in(answer, "corn") == Approx(expected[1]).margin(1e-6));
    CHECK(share_in(answer, "soybean") == Approx(expected[2]).margin(1e-6));
    CHECK(answer.cost_per_kilogram == Approx(10 * expected[3]).margin(1e-4));
}

TEST_CASE("two meals that must come to one protein are blended as Pearson's square has it") {
    const std::vector<Made> meals{{"maize", 8, 2, 0, 30}, {"soya", 44, 6, 0, 60}};
    const std::vector<double> expected = reference::numbers_in(reference::expected_of("LP-11"));
    const BlendAnswer answer = blended(meals, spec_of(meals, {on(P::protein, 20, 20)}));
    REQUIRE(expected.size() == 2);
    CHECK(100 * share_in(answer, "maize") == Approx(expected[0]).margin(1e-3));
    CHECK(100 * share_in(answer, "soya") == Approx(expected[1]).margin(1e-3));
}

TEST_CASE("each limit that binds costs what moving it costs") {
    int prices = 0;
    CHECK(rc::check([&] {
        const std::vector<Made> all = random_candidates();
        const BlendSpec spec = random_spec(all);
        const BlendAnswer answer = blended(all, spec);
        if (answer.status != BlendAnswer::Status::optimal) return;
        const double cost = solved(all, spec).cost;
        for (const BindingLimit& binding : answer.binding) {
            const double tighter = binding.limit.end == BlendLimitEnd::End::least ? 1 : -1, by = 1e-4 * binding.step;
            const LinearSolution more = solved(all, moved(spec, binding.limit, tighter * by)),
                                 less = solved(all, moved(spec, binding.limit, -tighter * by));
            RC_ASSERT(less.status == LinearStatus::optimal);
            const double up = more.status == LinearStatus::optimal ? (more.cost - cost) / by * binding.step : 1e300;
            const double down = (cost - less.cost) / by * binding.step;
            const double slack = 1e-3 * (1 + std::abs(binding.price_minor));
            RC_ASSERT(binding.price_minor <= std::max(up, down) + slack);
            RC_ASSERT(binding.price_minor >= std::min(up, down) - slack);
            ++prices;
        }
    }));
    CHECK(prices > 20);
}

/// Where whole grams break its limits, a small batch is refused, and the one that is named instead works.
static BlendAnswer blended_or_next(const std::vector<Made>& all, const BlendSpec& spec, BlendRequest& request) {
    try {
        return blended(all, spec, request);
    } catch (const UsageError& error) {
        const Fault& fault = error.faults().front();
        RC_ASSERT(fault.code == "batch-too-small");
        const auto at = fault.hint.find("--batch ");
        RC_ASSERT(at != std::string::npos);
        const Mass next = parse<Mass>(fault.hint.substr(at + 8));
        RC_ASSERT(next > *request.batch);
        request.batch = next;
        return blended(all, spec, request);
    }
}

TEST_CASE("what no scale shows of a batch is left out, and each limit that it was for is told of") {
    const std::vector<Made> all{{"bulk", 20, 5, 1, 100}, {"glue", 20, 5, 1, 5000}};
    MemoryShelf shelf(&draft::shelf());
    for (const Made& made : all) {
        Ingredient ingredient = MadeShelf(all).ingredient(made.name);
        ingredient.binder = draft::stated<Ratio>(made.name == "glue" ? 10.0 : 0.0);
        shelf.put(ingredient);
    }
    BlendSpec spec = spec_of(all, {on(P::binder, 0.04)});
    spec.candidates[1].share.least = 0.004;
    BlendRequest request;
    request.batch = 100.0 * gram;  // 0.4 g of glue
    ClpSolver solver;
    const BlendAnswer answer = blend_mix(shelf, spec, request, solver);
    CHECK(answer.shares.size() == 1);
    REQUIRE(answer.warnings.size() == 2);
    CHECK(answer.warnings[0].message == "mixed, the binder comes to 0, below the 0.04 asked for");
    CHECK(answer.warnings[1].message ==
          "without what no scale shows of so little, the glue comes to 0 %, below the 0.4 % asked for");
    request.batch = 1.0 * kilogram;
    CHECK(blend_mix(shelf, spec, request, solver).warnings.empty());
}

TEST_CASE("masses come to the batch to the gram and costs to the penny") {
    CHECK(rc::check([] {
        const std::vector<Made> all = random_candidates();
        BlendRequest request;
        request.batch = between(1, 40000) * gram;
        const BlendSpec spec = random_spec(all);
        const BlendAnswer answer = blended_or_next(all, spec, request);
        if (answer.status != BlendAnswer::Status::optimal) return;
        double grams = 0, shares = 0;
        std::int64_t pence = 0;
        for (const BlendShare& share : answer.shares) {
            grams += share.weigh.in(gram);
            pence += share.cost.minor();
            shares += share.share;
            RC_ASSERT(share.weigh >= 0 * gram);
            RC_ASSERT(std::abs(share.weigh.in(gram)-std::round(share.weigh.in(gram))) < 1e-6);
        }
        RC_ASSERT(std::abs(grams - request.batch->in(gram)) < 1e-6);
        for (const BlendLimit& limit : spec.limits) {  // what is weighed holds them, within a step
            if (!limit.on || *limit.on == MixProperty::price) continue;
            double sum = 0, weight = 0;
            for (const BlendShare& share : answer.shares) {
                const auto terms = terms_of(*limit.on, share.ingredient);
                if (!terms) continue;
                sum += share.weigh.in(gram)*terms->amount;
                weight += share.weigh.in(gram)*terms->weight;
            }
            const double step = facts_of(*limit.on).step + 1e-9;
            if (limit.bounds.least) RC_ASSERT(sum / weight > *limit.bounds.least - step);
            if (limit.bounds.most) RC_ASSERT(sum / weight < *limit.bounds.most + step);
        }
        RC_ASSERT(pence == answer.cost.minor());
        RC_ASSERT(std::abs(shares - 1) < 1e-12);
        double parts = 0, cost = 0;  // of the shares as they are saved
        for (const Part& part : answer.recipe.parts) {
            const double saved = std::get<Share>(part.amount).parts;
            parts += saved;
            for (const BlendShare& share : answer.shares)
                if (share.ingredient.name == part.of)
                    cost += saved / 100 * share.price_per_kilogram * request.batch->in(kilogram);
        }
        RC_ASSERT(std::abs(parts - 100) < 1e-9);
        RC_ASSERT(std::abs(double(pence) - cost) <= 0.5 + 1e-6);
        // half a hundredth of a percent a share, or a hundredth where the last one takes up what the others leave
        const double rounding = 1e-4 * 400 * double(answer.shares.size()) * request.batch->in(kilogram);
        RC_ASSERT(std::abs(double(pence) - answer.cost_per_kilogram * request.batch->in(kilogram)) <= 0.5 + rounding);
    }));
}

TEST_CASE("without limits the cheapest candidate is all of it, and no limit costs anything") {
    const std::vector<Made> all{{"dear", 20, 2, 0, 200}, {"cheap", 10, 2, 0, 90}};
    const BlendAnswer answer = blended(all, spec_of(all, {}));
    REQUIRE(answer.shares.size() == 1);
    CHECK(answer.shares[0].ingredient.name == "cheap");
    CHECK(answer.cost_per_kilogram == Approx(90));
    CHECK(answer.cost_per_litre == Approx(90 * 0.42));  // brown crumb fills 420 g/l
    CHECK(answer.binding.empty());
}

TEST_CASE("a litre is filled by the lighter candidate where that is cheaper by the litre") {
    BlendSpec spec;
    spec.name = "by the litre";
    spec.candidates = {{"wheat bran", {}, parse_money("£1.60")}, {"maize meal", {}, parse_money("£1.00")}};
    ClpSolver solver;
    CHECK(blend_mix(draft::shelf(), spec, {}, solver).shares.at(0).ingredient.name == "maize meal");
    spec.goal = BlendGoal::per_litre;  // by hand: 160 x 0.24 = 38.4p a litre against 100 x 0.62 = 62p
    const BlendAnswer answer = blend_mix(draft::shelf(), spec, {}, solver);
    CHECK(answer.shares.at(0).ingredient.name == "wheat bran");
    CHECK(answer.cost_per_litre == Approx(38.4));
}

TEST_CASE("a share that no scale shows is left out") {
    std::vector<Made> all{{"bulk", 10, 2, 0, 100}, {"strong", 80, 2, 0, 900}};
    const BlendAnswer answer = blended(all, spec_of(all, {on(P::protein, 10.001)}));
    REQUIRE(answer.shares.size() == 1);
    CHECK(answer.shares[0].share == 1);
}

TEST_CASE("candidates that cannot be blended are refused at their place") {
    const auto refused = [](const std::string& of, std::optional<Money> price, std::vector<BlendLimit> limits) {
        BlendSpec spec;
        spec.name = "faulty";
        spec.candidates = {{"brown crumb", {}, parse_money("£1.00")}, {of, {}, price}};
        spec.limits = std::move(limits);
        ClpSolver solver;
        return fault_of([&] { blend_mix(draft::seeds(), spec, {}, solver); });
    };
    CHECK(refused("molasses", parse_money("£1.00"), {}).code == "liquid-candidate");
    CHECK(refused("maple peas, dry", parse_money("£1.00"), {}).code == "cook-first");
    CHECK(refused("maple peas, dry", parse_money("£1.00"), {}).subject == "candidate 2");
    CHECK(refused("pea meal", parse_money("£1.00"), {}).code.empty());
    CHECK(refused("rusk", {}, {}).code == "no-price");
    CHECK(refused("rusk", {}, {}).subject == "candidate 2");
    CHECK(refused("rusk", parse_money("1.00 EUR"), {}).code == "other-currency");
    CHECK(refused("rusk", parse_money("1.00 EUR"), {}).subject == "candidate 2");
    CHECK(refused("rsuk", parse_money("£1.00"), {}).hint.find("rusk") != std::string::npos);
    CHECK(refused("rusk", parse_money("£1.00"), {on(P::protein, 10)}).code == "unknown-property");
}

TEST_CASE("a blend is priced in one currency, and a candidate without a price in it is told the way out") {
    MemoryShelf shelf(&draft::shelf());
    const auto sell = [&](const char* name, std::vector<Money> prices) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        ingredient.packs.clear();
        for (const Money& price : prices) ingredient.packs.push_back({1.0 * kilogram, price, std::nullopt, {}});
        shelf.put(ingredient);
    };
    sell("brown crumb", {parse_money("£2.00"), parse_money("€1.00")});
    sell("rusk", {parse_money("€3.00")});
    BlendSpec spec;
    spec.name = "crumbs";
    spec.candidates = {{"brown crumb", {}, {}}, {"rusk", {}, {}}};
    ClpSolver solver;
    const BlendAnswer in_euros = blend_mix(shelf, spec, {}, solver);
    CHECK(in_euros.currency->code == "EUR");  // both are priced in it
    CHECK(in_euros.cost_per_kilogram == Approx(100));
    BlendRequest request;
    request.usual_currency = &currency_named("GBP");
    const Fault fault = fault_of([&] { blend_mix(shelf, spec, request, solver); });
    CHECK(fault.code == "other-currency");
    CHECK(fault.subject == "candidate 2");
    CHECK_THAT(fault.message, Catch::Contains("no price in GBP: rusk (€3.00)"));
    CHECK_THAT(fault.hint, Catch::Contains("baitwright price convert --to GBP --at RATE"));
}

}  // namespace baitwright
