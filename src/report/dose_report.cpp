#include "report/replies.h"

#include <fmt/format.h>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/hand_measure.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string solution_text(const Solution& solution) {
    std::string text = fmt::format("{} {} by weight", shown_percent(solution.concentration), solution.of);
    if (solution.density) text += fmt::format("; a litre of it weighs {:.0f} g", solution.density->in(gram_per_litre));
    if (solution.water_activity) text += fmt::format("; water activity {:.2f}", double(*solution.water_activity));
    return text + ".";
}

Told dose_told(const DoseAnswer& answer) {
    std::string head = fmt::format("{} of {}", shown_mass(answer.dry_mass), answer.of);
    if (answer.water > Mass{}) head += fmt::format(", {} of water", shown_water(jug_water(answer.water)));
    Told told;
    told.heading(head);
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::left});
    table.row({"additive", "amount", "per kg dry", "of the label", "rate"});
    for (const DoseLine& line : answer.additives)
        table.row({line.name, line.liquid ? shown_dose(line.volume) : shown_dose(line.mass),
                   significant(line.per_dry * 1000, 2) + " g",
                   line.of_label_max ? shown_percent(*line.of_label_max) : "no label", line.rate});
    if (!answer.additives.empty()) {
        told.gap();
        told.table(std::move(table));
    }
    std::vector<HandAmount> amounts;
    amounts.reserve(answer.additives.size());
    for (const DoseLine& line : answer.additives) amounts.push_back(hand_amount(line));
    if (const std::string by_hand = hand_measures(amounts); !by_hand.empty()) {
        told.gap();
        told.line("By hand", by_hand);
    }
    if (answer.solution) {
        told.gap();
        told.line("In water", solution_text(*answer.solution));
    }
    if (!answer.warnings.empty()) told.gap();
    told.mind(answer.warnings);
    return told;
}

Json dose_json(const DoseAnswer& answer) {
    const auto number_or_null = [](const auto& optional) { return optional ? Json(double(*optional)) : Json(); };
    Json json = json_record("dose", answer.warnings);
    json["of"] = answer.of;
    json["dry_mass_g"] = answer.dry_mass.in(gram);
    json["water_g"] = answer.water.in(gram);
    json["additives"] = Json::array();
    for (const DoseLine& line : answer.additives)
        json["additives"].push_back({{"name", line.name},
                                     {"mass_g", line.mass.in(gram)},
                                     {"volume_ml", line.volume.in(millilitre)},
                                     {"g_per_kg_dry", line.per_dry * 1000.0},
                                     {"of_label_max", number_or_null(line.of_label_max)},
                                     {"wetting_g", line.wetting.in(gram)}});
    json["concentration_pct"] = answer.solution ? Json(answer.solution->concentration * 100.0) : Json();
    json["solution_density_g_ml"] =
        answer.solution && answer.solution->density ? Json(answer.solution->density->in(gram_per_millilitre)) : Json();
    json["water_activity"] = answer.solution ? number_or_null(answer.solution->water_activity) : Json();
    return json;
}

Rows dose_rows(const DoseAnswer& answer) {
    Rows rows{{"name", "mass_g", "volume_ml", "g_per_kg_dry", "of_label_max", "wetting_g"}};
    for (const DoseLine& line : answer.additives)
        rows.push_back({line.name, number_text(line.mass.in(gram)), number_text(line.volume.in(millilitre)),
                        number_text(line.per_dry * 1000.0), line.of_label_max ? number_text(*line.of_label_max) : "",
                        number_text(line.wetting.in(gram))});
    return rows;
}

}  // namespace

Reply dose_reply(DoseAnswer answer) {
    return warned(std::move(answer), dose_told, dose_json, dose_rows);
}

}  // namespace baitwright
