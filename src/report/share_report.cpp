#include "report/share_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bait/caution.h"
#include "quantities/units.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

constexpr std::size_t share_label_width = 62;

TextTable packs_table(const SharedBatch& shared) {
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"to buy, whole packs", "packs", "cost", "from"});
    for (const PackBought& pack : shared.packs)
        table.row({pack.name, fmt::format("{} x {}", pack.count, shown_pack(pack.pack)), money_text(pack.total()),
                   pack.pack.shop});
    if (shared.outlay) {
        table.rule();
        table.row({"at the till", "", money_text(*shared.outlay), ""});
    }
    return table;
}

/// "£6.07", or "£6.07 (2 of them £6.06)".
std::string a_head(const std::vector<Money>& parts) {
    const auto less =
        std::count_if(parts.begin(), parts.end(), [&](const Money& part) { return !(part == parts.front()); });
    std::string text = money_text(parts.front());
    if (less > 0) text += fmt::format(" ({} of them {})", less, money_text(parts.back()));
    return text;
}

std::string cost_sentences(const BlendAnswer& blend, const SharedBatch& shared) {
    std::string text = fmt::format("{} for what is in the bags{}, {} a head.", money_text(shared.used),
                                   shared.used.minor() < blend.cost.minor() ? ", no more than its packs cost" : "",
                                   a_head(shared.used_a_head));
    if (shared.outlay)
        text += fmt::format(" At the till {}, {} a head.", money_text(*shared.outlay), a_head(shared.outlay_a_head));
    if (!shared.packs.empty()) text += " What the shed holds is not counted.";
    for (const std::string& name : shared.no_pack)
        text += " No pack of " + name + " has a known price, so there is no sum for the till.";
    return text;
}

std::string rest_text(const SharedBatch& shared) {
    std::string text;
    for (const BatchRest& rest : shared.left_over)
        text += (text.empty() ? "" : ", ") + shown_mass(scale_mass(rest.mass)) + " of " + rest.name;
    return text.empty() ? "Nothing." : text + ".";
}

/// The lines of a label inside a frame.
class Label {
public:
    Label() { line_ = "  +" + std::string(share_label_width + 2, '-') + "+\n"; }
    void add(const std::string& text) {
        for (const std::string& line : broken_at_blanks(text, share_label_width))
            lines_ += "  | " + line +
                      std::string(share_label_width - std::min(share_label_width, text_width(line)), ' ') + " |\n";
    }
    [[nodiscard]] std::string text() const { return line_ + lines_ + line_; }

private:
    std::string line_, lines_;
};

Date best_before(const SharedBatch& shared, Date mixed_on) {
    return mixed_on + std::chrono::days{static_cast<int>(std::floor(shared.keeps->in(day)))};
}

std::string made_of(const BlendAnswer& blend) {
    std::string text;
    for (const BlendShare& share : blend.shares)
        text += (text.empty() ? "" : ", ") + share.ingredient.name + " " + shown_percent(share.share);
    return text + ".";
}

std::string label_text(const BlendAnswer& blend, const SharedBatch& shared, Date mixed_on, std::size_t bag) {
    Label label;
    const Mass mass = shared.bags[bag];
    label.add(fmt::format("{}, bag {} of {}", blend.name, bag + 1, shared.bags.size()));
    label.add(
        fmt::format("{} dry. Mixed {}{}.", shown_mass(mass), date_text(mixed_on),
                    shared.keeps ? ", best before " + date_text(best_before(shared, mixed_on)) + " if kept dry" : ""));
    label.add(made_of(blend));
    if (shared.water > 0)
        label.add(fmt::format("For {}: about {} of water for the bag, {} of it first; 9 times in 10 it is {}.",
                              shared.feel, shown_water(jug_water(shared.water * mass)),
                              shown_water(jug_water(shared.first_pour * mass)),
                              shown_water(jug_water(shared.water_low * mass), jug_water(shared.water_high * mass))));
    for (const std::string& caution : caution_sentences(shared.cautions)) label.add(caution);
    return label.text();
}

/// "6 bags of 500 g", or "6 bags: 4 of 4170 g and 2 of 4160 g".
std::string bags_text(const std::vector<Mass>& bags) {
    std::vector<std::pair<std::string, int>> sizes;
    for (const Mass& bag : bags) {
        const std::string size = shown_mass(bag);
        if (sizes.empty() || sizes.back().first != size) sizes.emplace_back(size, 0);
        ++sizes.back().second;
    }
    const std::string count = fmt::format("{} bag{}", bags.size(), bags.size() == 1 ? "" : "s");
    if (sizes.size() == 1) return count + " of " + sizes.front().first;
    std::string text = count + ": ";
    for (std::size_t i = 0; i < sizes.size(); ++i)
        text += fmt::format("{}{} of {}",
                            i == 0                  ? ""
                            : i + 1 == sizes.size() ? " and "
                                                    : ", ",
                            sizes[i].second, sizes[i].first);
    return text;
}

Json minors(const std::vector<Money>& parts) {
    Json json = Json::array();
    for (const Money& part : parts) json.push_back(part.minor());
    return json;
}

}  // namespace

Told share_told(const BlendAnswer& blend, const SharedBatch& shared, Date mixed_on) {
    Told told;
    told.table(packs_table(shared));
    told.gap();
    told.line("Left over", rest_text(shared));
    told.line("Costs", cost_sentences(blend, shared));
    told.line("Share out", fmt::format("Stir it all together dry, in several lots well turned over, then fill {}.",
                                       bags_text(shared.bags)));
    told.gap();
    told.heading("Labels to cut out");
    for (std::size_t bag = 0; bag < shared.bags.size(); ++bag) {
        told.gap();
        told.as_written(label_text(blend, shared, mixed_on, bag));
    }
    return told;
}

Json share_json(const SharedBatch& shared, Date mixed_on) {
    Json json{{"bags", Json::array()},
              {"mixed_on", date_text(mixed_on)},
              {"best_before", shared.keeps ? Json(date_text(best_before(shared, mixed_on))) : Json()},
              {"used_minor", shared.used.minor()},
              {"used_a_head_minor", minors(shared.used_a_head)},
              {"outlay_minor", json_minor(shared.outlay)},
              {"outlay_a_head_minor", shared.outlay ? minors(shared.outlay_a_head) : Json()},
              {"packs", Json::array()},
              {"left_over", Json::array()},
              {"feel", shared.feel},
              {"water_g_per_kg", shared.water * 1000.0},
              {"water_p05_g_per_kg", shared.water_low * 1000.0},
              {"water_p95_g_per_kg", shared.water_high * 1000.0},
              {"cautions", caution_sentences(shared.cautions)}};
    for (const Mass& bag : shared.bags)
        json["bags"].push_back({{"mass_g", bag.in(gram)},
                                {"water_g", (shared.water * bag).in(gram)},
                                {"water_first_g", (shared.first_pour * bag).in(gram)}});
    for (const PackBought& pack : shared.packs) json["packs"].push_back(bought_json(pack));
    for (const BatchRest& rest : shared.left_over)
        json["left_over"].push_back({{"name", rest.name}, {"mass_g", rest.mass.in(gram)}});
    return json;
}

}  // namespace baitwright
