#pragma once

#include <string>

#include "answers/drop/drop_answer.h"
#include "report/one_unit.h"

namespace baitwright {

/// What holds so much of it along the tow: from here to there.
struct TowExtent {
    Length from, to;
    [[nodiscard]] Length middle() const { return 0.5 * (from + to); }
};

/// Of half and of nine tenths of what sinks, with half the width of the patch on either side: as long as
/// `DropAnswer::length`, and where it lies.
TowExtent half_along_tow(const DropAnswer& answer);
TowExtent most_along_tow(const DropAnswer& answer);

/// Longer than wide by more than a twentieth: then both are told.
bool is_drawn_out(const DropAnswer& answer);

/// The one unit that its lengths are told in, but for its drift: where it breaks and how wide and long it lies.
LengthUnit lengths_unit(const DropAnswer& answer);

/// "a level cup of 250 ml", the size in pints where volumes are told in them.
std::string form_text(const DropAnswer& answer);

/// "1.3 m long, 0.8 m wide"; "0.8 m across" where it is round.
std::string patch_measures(const DropAnswer& answer, Length length, Length width);

}  // namespace baitwright
