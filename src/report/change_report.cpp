#include "report/change_report.h"

namespace baitwright {

Told change_told(const std::vector<NamedChange>& changes) {
    Told told;
    for (const NamedChange& change : changes)
        told.entry(change.name + ": ", change.what + (change.what == "replaced" ? "; the old version is kept" : ""));
    return told;
}

Json change_json(const std::string& command, const std::vector<NamedChange>& changes) {
    Json json = json_record(command, {});
    json["changes"] = Json::array();
    for (const NamedChange& change : changes)
        json["changes"].push_back({{"name", change.name}, {"change", change.what}});
    return json;
}

namespace {

/// Each line as a remark: a file holds one entry of a name, so all but the last version stand beside it.
std::string as_remark(const std::string& toml) {
    std::string text = "# ";
    for (std::size_t i = 0; i < toml.size(); ++i) {
        text += toml[i];
        if (toml[i] == '\n' && i + 1 < toml.size()) text += "# ";
    }
    return text;
}

}  // namespace

Told old_versions_told(const std::string& name, const std::vector<OldVersion>& versions) {
    Told told;
    if (versions.empty()) told.say(name + ": no older version is kept");
    for (const OldVersion& version : versions) {
        told.as_written("# until " + version.replaced_on + "\n" +
                        (&version == &versions.back() ? version.text : as_remark(version.text)) + "\n");
    }
    return told;
}

Json old_versions_json(const std::string& command, const std::string& name, const std::vector<OldVersion>& versions) {
    Json json = json_record(command, {});
    json["name"] = name;
    json["versions"] = Json::array();
    for (const OldVersion& version : versions)
        json["versions"].push_back({{"replaced_on", version.replaced_on}, {"toml", version.text}});
    return json;
}

}  // namespace baitwright
