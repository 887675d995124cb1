#include "cli/usual_told.h"

#include <algorithm>

#include "report/json.h"
#include "report/text_table.h"
#include "report/usual_report.h"

namespace baitwright {

void give_usual(Arguments& arguments, const CommandSpec& command, Usual usual) {
    if (usual.empty()) return;
    arguments.know_usual(std::move(usual));
    for (const Flag& flag : command.flags)
        if (!flag.usual.empty()) arguments.give_usual(std::string(flag.name), std::string(flag.usual));
}

void tell_usual(CommandResult& result, const Arguments& arguments) {
    Usual used;
    for (const auto& [flag, key] : arguments.given_usual())
        if (std::find(result.unheeded.begin(), result.unheeded.end(), flag) == result.unheeded.end())
            used[key] = arguments.all_usual().at(key);
    if (used.empty() || result.output.empty()) return;
    if (arguments.has("--json")) {
        auto json = parsed_json(result.output);
        if (!json) return;
        Json record;
        for (const auto& [key, values] : used) record[key] = key == "kit" ? Json(values) : Json(values.front());
        (*json)["usual"] = std::move(record);
        result.output = json_text(*json);
    } else if (arguments.has("--csv")) {
        result.aside += "note: " + usual_used_text(used) + "\n";
    } else {
        result.output += "\n" + paragraph("", usual_used_text(used));
    }
}

}  // namespace baitwright
