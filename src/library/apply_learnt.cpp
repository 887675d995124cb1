#include "library/apply_learnt.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <map>
#include <set>

#include "files/library_file.h"
#include "files/library_text.h"
#include "library/before_learning.h"
#include "library/change_library.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr double tightest_learnt = 0.95;  // A of B, where B was measured and A is learnt

std::string so_many(int count, const char* one, const char* several) {
    return std::to_string(count) + " " + (count == 1 ? one : several);
}

template <class Q>
bool measured_by_person(const Property<Q>& property) {
    return property.source.origin == Origin::measured;
}

template <class Q>
void write_learnt(Property<Q>& property, Q value, double sigma, const std::string& from) {
    if (measured_by_person(property)) return;
    property = {value, std::sqrt(std::expm1(sigma * sigma)), {Origin::learned, from}};
}

void write_marks(Ingredient& ingredient, const LearntWater& water, std::size_t place) {
    const LearntWater::Bag& bag = water.bags[place];
    const auto sigma = [&](std::size_t row) { return std::sqrt(water.covariance(row, row)); };
    const std::string from = so_many(bag.mixes, "mix", "mixes");
    Ratio absorption = std::exp(bag.log_absorption);
    if (measured_by_person(ingredient.slump))
        absorption = std::min(double(absorption), tightest_learnt * ingredient.slump.value);
    write_learnt(ingredient.absorption, absorption, sigma(LearntWater::absorption(place)), from);
    write_learnt(ingredient.slump, Ratio(ingredient.absorption.value + std::exp(bag.log_gap)),
                 sigma(LearntWater::gap(place)), from);
}

void write_property(Ingredient& ingredient, const Learnt& learnt) {
    const double value = *learnt.value;
    const auto soaks = [&] { return so_many(learnt.times, "soak", "soaks"); };
    if (learnt.property == Learnt::Property::diffusivity)
        write_learnt(ingredient.diffusivity, Diffusivity::from_si(value), learnt.sd, soaks());
    if (learnt.property == Learnt::Property::capacity)
        write_learnt(ingredient.capacity, Ratio(value), learnt.sd, soaks());
    if (learnt.property == Learnt::Property::loose_weight)
        write_learnt(ingredient.loose_density, Density::from_si(value), learnt.sd,
                     so_many(learnt.times, "weighing", "weighings"));
}

using Taught = std::map<std::string, std::set<Learnt::Property>>;  // by folded name

/// What the log ever said something of, with what was taken back since: it erases nothing.
Taught taught_once(const Store& store) {
    using P = Learnt::Property;
    Taught taught;
    for (const LogEntry& entry : store.log().all_entries()) {
        if (const auto* mix = std::get_if<LoggedMix>(&entry.what))
            for (const WeighedPart& part : mix->parts) taught[folded_name(part.of)].insert(P::absorption);
        if (const auto* soak = std::get_if<LoggedSoak>(&entry.what))
            taught[folded_name(soak->of)].insert({P::diffusivity, P::capacity});
        if (const auto* weight = std::get_if<LoggedWeight>(&entry.what))
            taught[folded_name(weight->of)].insert(P::loose_weight);
    }
    return taught;
}

/// What it says something of now.
Taught taught_now(const LearnAnswer& answer) {
    Taught taught;
    for (const LearntWater::Bag& bag : answer.water.bags)
        if (bag.mixes > 0) taught[folded_name(bag.name)].insert(Learnt::Property::absorption);
    for (const Learnt& learnt : answer.posterior)
        if (learnt.value && learnt.times > 0) taught[folded_name(learnt.name)].insert(learnt.property);
    return taught;
}

/// A value that was learnt from what the log says no more, as it stood before.
template <class Q>
void put_back_stale(Ingredient& ingredient, Property<Q> Ingredient::*property, const Store& store) {
    if ((ingredient.*property).source.origin != Origin::learned) return;
    const BeforeLearning before(store, ingredient.name);
    if (auto value = before.value(property)) ingredient.*property = *std::move(value);
}

