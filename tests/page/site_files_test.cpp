#include "page/site_files.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "page/built_page.h"
#include "page/png.h"
#include "report/json.h"

using namespace baitwright;

namespace {

const std::string a_page =
    "<head>\n<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; worker-src blob:; "
    "base-uri 'none'\">\n<title>Bank page</title>\n</head>";

const std::string& bytes_of(const std::vector<SiteFile>& files, std::string_view name) {
    const auto found =
        std::find_if(files.begin(), files.end(), [&](const SiteFile& file) { return file.name == name; });
    REQUIRE(found != files.end());
    return found->bytes;
}

}  // namespace

TEST_CASE("a site is the page with its worker, manifest and icons, the page last") {
    const std::vector<SiteFile> files = site_files(a_page);
    std::vector<std::string> names;
    for (const SiteFile& file : files) names.push_back(file.name);
    CHECK(names == site_file_names());
    CHECK(names.back() == "index.html");
    CHECK(bytes_of(files, "icon-192.png").rfind("\x89PNG\r\n\x1a\n", 0) == 0);
}

TEST_CASE("the page of a site lets in its own worker, manifest and icons, and nothing else") {
    const std::string page = bytes_of(site_files(a_page), "index.html");
    CHECK(page.find("content=\"default-src 'none'; img-src data: 'self'; worker-src blob: 'self'; manifest-src 'self'; "
                    "base-uri 'none'\">") != std::string::npos);
    CHECK(page.find("<link rel=\"manifest\" href=\"manifest.webmanifest\">") < page.find("<title>"));
    CHECK_THROWS_AS(site_files("<head><title>x</title></head>"), std::logic_error);
    CHECK_THROWS_AS(site_files("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\"><title>"),
                    std::logic_error);
}

TEST_CASE("the page as it is built can be made a site") {
    const std::string built = built_page();
    if (built.empty()) return;  // made where Emscripten is installed
    CHECK_NOTHROW(site_files(built));
}

TEST_CASE("the worker knows its page by a version, another for another page, and keeps every file but itself") {
    const std::vector<SiteFile> files = site_files(a_page);
    const std::string& page = bytes_of(files, "index.html");
    const std::string& worker = bytes_of(files, "service-worker.js");
    const auto mark = page.find(site_mark);
    REQUIRE(mark != std::string::npos);
    const std::string version = page.substr(mark + site_mark.size(), 16);
    CHECK(worker.find("const version = \"" + version + "\";") != std::string::npos);
    CHECK(worker.find('@') == std::string::npos);
    for (const std::string& name : site_file_names())
        if (name != "service-worker.js" && name != "index.html")
            CHECK(worker.find('"' + name + '"') != std::string::npos);
    CHECK(bytes_of(site_files(a_page), "service-worker.js") == worker);
    CHECK(bytes_of(site_files(a_page + " "), "service-worker.js") != worker);
}

TEST_CASE("the manifest is JSON whose icons are files of the site, and each lies in its folder") {
    const std::vector<SiteFile> files = site_files(a_page);
    const auto manifest = parsed_json(bytes_of(files, "manifest.webmanifest"));
    REQUIRE(manifest);
    CHECK(manifest->at("start_url") == "./");
    CHECK(manifest->at("display") == "standalone");
    REQUIRE(manifest->at("icons").size() == 3);
    for (const Json& icon : manifest->at("icons")) CHECK_FALSE(bytes_of(files, icon["src"].text()).empty());
}

// 0xCBF43926: the check value of CRC-32/ISO-HDLC in catalogues of such sums; 0x11E60398 of "Wikipedia" is a worked
// example of Adler-32. Both from memory, and of zlib's own functions the same.
TEST_CASE("the sums of a PNG are those of its standards") {
    CHECK(crc_32("123456789") == 0xcbf43926u);
    CHECK(adler_32("Wikipedia") == 0x11e60398u);
}
