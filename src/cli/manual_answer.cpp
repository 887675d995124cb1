#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <cstdint>
#include <optional>

#include "cli/manual.h"
#include "cli/usual_place.h"
#include "files/disk.h"
#include "quantities/date.h"
#include "quantities/fault.h"
#include "questions/arguments.h"

namespace baitwright {

namespace {

constexpr const char* how_to_ask = "type: baitwright manual mix; or: baitwright manual --to FOLDER [--date DATE]";

/// The day of so many seconds since 1970, as the variable holds them; nothing where it holds none.
std::optional<Date> day_of_source() {
    const std::string text = environment("SOURCE_DATE_EPOCH");
    std::int64_t seconds = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), seconds);
    const auto days = std::chrono::floor<std::chrono::days>(std::chrono::seconds(seconds));
    constexpr std::chrono::days most{2900000};  // the year 9909
    if (text.empty() || read.ec != std::errc() || read.ptr != text.data() + text.size() || seconds < 0 || days > most)
        return std::nullopt;
    return Date(days);
}

struct AskedManual {
    std::string page, folder, dated;
};

AskedManual read_words(const std::vector<std::string>& words) {
    AskedManual asked;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool flag = words[i] == "--to" || words[i] == "--date";
        if ((flag && i + 1 == words.size()) || (!flag && words[i].starts_with("-")))
            throw UsageError("usage", "'manual' does not know what to do with '" + words[i] + "'", how_to_ask);
        if (words[i] == "--to")
            asked.folder = words[++i];
        else if (words[i] == "--date")
            asked.dated = date_text(flag_value("--date", [&] { return parse_date(words[++i]); }));
        else if (asked.page.empty())
            asked.page = words[i];
    }
    if (const auto stated = day_of_source()) asked.dated = date_text(*stated);
    return asked;
}

}  // namespace

std::string manual_answer(const std::vector<std::string>& words) {
    const AskedManual asked = read_words(words);
    const std::vector<ManualPage> pages = manual_pages(asked.dated);
    if (!asked.folder.empty()) {
        std::vector<FileToWrite> files;
        files.reserve(pages.size());
        for (const ManualPage& page : pages)
            files.push_back({std::filesystem::path(asked.folder) / (page.name + ".1"), page.text});
        write_text_files(files);
        return "";
    }
    const std::string name = asked.page.empty() ? "baitwright" : "baitwright-" + asked.page;
    for (const ManualPage& page : pages)
        if (page.name == name) return page.text;
    throw UsageError("unknown-command", "the manual has no page of '" + asked.page + "'", how_to_ask);
}

}  // namespace baitwright
