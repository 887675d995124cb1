#include <string>
#include <utility>

#include "report/kept_store_report.h"

namespace baitwright {

namespace {

std::string counted_things(std::size_t count) {
    return std::to_string(count) + (count == 1 ? " thing" : " things");
}

std::string found_text(const StoreHealth& health) {
    const std::size_t count = health.findings.count();
    if (!health.mended) return counted_things(count) + (count == 1 ? " is wrong" : " are wrong");
    if (health.copy.empty()) return counted_things(count) + " cannot be mended from here";
    const std::size_t mended = health.found_before > count ? health.found_before - count : 0;
    return std::to_string(mended) + " mended, " + counted_things(count) + " left";
}

/// What the doctor mends is said once, below.
void tell_findings(Told& told, const StoreFindings& findings, bool mended) {
    for (const StoreFinding& finding : findings.told()) {
        told.entry("  - ", finding.what + ".");
        if (finding.todo != put_right_todo) told.entry("    ", "hint: " + finding.todo);
    }
    if (findings.untold() > 0) told.say("And " + std::to_string(findings.untold()) + " more of the same sort.");
    if (findings.any_mendable() && !mended) told.say("Put right what can be: baitwright doctor --mend");
}

Told doctor_told(const StoreHealth& health) {
    Told told;
    const std::size_t count = health.findings.count();
    if (count > 0) {
        told.title(found_text(health));
        tell_findings(told, health.findings, health.mended);
    } else {
        told.say((health.copy.empty() ? "All is well: " : "All is well now: ") + contents_text(health.contents) + ".");
        told.say("Looked at: the file, every number and name in it, its sums, its marks.");
    }
    if (!health.copy.empty()) told.say("As it was before it is kept as '" + health.copy + "'.");
    return told;
}

Json finding_json(const StoreFinding& finding) {
    return {{"code", finding.code}, {"message", finding.what}, {"hint", finding.todo}, {"mendable", finding.mendable}};
}

Json doctor_json(const StoreHealth& health) {
    Json json = json_record("doctor", {});
    json["sound"] = health.findings.count() == 0;
    json["store"] = health.store;
    json["contents"] = contents_json(health.contents);
    json["findings"] = Json::array();
    for (const StoreFinding& finding : health.findings.told()) json["findings"].push_back(finding_json(finding));
    json["more_findings"] = health.findings.untold();
    json["found_before_mending"] = health.mended ? Json(health.found_before) : Json();
    json["kept_before_mending"] = text_or_null(health.copy);
    return json;
}

}  // namespace

Reply doctor_reply(StoreHealth health) {
    const int status = health.findings.count() == 0 ? 0 : 1;
    return reply_of<StoreHealth>(std::move(health), doctor_told, doctor_json, nullptr, status);
}

}  // namespace baitwright
