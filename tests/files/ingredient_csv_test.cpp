#include "files/ingredient_csv.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>

#include "files/any_ingredient.h"
#include "files/csv.h"
#include "files/disk.h"
#include "files/formula_guard.h"
#include "files/library_text.h"
#include "files/same_record.h"
#include "quantities/number_text.h"

using namespace baitwright;

namespace {

std::vector<Ingredient> shipped_ingredients() {
    std::vector<Ingredient> all;
    const auto folder = std::filesystem::path(BAITWRIGHT_SOURCE_DIR) / "recipes" / "ingredients";
    for (const auto& path : toml_files_below(folder)) {
        const LibraryFile file = read_library_file(read_text_file(path), path.filename().string());
        all.insert(all.end(), file.ingredients.begin(), file.ingredients.end());
    }
    return all;
}

void check_no_fault(const LibraryFile& file) {
    for (const Fault& fault : file.faults) {
        CAPTURE(fault.line, fault.column, fault.source_line, fault.hint);
        FAIL_CHECK(fault.message);
    }
}

const char* const some_letters[]{"", "=", "+", "@", "'", "'=", "''@", " '=1+1", "\xC3\xA9"};

/// Text that a spreadsheet could run, and text that only looks guarded.
std::string any_risky(const std::string& text) {
    return *rc::gen::elementOf(std::vector<std::string>(std::begin(some_letters), std::end(some_letters))) + text;
}

/// A file with one thing wrong, and what must be said of it. Lines and columns were counted by hand.
struct BadTable {
    const char* text;
    const char* code;
    int line, column;
    const char* part_of_message;
};

#define HEAD "name,kind,loose_density,absorption,"
#define CRUMB_ROW "crumb,base,420 g/l,0.65 g/g,"

const BadTable bad_tables[]{
    // the table as such
    {"", "nothing-here", 1, 1, "no row of headings"},
    {"\xEF\xBB\xBF\r\n,,\r\n", "nothing-here", 1, 1, "no row of headings"},
    {"name;kind;moisture\ncrumb;base;6,5 %\n", "not-commas", 1, 1, "not parted by commas"},
    {"name\tkind\ncrumb\tbase\n", "not-commas", 1, 1, "not parted by commas"},
    {"name,kind\n\"crumb,base\n", "unclosed-quote", 2, 1, "never closed"},
    {"name,kind\ncr\"umb,base\n", "stray-quote", 2, 3, "inside a cell"},
    {"name,kind\n\"crumb\"s,base\n", "stray-quote", 2, 8, "follows the closing quote"},
    {"name,kind\ncr\xFFmb,base\n", "not-utf-8", 2, 3, "not in UTF-8"},
    {"name,kind\n\xE9,base\n", "not-utf-8", 2, 1, "not in UTF-8"},

    // the headings
    {"kind\n", "missing-column", 1, 1, "no column 'name'"},
    {"name\n", "missing-column", 1, 1, "no column 'kind'"},
    {"kind,loose_density,absorption\nbase,420 g/l,0.65 g/g\n", "missing-column", 1, 1, "no column 'name'"},
    {"name,absorption\ncrumb,0.65 g/g\n", "missing-column", 1, 1, "no column 'kind'"},
    {"name,kind,moistur\n", "unknown-column", 1, 11, "'moistur' is not a heading"},
    {"\"name\",kind,\"colour\",\xC3\xA9t\xC3\xA9\n", "unknown-column", 1, 22, "not a heading"},
    {"name,kind,pack 1 prize\n", "unknown-column", 1, 11, "'pack 1 prize' is not"},
    {"name,kind,pack 0 size\n", "unknown-column", 1, 11, "'pack 0 size' is not"},
    {"name,kind,pack 1000 size\n", "unknown-column", 1, 11, "'pack 1000 size' is not"},
    {"name,kind,composition\n", "unknown-column", 1, 11, "'composition' is not"},
    {"name,kind,note,Note\n", "set-twice", 1, 16, "'note' heads two columns"},

    // the rows
    {HEAD "moisture\n" CRUMB_ROW "6 %,x\n", "ragged-row", 2, 33, "6 cells, and there are 5 headings"},
    {HEAD "moisture\ncrumb,base\n", "ragged-row", 2, 7, "2 cells, and there are 5 headings"},
    {HEAD "\n" CRUMB_ROW "x\n", "no-heading", 2, 29, "no heading above"},
    {HEAD "note\n" CRUMB_ROW "a\nCrumb ,base,1 kg/l,1 g/g,\n", "duplicate-name", 3, 1, "'Crumb' is in this file twice"},
    {HEAD "note\n,base,420 g/l,0.65 g/g,\n", "missing-value", 2, 1, "'name' is missing"},
    {HEAD "note\ncrumb,,420 g/l,0.65 g/g,\n", "missing-value", 2, 7, "'kind' is missing"},
    {HEAD "note\ncrumb,base,420 g/l,,\n", "missing-value", 2, 20, "'absorption' is missing; a base must"},
    {"name,kind,loose_density\ncrumb,base,420 g/l\n", "missing-value", 2, 1, "'absorption' is missing"},
    {HEAD "note\n-crumb,base,420 g/l,0.65 g/g,\n", "bad-name", 2, 1, "begins with '-'"},
    {HEAD "note\na/b,base,420 g/l,0.65 g/g,\n", "bad-name", 2, 1, "holds a '/'"},
    {HEAD "note\n\"a\nb\",base,420 g/l,0.65 g/g,\n", "control-character", 2, 1, "line break"},
    {HEAD "note\n" CRUMB_ROW "a\x1B[31m\n", "control-character", 2, 29, "'note' holds a control character"},

    // the cells
    {HEAD "note\ncrumb,bass,420 g/l,0.65 g/g,\n", "unknown-word", 2, 7, "'kind' cannot be 'bass'"},
    {HEAD "moisture\n" CRUMB_ROW "6.5\n", "no-unit", 2, 29, "6.5"},
    {HEAD "moisture\n" CRUMB_ROW "6.5 g\n", "wrong-dimension", 2, 29, "6.5 g"},
    {HEAD "moisture\n" CRUMB_ROW "\"6,5 %\"\n", "not-a-number", 2, 29, "6,5 %"},
    {HEAD "moisture\n" CRUMB_ROW "130 %\n", "out-of-range", 2, 29, "'moisture' must be from 0 to 99 %"},
    {HEAD "binder\n" CRUMB_ROW "\"0,5\"\n", "not-a-number", 2, 29, "0,5"},
    {HEAD "binder\n" CRUMB_ROW "sticky\n", "not-a-number", 2, 29, "sticky"},
    {HEAD "binder\n" CRUMB_ROW "nan\n", "not-a-number", 2, 29, "nan"},
    {HEAD "binder\n" CRUMB_ROW "1e20\n", "out-of-range", 2, 29, "'binder' must be from -20 to 20"},
    {HEAD "slump\n" CRUMB_ROW "0.5 g/g\n", "inconsistent-values", 2, 29, "'slump'"},
    {HEAD "porosity\n" CRUMB_ROW "50 %\n", "unfit-key", 2, 29, "'porosity' does not belong to a base"},
    {HEAD "moisture spread\n" CRUMB_ROW "5 %\n", "missing-value", 2, 29,
     "'moisture spread' is stated, but not 'moisture'"},
    {HEAD "moisture,moisture spread\n" CRUMB_ROW "6 %,400 %\n", "out-of-range", 2, 33,
     "'spread' must be from 0 to 300 %"},
    {HEAD "moisture,moisture source\n" CRUMB_ROW "6 %,a friend\n", "unknown-source", 2, 33, "a friend"},
    {HEAD "moisture,moisture source\n" CRUMB_ROW "6 %,derived\n", "derived-source", 2, 33, "derived"},
    {HEAD "composition fat\n" CRUMB_ROW "101 %\n", "out-of-range", 2, 29, "'fat' must be from 0 to 100 %"},
    {HEAD "composition fat,composition protein\n" CRUMB_ROW "60 %,60 %\n", "inconsistent-values", 2, 34, "120 %"},
    {HEAD "solute\n" CRUMB_ROW "salt\n", "unfit-key", 2, 29, "'solute'"},
    {HEAD "label_dose\n" CRUMB_ROW "25 ml\n", "no-basis", 2, 29, "25 ml"},
    {HEAD "cautions\n" CRUMB_ROW "dust; nutts\n", "unknown-caution", 2, 29, "'nutts' is not a known caution"},
    {HEAD "keeps cold\n" CRUMB_ROW "soon\n", "not-a-number", 2, 29, "soon"},
    {HEAD "pack 2 size\n" CRUMB_ROW "0 kg\n", "out-of-range", 2, 29, "'size' must be from 1 mg to 10000 kg"},
    {HEAD "pack 1 price\n" CRUMB_ROW "\xC2\xA3"
          "2.10\n",
     "missing-value", 2, 29, "'size' is missing; a pack must"},
    {HEAD "pack 1 size,pack 1 on\n" CRUMB_ROW "1 kg,01/03/2026\n", "wrong-type", 2, 34, "must be a date such as"},
    {HEAD "pack 1 size,pack 1 on\n" CRUMB_ROW "1 kg,2026-02-30\n", "wrong-type", 2, 34, "must be a date such as"},
    {HEAD "pack 1 size,pack 1 price\n" CRUMB_ROW "1 kg,-1 GBP\n", "out-of-range", 2, 34, "not be below zero"},
    {HEAD "note,moisture\n" CRUMB_ROW "\"two\n\xC3\xA9 lines\",130 %\n", "out-of-range", 3, 10, "'moisture'"},
};

const Fault* fault_with(const std::vector<Fault>& faults, std::string_view code) {
    const auto found = std::find_if(faults.begin(), faults.end(), [&](const Fault& f) { return f.code == code; });
    return found == faults.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("a table of ingredients is read, whatever the order of its columns") {
    const LibraryFile file = read_ingredient_csv(
        "\xEF\xBB\xBF"
        "absorption,Kind,name,loose_density,binder,moisture,moisture source,note,cautions,pack 2 size,pack 2 on\r\n"
        "0.65 g/g,base,crumb,420 g/l,-0.5,6.5 %,measured: oven,\"coarse, \"\"dry\"\"\",dust; nuts,1 kg,2026-03-01\r\n"
        ",,,,,,,,,,\r\n"
        "1 g/g,base,meal,0.5 kg/l,,,,,,,\r\n",
        "shed.csv");
    check_no_fault(file);
    REQUIRE(file.ingredients.size() == 2);
    const Ingredient& crumb = file.ingredients[0];
    CHECK(crumb.name == "crumb");
    CHECK(crumb.absorption.value == Approx(0.65));
    CHECK(crumb.loose_density.value.in(gram_per_litre) == Approx(420));
    CHECK(crumb.binder.value == Approx(-0.5));
    CHECK(source_text(crumb.moisture.source) == "measured: oven");
    CHECK(crumb.moisture.spread == Approx(0.15));
    CHECK(crumb.note == "coarse, \"dry\"");
    CHECK(crumb.cautions == std::vector<std::string>{"dust", "nuts"});
    REQUIRE(crumb.packs.size() == 1);
    CHECK(date_or_blank(crumb.packs[0].on) == "2026-03-01");
    CHECK_FALSE(file.ingredients[1].moisture.known());
    CHECK(file.name == "shed.csv");
}

TEST_CASE("headings alone are a table without ingredients") {
    const LibraryFile file = read_ingredient_csv(csv_text({}), "a.csv");
    check_no_fault(file);
    CHECK(file.ingredients.empty());
}

TEST_CASE("any ingredients are written as a table and read back as they were") {
    CHECK(rc::check([] {
        std::vector<Ingredient> ingredients;
        for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
            Ingredient ingredient = any_ingredient(i);
            ingredient.name = trimmed(any_risky(ingredient.name));
            ingredient.note = any_risky(ingredient.note);
            ingredient.colour = any_risky(ingredient.colour);
            for (Pack& pack : ingredient.packs) pack.shop = trimmed(any_risky(pack.shop));
            ingredients.push_back(std::move(ingredient));
        }
        const LibraryFile back = read_ingredient_csv(csv_text(ingredients), "a.csv");
        for (const Fault& fault : back.faults)
            RC_LOG() << fault.line << ":" << fault.column << " " << fault.message << "\n";
        RC_ASSERT(back.faults.empty());
        RC_ASSERT(back.ingredients.size() == ingredients.size());
        for (std::size_t i = 0; i < ingredients.size(); ++i)
            RC_ASSERT(first_difference(ingredients[i], back.ingredients[i]) == std::string());
    }));
}

TEST_CASE("the shipped ingredients are written as one table and read back as they were") {
    const std::vector<Ingredient> shipped = shipped_ingredients();
    REQUIRE(shipped.size() >= 30);
    const LibraryFile back = read_ingredient_csv(csv_text(shipped), "a.csv");
    check_no_fault(back);
    REQUIRE(back.ingredients.size() == shipped.size());
    for (std::size_t i = 0; i < shipped.size(); ++i) {
        CAPTURE(shipped[i].name);
        CHECK(first_difference(shipped[i], back.ingredients[i]) == "");
    }
}

TEST_CASE("a table keeps its ingredients when a spreadsheet ends its lines otherwise") {
    CHECK(rc::check([] {
        std::vector<Ingredient> ingredients{any_ingredient(1), any_ingredient(2)};
        for (Ingredient& ingredient : ingredients) ingredient.note.clear();
        const std::string plain = csv_text(ingredients);
        std::string text = "\xEF\xBB\xBF";
        for (const char c : plain) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
        const LibraryFile back = read_ingredient_csv(text, "a.csv");
        RC_ASSERT(back.faults.empty());
        RC_ASSERT(toml_text(back.ingredients) == toml_text(read_ingredient_csv(plain, "a.csv").ingredients));
    }));
}

TEST_CASE("no cell of text is run as a formula, and numbers stand as they are") {
    Ingredient crumb;
    crumb.name = "=1+1";
    crumb.note = "\t@SUM(1)";
    crumb.colour = "'+red";
    crumb.binder = {-1.5, 0.5, {Origin::measured, "+"}};
    crumb.packs = {{1.0 * kilogram, std::nullopt, std::nullopt, " -shop"}};
    const auto rows = read_csv(csv_text({crumb}));
    REQUIRE(rows.size() == 2);
    const auto has = [&](const char* cell) {
        return std::count(rows[1].cells.begin(), rows[1].cells.end(), cell) == 1;
    };
    CHECK(has("'=1+1"));
    CHECK(has("'\t@SUM(1)"));
    CHECK(has("''+red"));
    CHECK(has("-1.5"));
    CHECK(has("' -shop"));
}

TEST_CASE("the guard against formulas comes off again, and no other apostrophe does") {
    CHECK(rc::check([] {
        const std::string text = *rc::gen::container<std::string>(
            rc::gen::element('=', '+', '-', '@', '\t', '\r', '\n', '\'', ' ', 'a', '\0'));
        RC_ASSERT(unguarded(guarded(text)) == text);
        const std::string cell = guarded(text);
        const bool runs = !cell.empty() && std::string("=+-@\t\r\n\0", 8).find(cell.front()) != std::string::npos;
        RC_ASSERT(!runs);
    }));
    CHECK(guarded("plain") == "plain");
    CHECK(unguarded("'tis") == "'tis");
    CHECK(unguarded("'-x") == "-x");
}

TEST_CASE("each bad table is refused where it is wrong") {
    CHECK(std::size(bad_tables) >= 20);
    for (const BadTable& bad : bad_tables) {
        const LibraryFile file = read_ingredient_csv(bad.text, "shed.csv");
        CAPTURE(bad.text, bad.code);
        CHECK(file.faults.size() == 1);
        if (file.faults.empty()) continue;
        const Fault& fault = file.faults.front();
        CAPTURE(fault.message);
        CHECK(fault.code == bad.code);
        CHECK(fault.line == bad.line);
        CHECK(fault.column == bad.column);
        CHECK(fault.message.find(bad.part_of_message) != std::string::npos);
        CHECK(fault.file == "shed.csv");
        CHECK_FALSE(fault.hint.find("line such as") != std::string::npos);
        CHECK_FALSE(fault.hint.find("take the line out") != std::string::npos);
        CHECK_FALSE(fault.hint.find("without quotes") != std::string::npos);
    }
}

TEST_CASE("every fault of a table is told at once, in the order of the file") {
    const LibraryFile file =
        read_ingredient_csv(HEAD "moistur,binder\n" CRUMB_ROW
                                 "x,sticky\nmeal,bass,420 g/l,0.65 g/g,y,1\nshort,base\ngood,base,420 g/l,1 g/g,,2\n"
                                 "\"cr\xC3\xA9me\",base,9 g/l,-1 g/g,,\n",
                            "shed.csv");
    std::vector<std::string> found;
    for (const Fault& fault : file.faults)
        found.push_back(std::to_string(fault.line) + ":" + std::to_string(fault.column) + " " + fault.code);
    CHECK(found == std::vector<std::string>{"1:36 unknown-column", "2:31 not-a-number", "3:6 unknown-word",
                                            "4:7 ragged-row", "6:14 out-of-range", "6:20 out-of-range"});
    REQUIRE(file.ingredients.size() == 1);
    CHECK(file.ingredients[0].name == "good");
    CHECK(file.faults[0].hint == "did you mean 'moisture'?");
    CHECK(file.faults[2].source_line == "meal,bass,420 g/l,0.65 g/g,y,1");
}

TEST_CASE("the second of two namesakes is told where the first stands in the table") {
    const LibraryFile file = read_ingredient_csv(
        HEAD "note\n" CRUMB_ROW "\"a\nb\"\n\nother,base,1 kg/l,1 g/g,\ncrumb,base,1 kg/l,1 g/g,\n", "a.csv");
    const Fault* fault = fault_with(file.faults, "duplicate-name");
    REQUIRE(fault);
    CHECK(fault->line == 6);
    CHECK(fault->hint == "the first stands in line 2; rename or remove one");
}

TEST_CASE("bytes that are no table are refused without a crash") {
    CHECK(rc::check([] {
        const std::string text =
            *rc::gen::container<std::string>(rc::gen::element('n', ',', '"', '\n', '\r', '\'', '\0', '\xFF', ';', '='));
        const LibraryFile file = read_ingredient_csv("name,kind" + text, "a.csv");
        for (const Fault& fault : file.faults) RC_ASSERT(fault.line >= 1 && fault.column >= 1);
    }));
}

TEST_CASE("a table of many columns and rows is read in a time that grows with its size alone") {
    std::string text = "name,kind";
    for (int i = 1; i <= 900; ++i) text += ",pack " + std::to_string(i) + " shop";
    const LibraryFile file = read_ingredient_csv(text + "\n" + std::string(1000000, ','), "a.csv");
    CHECK(file.faults.empty());
}
