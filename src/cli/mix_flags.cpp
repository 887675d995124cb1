#include "cli/mix_flags.h"

namespace baitwright {

std::vector<Flag> mix_flags() {
    return {
        {"--wet-volume", "VOLUME", "enough to fill this, wet: 3l, 5pt"},
        {"--wet-mass", "MASS", "this much wet: 2kg, 4lb"},
        {"--dry-mass", "MASS", "this much dry: 1kg"},
        {"--cups", "COUNTxSIZE",
         R"(level cups or pots: 4x250ml, "3x toss pot 25"; more with commas, each at its feel: "2x250ml soft")", true},
        {"--balls", "COUNTxSIZE", "balls: 12x55mm, 8xegg; with --cups too, from one batch", true},
        {"--feeders", "COUNTxSIZE", "feeders: 30x30ml; likewise", true},
        {"--have", "NAME=AMOUNT", "as much as this makes: \"brown crumb=400g\"; may be repeated", true},
        {"--from-stock", "", "as much as the shed allows"},
        {"--without", "NAME", "leave this out for once; the rest takes its room; may be repeated", true},
        {"--with", "NAME=AMOUNT",
         "add this for once, so much in the whole batch: \"cooked hemp=200 g\"; may be repeated", true},
        {"--book", "", "take it out of the shed; 'stock undo' puts it back"},
        {"--on", "DATE", "the day of the booking: 2026-03-01 (default: today)"},
        {"--feel", "FEEL", "dusty, crumbly, firm, tacky, soft or slop; of several, in order: soft,firm"},
        {"--wetness", "NUMBER", "in numbers: 1 just holds, 2 will not stand"},
        {"--state", "STATE", "how it sits: riddled, cupped, squeezed"},
        {"--spare", "SHARE", "extra, to be safe: 10%"},
        {"--people", "NUMBER", "how many anglers; the amount asked for is for each", false, "people"},
        {"--water-temp", "TEMPERATURE", "of the water poured in: 8degC", false, "water-temp"},
        {"--added", "VOLUME", "water already in the tub: 300ml"},
        {"--seed", "NUMBER", "another random draw for the ranges"},
        {"--csv", "", "as CSV for a spreadsheet, unrounded"},
    };
}

}  // namespace baitwright
