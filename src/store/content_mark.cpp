#include "store/content_mark.h"

#include <SQLiteCpp/Exception.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <bit>

namespace baitwright {

namespace {

using Words = std::array<std::uint32_t, 8>;
constexpr std::size_t block_bytes = 64;

/// The first 32 bits of the fractional parts of the square roots of the first 8 primes, and of the cube roots of the
/// first 64.
constexpr Words first_words{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                            0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
constexpr std::array<std::uint32_t, 64> round_words{
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

std::array<std::uint32_t, 64> scheduled(const char* block) {
    std::array<std::uint32_t, 64> w{};
    for (std::size_t i = 0; i < 16; ++i)
        for (std::size_t byte = 0; byte < 4; ++byte)
            w[i] = w[i] << 8U | static_cast<unsigned char>(block[4 * i + byte]);
    for (std::size_t i = 16; i < 64; ++i) {
        const std::uint32_t a = w[i - 15], b = w[i - 2];
        w[i] = w[i - 16] + (std::rotr(a, 7) ^ std::rotr(a, 18) ^ a >> 3U) + w[i - 7] +
               (std::rotr(b, 17) ^ std::rotr(b, 19) ^ b >> 10U);
    }
    return w;
}

void take_block(Words& sum, const char* block) {
    const std::array<std::uint32_t, 64> w = scheduled(block);
    auto [a, b, c, d, e, f, g, h] = sum;
    for (std::size_t i = 0; i < 64; ++i) {
        const std::uint32_t one =
            h + (std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25)) + ((e & f) ^ (~e & g)) + round_words[i] + w[i];
        const std::uint32_t two =
            (std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
        h = g, g = f, f = e, e = d + one;
        d = c, c = b, b = a, a = one + two;
    }
    const Words turned{a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += turned[i];
}

std::string mark_of_joined(std::string_view joined) {
    const auto bytes = sha256(joined);
    std::string mark;
    for (std::size_t i = 0; i < 16; ++i) mark += fmt::format("{:02x}", bytes[i]);
    return mark;
}

constexpr char text_end = '\x1f';

void append_text_of(std::string& joined, sqlite3_value* value) {
    if (sqlite3_value_type(value) == SQLITE_FLOAT) {
        joined += fmt::format("{:.17g}", sqlite3_value_double(value));
    } else if (const auto* text = sqlite3_value_text(value)) {
        joined.append(reinterpret_cast<const char*>(text), static_cast<std::size_t>(sqlite3_value_bytes(value)));
    }
    joined += text_end;
}

void run_mark_of(sqlite3_context* context, int count, sqlite3_value** values) {
    try {
        std::string joined;
        for (int i = 0; i < count; ++i) append_text_of(joined, values[i]);
        const std::string mark = mark_of_joined(joined);
        sqlite3_result_text(context, mark.data(), static_cast<int>(mark.size()), SQLITE_TRANSIENT);
    } catch (const std::bad_alloc&) {
        sqlite3_result_error_nomem(context);
    }
}

}  // namespace

std::array<std::uint8_t, 32> sha256(std::string_view bytes) {
    std::string padded(bytes);
    padded += '\x80';
    padded.resize((padded.size() + 8 + block_bytes - 1) / block_bytes * block_bytes - 8, '\0');
    const std::uint64_t bits = std::uint64_t{bytes.size()} * 8;
    for (unsigned shift = 64; shift != 0; shift -= 8) padded += static_cast<char>(bits >> (shift - 8) & 0xffU);
    Words sum = first_words;
    for (std::size_t at = 0; at < padded.size(); at += block_bytes) take_block(sum, padded.data() + at);
    std::array<std::uint8_t, 32> result{};
    for (std::size_t i = 0; i < result.size(); ++i)
        result[i] = static_cast<std::uint8_t>(sum[i / 4] >> (24 - 8 * (i % 4)) & 0xffU);
    return result;
}

std::string mark_of(std::initializer_list<std::string_view> texts) {
    std::string joined;
    for (const std::string_view text : texts) (joined += text) += text_end;
    return mark_of_joined(joined);
}

std::string mark_of_undoing(std::string_view mark) {
    const std::size_t half = mark.size() / 2;
    return std::string(mark.substr(half)) + std::string(mark.substr(0, half));
}

void know_mark_of(SQLite::Database& database) {
    const int result = sqlite3_create_function_v2(database.getHandle(), "mark_of", -1,
                                                  SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_DIRECTONLY, nullptr,
                                                  run_mark_of, nullptr, nullptr, nullptr);
    if (result != SQLITE_OK) throw SQLite::Exception(database.getHandle(), result);
}

}  // namespace baitwright
