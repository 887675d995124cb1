#include "store/random_entries.h"
#include "quantities/units.h"

#include <array>
#include <cmath>
#include <cstring>

#include "bait/ingredient_facts.h"
#include "bait/strategy_settings.h"
#include "quantities/plain_words.h"

namespace baitwright {

namespace {

int below(int end) {
    return *rc::gen::inRange(0, end);
}
bool any_coin() {
    return below(2) == 1;
}

std::variant<Mass, Volume> any_mass_or_volume() {
    if (any_coin()) return Mass::from_si(any_number());
    return Volume::from_si(any_number());
}

DoseRate any_rate() {
    return {static_cast<DoseBasis>(below(5)), any_mass_or_volume()};
}

PartAmount any_amount() {
    switch (below(4)) {
        case 0:
            return Mass::from_si(any_number());
        case 1:
            return Volume::from_si(any_number());
        case 2:
            return WholePacks{any_number()};
        default:
            return Share{any_number()};
    }
}

// The blanks before a source's detail are not part of it.
Source any_source() {
    std::string detail = any_text();
    detail.erase(0, detail.find_first_not_of(" \t"));
    return {static_cast<Origin>(below(6)), detail};
}

template <class Q>
Property<Q> any_property() {
    const Source source = any_source();
    if (source.origin == Origin::absent) return {};
    return {Q::from_si(any_number()), any_number(), source};
}

std::optional<Time> any_time() {
    return any_coin() ? std::optional(Time::from_si(any_number())) : std::nullopt;
}

std::optional<Date> any_day() {
    if (any_coin()) return std::nullopt;
    return parse_date("1900-01-01") + std::chrono::days(below(400000));
}

Pack any_pack() {
    constexpr std::array<std::string_view, 4> codes{"GBP", "EUR", "JPY", "KWD"};
    Pack pack{any_mass_or_volume(), std::nullopt, any_day(), any_coin() ? "" : mended_name(any_text())};
    const Currency& currency = currency_named(codes.at(static_cast<std::size_t>(below(4))));
    if (any_coin()) pack.price = Money(*rc::gen::arbitrary<std::int64_t>(), currency);
    return pack;
}

FeedRhythm any_rhythm() {
    switch (below(5)) {
        case 0:
            return AtOnce{Time::from_si(any_number())};
        case 1:
            return EveryTime{Time::from_si(any_number())};
        case 2:
            return EveryPutIn{};
        case 3:
            return WhenSlow{any_number()};
        default:
            return EveryFish{below(1000)};
    }
}

FeedSize any_size() {
    switch (below(3)) {
        case 0:
            return Mass::from_si(any_number());
        case 1:
            return Volume::from_si(any_number());
        default:
            return Length::from_si(any_number());
    }
}

/// Anything that its column holds.
struct AnySetting {
    void operator()(const SettingNames&, std::string& text) const { text = any_text(); }
    void operator()(const SettingNames&, bool& truth) const { truth = any_coin(); }
    void operator()(const SettingNames&, int& count) const { count = below(1000); }
    void operator()(const SettingNames&, double& number) const { number = any_number(); }
    void operator()(const SettingNames&, Temperature& warmth) const { warmth = Temperature::from_kelvin(any_number()); }
    template <class D>
    void operator()(const SettingNames&, Quantity<D>& quantity) const {
        quantity = Quantity<D>::from_si(any_number());
    }
    template <class Q>
    void operator()(const SettingNames& facts, std::optional<Q>& said) const {
        if (any_coin()) (*this)(facts, said.emplace());
    }
};

Feed any_feed() {
    Feed feed;
    feed.when.rhythm = any_rhythm();
    visit_feed_settings(feed, AnySetting{});
    for (int left = below(4); left > 0; --left)
        feed.parts.push_back({any_text(), any_number(), static_cast<Preparation>(below(2)), any_text()});
    feed.form = static_cast<FeedForm>(below(5));
    feed.size = any_size();
    return feed;
}

Hookbait any_hookbait() {
    Hookbait hookbait{any_text(), BitesPerHour{any_number()}};
    if (any_coin()) std::visit([&](auto either) { hookbait.amount = either; }, any_mass_or_volume());
    return hookbait;
}

}  // namespace

Ingredient ingredient_named(const std::string& name) {
    Ingredient ingredient;
    ingredient.name = name;
    return ingredient;
}

Recipe recipe_named(const std::string& name) {
    return {name, {}, {}, {}, {}, {}, {}, {}};
}

Strategy strategy_named(const std::string& name) {
    Strategy strategy;
    strategy.name = name;
    strategy.length = 5.0 * hour;
    return strategy;
}

double any_number() {
    const auto bits = *rc::gen::suchThat(rc::gen::arbitrary<std::uint64_t>(), [](std::uint64_t candidate) {
        double number = 0;
        std::memcpy(&number, &candidate, sizeof number);
        return std::isfinite(number);
    });
    double number = 0;
    std::memcpy(&number, &bits, sizeof number);
    if (any_coin()) return std::round(static_cast<double>(below(100000))) / 100;
    return number;
}

std::string any_text() {
    return *rc::gen::string<std::string>();
}

Ingredient any_ingredient(const std::string& name) {
    Ingredient i = ingredient_named(name);
    i.kind = static_cast<IngredientKind>(below(8));
    visit_properties(i, [](const auto&, auto& member) { member = any_property<decltype(member.value)>(); });
    visit_composition(i.composition, [](std::string_view, auto& member) { member = any_property<Ratio>(); });
    i.colour = any_text();
    i.solute = any_text();
    if (any_coin()) i.label_dose = any_rate();
    for (int left = below(4); left > 0; --left) i.packs.push_back(any_pack());
    i.keeps = {any_time(), any_time(), any_time()};
    for (int left = below(4); left > 0; --left) i.cautions.push_back(any_text());
    i.note = any_text();
    return i;
}

Recipe any_recipe(const std::string& name) {
    Recipe r{name, any_text(), any_text(), any_text(), any_text(), any_text(), {}, {}};
    for (int left = below(6); left > 0; --left)
        r.parts.push_back({any_text(), any_amount(), static_cast<Preparation>(below(2))});
    for (int left = below(4); left > 0; --left) r.doses.push_back({any_text(), any_rate()});
    return r;
}

Strategy any_strategy(const std::string& name) {
    Strategy s;
    s.name = name;
    visit_settings(s, AnySetting{});
    for (int left = below(5); left > 0; --left) s.feeds.push_back(any_feed());
    for (int left = below(3); left > 0; --left) s.hookbaits.push_back(any_hookbait());
    return s;
}

}  // namespace baitwright
