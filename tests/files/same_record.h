#pragma once

#include <cmath>
#include <string>

#include "bait/each_setting.h"
#include "bait/ingredient_facts.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

/// Compares records field by field; numbers may differ by what text can hold of them (1e-12 relative).
namespace baitwright {

inline bool near_to(double a, double b) {
    return std::abs(a - b) <= 1e-12 * std::abs(a);
}

template <class Q>
bool same(const Property<Q>& a, const Property<Q>& b) {
    if (!a.stated() || !b.stated()) return a.stated() == b.stated();
    return near_to(a.value.si(), b.value.si()) && near_to(a.spread, b.spread) &&
           source_text(a.source) == source_text(b.source);
}

inline bool same(const std::variant<Mass, Volume>& a, const std::variant<Mass, Volume>& b) {
    const auto si = [](const auto& amount) { return std::visit([](auto q) { return q.si(); }, amount); };
    return a.index() == b.index() && near_to(si(a), si(b));
}

inline bool same(const DoseRate& a, const DoseRate& b) {
    return a.basis == b.basis && same(a.each, b.each);
}

inline bool same(const std::optional<Time>& a, const std::optional<Time>& b) {
    return a.has_value() == b.has_value() && (!a || near_to(a->si(), b->si()));
}

inline bool same(const Pack& a, const Pack& b) {
    return same(a.size, b.size) && a.price == b.price && a.on == b.on && a.shop == b.shop;
}

inline bool same(const PartAmount& a, const PartAmount& b) {
    struct Number {
        double operator()(Mass mass) const { return mass.si(); }
        double operator()(Volume volume) const { return volume.si(); }
        double operator()(WholePacks packs) const { return packs.count; }
        double operator()(Share share) const { return share.parts; }
    };
    return a.index() == b.index() && near_to(std::visit(Number{}, a), std::visit(Number{}, b));
}

/// The key of the first field in which they differ; empty where they are the same.
inline std::string first_difference(const Ingredient& a, const Ingredient& b) {
    std::string different;
    const auto compare = [&](bool equal, std::string_view key) {
        if (!equal && different.empty()) different = key;
    };
    const auto key_values = [](const Ingredient& ingredient, auto&& take) { visit_properties(ingredient, take); };
    key_values(a, [&](const auto& facts, const auto& property) {
        key_values(b, [&](const auto& other_facts, const auto& other) {
            if constexpr (std::is_same_v<decltype(property), decltype(other)>)
                if (facts.key == other_facts.key) compare(same(property, other), facts.key);
        });
    });
    visit_composition(a.composition, [&](std::string_view key, const auto& share) {
        visit_composition(b.composition, [&](std::string_view other_key, const auto& other) {
            if (key == other_key) compare(same(share, other), key);
        });
    });
    compare(a.name == b.name, "name");
    compare(a.kind == b.kind, "kind");
    compare(a.colour == b.colour, "colour");
    compare(a.solute == b.solute, "solute");
    compare(a.label_dose.has_value() == b.label_dose.has_value(), "label_dose");
    if (a.label_dose && b.label_dose) compare(same(*a.label_dose, *b.label_dose), "label_dose");
    compare(a.packs.size() == b.packs.size(), "pack");
    for (std::size_t i = 0; i < a.packs.size() && i < b.packs.size(); ++i)
        compare(same(a.packs[i], b.packs[i]), "pack");
    compare(same(a.keeps.dry, b.keeps.dry) && same(a.keeps.cold, b.keeps.cold) && same(a.keeps.frozen, b.keeps.frozen),
            "keeps");
    compare(a.cautions == b.cautions, "cautions");
    compare(a.note == b.note, "note");
    return different;
}

/// The key of the first setting in which they differ; empty where they are the same.
inline std::string first_difference(const std::vector<StatedSetting>& a, const std::vector<StatedSetting>& b) {
    for (std::size_t i = 0; i < a.size(); ++i)
        if (a[i].text != b[i].text || a[i].number.has_value() != b[i].number.has_value() ||
            (a[i].number && !near_to(*a[i].number, *b[i].number)))
            return a[i].key;
    return {};
}

/// The number that an alternative of a strategy holds.
struct StrategyNumber {
    double operator()(AtOnce once) const { return once.at.si(); }
    double operator()(EveryTime every) const { return every.gap.si(); }
    double operator()(EveryPutIn) const { return 0; }
    double operator()(EveryFish every) const { return every.fish; }
    double operator()(WhenSlow slow) const { return slow.times; }
    double operator()(Mass mass) const { return mass.si(); }
    double operator()(Volume volume) const { return volume.si(); }
    double operator()(Length length) const { return length.si(); }
    double operator()(BitesPerHour bites) const { return bites.bites; }
};

template <class Variant>
bool same_alternative(const Variant& a, const Variant& b) {
    return a.index() == b.index() && near_to(std::visit(StrategyNumber{}, a), std::visit(StrategyNumber{}, b));
}

inline bool same(const Feed& a, const Feed& b) {
    if (!same_alternative(a.when.rhythm, b.when.rhythm) || a.form != b.form || !same_alternative(a.size, b.size) ||
        !first_difference(settings_of(a), settings_of(b)).empty())
        return false;
    if (a.parts.size() != b.parts.size()) return false;
    for (std::size_t i = 0; i < a.parts.size(); ++i)
        if (a.parts[i].of != b.parts[i].of || a.parts[i].prepare != b.parts[i].prepare ||
            a.parts[i].feel != b.parts[i].feel || !near_to(a.parts[i].share, b.parts[i].share))
            return false;
    return true;
}

inline std::string first_difference(const Strategy& a, const Strategy& b) {
    if (a.name != b.name) return "name";
    if (const std::string key = first_difference(settings_of(a), settings_of(b)); !key.empty()) return key;
    if (a.feeds.size() != b.feeds.size()) return "feed";
    for (std::size_t i = 0; i < a.feeds.size(); ++i)
        if (!same(a.feeds[i], b.feeds[i])) return "feed";
    if (a.hookbaits.size() != b.hookbaits.size()) return "hookbait";
    for (std::size_t i = 0; i < a.hookbaits.size(); ++i)
        if (a.hookbaits[i].of != b.hookbaits[i].of || !same_alternative(a.hookbaits[i].amount, b.hookbaits[i].amount))
            return "hookbait";
    return {};
}

inline std::string first_difference(const Recipe& a, const Recipe& b) {
    if (a.name != b.name) return "name";
    if (a.feel != b.feel) return "feel";
    if (a.purpose != b.purpose || a.avoid != b.avoid || a.why != b.why || a.note != b.note) return "prose";
    if (a.parts.size() != b.parts.size()) return "part";
    for (std::size_t i = 0; i < a.parts.size(); ++i) {
        const Part &mine = a.parts[i], &other = b.parts[i];
        if (mine.of != other.of || mine.prepare != other.prepare || !same(mine.amount, other.amount)) return "part";
    }
    if (a.doses.size() != b.doses.size()) return "dose";
    for (std::size_t i = 0; i < a.doses.size(); ++i)
        if (a.doses[i].of != b.doses[i].of || !same(a.doses[i].rate, b.doses[i].rate)) return "dose";
    return {};
}

}  // namespace baitwright
