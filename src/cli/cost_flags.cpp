#include "cli/cost_flags.h"

#include <memory>

#include "cli/picture_file.h"
#include "library/session_stock.h"
#include "report/cost_plot.h"

namespace baitwright {

Flag have_flag() {
    return {"--have", "NAME=AMOUNT",
            "what is in the shed, in place of what stock says: \"brown crumb=400g\", \"silt bed=600g frozen\"; may be "
            "repeated",
            true};
}

std::vector<Flag> cost_flags() {
    std::vector<Flag> flags{
        {"--length", "TIME", "how long the session lasts: 3h"},
        {"--feel", "FEEL", "wet every mix to this feel"},
        {"--without", "NAME", "leave an ingredient or a mix out; the rest takes its room; may be repeated", true},
        {"--price", "NAME=PRICE", "what if it cost this: \"brown crumb=£2.10/kg\", \"maggots=£3/pt\"; may be repeated",
         true},
        {"--people", "NUMBER", "how many anglers, each feeding all of it", false, "people"},
        have_flag(),
        {"--empty-shed", "", "as if nothing were in the shed"},
        {"--reused-frozen", "SHARE",
         "how much of each session's damp mix is frozen for the next: 50%; it is not paid for twice"},
        {"--on", "DATE", "the day of the session: 2026-11-28 (default: today)"},
        {"--seed", "NUMBER", "another random draw for the ranges"},
        {"--csv", "", "as CSV for a spreadsheet, unrounded"},
    };
    for (const Flag& flag : picture_flags()) flags.push_back(flag);
    return flags;
}

StockOnHand stock_on_hand(const Arguments& arguments, const Shelf& shelf, const Surroundings& around) {
    if (arguments.has("--have") && arguments.has("--empty-shed"))
        throw UsageError("two-sheds", "--have and --empty-shed were both given", "give one of them");
    if (arguments.has("--have") || arguments.has("--empty-shed") || around.library.folder)
        return stock_told(arguments, shelf);
    const auto store = std::make_shared<Store>(open_store(around.library));
    return StockOnHand([store](std::string_view ingredient) { return lots_in_shed(store->shed(), ingredient); },
                       [store](std::string_view mix) { return kept_in_shed(store->shed(), mix); });
}

std::string write_plot(const Arguments& arguments, const std::vector<StrategyCost>& costs) {
    const auto path = arguments.value("--plot");
    if (!path) return {};
    write_picture(arguments, cost_plot(costs));
    return "The bars are in " + *path + "\n";
}

}  // namespace baitwright
