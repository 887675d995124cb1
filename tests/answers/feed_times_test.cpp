#include "answers/strategy/feed_times.h"

#include <catch2/catch.hpp>

#include "answers/sessions.h"
#include "bait/feed_order.h"
#include "bait/strategy_names.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

Feed loose(const std::string& of, FeedTiming when) {
    return {std::move(when), {{of}}, FeedForm::loose, 20.0 * gram, 1, {}};
}

FeedTiming once_used_up(FeedRhythm rhythm, const std::string& after) {
    return {rhythm, {}, {}, after};
}

std::vector<double> minutes_of(const Strategy& strategy, std::size_t feed) {
    std::vector<double> minutes;
    for (const Time at : feed_times(strategy, feed, strategy.length).moments) minutes.push_back(at.in(minute));
    return minutes;
}

std::vector<std::string> codes_of(const std::vector<Fault>& faults) {
    std::vector<std::string> codes;
    for (const Fault& fault : faults) codes.push_back(fault.code + " " + fault.subject);
    return codes;
}

const FeedTiming first_hour{EveryTime{20.0 * minute}, {}, 60.0 * minute};

}  // namespace

TEST_CASE("what waits for a feed begins in the turn that would have been its next") {
    // casters at 0, 20 and 40 min; the next would have been at 60: then every 90 min, to the end of 5 h
    const Strategy strategy =
        session({loose("casters", first_hour), loose("sweetcorn", once_used_up(EveryTime{90.0 * minute}, "Casters"))});
    CHECK(feed_order_faults(strategy).empty());
    CHECK(minutes_of(strategy, 1) == std::vector<double>{60, 150, 240});
}

TEST_CASE("what waits for a feed that goes in once begins a gap of its own later, and fish are counted from then") {
    Strategy strategy = session({loose("casters", at_start), loose("sweetcorn", once_used_up(EveryPutIn{}, "feed 1")),
                                 loose("fishmeal mix", once_used_up(EveryFish{5}, "casters"))});
    strategy.pace = {2.0, 5.0};  // a put-in every 30 min, 5 fish an hour
    CHECK(minutes_of(strategy, 1) == std::vector<double>{30, 60, 90, 120, 150, 180, 210, 240, 270});
    CHECK(minutes_of(strategy, 2) == std::vector<double>{60, 120, 180, 240});
}

TEST_CASE("a place is a place, though another feed is called so") {
    const Strategy strategy = session({loose("casters", first_hour), loose("feed 1", {AtOnce{2.0 * hour}, {}, {}}),
                                       loose("sweetcorn", once_used_up(EveryTime{90.0 * minute}, "feed 1"))});
    CHECK(minutes_of(strategy, 2) == std::vector<double>{60, 150, 240});
}

TEST_CASE("what waits for several waits for the last of them, and for what never goes in it waits for ever") {
    Strategy strategy = session({loose("casters", first_hour), loose("casters", {AtOnce{2.0 * hour}, {}, {}}),
                                 loose("sweetcorn", once_used_up(EveryTime{60.0 * minute}, "casters"))});
    CHECK(minutes_of(strategy, 2) == std::vector<double>{180, 240});
    strategy.length = 1.5 * hour;
    CHECK(minutes_of(strategy, 2).empty());
}

TEST_CASE("a chain is followed from its beginning") {
    const Strategy strategy =
        session({loose("casters", first_hour),
                 loose("sweetcorn", {EveryTime{30.0 * minute}, {}, 2.0 * hour, "casters"}),  // 60, 90; then at 120
                 loose("fishmeal mix", once_used_up(EveryTime{100.0 * minute}, "sweetcorn"))});
    CHECK(minutes_of(strategy, 1) == std::vector<double>{60, 90});
    CHECK(minutes_of(strategy, 2) == std::vector<double>{120, 220});
}

TEST_CASE("what goes in as bites slow has no moments but a number, until the session is too short for it") {
    Strategy strategy = session({loose("casters", {WhenSlow{2.5}, 60.0 * minute, {}})});
    CHECK(feed_times(strategy, 0, 5.0 * hour).moments.empty());
    CHECK(feed_times(strategy, 0, 5.0 * hour).count() == 2.5);
    CHECK(feed_times(strategy, 0, 60.0 * minute).count() == 0);
}

TEST_CASE("a feed waits for no circle, for nothing unknown, and for nothing that is never used up") {
    const auto faults = [](std::vector<Feed> feeds) { return codes_of(feed_order_faults(session(std::move(feeds)))); };
    const FeedTiming waits = once_used_up(EveryTime{60.0 * minute}, "casters");
    CHECK(faults({loose("sweetcorn", waits)}) == std::vector<std::string>{"unknown-feed feed 1 after"});
    CHECK(faults({loose("casters", waits)}) == std::vector<std::string>{"unknown-feed feed 1 after"});
    CHECK(faults({loose("casters", {EveryPutIn{}, {}, {}}), loose("sweetcorn", waits)}) ==
          std::vector<std::string>{"never-used-up feed 2 after"});
    CHECK(faults({loose("casters", {WhenSlow{}, {}, {}}), loose("sweetcorn", waits)}) ==
          std::vector<std::string>{"never-used-up feed 2 after"});
    // To the end of the session, when that is said; a minute before it, there is something to come.
    CHECK(faults({loose("casters", {EveryPutIn{}, {}, session({}).length}), loose("sweetcorn", waits)}) ==
          std::vector<std::string>{"never-used-up feed 2 after"});
    CHECK(faults({loose("casters", {EveryPutIn{}, {}, session({}).length - 1.0 * minute}), loose("sweetcorn", waits)})
              .empty());
    CHECK(faults({loose("casters", {EveryPutIn{}, {}, 2.0 * hour, "sweetcorn"}),
                  loose("sweetcorn", {EveryPutIn{}, {}, 2.0 * hour, "casters"})}) ==
          std::vector<std::string>{"circle feed 1 after"});
}
