#include "report/export_report.h"

#include <utility>

#include "quantities/listed.h"
#include "report/kept_store_report.h"
#include "report/merge_report.h"

namespace baitwright {

namespace {

constexpr std::size_t most_names_told = 6;

/// The first few, and how many more.
std::string first_named(const std::vector<std::string>& names) {
    std::vector<std::string> some(names.begin(),
                                  names.begin() + static_cast<std::ptrdiff_t>(std::min(names.size(), most_names_told)));
    if (names.size() > most_names_told) some.push_back(std::to_string(names.size() - most_names_told) + " more");
    return listed(some);
}

std::string rows_text(std::int64_t count, std::string_view file) {
    const bool entries = file.ends_with(".toml");
    return std::to_string(count) + (entries ? count == 1 ? " entry" : " entries" : count == 1 ? " row" : " rows");
}

Told export_told(const ExportAnswer& answer) {
    Told told;
    const bool done = answer.doing == Doing::done;
    told.say(std::string("All that you keep ") + (done ? "is" : "would be") + " in the folder '" + answer.folder +
             (done ? "' now, as " : "', as ") + std::to_string(answer.files.size() + 1) +
             " files to read and to change.");
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::right});
    std::size_t empty = 0;
    for (const auto& [file, count] : answer.files) {
        if (count > 0)
            table.row({file, rows_text(count, file)});
        else
            ++empty;
    }
    told.table(std::move(table));
    if (empty > 0)
        told.say(empty == 1 ? "One has only its headings." : std::to_string(empty) + " have only their headings.");
    told.say(done ? "To take it in again: baitwright import '" + answer.folder + "'" : "Nothing was written.");
    return told;
}

Json export_json(const ExportAnswer& answer) {
    Json json = json_record("export", {});
    json["dry_run"] = answer.doing == Doing::looked_at;
    json["folder"] = answer.folder;
    Json files = Json::array();
    for (const auto& [file, count] : answer.files) files.push_back({{"file", file}, {"rows", count}});
    json["files"] = std::move(files);
    return json;
}

Told import_told(const ImportAnswer& answer) {
    Told told;
    const bool done = answer.doing == Doing::done;
    if (answer.merged)
        told.add(merge_reply(*answer.merged).told());
    else
        told.say("The folder '" + answer.folder + (done ? "' is your store now: " : "' would be your store: ") +
                 contents_text(answer.contents) + ".");
    if (!answer.changed.empty()) told.say("Changed by hand: " + first_named(answer.changed) + ".");
    if (!answer.fewer.empty()) told.say("Fewer rows than when it was written: " + first_named(answer.fewer) + ".");
    return told;
}

Json import_json(const ImportAnswer& answer) {
    Json json = json_record("import", {});
    json["dry_run"] = answer.doing == Doing::looked_at;
    json["folder"] = answer.folder;
    json["store"] = answer.store;
    json["contents"] = contents_json(answer.contents);
    json["changed"] = answer.changed;
    json["fewer_rows"] = answer.fewer;
    json["merged"] = answer.merged ? merge_reply(*answer.merged).json() : Json();
    return json;
}

}  // namespace

Reply export_reply(ExportAnswer answer) {
    return reply_of(std::move(answer), export_told, export_json);
}

Reply import_reply(ImportAnswer answer) {
    return reply_of(std::move(answer), import_told, import_json);
}

}  // namespace baitwright
