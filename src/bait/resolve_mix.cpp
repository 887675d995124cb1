#include "bait/resolve_mix.h"

#include <algorithm>
#include <set>

#include "bait/amount.h"
#include "bait/own_values.h"
#include "bait/raw_seed.h"
#include "bait/recipe_names.h"
#include "bait/strategy.h"
#include "bait/suggesting_shelf.h"
#include "bait/wetted_mix.h"
#include "quantities/amount_range.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// A recipe opened up at its own size: grams of everything, in the order written.
struct Opened {
    struct Solid {
        Ingredient ingredient;
        Preparation prepare;
        Mass mass;
    };
    struct Liquid {
        Ingredient ingredient;
        Mass mass;
    };
    struct DoseInto {
        Ingredient ingredient;
        DoseRate rate;
        Mass reach;
        Volume pellets;
    };
    std::vector<Solid> solids;
    std::vector<Liquid> liquids;
    std::vector<DoseInto> doses;
    Mass dry;
    bool by_share = false;
};

ResolvedMix shares_of(Opened opened);

constexpr std::size_t deepest_nesting = 8;
constexpr std::size_t most_parts = 2000;
constexpr std::size_t most_opened = 500;  // mixes in mixes in mixes grow by powers

class Opener {
public:
    explicit Opener(const Shelf& shelf) : shelf_(shelf), suggesting_(shelf) {}

    Opened open(const Recipe& recipe);
    std::vector<Fault> faults;

private:
    void open_part(const Recipe& recipe, const Part& part, const std::string& subject, Opened& into);
    void open_ingredient(const Part& part, const Ingredient& ingredient, const std::string& subject, Opened& into);
    void open_inner(const Part& part, const Recipe& inner, const std::string& subject, Opened& into);
    void open_dose(const Dose& dose, const std::string& subject, Opened& into);
    void check_measures(const Recipe& recipe);
    std::optional<Mass> mass_of(const Part& part, const Ingredient& ingredient, const std::string& subject);
    std::optional<Mass> mass_of_packs(double count, const Ingredient& ingredient, const std::string& subject);
    void add_fault(Fault fault);
    void add_fault(const std::string& subject, std::string code, std::string message, std::string hint);

    const Shelf& shelf_;
    const SuggestingShelf suggesting_;
    std::size_t opened_ = 0;          // mixes opened inside this one so far
    std::size_t parts_ = 0;           // ingredients in all of them
    std::vector<std::string> trail_;  // recipes being opened, outermost first
};

void Opener::add_fault(const std::string& subject, std::string code, std::string message, std::string hint) {
    add_fault({std::move(code), std::move(message), std::move(hint), subject});
}

void Opener::add_fault(Fault fault) {
    if (trail_.size() > 1) {
        // A fault inside a recipe that is itself a part has no place in the outer one's file: say whose it is.
        fault.message += " (in the mix '" + trail_.back() + "')";
        fault.subject.clear();
    }
    faults.push_back(std::move(fault));
}

void Opener::check_measures(const Recipe& recipe) {
    bool shares = false, measures = false;
    for (const Part& part : recipe.parts) (std::holds_alternative<Share>(part.amount) ? shares : measures) = true;
    if (shares && measures)
        add_fault("", "mixed-measures", "some parts of '" + recipe.name + "' are shares and some are measures",
                  "state every part by share, or every part by mass, volume or packs");
    if (recipe.parts.empty())
        add_fault("", "empty-mix", "the mix '" + recipe.name + "' has no parts", "add [[part]] with of = and mass =");
}

Opened Opener::open(const Recipe& recipe) {
    Opened opened;
    trail_.push_back(folded_name(recipe.name));
    check_measures(recipe);
    for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
        if (std::holds_alternative<Share>(recipe.parts[i].amount)) opened.by_share = true;
        open_part(recipe, recipe.parts[i], "part " + std::to_string(i + 1), opened);
    }
    for (const Opened::Solid& solid : opened.solids) opened.dry += solid.mass;
    for (std::size_t i = 0; i < recipe.doses.size(); ++i)
        open_dose(recipe.doses[i], "dose " + std::to_string(i + 1), opened);
    trail_.pop_back();
    return opened;
}

