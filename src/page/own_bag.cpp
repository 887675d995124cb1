#include "page/own_bag.h"

#include "bait/ingredient_completion.h"
#include "bait/ingredient_facts.h"
#include "bait/property_range.h"
#include "quantities/fault.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "questions/measure_question.h"

namespace baitwright {

namespace {

/// As the reader of a file takes it.
template <class D>
void set_property(Property<Quantity<D>>& property, const PropertyFacts<D>& facts, const KeyValue& measured) {
    const auto flag = facts.key == "loose_density" ? std::string("--holds") : "--" + std::string(facts.key);
    flag_value(flag, [&] {
        const auto value = parse<Quantity<D>>(measured.value);
        if (const std::string refused = out_of_range_text(facts, value); !refused.empty())
            throw InputError("out-of-range", refused, "check the number and its unit");
        property = {value, parse<Ratio>(measured.spread), parse_source(measured.source)};
    });
}

void forget_derived(Ingredient& bag) {
    const auto forget = [](auto& property) {
        if (!property.stated()) property = {};
    };
    visit_properties(bag, [&](const auto&, auto& property) { forget(property); });
    visit_composition(bag.composition, [&](const char*, auto& property) { forget(property); });
}

}  // namespace

Ingredient measured_bag(const Ingredient& old, const Arguments& arguments, Date today) {
    std::vector<KeyValue> measured = kitchen_tests(arguments, today);
    if (measured.empty())
        throw UsageError("nothing-measured", "no measurement was given",
                         "for example --absorption \"0.7 g/g\", or --vessel 1pt --holds 240g");
    heed_marks(arguments, old, measured);
    Ingredient bag = old;
    forget_derived(bag);
    visit_properties(bag, [&](const auto& facts, auto& property) {
        for (const KeyValue& value : measured)
            if (value.key == facts.key) set_property(property, facts, value);
    });
    std::vector<Fault> faults;
    for (const PropertyFault& found : faults_of(bag)) faults.push_back(found.fault);
    if (!faults.empty()) throw InputError(std::move(faults));
    return bag;
}

}  // namespace baitwright
