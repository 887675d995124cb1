#include "report/learn_words.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <string_view>

namespace baitwright {

namespace {

/// Per cent more (above zero) or less; from 20 on to five, for nobody knows it closer.
double told_per_cent(double log_factor) {
    const double per_cent = 100 * std::expm1(log_factor);
    return std::abs(per_cent) < 20 ? std::round(per_cent) : 5 * std::round(per_cent / 5);
}

bool is_a_multiple(double log_factor) {
    return log_factor > std::log(1.9) || log_factor < -std::log(1.9);
}

std::string size_of_per_cent(double per_cent) {
    return fmt::format("{:.0f} %", std::abs(per_cent));
}

std::string side_of(double per_cent) {
    return per_cent < 0 ? "less" : "more";
}

/// "1.6 times", "0.4 times".
std::string times_of(double log_factor) {
    return fmt::format("{:.1f}", std::exp(log_factor));
}

/// What a property is told by: "takes" 12 % "more" than "the library says", or as "much" as that.
struct PropertyWords {
    std::string_view key, verb, more, less, how, against, seen;
};

constexpr std::array<PropertyWords, 11> property_words{{
    {"hand", "wants", "more water", "less water", "much water", "most hands do", "mix"},
    {"memory", "take", "more", "less", "much", "they say", "mix"},
    {"absorption", "takes", "more", "less", "much", "the library says", "mix"},
    {"gap", "takes", "more", "less", "much", "the library says, from just holding to slumping", "mix"},
    {"diffusivity", "drinks", "faster", "slower", "fast", "the library says", "soak"},
    {"capacity", "takes up", "more", "less", "much", "the library says, soaked through", "soak"},
    {"loose_weight", "weighs", "more", "less", "much", "the library says, dry and loose", "weighing"},
    {"cup_weight", "weighs", "more", "less", "much", "reckoned, by the level cup", "weighing"},
    {"hold", "holds", "longer", "shorter", "long", "reckoned", "look"},
    {"carpet", "lies", "wider", "narrower", "wide", "reckoned", "look"},
    {"water", "takes", "more water", "less water", "much water", "by the library", "mix"},
}};

const PropertyWords& words_for(Learnt::Property property) {
    return property_words[static_cast<std::size_t>(property)];
}

}  // namespace

std::string more_or_less(double log_factor) {
    if (is_a_multiple(log_factor)) return times_of(log_factor) + " times as much";
    const double per_cent = told_per_cent(log_factor);
    if (per_cent == 0) return "about as much";
    return size_of_per_cent(per_cent) + " " + side_of(per_cent);
}

std::string more_or_less(double low, double high) {
    if (is_a_multiple(low) || is_a_multiple(high)) return times_of(low) + " to " + times_of(high) + " times";
    const double from = told_per_cent(low), to = told_per_cent(high);
    if (from == to) return more_or_less(low);
    if (from >= 0) return fmt::format("{:.0f} to {:.0f} % more", std::abs(from), to);
    if (to <= 0) return fmt::format("{:.0f} to {:.0f} % less", std::abs(to), -from);
    return size_of_per_cent(from) + " less to " + size_of_per_cent(to) + " more";
}

std::string from_so_many(const Learnt& learnt) {
    const std::string single(words_for(learnt.property).seen);
    const std::string many = single == "mix" ? "mixes" : single + "s";
    return fmt::format("from {} {}", learnt.times, learnt.times == 1 ? single : many);
}

std::string key_of(Learnt::Property property) {
    return std::string(words_for(property).key);
}

std::string told_of(const Learnt& learnt) {
    const PropertyWords& words = words_for(learnt.property);
    const double low = learnt.mean - nine_in_ten * learnt.sd, high = learnt.mean + nine_in_ten * learnt.sd;
    const double per_cent = told_per_cent(learnt.mean);
    std::string told(words.verb);
    if (is_a_multiple(learnt.mean))
        told += fmt::format(" {} times as {} as {}", times_of(learnt.mean), words.how, words.against);
    else if (per_cent == 0)
        told += fmt::format(" about as {} as {}", words.how, words.against);
    else
        told += fmt::format(" {} {} than {}", size_of_per_cent(per_cent), per_cent < 0 ? words.less : words.more,
                            words.against);
    return told + " (9 in 10: " + more_or_less(low, high) + ")";
}

std::string what_to_do_with(std::span<const SetAside> set_aside) {
    std::string edits, beliefs;
    for (const SetAside& aside : set_aside) {
        edits += fmt::format("{}baitwright log edit {}", edits.empty() ? "" : "; ", aside.entry.id);
        beliefs += fmt::format(" --believe {}", aside.entry.id);
    }
    return set_aside.size() == 1
               ? "If it is a slip, mend it: " + edits + ". If it is true, say so: baitwright learn" + beliefs
               : "Mend what is a slip: " + edits + ". Say what is true: baitwright learn" + beliefs;
}

bool says_something(const Learnt& learnt) {
    return learnt.times > 0 && learnt.sd < 0.9 * learnt.prior_sd;
}

}  // namespace baitwright
