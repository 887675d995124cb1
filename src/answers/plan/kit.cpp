#include "answers/plan/kit.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double well_filled = 2.0 / 3;
/// A ball in a cup as deep and as wide as itself.
constexpr double cup_over_ball = 1.5;
constexpr double rounding = 1 + 1e-6;

struct KitWord {
    std::string_view word;
    KitItem::Kind kind;
};
constexpr std::array kit_words{KitWord{"cup", KitItem::Kind::cup}, KitWord{"pot", KitItem::Kind::pot},
                               KitWord{"toss pot", KitItem::Kind::pot}, KitWord{"feeder", KitItem::Kind::feeder},
                               KitWord{"tub", KitItem::Kind::tub}};

std::string_view word_of(KitItem::Kind kind) {
    for (const KitWord& one : kit_words)
        if (one.kind == kind) return one.word;
    return {};
}

KitItem::Kind kind_of(std::string_view word, std::string_view whole) {
    const std::string folded = folded_name(word);
    std::vector<std::string> words;
    for (const KitWord& one : kit_words) {
        if (one.word == folded) return one.kind;
        words.emplace_back(one.word);
    }
    const std::string near = folded.empty() ? "" : did_you_mean(folded, words);
    throw InputError(
        "unknown-kit", in_quotes(whole) + " is not kit known here",
        near.empty() ? R"(a cup, a pot, a feeder or a tub with its size, as in "cup 250" or "tub 12 l")" : near);
}

Volume size_of(std::string_view size, std::string_view whole) {
    std::string_view rest = size;
    const auto number = take_number(rest);
    if (!number)
        throw InputError("no-size", in_quotes(whole) + " does not say what it holds",
                         R"(write it as in "cup 250" or "tub 12 l")");
    const Volume volume = folded_name(rest).empty() ? *number * millilitre : parse<Volume>(size);
    if (volume >= 1.0 * millilitre && volume <= 200.0 * litre) return volume;
    throw InputError("out-of-range", "what holds bait holds from 1 ml to 200 l, not " + in_quotes(size),
                     R"(write it as in "cup 250" or "tub 12 l")");
}

std::optional<KitItem::Kind> carrier_of(FeedForm form) {
    switch (form) {
        case FeedForm::cup:
            return KitItem::Kind::cup;
        case FeedForm::pot:
            return KitItem::Kind::pot;
        case FeedForm::feeder:
            return KitItem::Kind::feeder;
        default:
            return std::nullopt;
    }
}

/// Of the kind, by size.
std::vector<const KitItem*> sorted_items(const std::vector<KitItem>& kit, KitItem::Kind kind) {
    std::vector<const KitItem*> found;
    for (const KitItem& item : kit)
        if (item.kind == kind) found.push_back(&item);
    sort_stably(found.begin(), found.end(), [](const KitItem* a, const KitItem* b) { return a->size < b->size; });
    return found;
}

const KitItem* smallest_that_holds(const std::vector<const KitItem*>& items, Volume volume) {
    for (const KitItem* item : items)
        if (item->size * rounding >= volume) return item;
    return nullptr;
}

std::string millilitres(Volume volume) {
    return number_text_within(volume.in(millilitre), 0.5) + " ml";
}

/// Fills of the largest for each cup or pot, and what to say of it.
Warning carry_by_largest(const KitItem& largest, PlannedFeed& put_in) {
    const int each = static_cast<int>(std::ceil(put_in.each_volume / largest.size / rounding));
    put_in.with = largest.name;
    put_in.fills = put_in.count * each;
    return {"kit-too-small", "a " + std::string(name_of(put_in.form)) + " of " + put_in.name + " is about " +
                                 millilitres(put_in.each_volume) + ", more than your " + largest.name +
                                 " holds: fill it " + std::to_string(each) + " times for each"};
}

/// Gives each put-in what carries it; says once what the kit lacks.
class Carriers {
public:
    explicit Carriers(const std::vector<KitItem>& kit) : kit_(kit), cups_(sorted_items(kit, KitItem::Kind::cup)) {}

    void carry(PlannedFeed& put_in) {
        const auto kind = carrier_of(put_in.form);
        put_in.fills = put_in.count;
        put_in.with = kind ? std::string(word_of(*kind)) : "hand";
        if (kit_.empty()) return;
        if (kind)
            carry_by(*kind, put_in);
        else if (put_in.form == FeedForm::ball)
            if (const KitItem* cup = smallest_that_holds(cups_, cup_over_ball * put_in.each_volume))
                put_in.with = cup->name;
    }
    [[nodiscard]] std::vector<Warning> found() && { return std::move(found_); }

private:
    void carry_by(KitItem::Kind kind, PlannedFeed& put_in) {
        const std::vector<const KitItem*> items = sorted_items(kit_, kind);
        if (items.empty())
            tell({"kit-lacks",
                  "the kit has no " + std::string(word_of(kind)) + ", and " + put_in.name + " goes in by the " +
                      std::string(word_of(kind)),
                  true});
        else if (const KitItem* item = smallest_that_holds(items, put_in.each_volume))
            put_in.with = item->name;
        else
            tell(carry_by_largest(*items.back(), put_in));
    }
    void tell(Warning warning) {
        if (said_.insert(warning.message).second) found_.push_back(std::move(warning));
    }

    const std::vector<KitItem>& kit_;
    std::vector<const KitItem*> cups_;
    std::vector<Warning> found_;
    std::set<std::string> said_;
};

}  // namespace

KitItem parse_kit(std::string_view text) {
    const auto digit =
        std::find_if(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || c == '.'; });
    const auto at = static_cast<std::size_t>(digit - text.begin());
    KitItem item;
    item.kind = kind_of(text.substr(0, at), text);
    item.size = size_of(text.substr(at), text);
    item.name = folded_name(text);
    return item;
}

std::vector<Warning> check_kit(const std::vector<KitItem>& kit, std::vector<PlannedFeed>& put_ins,
                               std::vector<PlannedSlowFeed>& slow) {
    Carriers carriers(kit);
    for (PlannedFeed& put_in : put_ins) carriers.carry(put_in);
    for (PlannedSlowFeed& one_slow : slow) carriers.carry(one_slow.each);
    return std::move(carriers).found();
}

std::optional<Warning> check_tubs(const std::vector<KitItem>& kit, Volume riddled) {
    Volume room;
    for (const KitItem& item : kit)
        if (item.kind == KitItem::Kind::tub) room += item.size;
    if (!(room > Volume{}) || well_filled * room >= riddled) return std::nullopt;
    return Warning{"kit-too-small", "the tubs hold " + number_text_within((well_filled * room).in(litre), 0.05) +
                                        " l filled to two thirds, and the wet mix is about " +
                                        number_text_within(riddled.in(litre), 0.05) + " l: wet it in two goes"};
}

}  // namespace baitwright
