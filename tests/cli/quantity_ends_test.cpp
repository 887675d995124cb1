// Every quantity that a flag, a word or a file's key takes, at the ends of its range and far beyond: the program
// answers in finite numbers or refuses, and what it has stored it can read. `quantity_ends.csv` has a line for each
// flag, with {} where the number stands.
#include <catch2/catch.hpp>
#include <regex>

#include "bait/ingredient_facts.h"
#include "cli/program_run.h"
#include "quantities/quantity_text.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

const std::vector<std::string> ends{"0", "-1", "1e-300", "1e-12", "1e12", "1e300"};

std::string with_number(const std::string& command, const std::string& number) {
    std::string text = command;
    for (auto at = text.find("{}"); at != std::string::npos; at = text.find("{}")) text.replace(at, 2, number);
    return text;
}

void check_finite_or_refused(const program_run::Outcome& outcome) {
    static const std::regex not_finite("(^|[^a-z])-?(nan|inf)([^a-z]|$)");
    INFO("it said: " << (outcome.output + outcome.errors).substr(0, 1000));
    CHECK(outcome.status != 70);
    CHECK(outcome.status < 128);
    CHECK_FALSE(std::regex_search(outcome.output, not_finite));
    // "No" is an answer too: status 1, with what is in the way.
    const bool refused = outcome.status >= 64 || (outcome.status == 1 && outcome.errors.rfind("error: ", 0) == 0);
    CHECK(outcome.output.empty() == refused);
}

/// A base or pellet with all that it must have, and one line more; and a mix of it with water-taking crumb.
std::string file_with(const std::string& kind, const std::string& key, const std::string& value) {
    std::string text = "[[ingredient]]\nname = \"odd\"\nkind = \"" + kind + "\"\n";
    const auto add = [&](const std::string& needed, const std::string& usual) {
        if (needed != key) text += needed + " = \"" + usual + "\"\n";
    };
    if (kind == "liquid") {
        add("density", "1.2 g/ml");
        add("water", "50 %");
    } else {
        add("loose_density", "500 g/l");
        if (kind == "pellet" || kind == "expander") add("diameter", "4 mm");
        if (kind == "expander") add("porosity", "50 %");
        if (kind == "base") add("absorption", "0.5 g/g");
    }
    text += key + " = " + value + "\n[[mix]]\nname = \"bed\"\n[[mix.part]]\nof = \"odd\"\nmass = \"400 g\"\n";
    return text + "[[mix.part]]\nof = \"brown crumb\"\nmass = \"100 g\"\n";
}

}  // namespace

TEST_CASE("every flag's number, at its ends and far beyond, is answered in finite numbers or refused") {
    const program_run::Folder here;
    const auto rows = reference::rows_of(
        program_run::whole_file(program_run::fs::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "cli" / "quantity_ends.csv"));
    CHECK(rows.size() >= 110);
    for (const auto& row : rows)
        for (const std::string& number : ends) {
            const std::string command = with_number(row.at("command"), number);
            INFO("baitwright " << command);
            check_finite_or_refused(program_run::run(here.path(), command));
        }
    // What was taken can be read again.
    for (const char* command : {"price list", "price history \"brown crumb\"", "stock", "stock history \"brown crumb\"",
                                "cost margin", "mix \"silt bed\" --dry-mass 1kg", "ingredient export", "shop margin"}) {
        INFO("baitwright " << command);
        const program_run::Outcome outcome = program_run::run(here.path(), command);
        check_finite_or_refused(outcome);
        CHECK(outcome.status <= 1);
    }
}

TEST_CASE("every property, at each end of its documented range, is worked with in finite numbers or refused") {
    const program_run::Folder here;
    const Ingredient any;
    visit_properties(any, [&](const auto& facts, const auto&) {
        for (const double end : {facts.lowest, facts.highest})
            for (const char* kind : {"base", "pellet", "expander", "liquid", "particle"}) {
                const std::string number = number_text(end), unit(facts.symbol);
                const std::string value = facts.bare_number ? number : "\"" + number + " " + unit + "\"";
                program_run::write(here.path() / "odd.toml", file_with(kind, std::string(facts.key), value));
                for (const char* command : {"mix ./odd.toml --dry-mass 1kg", "mix ./odd.toml --wet-volume 3l --json",
                                            "water ./odd.toml --dry-mass 1kg --added 500ml --minutes 5",
                                            "drop ./odd.toml --depth 2m", "dry ./odd.toml --tub 40x30cm --hours 5"}) {
                    INFO(kind << " " << facts.key << " = " << value << ": baitwright " << command);
                    check_finite_or_refused(program_run::run(here.path(), command));
                }
            }
    });
}
