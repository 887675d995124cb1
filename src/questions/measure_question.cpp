#include "questions/measure_question.h"

#include "bait/measured_marks.h"
#include "quantities/number_text.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

std::string level_vessel(const Arguments& arguments) {
    const Volume vessel =
        flag_value("--vessel", [&] { return in_range(parse_vessel_size(*arguments.value("--vessel"))); });
    const Mass holds = flag_value("--holds", [&] { return in_range(parse<Mass>(*arguments.value("--holds"))); });
    return number_text_within((holds / vessel).in(gram_per_litre), 0.05) + " g/l";
}

/// A bag found damper or drier than the marks were stated for takes less or more water: marks that were not measured
/// themselves move with it.
void move_marks(const Arguments& arguments, const Ingredient& old, std::vector<KeyValue>& measured) {
    if (!arguments.has("--moisture") || arguments.has("--absorption")) return;
    const Ratio bag = flag_value("--moisture", [&] { return parse<Ratio>(*arguments.value("--moisture")); });
    const std::optional<WaterMarks> moved = marks_in_bag(old, bag);
    if (!moved) return;
    const auto move = [&](const char* key, const Property<Ratio>& property, Ratio value) {
        if (!property.stated()) return;
        measured.push_back({key, number_text_within(value, 5e-5) + " g/g",
                            source_text(property.source) + "; moved to the bag's moisture",
                            exact_text(property.spread, percent, "%")});
    };
    move("absorption", old.absorption, moved->absorption);
    if (!arguments.has("--slump")) move("slump", old.slump, moved->slump);
}

void check_marks(const Arguments& arguments, const Ingredient& old) {
    const auto text = arguments.value("--absorption");
    if (!text || arguments.has("--slump")) return;
    check_absorption_measured(old, flag_value("--absorption", [&] { return parse<Ratio>(*text); }));
}

}  // namespace

std::vector<KeyValue> kitchen_tests(const Arguments& arguments, Date today) {
    std::vector<KeyValue> measured;
    const std::string spread = arguments.value("--spread").value_or("5 %");
    const auto add = [&](const char* key, const std::string& value, const char* usual_how) {
        measured.push_back({key, value,
                            "measured: " + arguments.value("--how").value_or(usual_how) + ", " + date_text(today),
                            spread});
    };
    if (const auto value = arguments.value("--absorption")) add("absorption", *value, "squeeze test");
    if (const auto value = arguments.value("--slump")) add("slump", *value, "up-ended pot");
    if (const auto value = arguments.value("--moisture")) add("moisture", *value, "dried and weighed");
    if (arguments.has("--vessel") != arguments.has("--holds"))
        throw UsageError("half-a-test", "--vessel and --holds go together", "for example --vessel 1pt --holds 240g");
    if (arguments.has("--vessel")) add("loose_density", level_vessel(arguments), "level vessel");
    return measured;
}

void heed_marks(const Arguments& arguments, const Ingredient& old, std::vector<KeyValue>& measured) {
    check_marks(arguments, old);
    move_marks(arguments, old, measured);
}

}  // namespace baitwright
