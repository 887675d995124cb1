#include "questions/price_question.h"

#include "quantities/listed.h"
#include "questions/read_flags.h"
#include "questions/stock_amount.h"

namespace baitwright {

namespace {

/// No --pack, and the ingredient comes in packs of several sizes: which one is meant?
void refuse_any_pack(const Ingredient& ingredient, std::vector<std::string> sizes) {
    if (sizes.size() < 2) return;
    for (std::string& size : sizes) size.insert(0, "--pack \"").append("\"");
    throw UsageError("several-packs",
                     "--pack: " + ingredient.name + " comes in packs of more than one size: which is it?",
                     "say it with " + joined(sizes, " or "));
}

}  // namespace

Pack priced_pack(const Arguments& arguments, const Ingredient& ingredient, Date on,
                 const std::vector<std::string>& sizes) {
    Pack pack;
    pack.on = on;
    if (!arguments.has("--pack")) refuse_any_pack(ingredient, sizes);
    const std::string size = arguments.value("--pack").value_or("1 pack");
    const Packs packs = flag_value("--pack", [&] { return read_packs(size, ingredient); });
    if (packs.count != 1)
        throw UsageError("out-of-range", "--pack: the price is that of one pack", "for example --pack 1kg");
    pack.size = packs.size;
    pack.price = flag_value("--is", [&] { return read_money(arguments.value("--is").value_or(""), arguments); });
    return pack;
}

}  // namespace baitwright
