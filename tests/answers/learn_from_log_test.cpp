#include "answers/learn/learn_from_log.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <set>

#include "answers/learning.h"
#include "bait/hand.h"
#include "physics/normal_quantile.h"
#include "progress_heard.h"

using namespace baitwright;
using namespace baitwright::learning;

namespace {

double sigma2(double spread) {
    return std::pow(log_normal_sigma(spread), 2);
}

void check_same(const LearntWater& water, const nlohmann::json& expected) {
    const auto value = [&](const nlohmann::json& number) {
        return Approx(number.get<double>()).margin(1e-9).epsilon(0);
    };
    CHECK(water.log_hand == value(expected["log_hand"]));
    CHECK(water.log_memory == value(expected["log_memory"]));
    REQUIRE(water.bags.size() == expected["learnt"].size());
    for (std::size_t i = 0; i < water.bags.size(); ++i) {
        const auto& bag = expected["learnt"][i];
        CHECK(water.bags[i].name == bag["name"]);
        CHECK(water.bags[i].mixes == bag["mixes"]);
        CHECK(water.bags[i].log_absorption == value(bag["log_absorption"]));
        CHECK(water.bags[i].log_gap == value(bag["log_gap"]));
    }
    std::size_t k = 0;
    for (std::size_t i = 0; i < 2 + 2 * water.bags.size(); ++i)
        for (std::size_t j = 0; j <= i; ++j) CHECK(water.covariance(i, j) == value(expected["covariance"][k++]));
    CHECK(k == expected["covariance"].size());
}

std::set<std::int64_t> ids_of(const std::vector<SetAside>& aside) {
    std::set<std::int64_t> ids;
    for (const SetAside& one : aside) ids.insert(one.entry.id);
    return ids;
}

}  // namespace

TEST_CASE("learning says that it goes on, round by round, and that it is over") {
    Case made;
    fill(cases().front(), made);
    const std::vector<std::string> heard = progress_heard_in([&] { learn_from_log(made.shelf, made.request); });
    REQUIRE(heard.size() >= 2);
    CHECK(heard.front() == "learning 1/0");
    CHECK(heard.back() == "learning 0/0");
}

// Source: tests/reference/learn_cases.json (NumPy and SciPy, the whole system at once; see make_learn_tables.py).
TEST_CASE("what a log teaches of the water is what NumPy and SciPy find, and so is what is set aside") {
    const auto all = cases();
    REQUIRE(all.size() == 100);
    std::size_t aside = 0;
    for (const auto& one : all) {
        INFO(one["name"]);
        Case made;
        fill(one, made);
        const LearnAnswer answer = learn_from_log(made.shelf, made.request);
        CHECK(ids_of(answer.set_aside) == one["set_aside"].get<std::set<std::int64_t>>());
        CHECK(answer.observations + answer.set_aside.size() == one["log"].size());
        aside += answer.set_aside.size();
        check_same(answer.water, one);
    }
    CHECK(aside > 20);
}

TEST_CASE("it does not matter in which order a log was written down") {
    std::mt19937_64 random(7);
    for (const auto& one : cases()) {
        INFO(one["name"]);
        Case made;
        fill(one, made);
        const LearnAnswer before = learn_from_log(made.shelf, made.request);
        std::shuffle(made.request.log.begin(), made.request.log.end(), random);
        std::shuffle(made.request.bags.begin(), made.request.bags.end(), random);
        for (LogEntry& entry : made.request.log) {
            auto& parts = std::get<LoggedMix>(entry.what).parts;
            std::shuffle(parts.begin(), parts.end(), random);
        }
        const LearnAnswer after = learn_from_log(made.shelf, made.request);
        REQUIRE(before.water.bags.size() == after.water.bags.size());
        CHECK(std::abs(before.water.log_hand - after.water.log_hand) <= 1e-12);
        for (std::size_t i = 0; i < before.water.bags.size(); ++i) {
            CHECK(std::abs(before.water.bags[i].log_absorption - after.water.bags[i].log_absorption) <= 1e-12);
            CHECK(std::abs(before.water.bags[i].log_gap - after.water.bags[i].log_gap) <= 1e-12);
        }
        REQUIRE(before.water.factor.size() == after.water.factor.size());
        for (std::size_t i = 0; i < 2 + 2 * before.water.bags.size(); ++i)
            for (std::size_t j = 0; j <= i; ++j)
                CHECK(std::abs(before.water.covariance(i, j) - after.water.covariance(i, j)) <= 1e-12);
    }
}

