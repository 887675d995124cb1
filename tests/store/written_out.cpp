#include "store/written_out.h"

#include <cstdio>

#include "bait/each_setting.h"
#include "bait/ingredient_facts.h"

namespace baitwright {

namespace {

std::string line(const std::string& text) {
    return std::to_string(text.size()) + ":" + text + "\n";
}

// Hexadecimal: every bit shows, but for the sign of a zero, which no property of a bait has.
std::string line(double number) {
    char text[64];
    std::snprintf(text, sizeof text, "%a\n", number == 0 ? 0.0 : number);
    return text;
}

template <class Q>
std::string line(const std::optional<Q>& quantity) {
    return quantity ? line(Q(*quantity).si()) : "none\n";
}

std::string line(const std::optional<double>& number) {
    return number ? line(*number) : "none\n";
}

template <class... Alternatives>
std::string line(const std::variant<Alternatives...>& amount) {
    struct Number {
        double operator()(Mass m) const { return m.si(); }
        double operator()(Volume v) const { return v.si(); }
        double operator()(WholePacks p) const { return p.count; }
        double operator()(Share s) const { return s.parts; }
        double operator()(Length l) const { return l.si(); }
        double operator()(BitesPerHour b) const { return b.bites; }
        double operator()(AtOnce once) const { return once.at.si(); }
        double operator()(EveryTime every) const { return every.gap.si(); }
        double operator()(EveryPutIn) const { return 0; }
        double operator()(EveryFish every) const { return every.fish; }
        double operator()(WhenSlow slow) const { return slow.times; }
    };
    return std::to_string(amount.index()) + " " + line(std::visit(Number{}, amount));
}

std::string line(const DoseRate& rate) {
    return std::to_string(static_cast<int>(rate.basis)) + " " + line(rate.each);
}

template <class Q>
std::string line(std::string_view key, const Property<Q>& p) {
    return std::string(key) + " " + line(p.value.si()) + line(p.spread.si()) + line(source_text(p.source));
}

std::string line(const std::vector<StatedSetting>& settings) {
    std::string text;
    for (const StatedSetting& setting : settings) text += setting.key + " " + line(setting.text) + line(setting.number);
    return text;
}

std::string line(const Pack& pack) {
    std::string text = line(pack.size) + line(date_or_blank(pack.on)) + line(pack.shop);
    if (pack.price) text += std::to_string(pack.price->minor()) + std::string(pack.price->currency().code);
    return text + "\n";
}

}  // namespace

std::string written_out(const Ingredient& i) {
    std::string text = line(i.name) + std::string(name_of(i.kind)) + "\n";
    visit_properties(i, [&](const auto& facts, const auto& property) { text += line(facts.key, property); });
    visit_composition(i.composition, [&](std::string_view key, const auto& share) { text += line(key, share); });
    text += line(i.colour) + line(i.solute) + (i.label_dose ? line(*i.label_dose) : "none\n");
    for (const Pack& pack : i.packs) text += line(pack);
    text += line(i.keeps.dry) + line(i.keeps.cold) + line(i.keeps.frozen);
    for (const std::string& word : i.cautions) text += line(word);
    return text + line(i.note);
}

std::string written_out(const Recipe& r) {
    std::string text = line(r.name) + line(r.feel) + line(r.purpose) + line(r.avoid) + line(r.why) + line(r.note);
    for (const Part& part : r.parts)
        text += line(part.of) + line(part.amount) + std::to_string(static_cast<int>(part.prepare)) + "\n";
    for (const Dose& dose : r.doses) text += line(dose.of) + line(dose.rate);
    return text;
}

std::string written_out(const Strategy& s) {
    std::string text = line(s.name) + line(settings_of(s));
    for (const Feed& feed : s.feeds) {
        text += "feed " + line(feed.when.rhythm) + line(settings_of(feed));
        for (const FeedPart& part : feed.parts)
            text += line(part.of) + line(part.share) + std::to_string(static_cast<int>(part.prepare)) + line(part.feel);
        text += std::string(name_of(feed.form)) + " " + line(feed.size);
    }
    for (const Hookbait& hookbait : s.hookbaits) text += line(hookbait.of) + line(hookbait.amount);
    return text;
}

}  // namespace baitwright