void put_back_stale(Ingredient& ingredient, Learnt::Property property, const Store& store) {
    using P = Learnt::Property;
    if (property == P::absorption) {
        put_back_stale(ingredient, &Ingredient::absorption, store);
        put_back_stale(ingredient, &Ingredient::slump, store);
    }
    if (property == P::diffusivity) put_back_stale(ingredient, &Ingredient::diffusivity, store);
    if (property == P::capacity) put_back_stale(ingredient, &Ingredient::capacity, store);
    if (property == P::loose_weight) put_back_stale(ingredient, &Ingredient::loose_density, store);
}

/// The ingredients of the shelf that something was learnt of, each once, to be written into.
class LearntIngredients {
public:
    explicit LearntIngredients(const Store& store) : store_(store) {}

    Ingredient* find(const std::string& name) {
        for (Ingredient& one : found_)
            if (folded_name(one.name) == folded_name(name)) return &one;
        auto known = store_.find_ingredient(name);
        return known ? &found_.emplace_back(*std::move(known)) : nullptr;
    }
    [[nodiscard]] std::vector<Ingredient> changed(std::vector<LearntWrite>& written) const {
        std::vector<Ingredient> changed;
        for (const Ingredient& one : found_) {
            const std::string before = toml_text({*store_.find_ingredient(one.name)}), after = toml_text({one});
            if (before == after) continue;
            written.push_back({one.name, before, after});
            changed.push_back(one);
        }
        return changed;
    }

private:
    const Store& store_;
    std::deque<Ingredient> found_;
};

void put_back_what_is_taught_no_more(const Store& store, const LearnAnswer& answer, LearntIngredients& ingredients) {
    Taught now = taught_now(answer);
    for (const auto& [name, properties] : taught_once(store))
        for (const Learnt::Property property : properties)
            if (now[name].count(property) == 0)
                if (Ingredient* entry = ingredients.find(name)) put_back_stale(*entry, property, store);
}

/// What was learnt, with what the person has measured of its bags: that is in it.
LearntWater with_measured(LearntWater water, const Store& store) {
    for (LearntWater::Bag& bag : water.bags) {
        const auto ingredient = store.find_ingredient(bag.name);
        if (!ingredient) continue;
        if (measured_by_person(ingredient->absorption)) bag.measured_absorption = ingredient->absorption.value;
        if (measured_by_person(ingredient->slump)) bag.measured_slump = ingredient->slump.value;
    }
    return water;
}

/// The mixes of which something else is learnt than was, one way or the other.
std::vector<std::string> changed_mixes(const std::vector<LearntMix>& was, const std::vector<LearntMix>& is) {
    std::vector<std::string> names;
    for (const LearntMix& mix : is)
        if (std::find(was.begin(), was.end(), mix) == was.end()) names.push_back(mix.name);
    for (const LearntMix& mix : was)
        if (std::none_of(is.begin(), is.end(), [&](const LearntMix& one) { return one.name == mix.name; }))
            names.push_back(mix.name);
    return names;
}

std::vector<std::string> put_changed(Store& store, std::vector<Ingredient> changed, Date today) {
    std::vector<std::string> names;
    names.reserve(changed.size());
    for (const Ingredient& one : changed) names.push_back(one.name);
    LibraryFile file;
    file.ingredients = std::move(changed);
    put_checked(store, file, today);
    return names;
}

Ingredient ingredient_in(const std::string& text) {
    LibraryFile file = read_library_file(text, {});
    if (file.ingredients.size() != 1) throw InputError(std::move(file.faults));
    return std::move(file.ingredients.front());
}

/// The same but for the digits that a file keeps; what is not stated is the same whatever is derived for it.
template <class Q>
bool same_value(const Property<Q>& a, const Property<Q>& b) {
    if (!a.stated() || !b.stated()) return !a.stated() && !b.stated();
    return a.source.origin == b.source.origin && a.source.detail == b.source.detail &&
           std::abs(a.value / b.value - 1) < 1e-6;
}

/// Where the value is still the one that was written, the one before it.
template <class Q>
bool put_back(Property<Q>& now, const Property<Q>& written, const Property<Q>& before) {
    const bool was_learnt = written.source.origin == Origin::learned || before.source.origin == Origin::learned;
    const bool is_other = before.source.origin != written.source.origin ||
                          before.source.detail != written.source.detail || !(before.value == written.value);
    if (!was_learnt || !is_other || !same_value(now, written)) return false;
    now = before.stated() ? before : Property<Q>{};
    return true;
}

