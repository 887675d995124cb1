#include "report/json.h"

namespace baitwright {

namespace {

constexpr int schema_version = 1;

Json place_or_null(int place) {
    return place > 0 ? Json(place) : Json();
}

}  // namespace

Json text_or_null(const std::string& text) {
    return text.empty() ? Json() : Json(text);
}

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

}  // namespace baitwright
