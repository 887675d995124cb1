// Blends as files: what is read_blend, and every fault at its place.
#include <catch2/catch.hpp>

#include <algorithm>

#include "files/library_file.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr const char* whole = R"(name = "club sack"
feel = "tacky"
goal = "cost per litre"
batch = "25 kg"
note = "For all."
[[candidate]]
of = "brown crumb"
min = "20 %"
max = "60 %"
price = "£1.40 per kg"
[[candidate]]
of = "rusk"
[[limit]]
on = "loose_density"
max = "420 g/l"
[[limit]]
on = "binder"
min = -0.2
[[limit]]
on = "absorption"
min = "0.5 g/g"
[[limit]]
on = "price"
max = "£2.00 per kg"
[[limit]]
of = ["brown crumb", "Rusk"]
min = "90 %"
)";

LibraryFile read_blend(const std::string& text) {
    return read_library_file(text, "a.toml");
}

/// The faults of a blend of two candidates with these lines after them; line 5 is the first.
std::vector<Fault> blend_faults(const std::string& lines) {
    return read_blend("name = \"b\"\n[[candidate]]\nof = \"brown crumb\"\n[[candidate]]\nof = \"rusk\"\n" + lines)
        .faults;
}

void check_one(const std::string& lines, const std::string& code, int line) {
    const std::vector<Fault> faults = blend_faults(lines);
    INFO(lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].code == code);
    CHECK(faults[0].line == line);
    CHECK(faults[0].column > 0);
}

}  // namespace

TEST_CASE("a blend is read_blend as it is written") {
    const LibraryFile file = read_blend(whole);
    for (const Fault& fault : file.faults) FAIL(fault.line << ": " << fault.message);
    REQUIRE(file.blends.size() == 1);
    const BlendSpec& spec = file.blends[0].value;
    CHECK(spec.name == "club sack");
    CHECK(spec.feel == "tacky");
    CHECK(spec.note == "For all.");
    CHECK(spec.goal == BlendGoal::per_litre);
    CHECK(spec.batch.value().in(kilogram) == Approx(25));
    REQUIRE(spec.candidates.size() == 2);
    CHECK(spec.candidates[0].share.least == 0.2);
    CHECK(spec.candidates[0].share.most == 0.6);
    CHECK(spec.candidates[0].price == parse_money("£1.40"));
    CHECK_FALSE(spec.candidates[1].price);
    REQUIRE(spec.limits.size() == 5);
    CHECK(spec.limits[0].on == MixProperty::loose_density);
    CHECK(spec.limits[0].bounds.most.value() == Approx(420));
    CHECK(spec.limits[1].bounds.least.value() == Approx(-0.2));
    CHECK(spec.limits[2].bounds.least.value() == Approx(0.5));
    CHECK(spec.limits[3].bounds.most.value() == Approx(200));
    CHECK(spec.limits[4].of.size() == 2);
    CHECK(file.blends[0].places.at("candidate 2").line == 12);
    CHECK(file.blends[0].places.at("limit 1").line == 14);
    CHECK_FALSE(file.blends[0].faulty);
}

TEST_CASE("each slip in a blend is told at its place") {
    check_one("[[limit]]\non = \"protein\"\nmin = \"30 %\"\nmax = \"20 %\"\n", "crossed-limits", 8);
    check_one("min = \"60 %\"\nmax = \"20 %\"\n", "crossed-limits", 6);
    check_one("max = \"120 %\"\n", "out-of-range", 6);
    check_one("price = \"-1.00 GBP per kg\"\n", "out-of-range", 6);
    check_one("price = \"£1.40\"\n", "no-unit", 6);
    check_one("[[candidate]]\nof = \"Rusk\"\n", "duplicate-name", 7);
    check_one("[[limit]]\non = \"protein\"\n", "missing-value", 6);
    check_one("[[limit]]\nmin = \"10 %\"\n", "missing-value", 6);
    check_one("[[limit]]\non = \"protein\"\nof = [\"rusk\"]\nmin = \"10 %\"\n", "missing-value", 6);
    check_one("[[limit]]\non = \"loose_density\"\nmin = \"5 g/l\"\n", "out-of-range", 8);
    check_one("[[limit]]\nof = \"rusk\"\nmin = \"10 %\"\n", "wrong-type", 7);
    check_one("[[limit]]\nof = [\"rsuk\"]\nmin = \"10 %\"\n", "unknown-candidate", 7);
}

TEST_CASE("a key, a property and a candidate that are mistyped are met with what may be meant") {
    const auto hints = [](const std::string& lines, const std::string& meant) {
        const std::vector<Fault> faults = blend_faults(lines);
        INFO(lines);
        REQUIRE_FALSE(faults.empty());
        CHECK((faults[0].hint + faults[0].message).find(meant) != std::string::npos);
    };
    hints("mx = \"20 %\"\n", "max");
    hints("prise = \"£1.40 per kg\"\n", "price");
    hints("[[limit]]\non = \"protien\"\nmin = \"10 %\"\n", "protein");
    hints("[[limit]]\nof = [\"rsuk\"]\nmin = \"10 %\"\n", "rusk");
}

TEST_CASE("a blend of nothing is refused, and all faults come in one run") {
    const LibraryFile empty = read_blend("name = \"b\"\ngoal = \"cost per kg\"\n");
    REQUIRE(empty.faults.size() == 1);
    CHECK(empty.faults[0].hint.find("[[candidate]]") != std::string::npos);
    const std::vector<Fault> three = blend_faults(
        "max = \"120 %\"\n[[limit]]\non = \"protein\"\n[[limit]]\non = \"fibre\"\nmin = \"9 %\"\nmax = \"2 %\"\n");
    CHECK(three.size() == 3);
}

}  // namespace baitwright