bool put_back_all(Ingredient& now, const Ingredient& written, const Ingredient& before) {
    bool any = put_back(now.absorption, written.absorption, before.absorption);
    any = put_back(now.slump, written.slump, before.slump) || any;
    any = put_back(now.diffusivity, written.diffusivity, before.diffusivity) || any;
    any = put_back(now.capacity, written.capacity, before.capacity) || any;
    return put_back(now.loose_density, written.loose_density, before.loose_density) || any;
}

/// Writes these, and keeps what stood before them; nothing where nothing changes. Inside a change only.
LearntApplied write_learnt_values(Store& store, const LearntIngredients& ingredients, const LearntWater& water,
                                  const std::vector<LearntMix>& mixes, Date today) {
    LearntApplied applied;
    std::vector<LearntWrite> written;
    std::vector<Ingredient> changed = ingredients.changed(written);
    applied.water = store.log().learnt_water() != water;
    applied.mixes = changed_mixes(store.log().learnt_mixes(), mixes);
    if (!applied.anything() && changed.empty()) return applied;
    store.log().keep_learnt_before(written);
    applied.ingredients = put_changed(store, std::move(changed), today);
    store.log().put_learnt(water, mixes);
    return applied;
}

}  // namespace

LearntApplied apply_learnt(Store& store, const LearnAnswer& answer, Date today) {
    LearntApplied applied;
    store.change([&] {
        LearntIngredients ingredients(store);
        for (std::size_t i = 0; i < answer.water.bags.size(); ++i)
            if (answer.water.bags[i].mixes > 0)
                if (Ingredient* entry = ingredients.find(answer.water.bags[i].name))
                    write_marks(*entry, answer.water, i);
        for (const Learnt& learnt : answer.posterior)
            if (learnt.value && learnt.times > 0)
                if (Ingredient* entry = ingredients.find(learnt.name)) write_property(*entry, learnt);
        put_back_what_is_taught_no_more(store, answer, ingredients);
        applied =
            write_learnt_values(store, ingredients, with_measured(answer.water, store), answer.learnt_mixes, today);
    });
    return applied;
}

bool stands_already(const Store& store, const LearnAnswer& answer) {
    for (const Learnt& learnt : answer.posterior) {
        if (!learnt.value || learnt.times == 0) continue;
        auto entry = store.find_ingredient(learnt.name);
        if (!entry) continue;
        const std::string before = toml_text({*entry});
        write_property(*entry, learnt);
        if (toml_text({*entry}) != before) return false;
    }
    return store.log().learnt_water() == with_measured(answer.water, store) &&
           changed_mixes(store.log().learnt_mixes(), answer.learnt_mixes).empty();
}

LearntApplied forget_learnt(Store& store, Date today) {
    using P = Learnt::Property;
    LearntApplied forgotten;
    store.change([&] {
        LearntIngredients ingredients(store);
        for (const std::string& name : store.ingredient_names())
            for (const P property : {P::absorption, P::diffusivity, P::capacity, P::loose_weight})
                put_back_stale(*ingredients.find(name), property, store);
        forgotten = write_learnt_values(store, ingredients, {}, {}, today);
    });
    if (!forgotten.anything())
        throw NotFound("nothing-to-undo",
                       "your answers go by the library already, nothing is kept of what your log says",
                       "see what your log teaches with: baitwright learn");
    return forgotten;
}

LearntApplied undo_learnt(Store& store, Date today) {
    LearntApplied undone;
    store.change([&] {
        if (!store.log().can_restore_learnt())
            throw NotFound("nothing-to-undo", "nothing is kept of what your log says that could be taken back",
                           "see what your log teaches with: baitwright learn");
        std::vector<Ingredient> changed;
        for (const LearntWrite& entry : store.log().learnt_written()) {
            auto now = store.find_ingredient(entry.name);
            if (now && put_back_all(*now, ingredient_in(entry.after), ingredient_in(entry.before)))
                changed.push_back(*std::move(now));
        }
        undone.ingredients = put_changed(store, std::move(changed), today);
        const LearntWater water = store.log().learnt_water();
        const std::vector<LearntMix> mixes = store.log().learnt_mixes();
        store.log().restore_learnt();
        undone.water = store.log().learnt_water() != water;
        undone.mixes = changed_mixes(mixes, store.log().learnt_mixes());
    });
    return undone;
}

}  // namespace baitwright
