#include "answers/paid/what_paid.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <ctime>
#include <random>

#include "answers/invented_seasons.h"
#include "answers/paid/paid_sessions.h"
#include "answers/paid_log.h"
#include "quantities/fault.h"
#include "quantities/units.h"

using namespace baitwright;
using paid_log::asked_of;
using paid_log::PaidLog;
using paid_log::pounds;
using paid_log::warns_of;

TEST_CASE("an empty log pays nothing and says nothing") {
    const PaidAnswer answer = what_paid({});
    CHECK(answer.sessions == 0);
    CHECK(answer.groups.empty());
    CHECK(answer.warnings.empty());
}

TEST_CASE("sessions are summed by the way of feeding, whatever its case, with blanks, hours, fish and cost") {
    PaidLog log;
    log.session("open carpet", 6).cost = pounds(620);
    log.session("Open Carpet", 0).cost = pounds(500);
    log.session("open carpet", 4);
    log.session("tight balls", 2);
    const PaidAnswer answer = what_paid(asked_of(log));
    REQUIRE(answer.groups.size() == 1);
    REQUIRE(answer.groups[0].strategies.size() == 2);
    const PaidStrategy& carpet = answer.groups[0].strategies[0];
    CHECK(carpet.name == "open carpet");
    CHECK(carpet.sessions == 3);
    CHECK(carpet.blanks == 1);
    CHECK(carpet.hours.in(hour) == Approx(15));
    CHECK(carpet.caught.in(kilogram) == Approx(10));
    CHECK(carpet.fish == 8);
    CHECK(carpet.cost == pounds(1120));
    CHECK(carpet.priced == 2);
    CHECK(carpet.kilos_a_pound);
    CHECK_FALSE(answer.groups[0].strategies[1].kilos_a_pound);
}

TEST_CASE("a verdict is sure of a plain difference, and never from three sessions of one of them") {
    PaidLog log;
    log.sessions("tight balls", {1, 1.2, 0.9, 1.1, 1.3, 0.8, 1, 1.1});
    log.sessions("open carpet", {9, 11, 10});
    const PaidAnswer three = what_paid(asked_of(log));
    REQUIRE(three.groups[0].verdict);
    CHECK(three.groups[0].verdict->better == "open carpet");
    CHECK(three.groups[0].verdict->probability > 0.95);
    CHECK_FALSE(three.groups[0].verdict->is_sure);
    CHECK(three.groups[0].verdict->more_sessions == 1);
    log.sessions("open carpet", {8, 12, 10, 9});
    const PaidVerdict verdict = *what_paid(asked_of(log)).groups[0].verdict;
    CHECK(verdict.is_sure);
    CHECK_FALSE(verdict.more_sessions);
    CHECK(verdict.times.low > 3);
    CHECK(verdict.times.high < 25);
}

TEST_CASE("the more a difference seems, the fewer sessions would tell it") {
    const auto verdict_for = [](double times) {
        PaidLog log;
        for (const double kilos : {1.0, 1.8, 0.7, 1.4, 1.1, 0.6}) {
            log.session("tight balls", 5 * kilos);
            log.session("open carpet", 5 * kilos * times);
        }
        return *what_paid(asked_of(log)).groups[0].verdict;
    };
    REQUIRE(verdict_for(2).more_sessions);
    REQUIRE(verdict_for(2.4).more_sessions);
    CHECK(*verdict_for(2.4).more_sessions < *verdict_for(2).more_sessions);
    CHECK_FALSE(verdict_for(1).more_sessions);
    CHECK_FALSE(verdict_for(3).more_sessions);
    CHECK(verdict_for(3).is_sure);
}

// In how many of a hundred seasons of so many more sessions it is told: what was seen so far, beyond the middle of the
// ratio, helps.
TEST_CASE("after as many more sessions as are said, a difference that is what it seems is told more often than not") {
    Takings one, other;
    for (const double kilos : {1.0, 1.8, 0.7, 1.4, 1.1, 0.6}) {
        one.add(2.4 * kilos);
        other.add(kilos);
    }
    const DrawnTakings drawn = draw_takings({one, other}, 1);
    const PaidVerdict verdict = verdict_of(drawn, {one, other}, 0, 1);
    REQUIRE(verdict.more_sessions);
    std::mt19937_64 random(9);
    int told = 0;
    for (int season = 0; season < 100; ++season) {
        std::vector<Takings> ways{one, other};
        for (int more = 0; more < *verdict.more_sessions; ++more) {
            const std::vector<Takings> next = invented::fished({{verdict.times.middle, 1.0}, 1, 0.05, 0.55}, random);
            for (std::size_t way = 0; way < 2; ++way)
                ways[way].add(next[way].caught > 0 ? std::exp(next[way].log_mean) : 0);
        }
        told += verdict_of(draw_takings(ways, 1), ways, 0, 1).is_sure ? 1 : 0;
    }
    CHECK(told > 50);
    CHECK(told < 95);
}

TEST_CASE("two anglers that catch twice as much bring each as much an hour") {
    PaidLog one, two;
    one.sessions("open carpet", {3, 4, 5});
    for (const double kilos : {3.0, 4.0, 5.0}) two.session("open carpet", 2 * kilos).anglers = 2;
    CHECK(what_paid(asked_of(one)).groups[0].strategies[0].kilos_an_hour.middle ==
          Approx(what_paid(asked_of(two)).groups[0].strategies[0].kilos_an_hour.middle));
}

