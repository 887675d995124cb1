#include "files/value_text.h"

#include <cmath>

#include "quantities/units.h"

namespace baitwright {

std::string amount_text(Mass mass) {
    return exact_text(mass, gram, "g");
}

std::string amount_text(Volume volume) {
    return exact_text(volume, millilitre, "ml");
}

std::string amount_text(const std::variant<Mass, Volume>& amount) {
    return std::visit([](auto either) { return amount_text(either); }, amount);
}

std::string keeping_text(Time time) {
    struct TimeUnit {
        Unit<Dimension<0, 0, 1>> unit;
        std::string_view symbol;
    };
    for (const TimeUnit& candidate : {TimeUnit{month, "month"}, TimeUnit{day, "d"}, TimeUnit{hour, "h"}}) {
        const double count = time.in(candidate.unit);
        if (count > 0.5 && std::abs(count - std::round(count)) < 1e-13 * count)
            return exact_text(time, candidate.unit, candidate.symbol);
    }
    return exact_text(time, minute, "min");
}

std::string percent_text(Ratio ratio) {
    return exact_text(ratio, percent, "%");
}

}  // namespace baitwright
