#include "page/phone_errors.h"

namespace baitwright {

Json phone_errors(const std::vector<Fault>& faults) {
    Json json = json_of_faults(faults);
    for (std::size_t i = 0; i < faults.size(); ++i) json["errors"][i]["field"] = text_or_null(faults[i].subject);
    return json;
}

}  // namespace baitwright
