#include "report/kept_store_report.h"

#include <utility>
#include <vector>

#include "quantities/listed.h"

namespace baitwright {

namespace {

std::string counted(std::int64_t count, const char* one, const char* several) {
    return std::to_string(count) + " " + (count == 1 ? one : several);
}

std::string file_in_quotes(const std::string& path) {
    return "'" + path + "'";
}

Told backup_told(const BackupAnswer& answer, const std::string& back) {
    Told told;
    const bool done = answer.doing == Doing::done;
    told.say((done ? "Backed up to " + file_in_quotes(answer.file) + ", and checked: "
                   : "A backup would go to " + file_in_quotes(answer.file) + ": ") +
             contents_text(answer.contents) + ".");
    if (!answer.removed.empty())
        told.say((done ? "The oldest went: " : "The oldest would go: ") + listed(answer.removed) + ".");
    if (done) told.as_written("To have it back: " + back + "\n");
    return told;
}

Json backup_json(const BackupAnswer& answer) {
    Json json = json_record("backup", {});
    json["dry_run"] = answer.doing == Doing::looked_at;
    json["file"] = answer.file;
    json["contents"] = contents_json(answer.contents);
    json["removed"] = answer.removed;
    return json;
}

Told restore_told(const RestoreAnswer& answer, const std::string& back) {
    Told told;
    const bool done = answer.doing == Doing::done;
    told.say((done ? "Restored from " : "It can be restored from ") + file_in_quotes(answer.file) + ": " +
             contents_text(answer.contents) + ".");
    if (answer.brought_from > 0)
        told.say(done ? "It was of an older version, and was brought up to date."
                      : "It is of an older version, and would be brought up to date.");
    if (!answer.kept_aside.empty()) {
        told.say("What was there is kept as " + file_in_quotes(answer.kept_aside) + ".");
        told.as_written("To go back: " + back + "\n");
    } else if (!done) {
        told.say("What is there now would be kept beside it.");
    }
    return told;
}

Json restore_json(const RestoreAnswer& answer) {
    Json json = json_record("restore", {});
    json["dry_run"] = answer.doing == Doing::looked_at;
    json["file"] = answer.file;
    json["store"] = answer.store;
    json["contents"] = contents_json(answer.contents);
    json["version_before"] = answer.brought_from > 0 ? Json(answer.brought_from) : Json();
    json["kept_aside"] = text_or_null(answer.kept_aside);
    return json;
}

}  // namespace

std::string contents_text(const StoreContents& contents) {
    std::vector<std::string> parts{counted(contents.ingredients, "ingredient", "ingredients"),
                                   counted(contents.mixes, "mix", "mixes")};
    const auto add = [&](std::int64_t count, const char* one, const char* several) {
        if (count > 0) parts.push_back(counted(count, one, several));
    };
    add(contents.strategies, "strategy", "strategies");
    add(contents.venues, "venue", "venues");
    add(contents.blends, "blend", "blends");
    add(contents.shed_entries, "entry of the shed", "entries of the shed");
    add(contents.sessions, "session", "sessions");
    if (contents.sessions == 0) add(contents.log_entries, "entry of the log", "entries of the log");
    return listed(parts);
}

Json contents_json(const StoreContents& contents) {
    return {{"version", contents.version},
            {"ingredients", contents.ingredients},
            {"mixes", contents.mixes},
            {"strategies", contents.strategies},
            {"venues", contents.venues},
            {"blends", contents.blends},
            {"shed_entries", contents.shed_entries},
            {"sessions", contents.sessions},
            {"log_entries", contents.log_entries},
            {"bytes", contents.bytes}};
}

Reply backup_reply(BackupAnswer answer, std::string back) {
    const auto tell = [answer, back = std::move(back)] { return backup_told(answer, back); };
    return {0, tell, [answer = std::move(answer)] { return backup_json(answer); }};
}

Reply restore_reply(RestoreAnswer answer, std::string back) {
    const auto tell = [answer, back = std::move(back)] { return restore_told(answer, back); };
    return {0, tell, [answer = std::move(answer)] { return restore_json(answer); }};
}

}  // namespace baitwright
