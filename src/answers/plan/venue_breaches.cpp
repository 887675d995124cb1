#include "answers/plan/venue_breaches.h"

#include <cmath>

#include "bait/amount.h"
#include "bait/wetted_mix.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double kept_within = 1.001;

/// What a subject comes to, in one measure.
struct Planned {
    Mass mass;
    Volume volume;
};

struct IsAbout {
    const Ingredient& ingredient;
    bool wetted;
    bool operator()(AllFeed) const { return true; }
    bool operator()(Groundbait) const { return wetted; }
    bool operator()(IngredientKind kind) const { return ingredient.kind == kind; }
    bool operator()(const OneIngredient& one) const { return folded_name(one.name) == folded_name(ingredient.name); }
};

void add_dry(Planned& planned, const RuleSubject& subject, const IngredientNeed& need, bool wetted) {
    if (!std::visit(IsAbout{need.ingredient, wetted}, subject)) return;
    planned.mass += need.mass;
    planned.volume += need.mass / measured_density(need.ingredient);
}

bool is_whole_feed(const RuleSubject& subject) {
    return std::holds_alternative<AllFeed>(subject) || std::holds_alternative<Groundbait>(subject);
}

/// Soaked pellets with the water they took up.
void add_wet_parts(Planned& planned, const RuleSubject& subject, const FeedNeed& feed) {
    const MixNumbers numbers = numbers_of(feed.fed.mix);
    for (std::size_t i = 0; i < numbers.solids.size(); ++i) {
        const SolidPart& part = feed.fed.mix.solids[i];
        if (!std::visit(IsAbout{part.ingredient, !feed.fed.feel.empty()}, subject)) continue;
        const SolidNumbers& solid = numbers.solids[i];
        planned.mass += (1 + solid.carried + solid.film) * (part.share * feed.dry);
        planned.volume += part.share * feed.dry / solid.loose;
    }
}

void add_feed(Planned& planned, const RuleSubject& subject, const FeedNeed& feed, VenueLimit::Reckoned reckoned) {
    const bool wetted = !feed.fed.feel.empty();
    if (reckoned == VenueLimit::Reckoned::dry) {
        for (const IngredientNeed& need : feed.ingredients) add_dry(planned, subject, need, wetted);
    } else if (is_whole_feed(subject)) {
        if (!wetted && std::holds_alternative<Groundbait>(subject)) return;
        planned.mass += feed.wet_mass;
        planned.volume += feed.wet_volume;
    } else {
        add_wet_parts(planned, subject, feed);
    }
}

/// The hookbaits are what the totals hold beyond the feeds.
void add_hookbaits(Planned& planned, const RuleSubject& subject, const UnrolledStrategy& angler) {
    for (const HookbaitNeed& hook : angler.hookbaits)
        for (const IngredientNeed& total : angler.totals)
            if (total.ingredient.name == hook.name) add_dry(planned, subject, {total.ingredient, hook.mass, {}}, false);
}

Planned planned_of(const RuleSubject& subject, const UnrolledStrategy& angler, VenueLimit::Reckoned reckoned) {
    Planned planned;
    for (const FeedNeed& feed : angler.feeds) add_feed(planned, subject, feed, reckoned);
    if (!is_whole_feed(subject)) add_hookbaits(planned, subject, angler);
    return planned;
}

std::optional<PlanBreach> breach_of(const VenueLimit& limit, const UnrolledStrategy& angler, int people) {
    const double anglers = limit.per == VenueLimit::Per::everyone ? people : 1;
    const Planned planned = planned_of(limit.subject, angler, limit.reckoned);
    PlanBreach breach{rule_text(limit), name_of(limit.subject), limit.most, anglers * planned.mass};
    if (const Mass* most = std::get_if<Mass>(&limit.most)) {
        if (anglers * planned.mass <= kept_within * *most) return std::nullopt;
    } else {
        breach.planned = anglers * planned.volume;
        if (anglers * planned.volume <= kept_within * std::get<Volume>(limit.most)) return std::nullopt;
    }
    return breach;
}

/// In whole quarters.
bool is_neat(double number) {
    return std::abs(4 * number - std::round(4 * number)) < 1e-6;
}

/// As a rule of so many pints or pounds was said; to a gram or a millilitre otherwise.
std::string amount_text(const std::variant<Mass, Volume>& amount) {
    if (const Mass* mass = std::get_if<Mass>(&amount)) {
        if (is_neat(mass->in(pound)) && !is_neat(mass->in(kilogram)*100))
            return number_text_within(mass->in(pound), 1e-4) + " lb";
        return *mass < 1.0 * kilogram ? number_text_within(mass->in(gram), 0.5) + " g"
                                      : number_text_within(mass->in(kilogram), 5e-4) + " kg";
    }
    const Volume volume = std::get<Volume>(amount);
    if (is_neat(volume.in(imperial_pint)) && !is_neat(volume.in(litre)*100))
        return number_text_within(volume.in(imperial_pint), 1e-4) + " pt";
    return volume < 1.0 * litre ? number_text_within(volume.in(millilitre), 0.5) + " ml"
                                : number_text_within(volume.in(litre), 5e-4) + " l";
}

}  // namespace

std::string rule_text(const VenueLimit& limit) {
    return "at most " + amount_text(limit.most) + " of " + name_of(limit.subject) +
           (limit.reckoned == VenueLimit::Reckoned::dry ? ", dry, " : ", wet, ") +
           (limit.per == VenueLimit::Per::angler ? "for each angler" : "for everyone together");
}

std::string rule_text(const VenueBan& ban) {
    return "no " + name_of(ban.subject) + (ban.why.empty() ? "" : ": " + ban.why);
}

std::vector<PlanBreach> venue_breaches(const Venue& venue, const UnrolledStrategy& angler, int people) {
    std::vector<PlanBreach> breaches;
    for (const VenueLimit& limit : venue.limits)
        if (auto breach = breach_of(limit, angler, people)) breaches.push_back(*std::move(breach));
    for (const VenueBan& ban : venue.bans) {
        const Planned planned = planned_of(ban.subject, angler, VenueLimit::Reckoned::dry);
        if (planned.mass > Mass{})
            breaches.push_back({rule_text(ban), name_of(ban.subject), std::nullopt, double(people) * planned.mass});
    }
    return breaches;
}

}  // namespace baitwright