// By hand, a linear Gaussian system: n mixes of one meal at h = 1 on days of their own. ln(A/library) has the variance
// v = hand + memory + spread^2 + moisture^2 before; each mix tells it with s^2 = day + within^2 + 0.01^2. So after them
// 1/v + n/s^2, about (sum of what they tell)/s^2 over that; and of all that v is made of each its share.
TEST_CASE("mixes of one ingredient that just holds teach what the closed form says") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    const Hand hand;
    const double by_moisture = 0.1 * log_normal_sigma(0.1) / 0.9 * 1.6 / 0.6,
                 before = hand.hand_variance + hand.memory_variance + sigma2(0.2) + by_moisture * by_moisture,
                 each = sigma2(day_spread) + 0.03 * 0.03 + 0.01 * 0.01;
    const std::vector<double> waters{690, 640, 705, 660, 648};
    LearnRequest request;
    double told = 0;
    for (std::size_t n = 0; n < waters.size(); ++n) {
        request.log.push_back(mixed(static_cast<std::int64_t>(n) + 1, parse_date("2026-05-01") + std::chrono::days(n),
                                    kilo_of("meal", 1, waters[n])));
        told += std::log(waters[n] / 600) / each;
        const LearntWater water = learn_from_log(shelf, request).water;
        const double after = 1 / (1 / before + static_cast<double>(n + 1) / each), shrunk = 1 - after / before;
        REQUIRE(water.bags.size() == 1);
        CHECK(std::abs(water.bags[0].log_absorption - std::log(0.6) - after * told) < 1e-12);
        CHECK(std::abs(water.covariance(LearntWater::absorption(0), LearntWater::absorption(0)) - after) < 1e-12);
        CHECK(std::abs(water.log_hand - hand.hand_variance / before * after * told) < 1e-12);
        CHECK(std::abs(water.covariance(0, 0) - hand.hand_variance * (1 - shrunk * hand.hand_variance / before)) <
              1e-12);
        CHECK(std::abs(water.covariance(0, 1) + shrunk * hand.hand_variance * hand.memory_variance / before) < 1e-12);
    }
}

// By hand: all on one day, so the hand of the day is common to them: their mean tells ln A with day + (e^2)/n.
TEST_CASE("mixes of one day tell no more of the bag than the hand of that day lets them") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    const Hand hand;
    const double by_moisture = 0.1 * log_normal_sigma(0.1) / 0.9 * 1.6 / 0.6,
                 before = hand.hand_variance + hand.memory_variance + sigma2(0.2) + by_moisture * by_moisture,
                 error = 0.03 * 0.03 + 0.01 * 0.01;
    LearnRequest request;
    for (int n = 1; n <= 40; ++n) {
        request.log.push_back(mixed(n, parse_date("2026-05-01"), kilo_of("meal", 1, 660)));
        if (n != 1 && n != 4 && n != 40) continue;
        const LearntWater water = learn_from_log(shelf, request).water;
        const double after = 1 / (1 / before + 1 / (sigma2(day_spread) + error / n));
        CHECK(std::abs(water.covariance(2, 2) - after) < 1e-12);
        CHECK(std::abs(water.bags[0].log_absorption - std::log(0.6) - (1 - after / before) * std::log(1.1)) < 1e-12);
    }
}

