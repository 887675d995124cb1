#include "report/paid_report.h"

#include <catch2/catch.hpp>
#include <sstream>

#include "report/paid_words.h"

using namespace baitwright;

namespace {

PaidGroup two_ways(int sessions) {
    PaidGroup group;
    for (const char* name : {"open carpet", "tight balls"}) {
        PaidStrategy strategy;
        strategy.name = name;
        strategy.sessions = sessions;
        strategy.kilos_an_hour = {0.3, 0.6, 1.2};
        group.strategies.push_back(strategy);
    }
    return group;
}

PaidVerdict carpet_better(double probability) {
    PaidVerdict verdict;
    verdict.better = "open carpet";
    verdict.than = "tight balls";
    verdict.probability = probability;
    verdict.times = {0.9, 1.62, 2.8};
    return verdict;
}

std::string told_verdict(const PaidVerdict& verdict, int sessions = 6) {
    return verdict_text(two_ways(sessions), verdict, "more an hour");
}

}  // namespace

TEST_CASE("a verdict that is not sure says how sure it is and what would tell") {
    PaidVerdict verdict = carpet_better(0.81);
    verdict.more_sessions = 6;
    CHECK(told_verdict(verdict) ==
          "Open carpet brought more an hour than tight balls: about 1.6 times as much (0.9 to 2.8). Not sure yet: 8 in "
          "10. About 6 more sessions of each would tell.");
    verdict.more_sessions = 1;
    CHECK(told_verdict(verdict).find("About 1 more session of each") != std::string::npos);
    verdict.more_sessions.reset();
    CHECK(told_verdict(verdict).find("More than 99 more sessions") != std::string::npos);
}

TEST_CASE("no chance is told as larger than it is, and none as certain") {
    PaidVerdict verdict = carpet_better(0.979);
    CHECK(told_verdict(verdict).find("9 in 10") != std::string::npos);
    verdict.is_sure = true;
    CHECK(told_verdict(verdict).find("As good as sure: 97 in 100.") != std::string::npos);
    verdict.probability = 1;
    CHECK(told_verdict(verdict).find("99 in 100") != std::string::npos);
}

TEST_CASE("three sessions are too few to tell, and a chance below three in four is no difference to speak of") {
    CHECK(told_verdict(carpet_better(0.99), 1) == "Too few to tell: 2 sessions.");
    CHECK(told_verdict(carpet_better(0.74)) == "No difference to speak of so far between open carpet and tight balls.");
}

TEST_CASE("takings are told to a tenth, small ones to one digit") {
    CHECK(shown_takings(0.62) == "0.6");
    CHECK(shown_takings(0.0612) == "0.06");
    CHECK(shown_takings(1.25e-3) == "0.001");
    CHECK(shown_takings(12.4) == "12");
    CHECK(shown_takings(1234) == "1,200");
    CHECK(shown_takings(Range<double>{0.3, 0.6, 1.2}) == "0.3 to 1.2");
}

TEST_CASE("no line of what paid is wider than a terminal, however long the names are") {
    PaidAnswer answer;
    answer.sessions = 12;
    answer.currency = &currency_named("GBP");
    PaidGroup group = two_ways(6);
    for (PaidStrategy& strategy : group.strategies) {
        strategy.name += " with a name that goes on and on until nobody would type it a second time";
        strategy.cost = Money(123456, *answer.currency);
        strategy.priced = 3;
        strategy.kilos_a_pound = Range<double>{0.01, 12.5, 1234};
    }
    group.verdict = carpet_better(0.9);
    answer.groups.push_back(group);
    std::istringstream lines(paid_told(answer).text());
    for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 82);  // the pound sign has two bytes
}
