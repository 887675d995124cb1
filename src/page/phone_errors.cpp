#include "page/phone_errors.h"

#include "page/phone_words.h"

namespace baitwright {

Json phone_errors(const std::vector<Fault>& faults) {
    std::vector<Fault> told;
    told.reserve(faults.size());
    for (const Fault& fault : faults) told.push_back(phone_fault(fault));
    Json json = json_of_faults(told);
    for (std::size_t i = 0; i < told.size(); ++i) json["errors"][i]["field"] = text_or_null(told[i].subject);
    return json;
}

}  // namespace baitwright
