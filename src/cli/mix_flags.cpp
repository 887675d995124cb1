#include "cli/mix_flags.h"

namespace baitwright {

std::vector<Flag> mix_flags() {
    return {
        {"--wet-volume", "VOLUME", "as much as fills this, wet: 3l, 5pt"},
        {"--wet-mass", "MASS", "this much wet: 2kg, 4lb"},
        {"--dry-mass", "MASS", "this much dry: 1kg"},
        {"--cups", "COUNTxSIZE", "so many level cups or pots: 4x250ml, \"3x toss pot 25\""},
        {"--balls", "COUNTxSIZE", "so many balls: 12x55mm, 8xegg"},
        {"--feeders", "COUNTxSIZE", "so many feeders: 30x30ml"},
        {"--have", "NAME=AMOUNT", "the most that this allows: \"brown crumb=400g\"; may be repeated", true},
        {"--from-stock", "", "the most that the shed allows"},
        {"--book", "", "take it out of the shed, in one booking that 'stock undo' takes back"},
        {"--on", "DATE", "the day of the booking, 2026-03-01; today where not given"},
        {"--feel", "FEEL", "how wet, by its name: dusty, crumbly, firm, tacky, soft, slop"},
        {"--wetness", "NUMBER", "how wet, on our scale: 1 just holds, 2 will not stand"},
        {"--state", "STATE", "how it sits: riddled, cupped, squeezed"},
        {"--spare", "SHARE", "more than asked, to be safe: 10%"},
        {"--people", "NUMBER", "the target is for each of so many anglers"},
        {"--water-temp", "TEMPERATURE", "of the water poured in: 8degC"},
        {"--added", "VOLUME", "water that is in the tub already: 300ml"},
        {"--seed", "NUMBER", "draws another sample for the ranges"},
        {"--csv", "", "as CSV for a spreadsheet, unrounded"},
    };
}

}  // namespace baitwright
