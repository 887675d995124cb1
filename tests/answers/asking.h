#pragma once

#include <algorithm>
#include <string>

#include "answers/mix/answer_mix.h"
#include "answers/mix/scale_mix.h"
#include "bait/draft_shelf.h"
#include "bait/resolve_mix.h"

/// Short ways to ask for a mix of the draft ingredients.
namespace baitwright::draft {

inline MixRequest request_for(MixTarget target) {
    MixRequest request;
    request.target = std::move(target);
    return request;
}

inline MixRequest request_for(MixTarget target, std::string feel) {
    MixRequest request = request_for(std::move(target));
    request.feel = std::move(feel);
    return request;
}

inline MixAnswer scaled(const Recipe& recipe, const MixRequest& request, const Shelf& from = shelf()) {
    return scale_mix(resolve(recipe, from), from.feels(), request);
}

inline MixAnswer kilo(const Recipe& recipe, std::string feel) {
    return scaled(recipe, request_for(DryMass{1.0 * kilogram}, std::move(feel)));
}

inline bool warns(const MixAnswer& answer, const std::string& code) {
    return std::any_of(answer.warnings.begin(), answer.warnings.end(),
                       [&](const Warning& warning) { return warning.code == code; });
}

}  // namespace baitwright::draft
