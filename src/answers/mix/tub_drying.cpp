#include "answers/mix/tub_drying.h"

#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr double under_a_lid = 0.1;

void refuse(const char* message, const char* hint) {
    throw UsageError("out-of-range", message, hint);
}

}  // namespace

void check_open_tub(const DryRequest& r) {
    if (!(r.face >= Area::from_si(1e-4) && r.face <= Area::from_si(10)))
        refuse("the tub must be from 1 cm2 to 10 m2 open", "for example --tub 40x30cm");
    if (!(r.air >= Temperature::from_celsius(-5) && r.air <= Temperature::from_celsius(45)))
        refuse("the air must be from -5 to 45 degC", "for example --air-temp 22degC");
    if (!(r.humidity >= 0 && r.humidity <= 1))
        refuse("the humidity must be from 0 to 100 %", "for example --humidity 60%");
    if (!(r.wind >= Speed{} && r.wind <= 20.0 * metre_per_second))
        refuse("the wind must be from 0 to 20 m/s", "for example --wind 3m/s");
}

MassFlux tub_loss(const DryRequest& request, Ratio sheltered_to) {
    const HeatFlux sun = request.in_sun ? sun_on_bait : HeatFlux{};
    const double open_share = request.covered ? under_a_lid : 1.0;
    return open_share * wet_face_loss({request.air, request.humidity, request.wind, sun, sheltered_to});
}

double lower_edge(const std::vector<Feel>& feels, const std::string& feel) {
    double edge = 0;
    for (const Feel& known : feels) {
        if (known.name == feel) return edge;
        edge = known.below;
    }
    return 0;
}

DryingCourse drying_course(const WaterMarks& marks, Ratio at_first, Mass wetted, MassFlux loss, Area face) {
    return {at_first, marks.absorption, loss * face / wetted};
}

}  // namespace baitwright
