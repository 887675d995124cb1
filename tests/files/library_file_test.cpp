#include "files/library_file.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

constexpr const char* one_mix = R"(name = "silt bed"
feel = "firm"
purpose = """
Bream,
deep."""
[[part]]
of = "brown crumb"
mass = "400 g"
[[part]]
of = "fishmeal micro pellet 2 mm"
volume = "2 pt"
prepare = "soaked"
[[part]]
of = "grey bottom"
share = 2
[[dose]]
of = "sweet liquid"
amount = "25 ml per kg dry"
)";

constexpr const char* one_liquid = R"([[ingredient]]
name = "syrup"
kind = "liquid"
density = { value = "1.31 g/ml", spread = "2 %", source = "measured: jug, 2026-03-01" }
water = "30 %"
solute = "sucrose"
label_dose = "25 ml per kg dry"
composition = { carbohydrate = "70 %", protein = { value = "1 %", source = "default" }, source = "published: a table" }
keeps = { dry = "12 month", cold = "2 d" }
cautions = ["sulphites"]
[[ingredient.pack]]
size = "500 ml"
price = "£3.40"
on = 2026-03-01
shop = "the mill"
)";

LibraryFile read(const std::string& text) {
    return read_library_file(text, "a.toml");
}

void replace(std::string& text, const std::string& from, const std::string& to) {
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
        text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("a mix is read as it was written") {
    const LibraryFile file = read(one_mix);
    REQUIRE(file.faults.empty());
    REQUIRE(file.recipes.size() == 1);
    const Recipe& recipe = file.recipes[0].value;
    CHECK(recipe.name == "silt bed");
    CHECK(recipe.feel == "firm");
    CHECK(recipe.purpose == "Bream,\ndeep.");
    REQUIRE(recipe.parts.size() == 3);
    CHECK(std::get<Mass>(recipe.parts[0].amount).in(gram) == Approx(400));
    CHECK(recipe.parts[0].prepare == Preparation::as_bought);
    CHECK(std::get<Volume>(recipe.parts[1].amount).in(imperial_pint) == Approx(2));
    CHECK(recipe.parts[1].prepare == Preparation::soaked);
    CHECK(std::get<Share>(recipe.parts[2].amount).parts == 2);
    REQUIRE(recipe.doses.size() == 1);
    CHECK(recipe.doses[0].rate.basis == DoseBasis::per_kg_dry);
}

TEST_CASE("the places of a mix are those of its values") {
    const auto places = read(one_mix).recipes.at(0).places;
    CHECK(places.at("name").line == 1);
    CHECK(places.at("name").column == 8);
    CHECK(places.at("feel").line == 2);
    CHECK(places.at("part 1").line == 7);
    CHECK(places.at("part 1").column == 6);
    CHECK(places.at("part 3").line == 14);
    CHECK(places.at("dose 1").line == 17);
}

TEST_CASE("faults found later are shown where their entry stands") {
    std::vector<Fault> faults(3);
    faults[0].subject = "part 2";
    faults[1].subject = "part 9";
    place_faults(faults, read(one_mix).recipes.at(0).places, one_mix, "b.toml");
    CHECK(faults[0].line == 10);
    CHECK(faults[0].column == 6);
    CHECK(faults[0].source_line == "of = \"fishmeal micro pellet 2 mm\"");
    CHECK(faults[1].line == 0);
    CHECK(faults[1].file == "b.toml");
    CHECK(faults[2].file == "b.toml");
}

TEST_CASE("a liquid is read as stated and no further") {
    const LibraryFile file = read(one_liquid);
    REQUIRE(file.faults.empty());
    const Ingredient& syrup = file.ingredients.at(0);
    CHECK(syrup.density.value.in(gram_per_millilitre) == Approx(1.31));
    CHECK(syrup.density.spread == Approx(0.02));
    CHECK(source_text(syrup.density.source) == "measured: jug, 2026-03-01");
    CHECK(source_text(syrup.water.source) == "default: from memory");
    CHECK(syrup.water.spread == Approx(0.10));
    CHECK_FALSE(syrup.wetting.known());
    CHECK(source_text(syrup.composition.carbohydrate.source) == "published: a table");
    CHECK(syrup.composition.protein.source.origin == Origin::standing);
    CHECK(syrup.keeps.dry.value().in(year) == Approx(1));
    CHECK_FALSE(syrup.keeps.frozen);
    REQUIRE(syrup.packs.size() == 1);
    CHECK(std::get<Volume>(syrup.packs[0].size).in(millilitre) == Approx(500));
    CHECK(syrup.packs[0].price == parse_money("£3.40"));
    CHECK(date_or_blank(syrup.packs[0].on) == "2026-03-01");
}

TEST_CASE("blocks of several sorts share a file, and a mix may stand above feels") {
    const LibraryFile file = read(std::string("name = \"bed\"\n[[part]]\nof = \"syrup\"\nshare = 1\n") + one_liquid +
                                  "[[feel]]\nname = \"firm\"\naim = 1.2\nbelow = 1.3\n"
                                  "[[mix]]\nname = \"other\"\n[[mix.part]]\nof = \"bed\"\npacks = 1\n");
    CHECK(file.faults.empty());
    CHECK(file.ingredients.size() == 1);
    CHECK(file.feels.size() == 1);
    REQUIRE(file.recipes.size() == 2);
    CHECK(file.recipes[0].value.name == "bed");
    CHECK(file.recipes[1].places.at("part 1").line == 27);
}

TEST_CASE("a file with three faults gets all three, in its order, with lines and hints") {
    const LibraryFile file = read(
        "name = \"silt bed\"\n"
        "feeel = \"firm\"\n"
        "[[part]]\n"
        "of = \"brown crumb\"\n"
        "mass = 400\n"
        "[[dose]]\n"
        "of = \"syrup\"\n"
        "amount = \"25 galons per kg dry\"\n");
    REQUIRE(file.faults.size() == 3);
    CHECK(file.recipes.empty());
    CHECK(file.faults[0].code == "unknown-key");
    CHECK(file.faults[0].line == 2);
    CHECK(file.faults[0].column == 1);
    CHECK(file.faults[0].hint == "did you mean 'feel'?");
    CHECK(file.faults[1].code == "no-unit");
    CHECK(file.faults[1].line == 5);
    CHECK(file.faults[1].column == 8);
    CHECK(file.faults[1].source_line == "mass = 400");
    CHECK_THAT(file.faults[1].hint, Catch::Contains("a mass is written in g, kg"));
    CHECK(file.faults[2].line == 8);
    CHECK(file.faults[2].column == 10);
}

TEST_CASE("a faulty entry is left out and its neighbours stay") {
    const LibraryFile file = read(std::string(one_liquid) + "[[ingredient]]\nname = \"x\"\n" +
                                  "[[feel]]\nname = \"firm\"\naim = 1.2\nbelow = 1.3\n");
    CHECK(file.ingredients.size() == 1);
    CHECK(file.feels.size() == 1);
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults[0].message == "'kind' is missing; an ingredient must state it");
}

