#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/units.h"
#include "report/display.h"
#include "report/soak_text.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

/// Minutes alone, as fine as `shown_soak_time`.
std::string shown_minutes(Time time) {
    const double minutes = time.in(minute), step = minutes < 4.75 ? 0.5 : minutes < 20 ? 1 : 5;
    return fmt::format("{:g}", std::max(0.5, step * std::round(minutes / step)));
}

TextTable comparison_table(const std::vector<SoakAnswer>& answers) {
    using Align = TextTable::Align;
    std::vector<Align> columns{Align::left};
    std::vector<std::string> warmth{""}, heads{"minutes since the water went on"};
    for (const SoakAnswer& answer : answers) {
        columns.insert(columns.end(), {Align::right, Align::right, Align::right});
        warmth.insert(warmth.end(), {"", shown_temperature(answer.water), ""});
        heads.insert(heads.end(), {"soak", "ready", "even"});
    }
    TextTable table(columns);
    table.row(warmth);
    table.row(heads);
    for (std::size_t i = 0; i < answers.front().soaked.size(); ++i) {
        std::vector<std::string> cells{answers.front().soaked[i].name};
        for (const SoakAnswer& answer : answers) {
            const SoakedAnswer& soaked = answer.soaked[i];
            cells.insert(cells.end(), {shown_minutes(soaked.soak.middle), shown_minutes(soaked.ready.at),
                                       shown_minutes(soaked.even.at)});
        }
        table.row(cells);
    }
    return table;
}

/// What it comes to in every one of these waters: "500 g", or "450 to 500 g" where they are taken out by the clock.
std::string wet_in_all(const std::vector<SoakAnswer>& answers, std::size_t pellet) {
    Mass low = scale_mass(answers.front().soaked[pellet].wet()), high = low;
    for (const SoakAnswer& answer : answers) {
        const Mass wet = scale_mass(answer.soaked[pellet].wet());
        low = std::min(low, wet);
        high = std::max(high, wet);
    }
    return shown_mass(low) == shown_mass(high) ? shown_mass(high) : shown_mass(low, high);
}

/// What to weigh and to pour on, and what they weigh drained: in warm water as in cold, but sooner.
TextTable weights_table(const std::vector<SoakAnswer>& answers) {
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right});
    const bool covered = answers.front().method == SoakMethod::covered;
    table.row({"weigh", "dry", "loose", "pour on", covered ? "drained" : "soaked"});
    for (std::size_t i = 0; i < answers.front().soaked.size(); ++i) {
        const SoakedAnswer& first = answers.front().soaked[i];
        Mass pour = first.pour;
        for (const SoakAnswer& answer : answers) pour = std::max(pour, answer.soaked[i].pour);
        table.row({first.name, shown_weighed(first.dry), shown_loose(first.dry_volume), shown_water(jug_water(pour)),
                   "about " + wet_in_all(answers, i)});
    }
    return table;
}

}  // namespace

Told soak_comparison_told(const std::vector<SoakAnswer>& answers) {
    Told told;
    told.title("Cold water and warm");
    told.table(weights_table(answers));
    told.gap();
    told.table(comparison_table(answers));
    told.gap();
    told.line("How sure", "Times are estimates, within a factor of about two for a bag that nobody has timed.");
    told.mind(answers.front().warnings);
    told.take_care(answers.front().cautions);
    return told;
}

}  // namespace baitwright
