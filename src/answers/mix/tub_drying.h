#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/mix/dry_request.h"
#include "bait/feel.h"
#include "bait/wetted_mix.h"
#include "physics/evaporation.h"

/// How an open tub of wetted mix loses water: what `dry_out` and a plan's hot day share.
namespace baitwright {

/// What the sun brings a dark wet mix, all told: of some 600 W/m2 on a bright day in summer, what it does not throw
/// back or radiate away itself, and with a cloud now and then. Ours.
inline constexpr HeatFlux sun_on_bait = HeatFlux::from_si(250);

/// Throws UsageError where the face, the air, the humidity or the wind is out of range.
void check_open_tub(const DryRequest& request);

/// What each area of a wet face loses in that air, where it gets this share of Carrier's rate: `still_air_share` for
/// air that the rim keeps nearly still, to 1. Under a lid a tenth.
MassFlux tub_loss(const DryRequest& request, Ratio sheltered_to);

/// The wetness below which a mix is drier than that feel; 0 for the driest.
double lower_edge(const std::vector<Feel>& feels, const std::string& feel);

/// How so much of a mix dries, which loses so much from its face: at first as wet as that; below a wetness of 1 the
/// rate falls with what is left.
DryingCourse drying_course(const WaterMarks& marks, Ratio at_first, Mass wetted, MassFlux loss, Area face);

}  // namespace baitwright
