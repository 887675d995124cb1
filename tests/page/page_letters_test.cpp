// Bytes as letters: there and back, unpacked by zlib itself.
#include "page/page_letters.h"

#include <rapidcheck.h>
#include <zlib.h>

#include <catch2/catch.hpp>
#include <cstdint>

using namespace baitwright;

namespace {

/// By division of one large number, otherwise than it is written: each pair of letters is 13 bits, a last one 6.
std::string bytes_of(const std::string& letters) {
    std::string used;
    for (char letter = '!'; letter <= '~'; ++letter)
        if (letter != '<' && letter != '@' && letter != '\\') used += letter;
    std::string bits, bytes;
    const auto put = [&](std::size_t value, int count) {
        for (int bit = 0; bit < count; ++bit) bits += (value >> bit) % 2 == 1 ? '1' : '0';
    };
    for (std::size_t at = 0; at < letters.size(); at += 2) {
        const bool two = at + 1 < letters.size();
        put(used.find(letters[at]) + (two ? used.size() * used.find(letters[at + 1]) : 0), two ? 13 : 6);
    }
    for (std::size_t at = 0; at + 8 <= bits.size(); at += 8) {
        unsigned byte = 0;
        for (std::size_t bit = 0; bit < 8; ++bit) byte |= (bits[at + bit] == '1' ? 1U : 0U) << bit;
        bytes += static_cast<char>(byte);
    }
    return bytes;
}

}  // namespace

TEST_CASE("any bytes come back from their letters, neither more nor fewer") {
    CHECK(rc::check([] {
        const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
        const std::string letters = page_letters(bytes);
        RC_ASSERT(bytes_of(letters) == bytes);
        for (const char letter : letters)
            RC_ASSERT(letter > ' ' && letter < '\x7f' && letter != '<' && letter != '@' && letter != '\\');
    }));
}

TEST_CASE("letters take no more room than sixteen for thirteen bytes, and one") {
    for (std::size_t size : {0U, 1U, 2U, 13U, 1000U})
        CHECK(page_letters(std::string(size, '\xff')).size() <= size * 16 / 13 + 1);
}

TEST_CASE("what is packed is unpacked by zlib to the same text") {
    for (const std::string& text : {std::string(), std::string("Pour 735 ml."), std::string(70000, 'b')}) {
        const std::string packed = bytes_of(packed_letters(text));
        std::string back(text.size() + 1, '\0');
        uLongf size = static_cast<uLongf>(back.size());
        REQUIRE(uncompress(reinterpret_cast<Bytef*>(back.data()), &size, reinterpret_cast<const Bytef*>(packed.data()),
                           static_cast<uLong>(packed.size())) == Z_OK);
        back.resize(size);
        CHECK(back == text);
    }
}
