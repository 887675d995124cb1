#include "report/change_report.h"

#include "quantities/listed.h"

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
        json["changes"].push_back({{"name", change.name},
                                   {"change", change.what},
                                   {"kind", change.kind.empty() ? Json() : Json(change.kind)}});
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
    std::size_t number = 0;
    for (const OldVersion& version : versions) {
        told.as_written("# version " + std::to_string(++number) + ", until " + version.replaced_on + "\n" +
                        (&version == &versions.back() ? version.text : as_remark(version.text)) + "\n");
    }
    return told;
}

Json old_versions_json(const std::string& command, const std::string& name, const std::vector<OldVersion>& versions) {
    Json json = json_record(command, {});
    json["name"] = name;
    json["versions"] = Json::array();
    std::size_t number = 0;
    for (const OldVersion& version : versions)
        json["versions"].push_back(
            {{"version", ++number}, {"replaced_on", version.replaced_on}, {"toml", version.text}});
    return json;
}

Reply renamed_reply(const std::string& command, const NamedAnew& entry) {
    const auto tell = [entry] {
        Told told;
        constexpr std::size_t most_named = 5;
        std::vector<std::string> where = entry.followed;
        if (where.size() > most_named + 1) {
            where.resize(most_named);
            where.push_back(std::to_string(entry.followed.size() - most_named) + " more");
        }
        told.say(entry.from + " is called " + entry.to + " now" +
                 (where.empty() ? "." : ", also in " + listed(where) + "."));
        return told;
    };
    const auto record = [command, entry] {
        Json json = json_record(command, {});
        json["kind"] = entry.kind;
        json["from"] = entry.from;
        json["to"] = entry.to;
        json["followed"] = entry.followed;
        return json;
    };
    return {0, tell, record};
}

Reply removed_reply(const std::string& command, const std::string& kind, const std::string& name,
                    const std::string& restore) {
    const auto tell = [name, restore] {
        Told told;
        told.entry(name + ": ", "removed; to have it back: " + restore);
        return told;
    };
    const auto record = [command, kind, name, restore] {
        Json json = json_record(command, {});
        json["kind"] = kind;
        json["removed"] = name;
        json["restore"] = restore;
        return json;
    };
    return {0, tell, record};
}

Reply restored_reply(const std::string& command, const PutBack& entry) {
    const auto tell = [entry] {
        Told told;
        const std::string which =
            entry.of > 1 ? " (version " + std::to_string(entry.version) + " of " + std::to_string(entry.of) + ")" : "";
        if (entry.change == "unchanged")
            told.entry(entry.name + ": ", "it is so already" + which);
        else
            told.entry(entry.name + ": ", "as it was until " + entry.until + which +
                                              (entry.change == "replaced" ? "; what it replaces is kept" : ""));
        return told;
    };
    const auto record = [command, entry] {
        Json json = json_record(command, {});
        json["kind"] = entry.kind;
        json["name"] = entry.name;
        json["version"] = entry.version;
        json["versions"] = entry.of;
        json["until"] = entry.until;
        json["change"] = entry.change;
        return json;
    };
    return {0, tell, record};
}

}  // namespace baitwright
