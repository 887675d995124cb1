#include <cmath>

#include "files/library_text.h"
#include "files/toml_writer.h"
#include "files/value_text.h"
#include "quantities/money.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::string price_text(const Money& price) {
    return money_text(price) + " per kg";
}

template <class Write>
void write_limits(const Limits& limits, Write&& write) {
    if (limits.least) write("min", *limits.least);
    if (limits.most) write("max", *limits.most);
}

/// A bound on a property, in the unit of its facts.
void write_bound(TomlWriter& out, std::string_view key, const BlendLimit& limit, double bound) {
    const MixPropertyFacts& facts = facts_of(*limit.on);
    if (facts.property == MixProperty::price)
        out.text(key, price_text(Money(std::llround(bound), currency_named(limit.currency))));
    else if (facts.property == MixProperty::loose_density)
        out.text(key, exact_text(bound * gram_per_litre, gram_per_litre, "g/l"));
    else if (facts.symbol.empty())
        out.line(key, number_text(bound));
    else if (facts.symbol == "%")
        out.text(key, percent_text(bound * percent));
    else
        out.text(key, number_text(bound) + " " + std::string(facts.symbol));
}

void write_limit(TomlWriter& out, const BlendLimit& limit) {
    out.inner_heading("blend.limit");
    if (limit.on) {
        out.text("on", facts_of(*limit.on).key);
        write_limits(limit.bounds, [&](std::string_view key, double bound) { write_bound(out, key, limit, bound); });
        return;
    }
    std::string names;
    for (const std::string& name : limit.of) names += (names.empty() ? "" : ", ") + toml_quoted(name);
    out.line("of", "[" + names + "]");
    write_limits(limit.bounds, [&](std::string_view key, double share) { out.text(key, percent_text(share)); });
}

}  // namespace

std::string toml_text(const BlendSpec& spec) {
    TomlWriter out;
    out.heading("blend");
    out.text("name", spec.name);
    out.text("feel", spec.feel);
    out.text("note", spec.note);
    if (spec.goal == BlendGoal::per_litre) out.text("goal", "cost per litre");
    if (spec.batch) out.text("batch", amount_text(*spec.batch));
    for (const BlendCandidate& candidate : spec.candidates) {
        out.inner_heading("blend.candidate");
        out.text("of", candidate.of);
        write_limits(candidate.share, [&](std::string_view key, double share) { out.text(key, percent_text(share)); });
        if (candidate.price) out.text("price", price_text(*candidate.price));
    }
    for (const BlendLimit& limit : spec.limits) write_limit(out, limit);
    return out.str();
}

}  // namespace baitwright
