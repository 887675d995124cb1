#include "page/site_files.h"

#include <stdexcept>

#include "page/digest.h"
#include "page/home_icon.h"

namespace baitwright {

namespace {

constexpr std::string_view manifest_name = "manifest.webmanifest", worker_name = "service-worker.js",
                           page_name = "index.html", touch_icon_name = "icon-180.png";

constexpr std::string_view manifest_text = R"({
  "name": "Bank page",
  "short_name": "Bank page",
  "description": "Groundbait, water, pellets and the plan of a session, worked out on the phone, with no signal.",
  "lang": "en",
  "id": "./",
  "start_url": "./",
  "scope": "./",
  "display": "standalone",
  "background_color": "#f6f4ec",
  "theme_color": "#f6f4ec",
  "icons": [
    { "src": "icon-192.png", "sizes": "192x192", "type": "image/png", "purpose": "any" },
    { "src": "icon-512.png", "sizes": "512x512", "type": "image/png", "purpose": "any" },
    { "src": "icon-maskable-512.png", "sizes": "512x512", "type": "image/png", "purpose": "maskable" }
  ]
}
)";

constexpr std::string_view head_links =
    "\">\n<link rel=\"manifest\" href=\"manifest.webmanifest\">\n<link rel=\"icon\" href=\"icon-192.png\">\n"
    "<link rel=\"apple-touch-icon\" href=\"icon-180.png\">\n";

std::size_t place_of(const std::string& text, std::string_view what, std::size_t from) {
    const auto at = text.find(what, from);
    if (at == std::string::npos) throw std::logic_error("the page has no " + std::string(what));
    return at;
}

/// Puts a source more behind a rule of the policy.
void let_in(std::string& page, std::string_view rule, std::string_view more) {
    const auto policy = place_of(page, "Content-Security-Policy", 0);
    const auto at = place_of(page, rule, policy), end = page.find_first_of(";\"", at);
    if (at > page.find('>', policy)) throw std::logic_error("the policy has no " + std::string(rule));
    page.insert(end, more);
}

std::string site_page(std::string page, std::string_view version) {
    let_in(page, "worker-src ", " 'self'; manifest-src 'self'");
    let_in(page, "img-src ", " 'self'");
    const auto head = place_of(page, "<title>", 0);
    page.insert(head, std::string(site_mark) + std::string(version) + std::string(head_links));
    return page;
}

void fill_in(std::string& text, std::string_view place, std::string_view words) {
    text.replace(place_of(text, place, 0), place.size(), words);
}

std::string site_worker(std::string_view version, const std::vector<SiteFile>& kept) {
    std::string names, text(service_worker_text());
    for (const SiteFile& file : kept) names += (names.empty() ? "\"" : ", \"") + file.name + "\"";
    fill_in(text, "@VERSION@", version);
    fill_in(text, "@FILES@", names);
    return text;
}

}  // namespace

std::vector<SiteFile> site_files(const std::string& page) {
    std::vector<SiteFile> files{{std::string(manifest_name), std::string(manifest_text)},
                                {"icon-192.png", home_icon(192, IconRoom::square)},
                                {"icon-512.png", home_icon(512, IconRoom::square)},
                                {"icon-maskable-512.png", home_icon(512, IconRoom::maskable)},
                                {std::string(touch_icon_name), home_icon(180, IconRoom::square)}};
    std::string all = page;
    for (const SiteFile& file : files) all += file.bytes;
    const std::string version = digest_of({all, service_worker_text()});
    std::string worker = site_worker(version, files);
    files.push_back({std::string(worker_name), std::move(worker)});
    files.push_back({std::string(page_name), site_page(page, version)});
    return files;
}

std::vector<std::string> site_file_names() {
    std::vector<std::string> names;
    for (const std::string_view name :
         {manifest_name, std::string_view("icon-192.png"), std::string_view("icon-512.png"),
          std::string_view("icon-maskable-512.png"), touch_icon_name, worker_name, page_name})
        names.emplace_back(name);
    return names;
}

}  // namespace baitwright
