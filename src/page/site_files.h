#pragma once

#include <string>
#include <string_view>
#include <vector>

/// A bank page as a folder that any host serves over HTTPS: it goes on a phone's home screen and opens without a
/// signal.
namespace baitwright {

struct SiteFile {
    std::string name;
    std::string bytes;
};

/// What a page of ours says of itself in its head, before its version: how an `index.html` is known to be one.
inline constexpr std::string_view site_mark = R"(<meta name="page-version" content=")";

/// The page, its service worker, its manifest and its icons, `index.html` last. The same page gives the same files;
/// another page another version, by which a phone knows that it was made anew. In the head of the page the policy lets
/// in its own worker, manifest and icons, and nothing else. Throws std::logic_error where the page has no such policy.
/// **Source**: W3C, Service Workers (2022), sections 3 and 4; Web Application Manifest, sections 1 to 3; from memory.
std::vector<SiteFile> site_files(const std::string& page);

/// The names of these.
std::vector<std::string> site_file_names();

/// The worker's text, but for its version and its files.
std::string_view service_worker_text();

}  // namespace baitwright
