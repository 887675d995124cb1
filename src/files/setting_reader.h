#pragma once

#include <cmath>

#include "bait/strategy_settings.h"
#include "files/value_reader.h"
#include "quantities/in_quotes.h"

namespace baitwright {

/// Reads each setting of a strategy or feed (`strategy_settings.h`) that it is shown. Where it is wrong, the member is
/// as if nothing were stated.
struct SettingReader {
    TableReader& table;

    void operator()(const ProseFacts& facts, std::string& text) const { text = table.prose(facts.key); }
    void operator()(const TruthFacts& facts, bool& truth) const { truth = table.truth(facts.key).value_or(false); }
    void operator()(const WordFacts& facts, std::string& word) const {
        word = table.word(facts.key, {facts.words.begin(), facts.words.end()}).value_or("");
    }
    void operator()(const NameFacts& facts, std::string& name) const {
        if (table.has(facts.key)) name = table.name(facts.key).value_or("");
    }
    void operator()(const RateFacts& facts, std::optional<double>& rate) const {
        rate = table.number(facts.key, 0, strategy_limits::fastest_pace);
        if (rate && !(*rate > 0)) rate = refused(facts.key, "be above 0", "write " + std::string(facts.key) + " = 6");
    }
    void operator()(const RangeFacts<int>& facts, int& count) const {
        const auto stated = table.number(facts.key, facts.lowest, facts.highest);
        if (stated && *stated != std::floor(*stated))
            refused(facts.key, "be a whole number",
                    "write " + std::string(facts.key) + " = " + std::string(facts.example));
        else if (stated)
            count = static_cast<int>(*stated);
    }
    void operator()(const MomentFacts& facts, std::optional<Time>& moment) const {
        moment = parsed_as<Time>(facts.key, facts.example);
        if (moment && !(*moment >= Time{} && is_finite(*moment)))
            moment = refused(facts.key, "not be below zero", "it counts from the start of the session");
    }
    void operator()(const MomentFacts& facts, Time& moment) const {
        std::optional<Time> stated;
        (*this)(facts, stated);
        moment = stated.value_or(Time{});
    }
    template <class Q>
    void operator()(const RangeFacts<Q>& facts, std::optional<Q>& value) const {
        value = parsed_as<Q>(facts.key, facts.example);
        if (value && !(*value >= facts.lowest && *value <= facts.highest))
            value = refused(facts.key, "be " + std::string(facts.range) + ", not " + shown(*table.find(facts.key)),
                            "write it as in \"" + std::string(facts.example) + "\"");
    }
    /// What is not possible unstated must be stated.
    template <class Q>
    void operator()(const RangeFacts<Q>& facts, Q& value) const {
        if (value < facts.lowest && !table.required(facts.key, '"' + std::string(facts.example) + '"')) return;
        std::optional<Q> stated;
        (*this)(facts, stated);
        value = stated.value_or(value);
    }

private:
    template <class Q>
    std::optional<Q> parsed_as(std::string_view key, std::string_view example) const {
        return parsed(table, key, example, [](std::string_view text) { return parse<Q>(text); });
    }
    std::nullopt_t refused(std::string_view key, const std::string& must, const std::string& hint) const {
        table.faults().add(table.place_of_value(key), "out-of-range", in_quotes(key) + " must " + must, hint);
        return std::nullopt;
    }
};

}  // namespace baitwright
