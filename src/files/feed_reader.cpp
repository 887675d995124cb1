#include "files/feed_reader.h"

#include "bait/feed_feels.h"
#include "bait/strategy_names.h"
#include "files/setting_reader.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using namespace strategy_limits;

std::vector<std::string> form_words() {
    return {feed_form_names.begin(), feed_form_names.end()};
}

FeedPart read_feed_part(TableReader& table) {
    FeedPart part;
    part.of = table.name("of").value_or("");
    if (table.required("share", "2")) {
        part.share = table.number("share", 0, most_share).value_or(1);
        if (part.share <= 0)
            table.faults().add(table.place_of_value("share"), "out-of-range", "'share' must be above 0",
                               "write share = 2, or take the part out");
    }
    if (table.word("prepare", {"soaked"})) part.prepare = Preparation::soaked;
    if (table.has("feel")) part.feel = table.name("feel").value_or("");
    table.refuse_unknown_keys();
    return part;
}

/// One by `of`, or several by `parts`.
std::vector<FeedPart> read_feed_parts(TableReader& table, std::size_t number, EntryPlaces& places) {
    std::vector<FeedPart> parts;
    if (!table.has("parts")) {
        FeedPart part;
        part.of = table.name("of").value_or("");
        if (table.word("prepare", {"soaked"})) part.prepare = Preparation::soaked;
        places[feed_part_subject(number, 1)] = table.place_of_value("of");
        return {part};
    }
    for (const char* key : {"of", "prepare"})
        if (table.find(key))
            table.faults().add(table.place_of_key(key), "unfit-key", in_quotes(key) + " and 'parts' do not go together",
                               "put it into the braces: parts = [{ of = \"...\", share = 1 }]");
    table.each_block("parts", "a part of a feed", [&](TableReader& part) {
        parts.push_back(read_feed_part(part));
        places[feed_part_subject(number, parts.size())] = part.place_of_value("of");
        places[feed_part_feel_subject(number, parts.size())] = part.place_of_value("feel");
    });
    if (parts.size() == 1) parts.front().share = 1;
    if (parts.empty() && table.table().get("parts")->is_array())
        table.faults().add(table.place_of_value("parts"), "missing-value", "the feed has no part",
                           "as in parts = [{ of = \"maggots\", share = 1 }]");
    return parts;
}

Length parse_ball(std::string_view text) {
    const Length diameter = parse_ball_size(text);
    if (diameter >= smallest_ball && diameter <= largest_ball) return diameter;
    throw InputError("out-of-range", "a ball must be " + std::string(ball_range) + " wide, not " + in_quotes(text),
                     R"(write it as in "45 mm" or "egg")");
}

Volume parse_vessel(std::string_view text) {
    const Volume volume = parse_vessel_size(text);
    if (volume >= smallest_vessel && volume <= largest_vessel) return volume;
    throw InputError("out-of-range",
                     "what is filled must hold " + std::string(vessel_range) + ", not " + in_quotes(text),
                     R"(write it as in "250 ml" or "toss pot 25")");
}

/// `read` of the size; a size that would do for another form says so.
template <class Read>
auto parsed_size(TableReader& table, FeedForm form, std::string_view example, Read&& read) {
    return parsed(table, "size", example, [&](std::string_view text) {
        try {
            return read(text);
        } catch (const InputError& error) {
            const Fault& fault = error.faults().front();
            if (fault.code != "wrong-dimension") throw;
            throw InputError("unfit-size",
                             "the size of a " + std::string(name_of(form)) + " is " +
                                 (form == FeedForm::ball ? "how wide it is" : "what it holds") + ", not " +
                                 in_quotes(text),
                             "as in size = \"" + std::string(example) + "\"");
        }
    });
}

FeedSize read_loose_amount(TableReader& table) {
    for (const char* key : {"size", "count"})
        if (table.find(key))
            table.faults().add(table.place_of_key(key), "unfit-key", in_quotes(key) + " does not belong to loose feed",
                               R"(say how much goes in each time with amount = "30 g" or "50 ml")");
    table.required("amount", "\"30 g\"");
    const auto amount = parsed(table, "amount", "30 g", parse_mass_or_volume);
    if (!amount) return Mass{};
    std::visit([&](auto each) { check_amount(*table.find("amount"), "amount", each, table.faults()); }, *amount);
    return std::visit([](auto each) -> FeedSize { return each; }, *amount);
}

