#include <fmt/format.h>

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

}  // namespace

Told soak_comparison_told(const std::vector<SoakAnswer>& answers) {
    Told told;
    told.title("Cold water and warm");
    told.table(comparison_table(answers));
    told.gap();
    told.line("How sure", "Times are estimates, within a factor of about two for a bag that nobody has timed.");
    told.mind(answers.front().warnings);
    told.take_care(answers.front().cautions);
    return told;
}

}  // namespace baitwright
