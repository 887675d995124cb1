#include "report/learn_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "quantities/date.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/learn_words.h"

namespace baitwright {

namespace {

constexpr std::size_t most_bags_told = 12, most_set_aside_told = 6;
/// "8 %" of half a range against its middle.
std::string either_way(double doubt) {
    return fmt::format("{:.0f} % either way", 100 * doubt);
}

std::string so_many(int count, const char* one, const char* many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

/// Those of the properties that the log says something of, the most often seen first.
std::vector<Learnt> learnt_of(const LearnAnswer& answer, std::initializer_list<Learnt::Property> properties) {
    std::vector<Learnt> all;
    for (const Learnt& one : answer.posterior)
        if (std::find(properties.begin(), properties.end(), one.property) != properties.end() && says_something(one))
            all.push_back(one);
    std::stable_sort(all.begin(), all.end(), [](const Learnt& a, const Learnt& b) { return a.times > b.times; });
    return all;
}

void tell_hand(Told& told, const LearnAnswer& answer) {
    for (const Learnt& hand : learnt_of(answer, {Learnt::Property::hand}))
        told.entry("  - ", "your hand " + told_of(hand) + ", " + from_so_many(hand) + ".");
}

void tell_things(Told& told, const std::vector<Learnt>& things) {
    const std::size_t shown = std::min(things.size(), most_bags_told);
    for (std::size_t i = 0; i < shown; ++i)
        told.entry("  - ", things[i].name + " " + told_of(things[i]) + ", " + from_so_many(things[i]) + ".");
    if (things.size() > shown) told.entry("  - ", fmt::format("and {} more, less often seen", things.size() - shown));
}

/// Of bags that were always mixed together no single one becomes known by itself.
bool is_known_by_itself(const Learnt& bag) {
    return bag.sd < 0.6 * bag.prior_sd;
}

void tell_bags(Told& told, const std::vector<Learnt>& bags) {
    std::vector<Learnt> known;
    std::vector<std::string> together;
    for (const Learnt& bag : bags) {
        if (is_known_by_itself(bag))
            known.push_back(bag);
        else
            together.push_back(bag.name);
    }
    tell_things(told, known);
    if (!together.empty())
        told.entry("  - ",
                   "of each bag by itself little yet, for they were mixed together: " + joined(together, "; ") + ".");
}

void tell_mixes(Told& told, const LearnAnswer& answer) {
    if (answer.mixes.empty()) return;
    told.gap();
    told.heading("The water of your mixes, and how far it may still be off");
    using A = TextTable::Align;
    TextTable table{{A::left, A::left, A::right, A::right, A::right}};
    table.row({"mix", "feel", "takes", "by the library", "by your log"});
    for (const MixDoubtNow& mix : answer.mixes)
        table.row({mix.mix, mix.feel, more_or_less(mix.shift), either_way(mix.before), either_way(mix.now)});
    told.table(std::move(table));
}

/// What was observed and what was to be expected, in the entry's own measure.
struct MeasureOfEntry {
    double value;
    std::string operator()(const LoggedMix&) const { return shown_water(value * gram); }
    std::string operator()(const LoggedSoak&) const { return shown_grams(value * gram); }
    std::string operator()(const LoggedWeight&) const { return shown_grams(value * gram); }
    std::string operator()(const LoggedLook& look) const {
        if (look.holds || look.breaks_at) return shown_soak_time(value * second);
        return shown_length(value * metre);
    }
    template <class Other>
    std::string operator()(const Other&) const {
        return fmt::format("{:.3g}", value);
    }
};

/// Two digits, and a nought or a five after them: nobody knows it closer.
double rounded_estimate(double value) {
    if (!(value > 0)) return value;
    const double step = std::pow(10.0, std::floor(std::log10(value)) - 1);
    return step / 2 * std::round(value / (step / 2));
}

std::string measured_text(const SetAside& aside, double value) {
    return std::visit(MeasureOfEntry{value}, aside.entry.what);
}

void tell_set_aside(Told& told, const LearnAnswer& answer) {
    if (answer.set_aside.empty()) return;
    told.gap();
    told.heading("Set aside, too far from all else that is known");
    const std::size_t shown = std::min(answer.set_aside.size(), most_set_aside_told);
    for (std::size_t i = 0; i < shown; ++i) {
        const SetAside& aside = answer.set_aside[i];
        told.entry("  - ", fmt::format("number {}, {} on {}: {}{}, where about {} was to be expected.", aside.entry.id,
                                       subject_of(aside.entry.what), date_text(aside.entry.on),
                                       std::holds_alternative<LoggedSoak>(aside.entry.what) ? "took up " : "",
                                       measured_text(aside, aside.observed),
                                       measured_text(aside, rounded_estimate(aside.expected))));
    }
    if (answer.set_aside.size() > shown)
        told.entry("  - ", fmt::format("and {} more", answer.set_aside.size() - shown));
    told.say(what_to_do_with(std::span(answer.set_aside).first(shown)));
}

std::string test_text(const NextTest& next) {
    switch (next.kind) {
        case NextTest::Kind::squeeze:
            return "Squeeze-test the " + next.of + " (baitwright help ingredient measure)";
        case NextTest::Kind::up_ended_pot:
            return "Up-end a pot of the " + next.of + " (baitwright help ingredient measure)";
        case NextTest::Kind::log_mix:
            break;
    }
    return "Log one more mix of " + next.of;
}

void tell_next(Told& told, const LearnAnswer& answer) {
    if (!answer.next) return;
    const NextTest& next = *answer.next;
    const bool helps = std::round(100 * next.then) < std::round(100 * next.now);
    told.gap();
    told.heading("What would help most");
    const bool of_itself = next.kind == NextTest::Kind::log_mix && next.of == next.most_for;
    told.say(helps ? fmt::format("{}: {} would then be good to {}, from {:.0f} %.", test_text(next),
                                 of_itself ? "its water" : "the water of " + next.most_for, either_way(next.then),
                                 100 * next.now)
                   : "Nothing much: what is left is how your hand differs from day to day.");
}

void tell_done(Told& told, const LearnReport& report) {
    switch (report.done) {
        case LearnReport::Done::written:
            told.say("Kept: " + joined(report.written, "; ") +
                     ". Your answers go by it from now on; to take it back: baitwright learn undo");
            break;
        case LearnReport::Done::nothing_to_write:
            told.say(report.answer.observations > 0 ? "Nothing new to keep: your answers go by all of it already."
                                                    : "Nothing to keep yet: the log says no more than the library.");
            break;
        case LearnReport::Done::stands_already:
            told.say("Your answers go by all of it already.");
            break;
        case LearnReport::Done::only_shown:
            if (report.answer.observations > 0) told.say("To let your answers go by it: baitwright learn --apply");
            break;
    }
}

Told nothing_learnt_told(const LearnReport& report) {
    Told told;
    if (report.done == LearnReport::Done::written) {
        told.say("Nothing is left in the log to learn from, so your answers go by the library again: " +
                 joined(report.written, "; ") + ". To have it back: baitwright learn undo");
        return told;
    }
    told.say("Nothing in the log to learn from yet. After each mix, write down what went in and how it felt:");
    told.say("baitwright log mix \"silt bed\" --dry 1kg --water 680ml --feel firm");
    return told;
}

Told learn_told(const LearnReport& report) {
    const LearnAnswer& answer = report.answer;
    if (answer.observations == 0 && answer.set_aside.empty()) return nothing_learnt_told(report);
    Told told;
    told.title("What your log says, from " + so_many(answer.observations, "observation", "observations"));
    tell_hand(told, answer);
    using P = Learnt::Property;
    tell_bags(told, learnt_of(answer, {P::absorption}));
    tell_things(told, learnt_of(answer, {P::diffusivity, P::capacity, P::loose_weight}));
    tell_things(told, learnt_of(answer, {P::cup_weight, P::hold, P::carpet}));
    tell_mixes(told, answer);
    tell_set_aside(told, answer);
    tell_next(told, answer);
    told.mind(answer.warnings);
    told.gap();
    tell_done(told, report);
    return told;
}

Json json_of(const Learnt& one) {
    return {{"name", one.name.empty() ? Json(nullptr) : Json(one.name)},
            {"property", key_of(one.property)},
            {"prior_mean", one.prior_mean},
            {"prior_sd", one.prior_sd},
            {"mean", one.mean},
            {"sd", one.sd},
            {"times", one.times},
            {"library_si", one.library ? Json(*one.library) : Json(nullptr)},
            {"value_si", one.value ? Json(*one.value) : Json(nullptr)}};
}

constexpr std::array<const char*, 3> test_keys{"squeeze", "up_ended_pot", "log_mix"};

Json next_json(const std::optional<NextTest>& next) {
    if (!next) return nullptr;
    return {{"test", test_keys[static_cast<std::size_t>(next->kind)]},
            {"of", next->of},
            {"most_for", next->most_for},
            {"now", next->now},
            {"then", next->then},
            {"all_now", next->all_now},
            {"all_then", next->all_then}};
}

Json learn_json(const LearnReport& report) {
    const LearnAnswer& answer = report.answer;
    Json json = json_record("learn", answer.warnings);
    json["observations"] = answer.observations;
    json["outliers"] = Json::array();
    for (const SetAside& aside : answer.set_aside)
        json["outliers"].push_back({{"entry", aside.entry.id},
                                    {"what", name_of(aside.entry.what)},
                                    {"of", subject_of(aside.entry.what)},
                                    {"on", date_text(aside.entry.on)},
                                    {"sigmas", aside.sigmas},
                                    {"observed", aside.observed},
                                    {"expected", aside.expected}});
    json["posterior"] = Json::array();
    for (const Learnt& one : answer.posterior) json["posterior"].push_back(json_of(one));
    json["mixes"] = Json::array();
    for (const MixDoubtNow& mix : answer.mixes)
        json["mixes"].push_back({{"name", mix.mix},
                                 {"feel", mix.feel},
                                 {"before", mix.before},
                                 {"now", mix.now},
                                 {"mixes", mix.mixes},
                                 {"shift", mix.shift}});
    json["next_test"] = next_json(answer.next);
    json["applied"] = report.done == LearnReport::Done::written;
    json["written"] = report.written;
    return json;
}

Rows learn_rows(const LearnReport& report) {
    Rows rows{{"name", "property", "prior mean (ln)", "prior sd (ln)", "mean (ln)", "sd (ln)", "times"}};
    for (const Learnt& one : report.answer.posterior)
        rows.push_back({one.name, key_of(one.property), fmt::format("{}", one.prior_mean),
                        fmt::format("{}", one.prior_sd), fmt::format("{}", one.mean), fmt::format("{}", one.sd),
                        std::to_string(one.times)});
    return rows;
}

Told undone_told(const std::vector<std::string>& taken_back) {
    Told told;
    told.say(taken_back.empty() ? "Nothing was kept of what the log says, so nothing is taken back."
                                : "Taken back: " + joined(taken_back, "; ") + ". The log itself stays as it is.");
    return told;
}

Json undone_json(const std::vector<std::string>& taken_back) {
    Json json = json_record("learn undo", {});
    json["taken_back"] = taken_back;
    return json;
}

Rows undone_rows(const std::vector<std::string>& taken_back) {
    Rows rows{{"taken back"}};
    for (const std::string& name : taken_back) rows.push_back({name});
    return rows;
}

}  // namespace

Reply learn_reply(LearnReport report) {
    const int status = status_of(report.answer.warnings);
    return reply_of(std::move(report), learn_told, learn_json, learn_rows, status);
}

Reply learn_undone_reply(std::vector<std::string> taken_back) {
    const int status = taken_back.empty() ? 1 : 0;
    return reply_of(std::move(taken_back), undone_told, undone_json, undone_rows, status);
}

}  // namespace baitwright