FeedSize read_size(TableReader& table, FeedForm form) {
    if (table.find("amount"))
        table.faults().add(table.place_of_key("amount"), "unfit-key",
                           "'amount' belongs to loose feed; this is a " + std::string(name_of(form)),
                           "say its size, and count = 3 for three of them");
    if (form == FeedForm::ball) {
        table.required("size", "\"55 mm\"");
        return parsed_size(table, form, "55 mm", parse_ball).value_or(Length{});
    }
    table.required("size", "\"250 ml\"");
    return parsed_size(table, form, "250 ml", parse_vessel).value_or(Volume{});
}

/// The feel of a part alone is that of its feed, and so is the one feel of a ball.
void settle_feels(const TableReader& table, Feed& feed, std::size_t number, EntryPlaces& places) {
    const std::vector<std::string> stated = stated_feels(feed);
    if (feed.form == FeedForm::ball && stated.size() > 1)
        table.faults().add(
            table.place_of_value("parts"), "unfit-feel",
            "a ball has one feel, and this one has " + in_quotes(stated[0]) + " and " + in_quotes(stated[1]),
            "give the feed one feel, or feed the parts in balls of their own, or in a cup");
    if (stated.size() != 1 || (feed.form != FeedForm::ball && feed.parts.size() > 1)) return;
    for (std::size_t i = 0; i < feed.parts.size(); ++i) {
        if (feed.parts[i].feel.empty()) continue;
        places[feed_feel_subject(number)] = places[feed_part_feel_subject(number, i + 1)];
        feed.parts[i].feel.clear();
    }
    feed.feel = stated.front();
}

}  // namespace

Feed read_feed(TableReader& table, std::size_t number, const SessionFrame& frame, EntryPlaces& places) {
    Feed feed;
    places[feed_subject(number)] = table.place();
    feed.when = read_timing(table, frame);
    feed.parts = read_feed_parts(table, number, places);
    table.required("as", "\"cup\"");
    const auto form = table.word("as", form_words());
    if (form) {
        for (std::size_t i = 0; i < feed_form_names.size(); ++i)
            if (feed_form_names[i] == *form) feed.form = static_cast<FeedForm>(i);
        feed.size = feed.form == FeedForm::loose ? read_loose_amount(table) : read_size(table, feed.form);
    } else {
        for (const char* key : {"size", "count", "amount"}) table.find(key);
    }
    const bool is_counted = form && feed.form != FeedForm::loose;
    visit_helping(feed, [&](const auto& facts, auto& member) {
        if (is_counted || facts.key != "count") SettingReader{table}(facts, member);
    });
    places[feed_feel_subject(number)] = table.place_of_value("feel");
    places[feed_after_subject(number)] = table.place_of_value("after");
    settle_feels(table, feed, number, places);
    table.refuse_unknown_keys();
    return feed;
}

Hookbait read_hookbait(TableReader& table, std::size_t number, EntryPlaces& places) {
    Hookbait hookbait;
    hookbait.of = table.name("of").value_or("");
    places[hookbait_subject(number)] = table.place_of_value("of");
    const auto bites = table.number("bites_per_hour", 0, most_bites);
    const bool by_bites = table.has("bites_per_hour"), by_amount = table.find("amount") != nullptr;
    if (by_bites == by_amount)
        table.faults().add(by_bites ? table.place_of_key("amount") : table.place(),
                           by_bites ? "two-amounts" : "no-amount",
                           by_bites ? "the hookbait says twice how much" : "the hookbait does not say how much",
                           R"(say bites_per_hour = 30, or amount = "0.25 pt")");
    if (bites && *bites <= 0)
        table.faults().add(table.place_of_value("bites_per_hour"), "out-of-range", "'bites_per_hour' must be above 0",
                           "write bites_per_hour = 30");
    hookbait.amount = BitesPerHour{bites.value_or(0)};
    if (by_amount) {
        const auto amount = parsed(table, "amount", "0.25 pt", parse_mass_or_volume);
        if (amount) {
            std::visit([&](auto each) { check_amount(*table.find("amount"), "amount", each, table.faults()); },
                       *amount);
            std::visit([&](auto each) { hookbait.amount = each; }, *amount);
        }
    }
    table.refuse_unknown_keys();
    return hookbait;
}

}  // namespace baitwright
