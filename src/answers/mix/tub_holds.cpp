#include "answers/mix/tub_holds.h"

#include <algorithm>
#include <cmath>

#include "answers/shared/mix_amount.h"
#include "bait/wetted_mix.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// The mix once so much more of the parts that take water is in it, per gram of the dry mix that was; the additives
/// stay what they were, per gram of it.
ResolvedMix with_more_dry(ResolvedMix mix, Ratio more, const WettedMix& before) {
    const double whole = 1 + more;
    const std::vector<SolidNumbers> solids = numbers_of(mix).solids;
    for (std::size_t i = 0; i < solids.size(); ++i) {
        const double growth = solids[i].takes_water ? 1 + more / before.need.wetted_share : 1.0;
        mix.solids[i].share = growth / whole * mix.solids[i].share;
    }
    for (std::size_t i = 0; i < mix.liquids.size(); ++i) mix.liquids[i].per_dry = before.additives[i] / whole;
    for (std::size_t i = 0; i < mix.doses.size(); ++i) {
        const Ratio per_dry = before.additives[mix.liquids.size() + i] / whole;
        mix.doses[i].rate = {DoseBasis::per_kg_dry, per_dry * (1.0 * kilogram)};
        mix.doses[i].reach = 1;
    }
    return mix;
}

Ratio water_per_dry_of(const WettedTub& tub) {
    return tub.water_in / tub.dry_mass;
}

struct WettedRoom {
    Mass wet_mass;
    WetPacking packing;
    Ratio wetness;
    Mass dry_mass;

    [[nodiscard]] std::optional<Volume> in(MixState state) const {
        if (!can_be(state, wetness)) return std::nullopt;
        return wet_volume(packing, state, wetness) * dry_mass;
    }
};

WettedRoom wetted_room(const SettledTub& settled) {
    const MixNumbers numbers = numbers_of(settled.mix);
    const WettedMix wetted = wet(numbers, settled.tub.wetness, water_per_dry_of(settled.tub));
    return {wetted.wet_mass * settled.tub.dry_mass, pack(numbers, wetted), std::min<double>(wetted.wetness, wettest),
            settled.tub.dry_mass};
}

int whole_ones(Volume volume, Volume each) {
    constexpr double most_counted = 1e9;
    return static_cast<int>(std::min(most_counted, std::floor(volume / each + 1e-9)));
}

TubMakes portion_asked(const TubPortion& portion) {
    if (const Balls* balls = std::get_if<Balls>(&portion))
        return {"ball", ball_volume(balls->diameter), balls->diameter, 0, 0, 0, {}};
    const auto& vessels = std::get<Vessels>(portion);
    return {vessels.called, vessels.each, {}, 0, 0, 0, {}};
}

}  // namespace

SettledTub tub_as_it_stands(const ResolvedMix& mix, const WettedTub& tub, const TubJudgement& judged) {
    SettledTub settled{mix, tub};
    if (judged.takes_water) settled.tub.wetness = judged.settled;
    return settled;
}

SettledTub tub_put_right(const ResolvedMix& mix, const WettedTub& tub, const TubJudgement& judged) {
    if (judged.needs == TubNeeds::nothing) return tub_as_it_stands(mix, tub, judged);
    if (judged.needs == TubNeeds::water) return {mix, tub};
    const WettedMix before = wet(numbers_of(mix), 0.0, water_per_dry_of(tub));
    return {with_more_dry(mix, judged.dry_mix / tub.dry_mass, before),
            {tub.dry_mass + judged.dry_mix, tub.water_in, tub.wetness}};
}

TubRoom room_of(const SettledTub& settled) {
    const WettedRoom room = wetted_room(settled);
    TubRoom told{room.wet_mass, {}};
    for (std::size_t i = 0; i < told.volumes.size(); ++i) told.volumes[i] = room.in(static_cast<MixState>(i));
    return told;
}

std::vector<TubMakes> makes_of(const SettledTub& settled, const std::vector<TubPortion>& portions, std::uint64_t seed) {
    const TubRoom room = room_of(settled);
    std::array<std::optional<Range<Volume>>, mix_state_names.size()> drawn;  // the same for all cups, and all balls
    std::vector<TubMakes> makes;
    for (const TubPortion& portion : portions) {
        const MixState state = std::holds_alternative<Balls>(portion) ? MixState::squeezed : MixState::cupped;
        const std::optional<Volume>& volume = room.in(state);
        if (!volume) continue;
        auto& range = drawn[static_cast<std::size_t>(state)];
        if (!range) range = volume_of_tub(settled.mix, settled.tub, state, seed);
        TubMakes told = portion_asked(portion);
        told.count = whole_ones(*volume, told.each);
        told.low = whole_ones(range->low, told.each);
        told.high = whole_ones(range->high, told.each);
        told.mass_each = room.wet_mass * (told.each / *volume);
        makes.push_back(std::move(told));
    }
    return makes;
}

}  // namespace baitwright
