#include "report/cost_plot.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <regex>

#include "answers/sessions.h"
#include "day_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

class Priced : public MemoryShelf {
public:
    Priced() : MemoryShelf(&bank()) {
        Ingredient maggots = bank().ingredient("maggots");
        maggots.packs = {{340.0 * gram, Money(340, currency_named("GBP")), day_of("2026-03-01"), {}}};
        put(maggots);
    }
};

StrategyCost cost_named(const std::string& name, const std::string& of = "maggots") {
    static const Priced shelf;
    Strategy strategy = session({cups(of, 100, 2)});
    strategy.name = name;
    return cost_strategy(shelf, strategy, {}, {});
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = 0; (at = text.find(part, at)) != std::string::npos; at += part.size()) ++count;
    return count;
}

/// Every tag that is opened is closed in turn; no bare & or < is left in between.
bool is_well_formed(const std::string& svg) {
    std::vector<std::string> open;
    static const std::regex tag("<(/?)([a-z]+)([^<>]*?)(/?)>|[<>]|&(?!amp;|lt;|gt;|quot;)");
    for (auto it = std::sregex_iterator(svg.begin(), svg.end(), tag); it != std::sregex_iterator(); ++it) {
        const std::smatch& found = *it;
        if (!found[2].matched) return false;
        if (found[1].length() > 0) {
            if (open.empty() || open.back() != found[2].str()) return false;
            open.pop_back();
        } else if (found[4].length() == 0) {
            open.push_back(found[2].str());
        }
    }
    return open.empty();
}

}  // namespace

TEST_CASE("the picture says in words what its bars show, and in text what they come to") {
    const std::string svg = cost_plot({cost_named("far bank"), cost_named("near bank")});
    CHECK(is_well_formed(svg));
    CHECK(svg.find("<title id=\"title\">What a session costs</title>") != std::string::npos);
    // 200 ml of maggots at 600 g/l are 120 g: 340p x 120/340.
    CHECK(svg.find("far bank: £1.20 used") != std::string::npos);
    CHECK(svg.find(">£1.20 used</text>") != std::string::npos);
    CHECK(svg.find(">£3.40 to pay</text>") != std::string::npos);
    CHECK(count_of(svg, "<rect ") == 1 + 4);
}

TEST_CASE("names are escaped, whatever is in them") {
    const std::string svg = cost_plot({cost_named("<b>\"this & that\"</b>")});
    CHECK(is_well_formed(svg));
    CHECK(svg.find("&lt;b&gt;&quot;this &amp; that&quot;&lt;/b&gt;") != std::string::npos);
}

TEST_CASE("greys alone, so that a copy without colour says the same") {
    const std::string svg = cost_plot({cost_named("far bank")});
    static const std::regex colour("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})");
    std::size_t count = 0;
    for (auto it = std::sregex_iterator(svg.begin(), svg.end(), colour); it != std::sregex_iterator(); ++it, ++count)
        CHECK(((*it)[1] == (*it)[2] && (*it)[2] == (*it)[3]));
    CHECK(count > 5);
    CHECK(count_of(svg, "#") == count);
}

TEST_CASE("a strategy without any price has no bars") {
    const std::string svg = cost_plot({cost_named("far bank", "casters")});
    CHECK(is_well_formed(svg));
    CHECK(svg.find("no price is known") != std::string::npos);
    CHECK(svg.find("used</text>") == std::string::npos);
}

TEST_CASE("the longest bar fits, from a penny to a thousand pounds") {
    StrategyCost cost = cost_named("far bank");
    cost.used_range.reset();
    for (const std::int64_t outlay : {0, 1, 7, 99, 100, 101, 12345, 100000}) {
        cost.used_minor = outlay / 2;
        cost.outlay_minor = outlay;
        const std::string svg = cost_plot({cost});
        static const std::regex bar("<rect x=\"30.0\" y=\"[0-9.]+\" width=\"([0-9.]+)\"");
        for (auto it = std::sregex_iterator(svg.begin(), svg.end(), bar); it != std::sregex_iterator(); ++it)
            CHECK(std::stod((*it)[1].str()) <= 690.1);
        CHECK(count_of(svg, "stroke=\"#c8c8c8\"") >= 2);
        CHECK(count_of(svg, "stroke=\"#c8c8c8\"") <= 7);
    }
}
