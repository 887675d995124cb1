#include <string_view>

#include "bait/beyond_range.h"
#include "quantities/amount_range.h"

/// What no store of ours has in it, whoever wrote it: wider than `log_faults`, which says what a person can have meant.
/// **Source**: our own bounds.
namespace baitwright {

namespace {

/// Keeps the first thing that does not hold; what is not a number holds nowhere.
class LogLimits {
public:
    void hold(bool holds, std::string what) {
        if (!holds && first_.empty()) first_ = std::move(what);
    }
    void hold(Mass mass, const std::string& what) {
        hold(mass >= Mass{} && mass <= 10000.0 * kilogram, what + " must be from 0 to 10000 kg");
    }
    void hold(Volume volume, const std::string& what) {
        hold(volume >= Volume{} && volume <= 10000.0 * litre, what + " must be from 0 to 10000 l");
    }
    void hold(Length length, const std::string& what) {
        hold(length >= Length{} && length <= 1000.0 * metre, what + " must be from 0 to 1000 m");
    }
    void hold(Time time, const std::string& what) {
        hold(time >= Time{} && time <= 31 * 24.0 * hour, what + " must be from 0 to 744 h");
    }
    void hold(Temperature water) {
        hold(water.in_celsius() >= -5 && water.in_celsius() <= 100.5, "the water must be from -5 to 100 degC");
    }
    /// Since the start; some feed before it.
    void hold_clock(const std::optional<Time>& at) {
        if (at) hold(*at >= -31 * 24.0 * hour && *at <= 31 * 24.0 * hour, "its time must be from -744 h to 744 h");
    }
    template <class Q>
    void hold(const std::optional<Q>& said, const std::string& what) {
        if (said) hold(*said, what);
    }
    [[nodiscard]] std::string first() const { return first_; }

private:
    std::string first_;
};

struct HoldLogged {
    LogLimits& limits;

    void operator()(const LoggedSession& session) const {
        limits.hold(session.length, "its length");
        limits.hold(session.anglers >= 1 && session.anglers <= 10000, "its anglers must be from 1 to 10000");
        if (session.water) limits.hold(*session.water);
        if (session.cost)
            limits.hold(lies_in_range(*session.cost), "its cost must be " + price_range_text(session.cost->currency()));
    }
    void operator()(const LoggedPutIn& put_in) const { limits.hold_clock(put_in.at); }
    void operator()(const LoggedUse& use) const {
        std::visit([&](auto amount) { limits.hold(amount, "what was used"); }, use.amount);
    }
    void operator()(const LoggedCatch& caught) const {
        limits.hold_clock(caught.at);
        limits.hold(caught.count >= 0 && caught.count <= 1000000, "the fish must be from 0 to 1000000");
        limits.hold(caught.mass, "what the fish weigh");
    }
    void operator()(const LoggedMix& mix) const {
        limits.hold(mix.dry, "the dry mix");
        limits.hold(mix.water, "the water poured");
        limits.hold(mix.wetting, "what else wets");
        if (mix.wetness) limits.hold(*mix.wetness >= 0 && *mix.wetness <= 20, "its wetness must be from 0 to 20");
        limits.hold(mix.within >= 0 && mix.within <= 20, "how closely it was felt must be from 0 to 20");
        for (const WeighedPart& part : mix.parts) {
            limits.hold(part.mass, "each part");
            if (part.moisture)
                limits.hold(*part.moisture >= 0 && *part.moisture <= 1,
                            "the moisture of a bag must be from 0 to 100 %");
        }
    }
    void operator()(const LoggedSoak& soak) const {
        limits.hold(soak.dry, "what was soaked");
        limits.hold(soak.drained, "what it weighed drained");
        limits.hold(soak.under_water, "its time under water");
        limits.hold(soak.water);
    }
    void operator()(const LoggedWeight& weight) const {
        limits.hold(weight.vessel, "the vessel");
        limits.hold(weight.mass, "what it held");
    }
    void operator()(const LoggedLook& look) const {
        std::visit([&](auto size) { limits.hold(size, "the cup or ball"); }, look.form);
        limits.hold(look.depth, "the depth");
        limits.hold(look.holds, "how long it held");
        limits.hold(look.breaks_at, "how deep it broke");
        limits.hold(look.carpet, "how wide it lay");
    }
    void operator()(const LoggedBag&) const {}
    void operator()(const LogUndone&) const {}
};

}  // namespace

std::string beyond_range(const LoggedThing& what) {
    LogLimits limits;
    std::visit(HoldLogged{limits}, what);
    return limits.first();
}

}  // namespace baitwright
