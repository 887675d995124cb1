#include "report/soak_plot.h"

#include <catch2/catch.hpp>

#include "answers/soaking.h"

using namespace baitwright;

namespace {

std::size_t places_of(const std::string& text, const std::string& what) {
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++count;
    return count;
}

}  // namespace

TEST_CASE("the picture of a soak names its curves and stages in words, and tells them in its description") {
    const std::string svg = soak_plot(draft::soaked(draft::soak_of("fishmeal pellet 4 mm", 1.0 * kilogram)));
    for (const char* words :
         {"average (solid)", "core (dashed)", "outside (dotted)", ">drain<", ">ready<", ">even<",
          "minutes since the water went on", "fishmeal pellet 4 mm in water at 15 °C", "ready after 35 min"})
        CHECK(svg.find(words) != std::string::npos);
    CHECK(places_of(svg, "<polyline") == 3);
    CHECK(places_of(svg, "stroke-dasharray") >= 2);  // not told by colour
}

TEST_CASE("the picture has a panel for every batch, pumped ones with a bar a stroke") {
    SoakRequest request = draft::soak_of("fishmeal pellet 4 mm", 100.0 * gram);
    request.items.push_back({"expander 4 mm", std::nullopt, 1});
    const SoakAnswer answer = draft::soaked(request);
    const std::string svg = soak_plot(answer);
    CHECK(svg.find("height=\"760\"") != std::string::npos);
    CHECK(svg.find("expander 4 mm under the pump") != std::string::npos);
    CHECK(places_of(svg, "<rect ") == 1 + answer.pumped[0].by_stroke.size());
}

TEST_CASE("several waters are drawn one below the other, each pellet over the same time") {
    SoakRequest request = draft::soak_of("fishmeal pellet 4 mm", 1.0 * kilogram);
    std::vector<SoakAnswer> answers;
    for (const double celsius : {5.0, 20.0}) {
        request.water = Temperature::from_celsius(celsius);
        answers.push_back(draft::soaked(request));
    }
    const std::string svg = soak_plot(answers);
    CHECK(svg.find(">fishmeal pellet 4 mm in water at 5 °C<") != std::string::npos);
    CHECK(svg.find(">fishmeal pellet 4 mm in water at 20 °C<") != std::string::npos);
    CHECK(places_of(svg, "<polyline") == 6);
    CHECK(svg.find("height=\"760\"") != std::string::npos);
    CHECK(places_of(svg, ">80<") == 2);  // minutes, of the cold one, on both axes
}

TEST_CASE("only greys are drawn") {
    const std::string svg = soak_plot(draft::soaked(draft::soak_of("expander 4 mm", 50.0 * gram)));
    for (std::size_t at = svg.find("=\"#"); at != std::string::npos; at = svg.find("=\"#", at + 1))
        CHECK((svg.substr(at + 3, 2) == svg.substr(at + 5, 2) && svg.substr(at + 5, 2) == svg.substr(at + 7, 2)));
}
