#include "report/json.h"

#include <cmath>
#include <stdexcept>

namespace baitwright {

namespace {

constexpr int schema_version = 1;

void refuse_non_finite(const Json& json) {
    if (json.is_number_float() && !std::isfinite(json.get<double>()))
        throw std::logic_error("a number in the answer is not finite");
    if (json.is_structured())
        for (const Json& inner : json) refuse_non_finite(inner);
}

Json text_or_null(const std::string& text) {
    return text.empty() ? Json() : Json(text);
}

Json place_or_null(int place) {
    return place > 0 ? Json(place) : Json();
}

}  // namespace

Json json_record(const std::string& command, const std::vector<Warning>& warnings) {
    Json record{{"schema_version", schema_version}, {"command", command}, {"warnings", Json::array()}};
    for (const Warning& warning : warnings)
        record["warnings"].push_back({{"code", warning.code}, {"message", warning.message}});
    return record;
}

Json json_minor(const std::optional<Money>& money) {
    return money ? Json(money->minor()) : Json();
}

Json json_of_faults(const std::vector<Fault>& faults) {
    Json errors = Json::array();
    for (const Fault& fault : faults)
        errors.push_back({{"code", fault.code},
                          {"message", fault.message},
                          {"file", text_or_null(fault.file)},
                          {"line", place_or_null(fault.line)},
                          {"column", place_or_null(fault.column)},
                          {"hint", text_or_null(fault.hint)}});
    return {{"errors", std::move(errors)}};
}

std::string json_text(const Json& json) {
    refuse_non_finite(json);
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace baitwright