void Opener::open_part(const Recipe& recipe, const Part& part, const std::string& subject, Opened& into) {
    if (const auto ingredient = shelf_.find_ingredient(part.of))
        return open_ingredient(part, *ingredient, subject, into);
    const std::string inner_name = folded_name(part.of);
    if (std::find(trail_.begin(), trail_.end(), inner_name) != trail_.end()) {
        std::string round;
        for (const std::string& name : trail_) round += "'" + name + "' holds ";
        return add_fault(subject, "cycle",
                         "'" + recipe.name + "' ends up inside itself: " + round + "'" + inner_name + "'",
                         "take one of these parts out");
    }
    if (opened_ > most_opened) return;  // said once
    if (const auto inner = shelf_.find_recipe(part.of)) {
        if (++opened_ > most_opened)
            return add_fault(subject, "too-many-mixes",
                             "more than " + std::to_string(most_opened) + " mixes lie inside each other",
                             "write some of them out");
        if (trail_.size() < deepest_nesting) return open_inner(part, *inner, subject, into);
        return add_fault(subject, "too-deep",
                         "mixes lie more than " + std::to_string(deepest_nesting) + " deep inside each other",
                         "write some of them out");
    }
    add_fault(unknown_part(part.of, subject, suggesting_.after(faults.size())));
}

std::optional<Mass> Opener::mass_of_packs(double count, const Ingredient& ingredient, const std::string& subject) {
    if (ingredient.packs.empty()) {
        add_fault(subject, "no-pack", "no pack size is known for '" + ingredient.name + "'",
                  "state the part by mass or volume");
        return std::nullopt;
    }
    for (const Pack& pack : ingredient.packs)
        if (pack.size != ingredient.packs.front().size) {
            add_fault(subject, "several-packs", "'" + ingredient.name + "' comes in packs of more than one size",
                      "state the part by mass, so that it is clear how much");
            return std::nullopt;
        }
    return count * mass_of_amount(ingredient.packs.front().size, ingredient);
}

std::optional<Mass> Opener::mass_of(const Part& part, const Ingredient& ingredient, const std::string& subject) {
    if (const Mass* mass = std::get_if<Mass>(&part.amount)) return *mass;
    if (const Share* share = std::get_if<Share>(&part.amount)) return share->parts * kilogram;
    if (const WholePacks* packs = std::get_if<WholePacks>(&part.amount))
        return mass_of_packs(packs->count, ingredient, subject);
    return std::get<Volume>(part.amount) * measured_density(ingredient);
}

void Opener::open_ingredient(const Part& part, const Ingredient& ingredient, const std::string& subject, Opened& into) {
    if (is_raw_seed(ingredient))
        return add_fault(raw_seed_fault(ingredient, suggesting_.after(faults.size()), subject));
    if (part.prepare == Preparation::soaked && ingredient.kind != IngredientKind::pellet)
        return add_fault(
            subject, "unfit-preparation",
            "only pellets are soaked; '" + ingredient.name + "' is a " + std::string(name_of(ingredient.kind)),
            "take prepare = \"soaked\" out");
    if (++parts_ > most_parts) {
        if (parts_ == most_parts + 1)  // said once
            add_fault(subject, "too-many-parts",
                      "the mix has more than " + std::to_string(most_parts) + " parts in all",
                      "weigh parts of one ingredient together");
        return;
    }
    const auto mass = mass_of(part, ingredient, subject);
    if (!mass) return;
    if (!lies_in_range(*mass))
        return add_fault(
            subject, "out-of-range",
            "the amount of '" + part.of + "' must be " + (*mass > Mass{} ? range_text<Mass>() : "above zero"),
            "for example mass = \"400 g\"");
    if (ingredient.kind == IngredientKind::liquid)
        into.liquids.push_back({ingredient, *mass});
    else
        into.solids.push_back({ingredient, part.prepare, *mass});
}

