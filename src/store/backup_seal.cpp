#include "store/backup_seal.h"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <algorithm>
#include <cstdint>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view seal_words = "sealed by baitwright, digest ", after_words = " after ";
constexpr std::size_t header_bytes = 100, at_page_bytes = 16, at_writings = 24, at_pages = 28, at_valid_for = 92;

/// What the seal must know of the file: from its header, and of all its pages.
struct Sealed {
    std::uint64_t page_bytes = 0, pages = 0, digest = 0xcbf29ce484222325U;
    std::uint32_t writings = 0, valid_for = 0;
};

std::uint32_t big_endian(const std::string& bytes, std::size_t at) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8U | static_cast<unsigned char>(bytes[at + i]);
    return number;
}

/// False where that is no header of SQLite's.
bool read_header(std::ifstream& file, Sealed& sealed) {
    std::string header(header_bytes, '\0');
    if (!file.read(header.data(), static_cast<std::streamsize>(header.size()))) return false;
    const std::uint64_t stated = big_endian(header, at_page_bytes) >> 16U;
    sealed.page_bytes = stated == 1 ? 65536 : stated;
    sealed.pages = big_endian(header, at_pages);
    sealed.writings = big_endian(header, at_writings);
    sealed.valid_for = big_endian(header, at_valid_for);
    return sealed.page_bytes >= 512 && (sealed.page_bytes & (sealed.page_bytes - 1)) == 0 && file.seekg(0);
}

bool digest_pages(std::ifstream& file, Sealed& sealed) {
    std::vector<char> block(std::size_t{1} << 20U);
    for (std::uint64_t left = sealed.page_bytes * sealed.pages; left > 0;) {
        const auto wanted = static_cast<std::size_t>(std::min<std::uint64_t>(left, block.size()));
        if (!file.read(block.data(), static_cast<std::streamsize>(wanted))) return false;
        for (std::size_t i = 0; i < wanted; ++i)
            sealed.digest = (sealed.digest ^ static_cast<unsigned char>(block[i])) * 0x100000001b3U;
        left -= wanted;
    }
    return true;
}

std::string hexadecimal(std::uint64_t number) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text(16, '0');
    for (std::size_t i = text.size(); i-- > 0; number >>= 4U) text[i] = digits[number & 15U];
    return text;
}

std::string seal_page(const Sealed& sealed) {
    std::string page(sealed.page_bytes, '\0');
    const std::string text = std::string(seal_words) + hexadecimal(sealed.digest) + std::string(after_words) +
                             hexadecimal(sealed.writings) + "\n";
    return page.replace(0, text.size(), text);
}

/// The file's last page, empty where it has none.
std::string last_page(std::ifstream& file, std::uint64_t size, std::uint64_t page_bytes) {
    if (size < 2 * page_bytes || size % page_bytes != 0) return {};
    std::string page(page_bytes, '\0');
    const bool read = file.seekg(static_cast<std::streamoff>(size - page_bytes)) &&
                      file.read(page.data(), static_cast<std::streamsize>(page.size())) && file.seekg(0);
    return read ? page : std::string();
}

}  // namespace

void seal_backup(const fs::path& path) {
    Sealed sealed;
    std::ifstream file(path, std::ios::binary);
    std::error_code failed;
    if (!file || !read_header(file, sealed) || !digest_pages(file, sealed) ||
        fs::file_size(path, failed) != sealed.page_bytes * sealed.pages || failed)
        throw SQLite::Exception("it cannot be read again", SQLITE_IOERR);
    file.close();
    const std::string page = seal_page(sealed);
    std::ofstream end(path, std::ios::binary | std::ios::app);
    if (!end.write(page.data(), static_cast<std::streamsize>(page.size())) || !end.flush())
        throw SQLite::Exception("its seal cannot be written", SQLITE_FULL);
}

Seal seal_of(const fs::path& path) {
    Sealed sealed;
    std::ifstream file(path, std::ios::binary);
    std::error_code failed;
    const std::uint64_t size = fs::file_size(path, failed);
    if (failed || !file || !read_header(file, sealed)) return Seal::none;
    const std::string last = last_page(file, size, sealed.page_bytes);
    if (!last.starts_with(seal_words)) return Seal::none;
    const std::string after = last.substr(seal_words.size() + 16 + after_words.size(), 16);
    if (sealed.writings == sealed.valid_for && after != hexadecimal(sealed.writings)) return Seal::none;
    const bool holds =
        size == sealed.page_bytes * (sealed.pages + 1) && digest_pages(file, sealed) && last == seal_page(sealed);
    return holds ? Seal::holds : Seal::broken;
}

}  // namespace baitwright
