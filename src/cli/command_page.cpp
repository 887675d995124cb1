#include "cli/commands.h"

#include <fmt/format.h>

#include <cmath>

#include "cli/beside_program.h"
#include "cli/cost_flags.h"
#include "cli/output_file.h"
#include "cli/page_contents.h"
#include "cli/page_engine.h"
#include "cli/result_formats.h"
#include "cli/site_folder.h"
#include "files/disk.h"
#include "page/bank_page.h"
#include "page/plain_words.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "report/json.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

/// Where the page goes: a file, or a folder that is a site.
struct PagePlace {
    std::filesystem::path file, folder;  ///< one of them
    [[nodiscard]] bool is_site() const { return !folder.empty(); }
};

/// Refuses, before anything is worked out, a place that is taken.
PagePlace page_place(const Arguments& arguments, const Surroundings& around) {
    const auto path = arguments.value("-o");
    if (path && arguments.has("--site"))
        throw UsageError("two-places", "-o and --site were both given", "give one of them: a file, or a folder");
    if (arguments.has("--site")) return {{}, site_folder(arguments, around.library.store)};
    if (!path)
        throw UsageError("no-file", "where is the page to go?",
                         "say it with -o bank.html; or, to put it on the web, with --site site");
    if (goes_to_standard_output(arguments, "a page")) return {*path, {}};
    if (!path->ends_with(".html"))
        throw UsageError("unfit-page", in_quotes(*path) + " does not end in .html", "a page is one file: -o bank.html");
    keep_unless_told(*path, arguments);
    return {*path, {}};
}

/// What was written, and where.
struct WrittenPage {
    PagePlace place;
    std::string page;
    std::vector<std::string> files;  ///< of a site
    std::size_t bytes = 0;           ///< of all of it
};

WrittenPage write_page(const PagePlace& place, std::string page) {
    if (!place.is_site()) {
        write_text_file(place.file, page);
        return {place, page, {}, page.size()};
    }
    const std::vector<SiteFile> files = site_files(page);
    write_site(place.folder, files);
    WrittenPage written{place, std::move(page), {}, 0};
    for (const SiteFile& file : files) {
        written.files.push_back(file.name);
        written.bytes += file.bytes.size();
    }
    return written;
}

std::string what_is_on(const BankContents& contents) {
    if (contents.strategies.empty())
        return fmt::format("the whole library, {} strategies and {} mixes,", contents.library->strategy_names().size(),
                           contents.library->recipe_names().size());
    std::vector<std::string> names;
    for (const CarriedStrategy& carried : contents.strategies) names.push_back(carried.strategy.name);
    return listed(names);
}

void tell_site_steps(Told& told) {
    told.say(
        "Put the folder as it is on any host that serves it over https, and open its address on the phone once while there is "
        "signal: from then on it opens without. Made anew and put there again, it takes the old one's place at the next visit with "
        "signal. Who knows the address can read what you put on the page; what you enter on it stays on the phone.");
    told.gap();
    for (const HomeScreenStep& step : home_screen_steps)
        told.say(std::string(step.phone) + ": " + std::string(step.what));
}

Told page_told(const BankContents& contents, const WrittenPage& written, const std::vector<Warning>& warnings) {
    const double kilobytes = std::round(static_cast<double>(written.bytes) / 1000);
    Told told;
    if (written.place.is_site()) {
        told.say(fmt::format("The bank page of {} is in the folder {} ({} files, {:.0f} kB).", what_is_on(contents),
                             written.place.folder.string(), written.files.size(), kilobytes));
        tell_site_steps(told);
    } else {
        told.say(fmt::format("The bank page of {} is in {} ({:.0f} kB).", what_is_on(contents),
                             written.place.file.string(), kilobytes));
        told.say(
            "Send it to the phone and open it there once before you leave: it needs no signal and no other file. What you enter on it "
            "stays on the phone.");
    }
    told.mind(warnings);
    return told;
}

Json page_json(const Json& data, const WrittenPage& written, const std::vector<Warning>& warnings) {
    Json json = json_record("page", warnings);
    const PagePlace& place = written.place;
    json["file"] = (place.is_site() ? place.folder / "index.html" : place.file).string();
    json["folder"] = place.is_site() ? Json(place.folder.string()) : Json();
    json["files"] = written.files;
    json["bytes"] = written.bytes;
    for (const char* key : {"id", "made_on", "start", "people", "strategies", "have"}) json[key] = data[key];
    return json;
}

CommandResult run_page(const Arguments& arguments, const Surroundings& around) {
    const PagePlace place = page_place(arguments, around);
    const PageContents asked = page_contents(arguments, around);
    const Json data = bank_data(asked.contents);
    std::string page =
        bank_page(page_engine(this_program(), around.version), plain_words(asked.contents, asked.venue), data);
    const std::vector<Warning> warnings = unpriced_on_page(asked.contents);
    if (place.file == "-") return {std::move(page), warnings.empty() ? 0 : 1, OutputForm::bytes};
    const WrittenPage written = write_page(place, std::move(page));
    return given(arguments, {warnings.empty() ? 0 : 1, [&] { return page_told(asked.contents, written, warnings); },
                             [&] { return page_json(data, written, warnings); }});
}

}  // namespace

CommandSpec command_page() {
    return {"page",
            "the same engine on a phone with no signal: one file to open at the water",
            {{"STRATEGY", "names or TOML files (default: every strategy of the library)", true, false}},
            {{"-o", "FILE", "where to: bank.html; - for standard output"},
             {"--site", "FOLDER", "where to, for a web host and the home screen"},
             {"--replace", "", "lets it write over a file, or into a folder in use"},
             {"--start", "CLOCK", "the first put-in: 09:30 (default: chosen on the phone)"},
             {"--people", "NUMBER", "how many anglers, each feeding all of it", false, "people"},
             have_flag(),
             {"--empty-shed", "", "as if nothing were in the shed"}},
            run_page,
            R"(baitwright page "open carpet" --start 09:30 -o bank.html
baitwright page --site site)"};
}

}  // namespace baitwright