void Opener::open_inner(const Part& part, const Recipe& inner, const std::string& subject, Opened& into) {
    if (part.prepare == Preparation::soaked)
        return add_fault(subject, "unfit-preparation", "a mix is not soaked", "take prepare = \"soaked\" out");
    if (std::holds_alternative<WholePacks>(part.amount))
        return add_fault(subject, "no-pack", "a mix is not sold in packs: '" + part.of + "'",
                         "state the part by mass or volume");
    const std::size_t faults_before = faults.size();
    Opened opened = open(inner);
    if (faults.size() > faults_before) return;
    if (!(opened.dry > Mass{}))
        return add_fault(subject, "no-solid", "the mix '" + part.of + "' has nothing dry in it",
                         "give it a solid part");
    Mass wanted;
    if (const Mass* mass = std::get_if<Mass>(&part.amount)) wanted = *mass;
    if (const Share* share = std::get_if<Share>(&part.amount)) wanted = share->parts * kilogram;
    if (const Volume* volume = std::get_if<Volume>(&part.amount))
        wanted = *volume / dry_volume(numbers_of(shares_of(opened)));
    const double scale = wanted / opened.dry;
    for (Opened::Solid& solid : opened.solids)
        into.solids.push_back({std::move(solid.ingredient), solid.prepare, scale * solid.mass});
    for (Opened::Liquid& liquid : opened.liquids)
        into.liquids.push_back({std::move(liquid.ingredient), scale * liquid.mass});
    for (Opened::DoseInto& dose : opened.doses)
        into.doses.push_back({std::move(dose.ingredient), dose.rate, scale * dose.reach, scale * dose.pellets});
}

void Opener::open_dose(const Dose& dose, const std::string& subject, Opened& into) {
    const auto ingredient = shelf_.find_ingredient(dose.of);
    if (!ingredient) return add_fault(unknown_additive(dose.of, subject, suggesting_.after(faults.size())));
    if (is_raw_seed(*ingredient))
        return add_fault(raw_seed_fault(*ingredient, suggesting_.after(faults.size()), subject));
    Volume pellets;
    for (const Opened::Solid& solid : into.solids)
        if (solid.ingredient.kind == IngredientKind::pellet)
            pellets += solid.mass / solid.ingredient.loose_density.value;
    if (dose.rate.basis == DoseBasis::per_pint_pellets && !(pellets > Volume{}))
        return add_fault(subject, "no-pellets",
                         "'" + dose.of + "' is dosed by the pint of pellets, but the mix has no pellets",
                         "dose it per kg dry");
    into.doses.push_back({*ingredient, dose.rate, into.dry, pellets});
}

ResolvedMix shares_of(Opened opened) {
    ResolvedMix mix;
    if (!opened.by_share) mix.as_written = opened.dry;
    for (Opened::Solid& solid : opened.solids) {
        const Ratio share = solid.mass / opened.dry;
        const auto same = std::find_if(mix.solids.begin(), mix.solids.end(), [&](const SolidPart& part) {
            return part.ingredient.name == solid.ingredient.name && part.prepare == solid.prepare;
        });
        if (same != mix.solids.end())
            same->share = same->share + share;
        else
            mix.solids.push_back({std::move(solid.ingredient), solid.prepare, share});
    }
    for (Opened::Liquid& liquid : opened.liquids)
        mix.liquids.push_back({std::move(liquid.ingredient), liquid.mass / opened.dry});
    for (Opened::DoseInto& dose : opened.doses)
        mix.doses.push_back(
            {std::move(dose.ingredient), dose.rate, dose.reach / opened.dry, dose.pellets / opened.dry});
    return mix;
}

/// Doses by wet mass weigh into what they are dosed by: near the whole of it there is no mix left.
void check_doses_by_wet_mass(const ResolvedMix& mix) {
    constexpr double most = 0.5;
    double by_wet = 0;
    for (const AdditiveNumbers& additive : numbers_of(mix).additives) by_wet += additive.by_wet;
    if (by_wet > most)
        throw InputError("out-of-range", "the doses per kg wet come to more than half of the wet mix",
                         "check them: grams, not kilograms; or state the additive as a part");
}

}  // namespace

ResolvedMix resolve(const Recipe& recipe, const Shelf& shelf) {
    Opener opener(shelf);
    Opened opened = opener.open(recipe);
    const std::string feel_name = recipe.feel.empty() ? "firm" : recipe.feel;
    const std::vector<Feel> feels = shelf.feels();
    const Feel* feel = find_feel(feels, feel_name);
    if (!feel) opener.faults.push_back(unknown_feel(feel_name, shelf));
    if (opener.faults.empty() && !(opened.dry > Mass{}))
        opener.faults.push_back(
            {"no-solid", "the mix '" + recipe.name + "' has nothing dry in it", "give it a part that is not a liquid"});
    if (!opener.faults.empty()) throw InputError(std::move(opener.faults));
    ResolvedMix mix = shares_of(std::move(opened));
    check_doses_by_wet_mass(mix);
    heed_own_values(mix, shelf);
    mix.name = recipe.name;
    mix.learnt_mix = shelf.learnt_mix(recipe.name);
    mix.feel = *feel;
    return mix;
}

}  // namespace baitwright
