#include "cli/soak_test_flags.h"

#include <fmt/format.h>

#include <utility>

#include "bait/soak_test.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// The words of "100g 10min 142g", each an amount written without blanks.
std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text + " ") {
        if (c != ' ')
            word += c;
        else if (!word.empty())
            words.push_back(std::exchange(word, {}));
    }
    return words;
}

SoakTest read_test(const std::string& text) {
    const std::vector<std::string> words = words_of(text);
    if (words.size() != 3)
        throw InputError("not-a-test", "'" + text + "' is not dry mass, time under water and drained mass",
                         "write it as in --soak-test \"100g 10min 142g\"");
    SoakTest test{in_range(parse<Mass>(words[0])), in_range(parse<Mass>(words[2])), in_range(parse<Time>(words[1])),
                  Temperature::from_celsius(15)};
    if (!(test.under_water >= 5.0 * second && test.under_water <= 48.0 * hour))
        throw InputError("out-of-range", "the time under water must be from 5 seconds to 48 hours",
                         "for example 20min, or 90s");
    return test;
}

Ratio read_through(const std::string& text) {
    const std::vector<std::string> words = words_of(text);
    if (words.size() != 2)
        throw InputError("not-a-test", "'" + text + "' is not dry mass and drained mass",
                         "write it as in --soaked-through \"100g 185g\"");
    return capacity_of_test(in_range(parse<Mass>(words[0])), in_range(parse<Mass>(words[1])));
}

}  // namespace

std::vector<Flag> soak_test_flags() {
    return {{"--soak-test", "TEST", "of a pellet: dry mass, time under water, drained mass: \"100g 10min 142g\""},
            {"--soaked-through", "TEST", "of a pellet: dry mass, and drained after a night under water: \"100g 185g\""},
            {"--water-temp", "TEMPERATURE", "of the soak test's water (default: 15degC)"}};
}

std::vector<KeyValue> read_soak_test(const Arguments& arguments, const Ingredient& pellet, Date today) {
    const bool tested = arguments.has("--soak-test"), through = arguments.has("--soaked-through");
    if (!tested && !through) {
        if (arguments.has("--water-temp"))
            throw UsageError("unfit-flag", "--water-temp goes with --soak-test", "leave it out");
        return {};
    }
    if (pellet.kind != IngredientKind::pellet)
        throw UsageError(
            "not-a-pellet",
            "'" + pellet.name + "' is a " + std::string(name_of(pellet.kind)) + "; only pellets have a soak test",
            "pump expanders and drop three in a glass");
    std::vector<KeyValue> measured;
    const std::string spread = arguments.value("--spread").value_or("15 %"),
                      source = "measured: soak test, " + date_text(today);
    Ratio capacity = pellet.capacity.value;
    read_flag(arguments, "--soaked-through", [&](const std::string& text) {
        capacity = read_through(text);
        measured.push_back({"capacity", number_text_within(capacity, 5e-4) + " g/g", source, spread});
    });
    read_flag(arguments, "--soak-test", [&](const std::string& text) {
        SoakTest test = read_test(text);
        read_flag(arguments, "--water-temp",
                  [&](const std::string& warmth) { test.water = read_temperature(arguments, warmth); });
        if (!(test.water >= Temperature::from_celsius(0) && test.water <= Temperature::from_celsius(60)))
            throw InputError("out-of-range", "the water must be from 0 to 60 degC", "for example --water-temp 15degC");
        const Diffusivity diffusivity = diffusivity_of_test(pellet, capacity, test);
        measured.push_back({"diffusivity", fmt::format("{:.3g} m2/s", diffusivity.si()), source, spread});
    });
    return measured;
}

}  // namespace baitwright
