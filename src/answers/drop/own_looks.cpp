#include "answers/drop/own_looks.h"

#include "quantities/fault.h"

namespace baitwright {

namespace {

/// Why how it held together does not matter; empty where it does.
std::string why_no_hold(const DropSetup& setup, const DropAnswer& answer) {
    const DropRequest& request = *setup.request;
    if (std::holds_alternative<DroppedFeeder>(request.form)) return {};
    if (!(setup.body.under_water > Mass{})) return "the whole of it floats, so it does not break on the way down";
    if (std::holds_alternative<DroppedLoose>(request.form)) return "a loose handful parts as it goes in";
    const bool thrown_ball = request.thrown && std::holds_alternative<DroppedBall>(request.form);
    if (thrown_ball && answer.breaks == Breaks::surface && setup.how == Hold::squeezed)
        return "thrown, a ball as loose as this bursts on the surface";
    return {};
}

}  // namespace

void name_looks(const DropSetup& setup, bool sinks, DropAnswer& answer) {
    const OwnLook& own = setup.request->own;
    const auto name = [&](bool told, const char* what, const char* flag, std::string why_not) {
        if (told && why_not.empty()) answer.own.emplace_back(what);
        if (told && !why_not.empty()) answer.idle_looks.push_back({flag, std::move(why_not)});
    };
    const std::string no_hold = why_no_hold(setup, answer);
    const bool heaped = setup.how == Hold::heaped;
    const bool cup = std::holds_alternative<DroppedCup>(setup.request->form);
    name(own.holds.has_value(), "hold time", "--hold",
         heaped && own.breaks_at ? "how deep it broke says when already" : no_hold);
    name(own.breaks_at.has_value(), "breaking depth", "--breaks-at", heaped ? no_hold : "it tells of a cupful");
    name(own.carpet.has_value(), "carpet", "--carpet-seen", sinks ? "" : "nothing of it comes down");
    name(own.cup_weighs.has_value(), "packing", "--cup-weighs", cup ? "" : "it tells of a cupful");
}

void refuse_idle_looks(const DropAnswer& answer) {
    if (answer.idle_looks.empty()) return;
    const IdleLook& look = answer.idle_looks.front();
    throw UsageError("unfit-flag", look.flag + " changes nothing here: " + look.why, "leave it out");
}

}  // namespace baitwright
