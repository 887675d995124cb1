// Cups, balls and feeders of one batch, as they are typed.
#include <catch2/catch.hpp>

#include "quantities/fault_of.h"
#include "questions/mix_question.h"
#include "questions/mix_targets.h"

using namespace baitwright;

namespace {

using Flags = std::map<std::string, std::vector<std::string>>;

std::vector<TargetAtFeel> targets_of(Flags flags, std::vector<std::string> order = {}, Usual usual = {}) {
    Arguments arguments({"silt bed"}, std::move(flags), std::move(usual));
    arguments.know_order(std::move(order));
    return typed_targets(arguments);
}

Fault refused(Flags flags) {
    return fault_of([&] { mix_request(Arguments({"silt bed"}, std::move(flags))); });
}

std::string feel_of(const TargetAtFeel& target) {
    return target.feel.value_or("none");
}

double volume_of(const TargetAtFeel& target) {
    return std::get<Vessels>(target.of).each.in(millilitre);
}

}  // namespace

TEST_CASE("targets stand in the order in which they are typed, and so do their feels") {
    const Flags flags{{"--cups", {"2x250ml", "3x100ml"}}, {"--balls", {"6x55mm"}}, {"--feel", {"soft, firm,tacky"}}};
    const auto targets = targets_of(flags, {"--cups", "--balls", "--feel", "--cups"});
    REQUIRE(targets.size() == 3);
    CHECK(volume_of(targets[0]) == Approx(250));
    CHECK(std::get<Balls>(targets[1].of).count == 6);
    CHECK(volume_of(targets[2]) == Approx(100));
    CHECK(feel_of(targets[0]) == "soft");
    CHECK(feel_of(targets[1]) == "firm");
    CHECK(feel_of(targets[2]) == "tacky");
}

TEST_CASE("a list with commas is as good as the flag many times, and one feel is for all") {
    const auto targets = targets_of({{"--cups", {"2x250ml, 3x toss pot 25"}}, {"--feel", {"soft"}}});
    REQUIRE(targets.size() == 2);
    CHECK(volume_of(targets[1]) == Approx(25));
    CHECK(feel_of(targets[0]) == "soft");
    CHECK(feel_of(targets[1]) == "soft");
}

TEST_CASE("a target may say its own feel behind its size") {
    const auto own = [](const std::string& flag, const std::string& text) {
        const auto targets = targets_of({{flag, {text}}}, {}, {{"kit", {"cup 250"}}});
        REQUIRE(targets.size() == 1);
        return targets.front();
    };
    CHECK(feel_of(own("--cups", "2x250ml soft")) == "soft");
    CHECK(feel_of(own("--cups", "2 x 250 ml very soft")) == "very soft");
    CHECK(feel_of(own("--cups", "2x toss pot 25 soft")) == "soft");
    CHECK(feel_of(own("--cups", "2x toss pot 25")) == "none");
    CHECK(feel_of(own("--cups", "4 soft")) == "soft");
    CHECK(volume_of(own("--cups", "4 soft")) == Approx(250));
    CHECK(feel_of(own("--balls", "6 x golf ball firm")) == "firm");
    CHECK(feel_of(own("--balls", "6x2 in firm")) == "firm");
    CHECK(std::get<Balls>(own("--balls", "6x2 in").of).diameter.in(millimetre) == Approx(50.8));
    const auto mixed =
        targets_of({{"--cups", {"2x250ml soft,1x100ml"}}, {"--balls", {"6x55mm"}}, {"--feel", {"firm"}}});
    CHECK(feel_of(mixed[0]) == "soft");
    CHECK(feel_of(mixed[1]) == "firm");
    CHECK(feel_of(mixed[2]) == "firm");
}

TEST_CASE("feels that do not go with the targets are refused") {
    CHECK(refused({{"--cups", {"2x250ml"}}, {"--feel", {"soft,firm"}}}).message == "--feel: 2 feels for 1 target");
    const Fault three = refused({{"--cups", {"2x250ml,1x100ml,1x500ml"}}, {"--feel", {"soft,firm"}}});
    CHECK(three.code == "unequal-feels");
    CHECK(three.message == "--feel: 2 feels for 3 targets");
    CHECK(refused({{"--cups", {"2x250ml soft,1x100ml"}}, {"--feel", {"soft,firm"}}}).message ==
          "--feel: 2 feels for 1 that says none of its own");
    CHECK(refused({{"--cups", {"2x250ml soft"}}, {"--feel", {"firm"}}}).message ==
          "--feel: the feel is said twice, with the size too");
    CHECK(refused({{"--cups", {"2x250ml soft,1x100ml firm"}}, {"--feel", {"firm"}}}).hint == "leave --feel out");
    CHECK(refused({{"--cups", {"2x250ml,1x100ml"}}, {"--feel", {"soft,"}}}).code == "empty-item");
    CHECK(refused({{"--cups", {"2x250ml,,1x100ml"}}}).code == "empty-item");
}

TEST_CASE("a slip in one of several is told as it is of one") {
    CHECK(refused({{"--cups", {"2x250ml,4x250mm"}}}).message ==
          "--cups: '250mm' is a length, but a volume is needed here");
    CHECK(refused({{"--cups", {"2x1,5l"}}}).message == "--cups: '1,5l' has a comma in its number");
}

TEST_CASE("cups with balls are several targets, but with an amount they are two") {
    const MixRequest several = mix_request(Arguments({"silt bed"}, {{"--cups", {"2x250ml"}}, {"--balls", {"6x55mm"}}}));
    CHECK(several.several.size() == 2);
    CHECK(refused({{"--cups", {"2x250ml"}}, {"--wet-volume", {"3l"}}}).code == "two-targets");
    CHECK(refused({{"--cups", {"2x250ml"}}, {"--balls", {"6x55mm"}}, {"--from-stock", {}}}).code == "two-targets");
    const MixRequest one = mix_request(Arguments({"silt bed"}, {{"--balls", {"6x55mm firm"}}}));
    CHECK(one.several.empty());
    CHECK(one.feel == "firm");
}
