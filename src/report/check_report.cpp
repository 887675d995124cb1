#include "report/check_report.h"

#include "report/text_table.h"

namespace baitwright {

std::string check_text(const std::string& word, const std::vector<Warning>& odd) {
    std::string text = word + ": nothing wrong" + (odd.empty() ? " and nothing odd found\n" : ", but this is odd\n");
    for (const Warning& one : odd) text += paragraph("  odd: ", sentence(one.message));
    return text;
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
