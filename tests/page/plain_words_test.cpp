#include "page/plain_words.h"

#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "library/open_library.h"
#include "page/mixes_fed.h"
#include "page/plain_text_of.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "report/degree_sign.h"
#include "report/replies.h"

using namespace baitwright;

namespace {

BankContents plain_contents(const Shelf& shelf, const std::vector<std::string>& strategies) {
    BankContents contents;
    contents.library = &shelf;
    contents.made_on = parse_date("2026-05-16");
    contents.version = "0.1.0";
    contents.start = 570;
    for (const std::string& name : strategies) contents.strategies.push_back({&shelf, shelf.strategy(name)});
    return contents;
}

SessionPlan plan_from_half_past_nine(const Shelf& shelf, const std::string& strategy) {
    PlanRequest request;
    request.start = 570;
    request.cost.on = parse_date("2026-05-16");
    return plan_session(shelf, shelf.strategy(strategy), {}, request);
}

std::optional<Recipe> fed_mix_called(const std::string& name, const Strategy& strategy, const Shelf& shelf) {
    for (const Recipe& mix : mixes_fed(strategy, shelf).together)
        if (mix.name == name) return mix;
    return shelf.find_recipe(name);
}

/// The lines of the page that are not among what the program told, as the page writes them.
std::vector<std::string> not_told(const std::string& html, const std::vector<Told>& answers) {
    std::set<std::string> told{"Take care", "There is more of it on the page itself, once it is open."};
    for (const Told& answer : answers) {
        for (const Told::Piece& piece : answer.pieces()) {
            const std::string text = with_degree_signs(piece.text);
            told.insert(text);
            told.insert(piece.label + ": " + text);
            std::string cells;
            for (const std::string& cell : piece.cells) {
                told.insert(trimmed_cell(cell));
                cells += (cells.empty() ? "" : "; ") + with_degree_signs(cell);
            }
            told.insert(piece.label + ": " + cells);
            for (const auto& row : piece.table.rows())
                for (const std::string& cell : row) told.insert(cell);
        }
    }
    std::vector<std::string> strange;
    for (const std::string& line : plain_lines(html))
        if (told.count(line) == 0) strange.push_back(line);
    return strange;
}

}  // namespace

TEST_CASE("every shipped strategy's plain words are what plan, mix and soak tell, and nothing else but its name") {
    const auto shelf = shipped_shelf();
    for (const std::string& name : shelf->strategy_names()) {
        INFO(name);
        const WordedHere on_a_phone(WordsFor::phone);
        const SessionPlan plan = plan_from_half_past_nine(*shelf, name);
        std::vector<Told> answers{plan_reply(plan).told()};
        for (const PlannedBatch& batch : plan.batches) {
            const auto mix = fed_mix_called(batch.name, shelf->strategy(name), *shelf);
            if (!mix) continue;
            MixRequest request;
            request.target = DryMass{batch.dry};
            if (!batch.feel.empty()) request.feel = batch.feel;
            request.water_temperature = plan.water;
            request.today = parse_date("2026-05-16");
            answers.push_back(mix_reply(answer_mix(*shelf, *mix, request)).told());
            break;
        }
        SoakRequest soaks;
        soaks.water = plan.water;
        std::map<std::string, Mass> dry;  // of one pellet some may go into a feed, some on the hook
        for (const PlannedSoak& soak : plan.soaks) dry[soak.name] += soak.dry;
        for (const auto& [pellet, amount] : dry) soaks.items.push_back({pellet, MassOrVolume{amount}, 1});
        if (!soaks.items.empty()) answers.push_back(soak_reply(soak_pellets(*shelf, soaks)).told());
        const std::string html = plain_words(plain_contents(*shelf, {name}), {});
        CHECK(html.find("baitwright ") == std::string::npos);
        CHECK(not_told(html, answers) == std::vector<std::string>{name});
    }
}