TEST_CASE("a mix without a part is told apart from an ingredient by its other keys") {
    const LibraryFile file = read("feel = \"firm\"\n[[dose]]\nof = \"a\"\namount = \"2 %\"\n");
    REQUIRE(file.faults.size() == 2);
    CHECK(file.faults[0].message == "'name' is missing; a mix must state it");
    CHECK(file.faults[1].message == "a mix has no part");
}

TEST_CASE("a value that cannot be read is not called missing too") {
    const LibraryFile file = read("name = \"a\"\nkind = \"base\"\nloose_density = \"4 g\"\nabsorption = \"1 g/g\"\n");
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults[0].line == 3);
}

TEST_CASE("line ends, tabs, a byte order mark and a missing last line end change nothing") {
    std::string text = one_mix;
    replace(text, "of = ", "\tof\t=\t");
    text.pop_back();
    replace(text, "\n", "\r\n");
    const LibraryFile file = read("\xEF\xBB\xBF" + text);
    REQUIRE(file.faults.empty());
    CHECK(file.recipes.at(0).value.parts.size() == 3);
    CHECK(file.recipes.at(0).places.at("part 1").column == 7);
    CHECK(file.recipes.at(0).places.at("name").column == 8);
}

TEST_CASE("the line of a fault is shown without its line end") {
    const LibraryFile file = read("\xEF\xBB\xBFname = 3\r\nkind = \"base\"\r\n");
    REQUIRE_FALSE(file.faults.empty());
    CHECK(file.faults[0].source_line == "name = 3");
}

