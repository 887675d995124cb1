#include "bait/strategy_settings.h"
#include "files/library_text.h"
#include "files/toml_writer.h"
#include "files/value_text.h"
#include "quantities/listed.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// Calls `line(key, value)` for each setting that it is shown and that has to be said.
template <class Line>
struct SettingLine {
    Line line;
    void operator()(const SettingNames& facts, const std::string& text) const {
        if (!text.empty()) line(facts.key, toml_quoted(text));
    }
    void operator()(const SettingNames& facts, bool truth) const {
        if (truth) line(facts.key, "true");
    }
    void operator()(const SettingNames& facts, int count) const {
        if (count != 1) line(facts.key, std::to_string(count));
    }
    void operator()(const SettingNames& facts, double rate) const { line(facts.key, number_text(rate)); }
    void operator()(const SettingNames& facts, Temperature warmth) const { (*this)(facts, exact_text(warmth)); }
    void operator()(const MomentFacts& facts, const std::optional<Time>& moment) const {
        if (moment) (*this)(facts, exact_text(*moment, minute, "min"));
    }
    void operator()(const MomentFacts& facts, Time moment) const {
        if (moment > Time{}) (*this)(facts, std::optional(moment));
    }
    template <class D>
    void operator()(const MeasureFacts<D>& facts, Quantity<D> measure) const {
        (*this)(facts, exact_text(measure, facts.unit, facts.symbol));
    }
    template <class Facts, class Q>
    void operator()(const Facts& facts, const std::optional<Q>& number) const {
        if (number) (*this)(facts, *number);
    }
};

auto setting_lines(TomlWriter& out) {
    const auto line = [&out](std::string_view key, const std::string& value) { out.line(key, value); };
    return SettingLine<decltype(line)>{line};
}

void write_blocks(TomlWriter& out, const Strategy& strategy) {
    visit_blocks(strategy, [&](const BlockFacts& block, auto&& walk) {
        std::vector<std::string> words;
        const auto add = [&](std::string_view key, const std::string& value) {
            words.push_back(std::string(key) + " = " + value);
        };
        walk(SettingLine<decltype(add)>{add});
        if (!words.empty()) out.line(block.key, "{ " + joined(words, ", ") + " }");
    });
}

struct RhythmLine {
    TomlWriter& out;
    void operator()(AtOnce once) const { out.text("at", exact_text(once.at, minute, "min")); }
    void operator()(EveryTime every) const { out.text("every", exact_text(every.gap, minute, "min")); }
    void operator()(EveryPutIn) const { out.text("every", "put-in"); }
    void operator()(EveryFish every) const { out.text("every", std::to_string(every.fish) + " fish"); }
    void operator()(WhenSlow slow) const {
        out.text("when", "slow");
        out.line("expected", number_text(slow.times));
    }
};

void write_timing(TomlWriter& out, const FeedTiming& when) {
    std::visit(RhythmLine{out}, when.rhythm);
    visit_span(when, setting_lines(out));
}

void write_parts(TomlWriter& out, const std::vector<FeedPart>& parts) {
    if (parts.size() == 1) {
        out.text("of", parts.front().of);
        if (parts.front().prepare == Preparation::soaked) out.text("prepare", "soaked");
        return;
    }
    std::string list;
    for (const FeedPart& part : parts) {
        list +=
            (list.empty() ? "{ of = " : ", { of = ") + toml_quoted(part.of) + ", share = " + number_text(part.share);
        if (part.prepare == Preparation::soaked) list += ", prepare = \"soaked\"";
        if (!part.feel.empty()) {
            list += ", feel = ";
            list += toml_quoted(part.feel);
        }
        list += " }";
    }
    out.line("parts", "[" + list + "]");
}

struct SizeLine {
    TomlWriter& out;
    FeedForm form;
    void operator()(Mass amount) const { out.text("amount", amount_text(amount)); }
    void operator()(Volume volume) const { out.text(form == FeedForm::loose ? "amount" : "size", amount_text(volume)); }
    void operator()(Length diameter) const { out.text("size", exact_text(diameter, millimetre, "mm")); }
};

void write_feed(TomlWriter& out, const Feed& feed) {
    out.inner_heading("strategy.feed");
    write_timing(out, feed.when);
    write_parts(out, feed.parts);
    out.text("as", name_of(feed.form));
    std::visit(SizeLine{out, feed.form}, feed.size);
    visit_helping(feed, setting_lines(out));
}

struct HookbaitLine {
    TomlWriter& out;
    void operator()(BitesPerHour bites) const { out.line("bites_per_hour", number_text(bites.bites)); }
    void operator()(Mass amount) const { out.text("amount", amount_text(amount)); }
    void operator()(Volume amount) const { out.text("amount", amount_text(amount)); }
};

}  // namespace

std::string toml_text(const Strategy& strategy) {
    TomlWriter out;
    out.heading("strategy");
    out.text("name", strategy.name);
    visit_prose(strategy, setting_lines(out));
    visit_extent(strategy, setting_lines(out));
    write_blocks(out, strategy);
    for (const Feed& feed : strategy.feeds) write_feed(out, feed);
    for (const Hookbait& hookbait : strategy.hookbaits) {
        out.inner_heading("strategy.hookbait");
        out.text("of", hookbait.of);
        std::visit(HookbaitLine{out}, hookbait.amount);
    }
    return out.str();
}

}  // namespace baitwright
