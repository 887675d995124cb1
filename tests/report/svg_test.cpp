#include "report/svg.h"

#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("a drawing has a title and a description that a screen reader finds") {
    const std::string text = Svg(100, 50, "Soak", "What it shows").document();
    CHECK(text.find("<svg xmlns=\"http://www.w3.org/2000/svg\"") == 0);
    CHECK(text.find("role=\"img\" aria-labelledby=\"title desc\"") != std::string::npos);
    CHECK(text.find("<title id=\"title\">Soak</title>") != std::string::npos);
    CHECK(text.find("<desc id=\"desc\">What it shows</desc>") != std::string::npos);
    CHECK(text.ends_with("</svg>\n"));
}

// XML 1.0, section 2.4 (from memory): & and < never stand for themselves in text.
TEST_CASE("names with marks of XML are shown as they are and break nothing") {
    Svg svg(100, 50, "<script>alert(1)</script> & \"more\"", "a < b");
    svg.text({1, 2}, "r\xC3\xB6t <b>&\x01");
    const std::string text = svg.document();
    CHECK(text.find("<script>") == std::string::npos);
    CHECK(text.find("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;more&quot;") != std::string::npos);
    CHECK(text.find("r\xC3\xB6t &lt;b&gt;&amp; <") != std::string::npos);
}

TEST_CASE("an axis is parted by one, two or five of a power of ten") {
    CHECK(round_step(60, 6) == Approx(10));
    CHECK(round_step(70, 6) == Approx(20));
    CHECK(round_step(0.9, 6) == Approx(0.2));
    CHECK(round_step(3000, 6) == Approx(500));
}
