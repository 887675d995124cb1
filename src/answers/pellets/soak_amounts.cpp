#include "answers/pellets/soak_amounts.h"

#include "bait/amount.h"
#include "bait/free_offerings.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

double grains_per_gram(const Ingredient& pellet) {
    return free_offerings_in(pellet, 1.0 * gram);
}

/// The dry mass that a pellet's share of the total comes to.
struct ShareOfTotal {
    const Ingredient& pellet;
    const Ingredient* as_many;
    double share;

    Mass of_count(double count) const { return share * count / grains_per_gram(pellet) * gram; }

    Mass operator()(std::monostate) const {
        throw UsageError("no-amount", "how much of " + pellet.name + "?",
                         "say it with --amount 1pt, or of each: \"" + pellet.name + "=500g\"");
    }
    Mass operator()(Mass mass) const { return share * mass; }
    Mass operator()(Volume volume) const { return share * volume * measured_density(pellet); }
    Mass operator()(const BitesPlanned& bites) const {
        return of_count(pellets_per_bite * bites.per_hour * bites.length.in(hour));
    }
    Mass operator()(const AsManyAs& other) const {
        return of_count(free_offerings_in(*as_many, mass_of_amount(other.amount, *as_many)));
    }
};

void check_amount(const Ingredient& pellet, Mass dry) {
    constexpr Mass least = 0.5 * gram, most = 10000.0 * kilogram;
    if (!(dry >= least && dry <= most))
        throw UsageError("out-of-range", "the amount of " + pellet.name + " must be from half a gram to 10 t",
                         "check the unit: g, kg, ml, l, pt");
}

}  // namespace

std::vector<Mass> soak_amounts(const SoakRequest& request, const std::vector<Ingredient>& pellets,
                               const Ingredient* as_many) {
    if (!(request.spare >= 0 && request.spare <= 5))
        throw UsageError("out-of-range", "the spare must be from 0 to 500 %", "for example --spare 10%");
    double parts = 0;
    for (const SoakItem& item : request.items)
        if (!item.amount) parts += item.parts;
    if (parts == 0 && !std::holds_alternative<std::monostate>(request.total))
        throw UsageError("two-amounts", "every pellet has its own amount, and there is an amount for all beside them",
                         "leave one of them out");
    std::vector<Mass> amounts;
    for (std::size_t i = 0; i < pellets.size(); ++i) {
        const SoakItem& item = request.items[i];
        const Mass dry = item.amount ? mass_of_amount(*item.amount, pellets[i])
                                     : std::visit(ShareOfTotal{pellets[i], as_many, item.parts / parts}, request.total);
        amounts.push_back((1 + request.spare) * dry);
        check_amount(pellets[i], amounts.back());
    }
    return amounts;
}

}  // namespace baitwright
