#include "report/change_report.h"

namespace baitwright {

std::string change_text(const std::vector<NamedChange>& changes) {
    std::string text;
    for (const NamedChange& change : changes)
        text += change.name + ": " + change.what + (change.what == "replaced" ? "; the old version is kept\n" : "\n");
    return text;
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

std::string old_versions_text(const std::string& name, const std::vector<OldVersion>& versions) {
    if (versions.empty()) return name + ": no older version is kept\n";
    std::string text;
    for (const OldVersion& version : versions) {
        text += "# until " + version.replaced_on + "\n";
        text += (&version == &versions.back() ? version.text : as_remark(version.text)) + "\n";
    }
    return text;
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
