#include "report/check_report.h"

#include "report/fault_text.h"

#include "report/text_table.h"

namespace baitwright {

Told check_told(const std::string& word, const std::vector<Fault>& faults, const std::vector<Warning>& odd) {
    Told told;
    if (!faults.empty()) {
        told.as_written(fault_text(faults));
        return told;
    }
    told.heading(word + ": nothing wrong" + (odd.empty() ? " and nothing odd found" : ", but this is odd"));
    for (const Warning& one : odd) told.entry("  odd: ", sentence(one.message));
    return told;
}

Json check_json(const std::string& kind, const std::string& word, const std::vector<Fault>& faults,
                const std::vector<Warning>& odd) {
    Json json = json_record(kind + " check", {});
    json[kind] = word;
    json["faults"] = json_of_faults(faults)["errors"];
    json["oddities"] = Json::array();
    for (const Warning& one : odd) json["oddities"].push_back({{"code", one.code}, {"message", one.message}});
    return json;
}

}  // namespace baitwright