TEST_CASE("columns are counted in characters") {
    const LibraryFile file = read("[[feel]]\nname = \"mou mou é½€😀\"\naim = 1\nbelow = 2\n\"µé\" = 3\n");
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults[0].column == 1);
    const LibraryFile inline_table = read("feel = [{ name = \"é😀\", aim = 3, below = 2 }]\n");
    REQUIRE(inline_table.faults.size() == 1);
    CHECK(inline_table.faults[0].column == 30);
}

TEST_CASE("names in any script are kept") {
    const LibraryFile file = read("[[feel]]\nname = \"mœlleux ½ 濡れ\"\naim = 1\nbelow = 2\n");
    REQUIRE(file.faults.empty());
    CHECK(file.feels.at(0).name == "mœlleux ½ 濡れ");
}

TEST_CASE("two entries of the same name are one too many, whatever their case") {
    const std::string mix = "[[mix]]\nname = \"Bed\"\n[[mix.part]]\nof = \"a\"\nshare = 1\n";
    std::string lower = mix;
    replace(lower, "Bed", "bed");
    const LibraryFile file = read(mix + lower);
    CHECK(file.recipes.size() == 1);
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults[0].code == "duplicate-name");
    CHECK(file.faults[0].line == 7);
    CHECK_THAT(file.faults[0].hint, Catch::Contains("line 2"));
}

TEST_CASE("the limits of a property belong to it") {
    for (const char* line :
         {"loose_density = \"3000 g/l\"", "loose_density = \"20 g/l\"", "loose_density = \"3 kg/l\""})
        CHECK(read(std::string("name = \"a\"\nkind = \"base\"\nabsorption = \"10 g/g\"\n") + line).faults.empty());
    for (const char* line : {"diffusivity = \"1e-7 m2/s\"", "diffusivity = \"1e-13 m2/s\"", "length = \"60 mm\""})
        CHECK(read(std::string("name = \"a\"\nkind = \"pellet\"\nabsorption = \"0 g/g\"\nloose_density = \"600 g/l\"\n"
                               "diameter = \"0.1 mm\"\n") +
                   line)
                  .faults.empty());
}

TEST_CASE("a line too long to be read is not shown") {
    const LibraryFile file = read("name = 3 # " + std::string(5000, 'x') + "\nkind = \"base\"\n");
    REQUIRE_FALSE(file.faults.empty());
    CHECK(file.faults[0].source_line.empty());
}

TEST_CASE("keys nested without end are refused, but dots in texts are not") {
    std::string deep = "a";
    for (int i = 0; i < 200000; ++i) deep += ".a";
    CHECK(read(deep + " = 1\n").faults.at(0).code == "too-deep");
    CHECK(read("[" + deep + "]\n").faults.at(0).code == "too-deep");
    CHECK(read("[[feel]]\nname = \"" + std::string(30, '.') + "\" # " + std::string(30, '.') +
               "\naim = 1\nbelow = 2\npurpose = '''\n" + std::string(30, '.') + "'''\n")
              .faults.empty());
    CHECK(read("a = " + std::string(100000, '[') + "\n").faults.size() == 1);
}
