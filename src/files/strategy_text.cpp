#include "files/library_text.h"
#include "files/toml_writer.h"
#include "files/value_text.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

void write_water(TomlWriter& out, const WaterSetting& water) {
    std::string words;
    const auto add = [&](std::string_view key, const std::string& text) {
        words += (words.empty() ? " " : ", ") + std::string(key) + " = " + toml_quoted(text);
    };
    if (water.depth) add("depth", exact_text(*water.depth, metre, "m"));
    if (water.temperature) add("temperature", exact_text(*water.temperature));
    if (!water.clarity.empty()) add("clarity", water.clarity);
    if (water.tow) add("tow", exact_text(*water.tow, centimetre_per_second, "cm/s"));
    if (water.tow_bottom) add("tow_bottom", exact_text(*water.tow_bottom, centimetre_per_second, "cm/s"));
    if (!words.empty()) out.line("water", "{" + words + " }");
}

void write_air(TomlWriter& out, const AirSetting& air) {
    std::string words;
    const auto add = [&](std::string_view key, const std::string& value) {
        words += words.empty() ? " " : ", ";
        words += key;
        words += " = ";
        words += value;
    };
    if (air.temperature) add("temperature", toml_quoted(exact_text(*air.temperature)));
    if (air.humidity) add("humidity", toml_quoted(percent_text(*air.humidity)));
    if (air.wind) add("wind", toml_quoted(exact_text(*air.wind, metre_per_second, "m/s")));
    if (air.sun) add("sun", "true");
    if (!words.empty()) out.line("air", "{" + words + " }");
}

void write_pace(TomlWriter& out, const Pace& pace) {
    std::string rates;
    if (pace.put_ins_per_hour) rates += " put_ins_per_hour = " + number_text(*pace.put_ins_per_hour);
    if (pace.fish_per_hour)
        rates += (rates.empty() ? " " : ", ") + std::string("fish_per_hour = ") + number_text(*pace.fish_per_hour);
    if (!rates.empty()) out.line("pace", "{" + rates + " }");
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
    if (when.from > Time{}) out.text("from", exact_text(when.from, minute, "min"));
    if (when.until) out.text("until", exact_text(*when.until, minute, "min"));
    out.text("after", when.after);
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
    if (feed.count != 1) out.line("count", std::to_string(feed.count));
    out.text("feel", feed.feel);
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
    out.text("purpose", strategy.purpose);
    out.text("avoid", strategy.avoid);
    out.text("why", strategy.why);
    out.text("note", strategy.note);
    out.text("length", exact_text(strategy.length, minute, "min"));
    out.text("spare", percent_text(strategy.spare));
    write_water(out, strategy.water);
    write_air(out, strategy.air);
    write_pace(out, strategy.pace);
    for (const Feed& feed : strategy.feeds) write_feed(out, feed);
    for (const Hookbait& hookbait : strategy.hookbaits) {
        out.inner_heading("strategy.hookbait");
        out.text("of", hookbait.of);
        std::visit(HookbaitLine{out}, hookbait.amount);
    }
    return out.str();
}

}  // namespace baitwright
