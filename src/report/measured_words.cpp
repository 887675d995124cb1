#include "report/measured_words.h"

#include <fmt/format.h>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

struct ShownAmount {
    std::string operator()(Temperature temperature) const { return shown_temperature(temperature); }
    std::string operator()(Length length) const { return shown_as_told(length); }
    std::string operator()(Speed speed) const { return shown_tow(speed); }
    std::string operator()(Time time) const { return shown_moment(time); }
    std::string operator()(Volume volume) const { return shown_size(volume); }
};

}  // namespace

std::string shown_words(const MeasuredText& text) {
    std::string words = text.words;
    std::size_t from = 0;
    for (const MeasuredText::Amount& amount : text.amounts) {
        const std::size_t at = words.find("{}", from);
        if (at == std::string::npos) break;
        const std::string shown = std::visit(ShownAmount{}, amount);
        words.replace(at, 2, shown);
        from = at + shown.size();
    }
    return words;
}

std::string metric_words(const MeasuredText& text) {
    const UnitsShownHere metric(ShownUnits{});
    return shown_words(text);
}

std::string shown_tow(Speed tow) {
    if (units_shown().system == UnitSystem::imperial)
        return fmt::format("{:.2g} mph", double(tow / parse<Speed>("1 mph")));
    return fmt::format("{:.3g} cm/s", tow.in(centimetre_per_second));
}

}  // namespace baitwright