TEST_CASE("plain words begin with the first mix: what to pour, then what to weigh; then what can hurt, then the plan") {
    const auto shelf = shipped_shelf();
    const std::string html = plain_words(plain_contents(*shelf, {"open carpet"}), {});
    std::size_t at = 0;
    for (const char* next :
         {"<h1>open carpet</h1>", "<h2>silt bed, soft: ", "<p>Pour: ", "<table><tr><th>weigh</th>",
          "<td>fishmeal, brown</td>", "<h3>Do this</h3>", "<ol><li>", "<h3>Take care</h3>",
          "<p>Fine dust: ", "<p>First: The venue&#39;s rules", "<h2>open carpet, 5 h, from 09:30 to ",
          "<h3>On the day</h3>", "<th align=\"right\">clock</th>", "<h3>Goes in, for each angler</h3>",
          "<h2>fishmeal micro pellet 2 mm: ", "<p>Pour on: "}) {
        INFO(next);
        at = html.find(next, at);
        REQUIRE(at != std::string::npos);
    }
}

TEST_CASE(
    "plain words are short, in ASCII, and of headings, paragraphs, numbered lists and tables that are all closed") {
    const auto shelf = shipped_shelf();
    for (const std::string& name : shelf->strategy_names()) {
        INFO(name);
        const std::string html = plain_words(plain_contents(*shelf, {name}), {});
        CHECK(html.size() <= most_plain_words);
        CHECK(unfit_markup(html).empty());
    }
    const std::string index = plain_words(plain_contents(*shelf, {}), {});
    CHECK(index.size() <= most_plain_words);
    CHECK(unfit_markup(index).empty());
    for (const std::string& name : shelf->recipe_names()) CHECK(index.find("<td>" + name + ", ") != std::string::npos);
}

TEST_CASE("no name can write markup, and a letter of any script comes back") {
    const auto shelf = shipped_shelf();
    BankContents contents = plain_contents(*shelf, {"open carpet"});
    MemoryShelf mine(shelf.get());
    Recipe mix = shelf->recipe("silt bed");
    mix.name = "</h2><script>alert('1')</script> & \"b\xc3\xa4r\" \xe2\x82\xac \xf0\x9f\x90\x9f";
    mine.put(mix);
    contents.strategies[0].shelf = &mine;
    contents.strategies[0].strategy.name = "<img src=x onerror=alert(1)>";
    for (Feed& feed : contents.strategies[0].strategy.feeds)
        for (FeedPart& part : feed.parts)
            if (part.of == "silt bed") part.of = mix.name;
    const std::string html = plain_words(contents, {});
    CHECK(unfit_markup(html).empty());
    CHECK(html.find("<script") == std::string::npos);
    const std::vector<std::string> lines = plain_lines(html);
    CHECK(lines.front() == "<img src=x onerror=alert(1)>");
    CHECK(lines.at(1).rfind(mix.name + ", soft: ", 0) == 0);
}

TEST_CASE("where a strategy's words would be too long, whole sections go, and no caution does") {
    const auto shelf = shipped_shelf();
    BankContents contents = plain_contents(*shelf, {"open carpet"});
    std::vector<Feed>& feeds = contents.strategies[0].strategy.feeds;
    const Feed first = feeds.front();
    for (int i = 0; i < 120; ++i) feeds.push_back(first);
    const std::string html = plain_words(contents, {});
    CHECK(html.size() <= most_plain_words);
    CHECK(unfit_markup(html).empty());
    CHECK(html.find("<p>Fine dust: ") != std::string::npos);
    CHECK(html.find("There is more of it on the page itself") != std::string::npos);
}

TEST_CASE("a venue that forbids some of it says so above the plan, with what can hurt") {
    const auto shelf = shipped_shelf();
    Venue venue;
    venue.name = "long pit";
    venue.rules = {"no boats"};
    const std::string html = plain_words(plain_contents(*shelf, {"open carpet"}), venue);
    const auto rule = html.find("<p>Venue: No boats.</p>");
    REQUIRE(rule != std::string::npos);
    CHECK(rule < html.find("<h2>open carpet, 5 h"));
}
