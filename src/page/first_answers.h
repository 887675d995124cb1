#pragma once

#include <optional>

#include "answers/mix/mix_answer.h"
#include "answers/pellets/soak_answer.h"
#include "answers/plan/plan_answer.h"
#include "bait/venue.h"
#include "page/bank_data.h"

/// What a person asks first of a strategy, as the command line would be asked: its words, its flags, what is usual.
namespace baitwright {

/// `plan STRATEGY`, with the page's start and anglers. Throws what `plan_session` throws.
SessionPlan first_plan(const BankContents& contents, const CarriedStrategy& carried, const std::optional<Venue>& venue);

/// `mix MIX --dry-mass AMOUNT --feel FEEL --water-temp TEMPERATURE`: the first mix that the plan has made, as much of
/// it and as wet, be it of several things that go in together; nothing where it makes none.
std::optional<MixAnswer> first_mix(const BankContents& contents, const CarriedStrategy& carried,
                                   const SessionPlan& plan);

/// `soak PELLET=AMOUNT... --water-temp TEMPERATURE`: all that the plan soaks and pumps; nothing where it does neither.
std::optional<SoakAnswer> first_soaks(const BankContents& contents, const Shelf& shelf, const SessionPlan& plan);

/// `mix MIX --wet-volume 1l`.
MixAnswer litre_of(const BankContents& contents, const Shelf& shelf, const std::string& mix);

}  // namespace baitwright
