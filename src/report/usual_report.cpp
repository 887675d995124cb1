#include "report/usual_report.h"

#include <fmt/format.h>

#include "bait/usual_keys.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

/// "80 ml" of "80ml": as it is written everywhere else.
std::string with_blank(const std::string& value) {
    const auto unit = value.find_first_not_of("0123456789.");
    const bool glued = unit != std::string::npos && unit > 0 && value[unit] != ' ' && value[unit] != 'x' &&
                       value.find_first_of("0123456789", unit) == std::string::npos;
    return glued ? value.substr(0, unit) + " " + value.substr(unit) : value;
}

std::string shown_values(const std::vector<std::string>& values) {
    std::vector<std::string> shown;
    shown.reserve(values.size());
    for (const std::string& value : values) shown.push_back(with_blank(value));
    return joined(shown, ", ");
}

const std::vector<std::string>* values_of(const Usual& usual, std::string_view key) {
    const auto found = usual.find(std::string(key));
    return found == usual.end() || found->second.empty() ? nullptr : &found->second;
}

Told usual_told(const Usual& usual) {
    Told told;
    bool any = false;
    for (const UsualKey& key : usual_keys) any = any || values_of(usual, key.key);
    if (!any) {
        told.say("Nothing is usual yet: every answer asks anew.");
        told.say("Tell once what you always use, as in:");
        told.as_written("  baitwright usual --pump 80ml --vessel 1l --venue \"long pit\" --kit \"cup 250\"\n");
        return told;
    }
    told.title("Your usual");
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::left, Align::left});
    for (const UsualKey& key : usual_keys)
        if (const auto* values = values_of(usual, key.key))
            table.row({std::string(key.key), shown_values(*values), std::string(key.what)});
    told.table(std::move(table));
    told.say("What you say for once goes before it.");
    return told;
}

Json usual_json(const Usual& usual) {
    Json json = json_record("usual", {});
    Json record = Json{};
    for (const UsualKey& key : usual_keys) {
        const auto* values = values_of(usual, key.key);
        const std::string name(key.key == "water-temp"   ? "water_temp"
                               : key.key == "price-pack" ? "price_pack"
                                                         : key.key);
        if (key.several)
            record[name] = values ? Json(*values) : Json::array();
        else
            record[name] = values ? Json(values->front()) : Json();
    }
    json["usual"] = std::move(record);
    return json;
}

}  // namespace

Reply usual_reply(Usual usual) {
    return reply_of(std::move(usual), usual_told, usual_json);
}

std::string usual_used_text(const Usual& used) {
    std::vector<std::string> parts;
    for (const UsualKey& key : usual_keys) {
        const auto* values = values_of(used, key.key);
        if (!values) continue;
        std::string part = fmt::format(fmt::runtime(key.used), shown_values(*values));
        if (key.key == "people" && values->front() == "1") part = "1 angler";
        if (key.key == "hands" && values->front() == "1") part = "1 pair of hands";
        parts.push_back(std::move(part));
    }
    return parts.empty() ? std::string() : "Your usual: " + joined(parts, ", ") + ".";
}

}  // namespace baitwright
