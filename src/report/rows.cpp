#include "report/rows.h"

#include "quantities/quantity_text.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::string minor_text(const std::optional<Money>& money) {
    return money ? std::to_string(money->minor()) : "";
}
std::string code_text(const std::optional<Money>& money) {
    return money ? std::string(money->currency().code) : "";
}

}  // namespace

Rows mix_rows(const MixAnswer& answer) {
    Rows rows{
        {"what", "name", "mass_g", "volume_ml", "share", "free_offerings", "cost_minor", "currency", "kitchen_g"}};
    for (const PartAnswer& part : answer.parts)
        rows.push_back({part.prepare == Preparation::soaked ? "part, soaked" : "part", part.name,
                        number_text(part.mass.in(gram)), number_text(part.volume.in(millilitre)),
                        number_text(part.share), number_text(part.free_offerings), minor_text(part.cost),
                        code_text(part.cost), number_text(part.kitchen_mass.in(gram))});
    for (const AdditiveAnswer& additive : answer.additives)
        rows.push_back({"additive", additive.name, number_text(additive.mass.in(gram)),
                        number_text(additive.volume.in(millilitre)), "", "", minor_text(additive.cost),
                        code_text(additive.cost), ""});
    rows.push_back({"water", "water", number_text(answer.water_to_add.in(gram)),
                    number_text(answer.water_to_add.in(gram)), "", "", "", "",
                    number_text(answer.kitchen_water.in(gram))});
    return rows;
}

Rows dose_rows(const DoseAnswer& answer) {
    Rows rows{{"name", "mass_g", "volume_ml", "g_per_kg_dry", "of_label_max", "wetting_g"}};
    for (const DoseLine& line : answer.additives)
        rows.push_back({line.name, number_text(line.mass.in(gram)), number_text(line.volume.in(millilitre)),
                        number_text(line.per_dry * 1000.0), line.of_label_max ? number_text(*line.of_label_max) : "",
                        number_text(line.wetting.in(gram))});
    return rows;
}

Rows strategy_list_rows(const std::vector<Strategy>& strategies) {
    Rows rows{{"name", "length_minutes", "feeds", "purpose", "avoid", "why"}};
    for (const Strategy& strategy : strategies)
        rows.push_back({strategy.name, number_text(strategy.length.in(minute)), std::to_string(strategy.feeds.size()),
                        strategy.purpose, strategy.avoid, strategy.why});
    return rows;
}

Rows recipe_list_rows(const std::vector<Recipe>& recipes) {
    Rows rows{{"name", "feel", "purpose", "avoid", "why"}};
    for (const Recipe& recipe : recipes)
        rows.push_back(
            {recipe.name, recipe.feel.empty() ? "firm" : recipe.feel, recipe.purpose, recipe.avoid, recipe.why});
    return rows;
}

}  // namespace baitwright
