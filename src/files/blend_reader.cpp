#include "files/blend_reader.h"

#include <algorithm>
#include <set>

#include "files/value_reader.h"
#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// "£1.40 per kg"
Money parse_price_per_kilogram(std::string_view text) {
    const std::string_view whole = trimmed(text);
    const auto per = whole.find(" per ");
    if (per != std::string_view::npos && trimmed(whole.substr(per + 5)) != "kg")
        throw InputError("bad-unit", in_quotes(text) + " is not a price per kg", "as in \u00a31.40 per kg");
    if (per == std::string_view::npos)
        throw InputError("no-unit", in_quotes(text) + " does not say for how much", "as in \u00a31.40 per kg");
    return in_range(parse_money(whole.substr(0, per)));
}

/// One end of a limit on a property, in the unit of its facts.
std::optional<double> property_bound(TableReader& table, std::string_view key, const MixPropertyFacts& facts,
                                     std::string& currency) {
    const auto read = [&](auto&& parse_text) { return parsed(table, key, facts.example, parse_text); };
    std::optional<double> bound;
    if (facts.property == MixProperty::price) {
        if (const auto price = read(parse_price_per_kilogram)) {
            bound = static_cast<double>(price->minor());
            currency = price->currency().code;
        }
    } else if (facts.property == MixProperty::loose_density) {
        if (const auto density = read(parse<Density>)) bound = density->in(gram_per_litre);
    } else if (facts.symbol.empty()) {
        return table.number(key, facts.lowest, facts.highest);
    } else if (const auto ratio = read(parse<Ratio>)) {
        bound = facts.symbol == "%" ? ratio->in(percent) : double(*ratio);
    }
    if (!bound || (*bound >= facts.lowest && *bound <= facts.highest)) return bound;
    table.faults().add(table.place_of_value(key), "out-of-range",
                       in_quotes(key) + " of " + std::string(facts.name) + " must be from " +
                           number_text(facts.lowest) + " to " + number_text(facts.highest) + " " +
                           std::string(facts.symbol),
                       "write a bound in that range, or take it out");
    return std::nullopt;
}

std::optional<double> share_bound(TableReader& table, std::string_view key) {
    const auto share = parsed(table, key, "40 %", parse<Ratio>);
    if (!share || (*share >= 0 && *share <= 1)) return share ? std::optional<double>(*share) : std::nullopt;
    table.faults().add(table.place_of_value(key), "out-of-range", in_quotes(key) + " must be a share from 0 to 100 %",
                       R"(write it as in "40 %")");
    return std::nullopt;
}

template <class Bound>
Limits read_limits(TableReader& table, Bound&& bound) {
    Limits limits{bound("min"), bound("max")};
    if (limits.least && limits.most && *limits.least > *limits.most)
        table.faults().add(table.place_of_value("min"), "crossed-limits",
                           "'min' is above 'max', so nothing fits between", "swap them, or take one out");
    return limits;
}

void require_a_limit(const TableReader& table) {
    if (table.has("min") || table.has("max")) return;
    table.faults().add(table.place(), "missing-value", "the limit says neither 'min' nor 'max'",
                       "add a line such as min = \"20 %\"");
}

/// Reads one blend's blocks.
class BlendReader {
public:
    BlendReader(TableReader& table, Entry<BlendSpec>& entry) : table_(table), entry_(entry) {}

    void read(EntryNames& names) {
        BlendSpec& spec = entry_.value;
        spec.name = names.claim(table_).value_or("");
        entry_.places["name"] = table_.place_of_value("name");
        if (table_.has("feel")) spec.feel = table_.name("feel").value_or("");
        entry_.places["feel"] = table_.place_of_value("feel");
        spec.note = table_.prose("note");
        if (table_.word("goal", {"cost per kg", "cost per litre"}).value_or("") == "cost per litre")
            spec.goal = BlendGoal::per_litre;
        spec.batch = amount_of<Mass>(table_, "batch", "25 kg");
        read_candidates();
        table_.each_block("limit", "a limit", [&](TableReader& limit) { read_limit(limit); });
        table_.refuse_unknown_keys();
    }

private:
    void read_candidates() {
        table_.each_block("candidate", "a candidate", [&](TableReader& candidate) { read_candidate(candidate); });
        if (entry_.value.candidates.empty())
            table_.faults().add(table_.has("candidate") ? table_.place_of_key("candidate") : table_.place(),
                                "missing-value", "the blend has nothing to be made of",
                                "add a [[candidate]] with of = \"...\" for each ingredient that it may hold");
    }

