#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/mix/own_values_told.h"
#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "bait/mix_state.h"
#include "bait/recipe.h"
#include "bait/stock.h"
#include "bait/wetness.h"
#include "quantities/money.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// How a part that goes in soaked is soaked.
struct PartSoak {
    Mass pour;         ///< water to cover it
    Time soak, stand;  ///< under water; drained until it is ready
    Mass wet;          ///< drained
};

struct PartAnswer {
    std::string name;
    Preparation prepare = Preparation::as_bought;
    Mass mass;      ///< as bought (soaked pellets: before soaking)
    Volume volume;  ///< loose
    Ratio share;    ///< of the dry mass
    double free_offerings = 0;
    std::optional<Money> cost;
    Mass kitchen_mass;
    std::optional<PartSoak> soak;  ///< of a part that goes in soaked
    bool goes_in_last = false;     ///< soaked, live or cooked, in a mix with more: stirred in after the riddling
};

struct AdditiveAnswer {
    std::string name;
    bool liquid = false;
    Mass mass;
    Volume volume;                      ///< a powder's is loose
    Mass wetting;                       ///< grams that count towards the feel
    std::optional<Ratio> of_label_max;  ///< 1 is the label's most; nothing where there is no label
    std::string rate;                   ///< as the recipe says it; empty for a liquid part
    std::optional<Money> cost;
};

/// How sure the answer is, from the spreads of what went into it.
struct MixDoubt {
    Range<Mass> water;
    Mass first_pour;  ///< the lesser of the 5 % point and 70 % of the median
    Range<Volume> wet_volume;
    std::optional<Range<Ratio>> portions;  ///< how many of the cups, feeders or balls asked for it fills
    std::string measure_first;             ///< the bag that makes most of the doubt; empty where none does
    std::string measure_first_what;        ///< "absorption" or "slump" or "moisture"
    Ratio measure_first_share;             ///< of the variance of the water
};

/// The cups, feeders or balls asked for, for everyone.
struct PortionsAnswer {
    int count = 0;
    std::string called;  ///< "cup", "feeder", "ball"
    Volume each;
    Length diameter;  ///< of a ball; else 0
    Mass mass_each;
    std::optional<Mass> riddled_each =
        {};  ///< of a cup: riddled in loose, not tapped down; nothing where too wet for that
};

/// One of several targets of one batch. Masses are for everyone, with the spare.
struct TargetAnswer {
    PortionsAnswer portions;
    std::string feel;
    Ratio wetness;
    MixState state = MixState::cupped;
    Mass dry_mass, water, wet_mass;  ///< what it would take alone
    Volume wet_volume;
    Mass take;            ///< of the batch, once that is as wet as its driest target
    Mass let_down_water;  ///< more for this one; 0 for the driest
    std::vector<Mass> additives,
        let_down_additives;  ///< in all, and of that with the water that lets it down; in the order of the batch's
    Range<Mass> water_range, let_down_range;
    Range<Ratio> count_range;  ///< how many its dry mass may be enough for
};

/// A mix above what one tub takes, split evenly.
struct TubsAnswer {
    int count = 1;
    Mass wet_each, dry_each, water_each;
};

/// The answer to a MixRequest: what to weigh, how much water and when, what it comes to. Unrounded.
struct MixAnswer {
    std::string recipe;
    std::string feel;
    MixState state = MixState::riddled;
    Ratio wetness;  ///< aimed at
    WaterMarks marks;
    Temperature water_temperature;
    int people = 1;

    Mass dry_mass;
    Volume dry_volume;
    Mass water_to_add;
    Mass water_already_in;
    Mass dry_to_add;  ///< more of the parts that take water, where it is too wet already; else 0
    bool all_parts_take_water = true;
    bool soaked_alone = false;        ///< pellets with nothing else: soaked, not wetted; `feel` is then "soaked"
    bool right_as_it_stands = false;  ///< water is in, and nothing is asked for
    Ratio wetness_in_tub;             ///< as the tub stands: above `wetness` where it is too wet
    std::optional<MixDoubt> doubt;
    Time rest;  ///< until 90 % of the absorption is taken up
    Mass wet_mass;
    Volume wet_volume;
    Ratio saturation;
    double free_offerings = 0;
    std::optional<Money> cost;
    const Currency* currency = nullptr;  ///< of all costs; null where nothing has a price

    std::vector<PartAnswer> parts;
    std::vector<AdditiveAnswer> additives;
    Mass kitchen_water;
    std::optional<PortionsAnswer> portions;
    std::vector<TargetAnswer> targets;  ///< where it is for several, in the order asked: parts, additives and costs are
                                        ///< then of all, feel, water, volume and ranges of the batch wetted to the
                                        ///< driest of their feels
    TubsAnswer tubs;
    std::string limited_by;              ///< the ingredient that sets the amount, for a target by what is on hand
    std::optional<StockReceipt> booked;  ///< where it was taken out of the shed
    std::vector<std::string> cautions;
    LearntUsed learnt;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
