#pragma once

#include <optional>
#include <vector>

#include "answers/plan/plan_answer.h"
#include "physics/evaporation.h"

namespace baitwright {

/// All that is dry in a tub, in its kept mix too, and all the water in it.
Mass dry_in(const PlannedBatch& batch);
Mass water_held(const PlannedBatch& batch);

/// How thin a mix lies in a tub at the least. Ours.
inline constexpr Length thinnest_layer = Length::from_si(0.01);

/// One tub over the session: what of it lies open, and what that loses. It looks at the batch as long as it is there.
class TubCourse {
public:
    TubCourse(const SessionPlan& plan, const PlannedBatch& batch, const UnrolledStrategy& session);

    [[nodiscard]] const PlannedBatch& batch() const { return batch_; }

    /// The last of it goes in, or may.
    [[nodiscard]] Time until() const;

    /// It may be called for at any moment, as bites slow.
    [[nodiscard]] bool is_kept_ready() const { return kept_ready_ > Time{}; }

    /// The share of what goes in that is in before.
    [[nodiscard]] double share_before(Time moment) const;

    /// The first of it to go in from then on.
    [[nodiscard]] Time first_from(Time moment) const;

    /// The share of the batch that lies open then: all that is wetted and not in yet. The spare is in it until the rest
    /// is wetted later.
    [[nodiscard]] double open_share(Time moment, const std::optional<LaterWetting>& later) const;

    /// Of that share, no thinner than a layer may be.
    [[nodiscard]] Area face_of(double share, Area tub) const;

    /// What it loses from the start until then, kept damp.
    [[nodiscard]] Mass lost_by(Time moment, MassFlux loss, Area tub, const std::optional<LaterWetting>& later) const;

private:
    struct FedBy {
        Time at;
        Mass mass;  // by everybody, up to and with that moment
    };

    [[nodiscard]] Mass fed_before(Time moment) const;

    const PlannedBatch& batch_;
    std::vector<FedBy> fed_;  // by time, from nothing on
    Time kept_ready_;         // for slow bites, until then
};

}  // namespace baitwright