    void read_candidate(TableReader& table) {
        BlendCandidate candidate;
        if (const auto of = table.name("of")) {
            candidate.of = *of;
            if (!names_.insert(folded_name(*of)).second)
                table.faults().add(table.place_of_value("of"), "duplicate-name",
                                   in_quotes(*of) + " is a candidate twice", "take one of the two out");
        }
        candidate.share = read_limits(table, [&](std::string_view key) { return share_bound(table, key); });
        candidate.price = parsed(table, "price", "\u00a31.40 per kg", parse_price_per_kilogram);
        table.refuse_unknown_keys();
        entry_.value.candidates.push_back(std::move(candidate));
        entry_.places["candidate " + std::to_string(entry_.value.candidates.size())] = table.place_of_value("of");
    }

    void read_limit(TableReader& table) {
        BlendLimit limit;
        entry_.places["limit " + std::to_string(entry_.value.limits.size() + 1)] =
            table.place_of_value(table.has("on") ? "on" : "of");
        if (table.has("on") == table.has("of")) {
            table.find("on");
            table.find("of");
            table.faults().add(table.place(), "missing-value",
                               "a limit is on a property or of some candidates: say one of them",
                               R"(as in on = "protein", or of = ["brown crumb", "rusk"] for their shares together)");
        } else if (table.has("on")) {
            read_limit_on(table, limit);
        } else {
            limit.of = read_names(table);
            limit.bounds = read_limits(table, [&](std::string_view key) { return share_bound(table, key); });
        }
        require_a_limit(table);
        table.find("min");
        table.find("max");
        table.refuse_unknown_keys();
        entry_.value.limits.push_back(std::move(limit));
    }

    static void read_limit_on(TableReader& table, BlendLimit& limit) {
        std::vector<std::string> keys;
        for (const MixPropertyFacts& facts : mix_properties()) keys.emplace_back(facts.key);
        const auto key = table.word("on", keys);
        if (!key) return;
        const auto at = std::find(keys.begin(), keys.end(), *key) - keys.begin();
        limit.on = static_cast<MixProperty>(at);
        limit.bounds = read_limits(table, [&](std::string_view end) {
            return property_bound(table, end, facts_of(*limit.on), limit.currency);
        });
    }

    std::vector<std::string> read_names(TableReader& table) {
        std::vector<std::string> names;
        const toml::node& node = *table.find("of");
        const auto* list = node.as_array();
        if (!list || list->empty()) {
            table.faults().add(place_of(node), "wrong-type", "'of' must be a list of candidates, not " + shown(node),
                               R"(as in of = ["brown crumb", "rusk"])");
            return names;
        }
        for (const toml::node& entry : *list) {
            const auto name = text_of(entry, "of", "brown crumb", table.faults());
            if (!name) continue;
            if (names_.count(folded_name(*name)) == 0)
                table.faults().add(place_of(entry), "unknown-candidate",
                                   in_quotes(*name) + " is not a candidate of this blend",
                                   candidate_hint(*name, place_of(entry)));
            names.push_back(*name);
        }
        return names;
    }

    [[nodiscard]] std::string candidate_hint(const std::string& name, Position place) const {
        const std::string near =
            table_.faults().tells_of(place) ? did_you_mean(name, candidate_names()) : std::string();
        return near.empty() ? "name one of its candidates, or add it as a [[candidate]]" : near;
    }

    [[nodiscard]] std::vector<std::string> candidate_names() const {
        std::vector<std::string> names;
        for (const BlendCandidate& candidate : entry_.value.candidates) names.push_back(candidate.of);
        return names;
    }

    TableReader& table_;
    Entry<BlendSpec>& entry_;
    std::set<std::string> names_;
};

}  // namespace

Entry<BlendSpec> read_blend(TableReader& table, EntryNames& names) {
    const std::size_t faults_before = table.faults().count();
    Entry<BlendSpec> entry;
    BlendReader(table, entry).read(names);
    entry.faulty = table.faults().count() > faults_before;
    return entry;
}

bool is_blend_key(std::string_view key) {
    return key == "candidate" || key == "limit" || key == "goal" || key == "batch";
}

}  // namespace baitwright
