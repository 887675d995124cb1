#include "files/about_export.h"

#include "files/toml_reader.h"
#include "files/toml_syntax.h"
#include "files/toml_writer.h"

namespace baitwright {

namespace {

constexpr double most_rows_told = 1e15;

std::int64_t whole_under(TableReader& table, std::string_view key, std::int64_t otherwise) {
    const auto number = table.number(key, 0, most_rows_told);
    return number ? static_cast<std::int64_t>(*number) : otherwise;
}

void read_rows(TableReader& table, AboutExport& about) {
    const auto rows = table.inner("rows", "the counts of rows");
    if (!rows) return;
    for (const auto& [file, count] : rows->table())
        if (const auto number = number_of(count, file.str(), 0, most_rows_told, table.faults()))
            about.rows.emplace_back(std::string(file.str()), static_cast<std::int64_t>(*number));
}

}  // namespace

std::string about_text(const AboutExport& about) {
    TomlWriter out;
    out.line("format", std::to_string(about.format));
    out.text("made_by", about.made_by);
    out.line("made_on", date_text(about.made_on));
    out.line("store_version", std::to_string(about.store_version));
    out.line("clock", std::to_string(about.clock));
    out.text("shipped", about.shipped);
    std::string text = "# All that a store of baitwright held. To take it in again: baitwright import FOLDER\n" +
                       out.str() + "\n[rows]  # of each file, when it was written\n";
    for (const auto& [file, count] : about.rows) text += toml_quoted(file) + " = " + std::to_string(count) + "\n";
    return text;
}

bool is_about_export(std::string_view text) {
    FileFaults ignored(text, "");
    const auto root = parse_toml(text, ignored);
    if (!root) return false;
    TableReader table(*root, {1, 1}, "this file", ignored);
    return table.number("format", 1, most_rows_told).has_value() && table.has("store_version") && table.has("rows") &&
           table.text("made_by").value_or("").starts_with("baitwright ");
}

std::optional<AboutExport> read_about(std::string_view text, const std::string& file_name, std::vector<Fault>& faults) {
    FileFaults found(text, file_name);
    AboutExport about;
    if (const auto root = parse_toml(text, found)) {
        TableReader table(*root, {1, 1}, "this file", found);
        about.format = whole_under(table, "format", 0);
        about.made_by = table.text("made_by").value_or("");
        about.made_on = table.date("made_on").value_or(Date{});
        about.store_version = whole_under(table, "store_version", 0);
        about.clock = whole_under(table, "clock", 1);
        about.shipped = table.text("shipped").value_or("");
        read_rows(table, about);
        if (about.format > newest_export_format)
            found.add(table.place_of_value("format"), "newer-format", "a newer program wrote this folder",
                      "take it in with that program, or a newer one");
        else if (about.format < 1 && found.count() == 0)
            found.add({1, 1}, "missing-value", "'format' is missing", "add a line: format = 1");
    }
    const std::vector<Fault> told = found.in_file_order();
    faults.insert(faults.end(), told.begin(), told.end());
    return told.empty() ? std::optional(about) : std::nullopt;
}

}  // namespace baitwright
