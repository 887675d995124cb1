#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/blend/blend_answer.h"
#include "answers/money/pack_on_offer.h"
#include "bait/shelf.h"

namespace baitwright {

/// What stays of the packs of one part.
struct BatchRest {
    std::string name;
    Mass mass;
};

/// A batch made once and shared out dry.
struct SharedBatch {
    std::vector<Mass> bags;  ///< in whole grams, all alike as far as a kitchen scale can; they come to the batch
    Money used;              ///< what is in the bags: of no part more than its packs cost
    std::vector<Money> used_a_head;  ///< what each pays for it; they come to the whole
    std::vector<PackBought> packs;   ///< the cheapest whole packs for the batch
    std::vector<BatchRest> left_over;
    std::vector<std::string>
        no_pack;                  ///< parts that nothing is known of but the price in the spec: not among the packs
    std::optional<Money> outlay;  ///< nothing where any is
    std::vector<Money> outlay_a_head;  ///< what each pays at the till
    std::string feel;
    Ratio water, first_pour;            ///< g per g dry, for that feel: the plain amount, and what goes in first
    Ratio water_low, water_high;        ///< its 5 and 95 % points
    std::vector<std::string> cautions;  ///< words of all parts
    std::optional<Time> keeps;          ///< as long as the part that keeps the least, dry; not known where none says
};

/// Shares the blend out into so many bags.
SharedBatch share_batch(const Shelf& shelf, const BlendAnswer& blend, int bags);

/// The mass in whole grams, in equal parts but for what does not divide: steps of 1 g, 5 g or 10 g as a kitchen scale
/// shows parts of that size (`kitchen_mass`), less than 50 g to the gram, the odd grams with the first of the others.
/// **Valid for**: a mass of at least 1 g.
std::vector<Mass> shared_out(Mass whole, const std::vector<double>& shares);

/// The same to the gram, whatever their size.
std::vector<Mass> shared_to_the_gram(Mass whole, const std::vector<double>& shares);

}  // namespace baitwright