TEST_CASE("a new bag keeps what was learnt of the kind, and widens by what is the bag's own") {
    MemoryShelf shelf;
    Ingredient meal = thirsty("meal", 0.6, 1.0);
    meal.moisture.spread = 0;
    shelf.put(meal);
    LearnRequest request;
    for (int n = 0; n < 200; ++n)
        request.log.push_back(mixed(n + 1, parse_date("2026-01-01") + std::chrono::days(n), kilo_of("meal", 1, 690)));
    const LearntWater old_bag = learn_from_log(shelf, request).water;
    request.bags = {{"Meal", parse_date("2026-08-01")}};
    const LearntWater new_bag = learn_from_log(shelf, request).water;
    const double old_variance = old_bag.covariance(2, 2), own = sigma2(bag_spread);
    // By hand: of what is left once the old bag is known, the kind's part and the new bag's own. With v_kind + v_bag =
    // v and the old bag known exactly, var = (hand's sum + v_kind + v_bag) - (hand's sum + v_kind)^2 / (hand's sum +
    // v).
    const Hand hand;
    const double shared = hand.hand_variance + hand.memory_variance + sigma2(0.2) - own, all = shared + own;
    const double known = all - old_variance;  // what was learnt of the old bag
    CHECK(new_bag.covariance(2, 2) == Approx(all - shared * shared / all / all * known).epsilon(1e-9));
    CHECK(new_bag.bags[0].log_absorption - std::log(0.6) ==
          Approx((old_bag.bags[0].log_absorption - std::log(0.6)) * shared / all).epsilon(1e-9));
    CHECK(new_bag.covariance(2, 2) > 2 * old_variance);
}

TEST_CASE("nothing is learnt from an empty log, nor from mixes that leave out what matters") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    CHECK_FALSE(learn_from_log(shelf, {}).water.known());
    LoggedMix no_feel = kilo_of("meal", 1, 600);
    no_feel.wetness.reset();
    LoggedMix no_water = kilo_of("meal", 1, 600);
    no_water.water.reset();
    LoggedMix no_parts = kilo_of("meal", 1, 600);
    no_parts.parts.clear();
    LearnRequest request;
    const Date on = parse_date("2026-05-01");
    request.log = {mixed(1, on, no_feel), mixed(2, on, no_water), mixed(3, on, no_parts)};
    CHECK_FALSE(learn_from_log(shelf, request).water.known());
    request.log = {mixed(4, on, kilo_of("gone", 1, 600))};
    const LearnAnswer gone = learn_from_log(shelf, request);
    CHECK_FALSE(gone.water.known());
    REQUIRE(gone.warnings.size() == 1);
    CHECK(gone.warnings[0].code == "unknown-ingredient");
}

TEST_CASE("pellets alone teach nothing of the hand, whatever was felt of them; with meal they do") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    Ingredient pellet = thirsty("pellet", 0.4, 0.7);
    pellet.kind = IngredientKind::pellet;
    shelf.put(pellet);
    LearnRequest request;
    request.log = {mixed(1, parse_date("2026-05-01"), kilo_of("pellet", 1.2, 350))};
    const LearnAnswer alone = learn_from_log(shelf, request);
    CHECK_FALSE(alone.water.known());
    CHECK(alone.observations == 0);
    REQUIRE(alone.warnings.size() == 1);
    CHECK(alone.warnings[0].code == "soaked-alone");
    LoggedMix with_meal = kilo_of("pellet", 1.2, 500);
    with_meal.parts = {{"pellet", 0.4 * kilogram}, {"meal", 0.6 * kilogram}};
    request.log.push_back(mixed(2, parse_date("2026-05-02"), with_meal));
    const LearnAnswer both = learn_from_log(shelf, request);
    CHECK(both.observations == 1);
    request.log.erase(request.log.begin());
    CHECK(learn_from_log(shelf, request).water.covariance(0, 0) == both.water.covariance(0, 0));
}
