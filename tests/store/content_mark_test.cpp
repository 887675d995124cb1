#include "store/content_mark.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <catch2/catch.hpp>

using namespace baitwright;

namespace {

std::string digits(std::string_view bytes) {
    std::string text;
    for (const std::uint8_t byte : sha256(bytes)) text += fmt::format("{:02x}", byte);
    return text;
}

}  // namespace

// Source: NIST, "Cryptographic Standards and Guidelines: Example Values", SHA-256 (held against coreutils' sha256sum).
TEST_CASE("the digest of the published examples is the published one") {
    CHECK(digits("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(digits("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(digits("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(digits(std::string(1'000'000, 'a')) == "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("a mark is half the digest of texts that each end, so that what is shifted between them is another") {
    CHECK(mark_of({"a", "b"}) == digits("a\x1f"
                                        "b\x1f")
                                     .substr(0, 32));
    CHECK(mark_of({"ab", ""}) != mark_of({"a", "b"}));
    CHECK(mark_of_undoing("0123456789abcdef0000111122223333") == "00001111222233330123456789abcdef");
}

TEST_CASE("SQL gives the same mark as the program, with nothing for null and every digit of a number") {
    SQLite::Database database(":memory:");
    know_mark_of(database);
    CHECK(database.execAndGet("SELECT mark_of('a', 12, NULL, 0.1)").getString() ==
          mark_of({"a", "12", "", "0.10000000000000001"}));
    CHECK(database.execAndGet("SELECT mark_of()").getString() == mark_of({}));
}