TEST_CASE("sessions that cannot be used are left out and counted") {
    PaidLog log;
    log.session("open carpet", 3);
    log.session("open carpet", 3).length = Time{};
    log.session("", 3);
    log.session("open carpet", 0);
    log.add(log.entries.back().id, "2026-07-04", LoggedCatch{{}, "bream", 7, {}});
    const PaidAnswer answer = what_paid(asked_of(log));
    CHECK(answer.sessions == 1);
    CHECK(warns_of(answer, "not-weighed"));
    CHECK(warns_of(answer, "no-length"));
    CHECK(warns_of(answer, "no-strategy"));
}

TEST_CASE("a catch of nothing is a blank, and so is a session without the fish that is asked for") {
    PaidLog log;
    log.session("open carpet", 3);
    log.session("open carpet", 0);
    log.add(log.entries.back().id, "2026-07-04", LoggedCatch{{}, "bream", 0, Mass{}});
    log.session("open carpet", 0);
    log.add(log.entries.back().id, "2026-07-04", LoggedCatch{{}, "roach", 3, 0.5 * kilogram});
    CHECK(what_paid(asked_of(log)).groups[0].strategies[0].blanks == 1);
    PaidRequest bream = asked_of(log);
    bream.fish = "Breams";
    CHECK(what_paid(bream).groups[0].strategies[0].blanks == 2);
    PaidRequest carp = asked_of(log);
    carp.fish = "carp";
    CHECK_THROWS_AS(what_paid(carp), UsageError);
}

TEST_CASE("where all are blanks there is nothing to expect and no verdict") {
    PaidLog log;
    log.sessions("open carpet", {0, 0, 0, 0});
    log.sessions("tight balls", {0, 0, 0, 0});
    const PaidAnswer answer = what_paid(asked_of(log));
    CHECK_FALSE(answer.groups[0].verdict);
    CHECK(answer.groups[0].strategies[0].kilos_an_hour.high == 0);
}

TEST_CASE("costs in two currencies leave money out") {
    PaidLog log;
    log.session("open carpet", 3).cost = pounds(500);
    log.session("tight balls", 3).cost = Money(500, currency_named("EUR"));
    const PaidAnswer answer = what_paid(asked_of(log));
    CHECK(warns_of(answer, "mixed-currencies"));
    CHECK(answer.currency == nullptr);
    CHECK_FALSE(answer.groups[0].money);
    CHECK_FALSE(answer.groups[0].strategies[0].kilos_a_pound);
}

TEST_CASE("money can name another way than hours do") {
    PaidLog log;
    for (const double kilos : {5.0, 6.0, 5.5, 6.5, 5.2, 6.1}) log.session("open carpet", kilos).cost = pounds(2000);
    for (const double kilos : {2.0, 2.4, 2.2, 1.9, 2.1, 2.5}) log.session("tight balls", kilos).cost = pounds(200);
    const PaidGroup group = what_paid(asked_of(log)).groups[0];
    CHECK(group.verdict->better == "open carpet");
    CHECK(group.money->better == "tight balls");
}

TEST_CASE("a group has at least four sessions and two ways of feeding; the others are named") {
    PaidLog log;
    log.sessions("open carpet", {3, 4}, "2026-07-04");
    log.sessions("tight balls", {1, 2}, "2026-08-04");
    log.sessions("tight balls", {1, 2, 3, 1}, "2026-12-04");
    log.sessions("open carpet", {1}, "2026-04-04");
    const PaidAnswer answer = what_paid(asked_of(log, PaidBy::season));
    REQUIRE(answer.groups.size() == 1);
    CHECK(answer.groups[0].of == "summer");
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].message == "too few sessions to compare: spring (1) and winter (4)");
    CHECK(warns_of(what_paid(asked_of(log, PaidBy::clarity)), "not-said"));
}

TEST_CASE("a band of temperatures holds its lower end, and winter is from December to February") {
    PaidSession session;
    const auto at = [&](double celsius) {
        session.session.water = Temperature::from_celsius(celsius);
        return group_of(session, PaidBy::temperature);
    };
    CHECK(at(7.9) == "below 8 degC");
    CHECK(at(8) == "8 to 12 degC");
    CHECK(at(12) == "12 to 18 degC");
    CHECK(at(18) == "18 degC and above");
    const auto in = [&](const char* on) {
        session.on = *day_of(on);
        return group_of(session, PaidBy::season);
    };
    CHECK(in("2026-02-28") == "winter");
    CHECK(in("2026-03-01") == "spring");
    CHECK(in("2026-08-31") == "summer");
    CHECK(in("2026-11-30") == "autumn");
    CHECK(in("2026-12-01") == "winter");
}

TEST_CASE("only the ways and the days that are asked for are looked at") {
    PaidLog log;
    log.sessions("open carpet", {3, 4}, "2026-05-04");
    log.sessions("open carpet", {3}, "2026-07-04");
    log.sessions("tight balls", {3}, "2026-07-04");
    PaidRequest request = asked_of(log);
    request.since = day_of("2026-06-01");
    CHECK(what_paid(request).sessions == 2);
    request.strategies = {"open"};
    CHECK(what_paid(request).sessions == 1);
    request.strategies = {"slow drip"};
    CHECK_THROWS_AS(what_paid(request), NotFound);
}

// Time of the processor, the least of five, so that what else runs on the machine does not count.
#ifdef __OPTIMIZE__  // as a release is
TEST_CASE("a thousand sessions of ten ways are weighed in under 50 ms") {
    PaidLog log;
    for (int i = 0; i < 1000; ++i)
        log.session("way " + std::to_string(i % 10), i % 6 == 0 ? 0 : 1 + (i * 37) % 11).cost = pounds(300 + i);
    const PaidRequest request = asked_of(log);
    double least = 1e9;
    for (int i = 0; i < 5; ++i) {
        const std::clock_t start = std::clock();
        CHECK(what_paid(request).groups[0].strategies.size() == 10);
        least = std::min(least, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    CHECK(least < 0.05);
}
#endif
