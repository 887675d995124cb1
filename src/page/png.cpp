#include "page/png.h"

#include <algorithm>

namespace baitwright {

namespace {

std::string four_bytes(unsigned number) {
    std::string bytes;
    for (const unsigned shift : {24u, 16u, 8u, 0u}) bytes += static_cast<char>((number >> shift) & 0xffu);
    return bytes;
}

std::string chunk(std::string_view kind, const std::string& data) {
    const std::string body = std::string(kind) + data;
    return four_bytes(static_cast<unsigned>(data.size())) + body + four_bytes(crc_32(body));
}

/// Bits into bytes, the lowest first (RFC 1951, section 3.1.1).
class BitText {
public:
    void number(unsigned value, unsigned bits) {
        for (unsigned i = 0; i < bits; ++i) put((value >> i) & 1u);
    }
    /// A Huffman code, which begins with its highest bit.
    void code(unsigned value, unsigned bits) {
        for (unsigned i = bits; i-- > 0;) put((value >> i) & 1u);
    }
    [[nodiscard]] const std::string& bytes() const { return bytes_; }

private:
    void put(unsigned bit) {
        if (used_ == 0) bytes_ += '\0';
        bytes_.back() = static_cast<char>(static_cast<unsigned char>(bytes_.back()) | (bit << used_));
        used_ = (used_ + 1) % 8;
    }

    std::string bytes_;
    unsigned used_ = 0;
};

/// The fixed codes of literals and lengths (RFC 1951, section 3.2.6).
void put_symbol(BitText& text, unsigned symbol) {
    if (symbol < 144)
        text.code(0x30u + symbol, 8);
    else if (symbol < 256)
        text.code(0x190u + symbol - 144, 9);
    else if (symbol < 280)
        text.code(symbol - 256, 7);
    else
        text.code(0xc0u + symbol - 280, 8);
}

/// The byte before, 3 to 258 times again: four symbols for each number of bits that follow them; from one byte back.
void put_repeat(BitText& text, unsigned times) {
    const unsigned beyond = times - 3;
    unsigned bits = 0;
    while ((beyond >> bits) >= 8) ++bits;
    put_symbol(text, times == 258 ? 285 : 257 + 4 * bits + (beyond >> bits));
    if (times < 258) text.number(beyond & ((1u << bits) - 1), bits);
    text.code(0, 5);
}

std::string deflated(std::string_view bytes) {
    BitText text;
    text.number(1, 1);  // the last block
    text.number(1, 2);  // of fixed codes
    for (std::size_t at = 0; at < bytes.size();) {
        const char byte = bytes[at];
        put_symbol(text, static_cast<unsigned char>(byte));
        const std::size_t end = std::min(bytes.find_first_not_of(byte, at), bytes.size());
        ++at;
        while (end - at >= 3) {
            const std::size_t times = std::min<std::size_t>(end - at, 258);
            put_repeat(text, static_cast<unsigned>(times));
            at += times;
        }
    }
    put_symbol(text, 256);
    return std::string("\x78\x01", 2) + text.bytes() + four_bytes(adler_32(bytes));
}

/// Each row behind the number of its filter, 2: what it differs by from the row above (section 9.2).
std::string filtered_rows(const std::vector<Pixel>& picture, std::size_t across) {
    std::string rows;
    for (std::size_t i = 0; i < picture.size(); ++i) {
        if (i % across == 0) rows += '\x02';
        for (std::size_t c = 0; c < 3; ++c) {
            const unsigned above = i < across ? 0 : picture[i - across][c];
            rows += static_cast<char>((256u + picture[i][c] - above) & 0xffu);
        }
    }
    return rows;
}

}  // namespace

unsigned crc_32(std::string_view bytes) {
    unsigned rest = 0xffffffffu;
    for (const char byte : bytes) {
        rest ^= static_cast<unsigned char>(byte);
        for (int i = 0; i < 8; ++i) rest = (rest >> 1u) ^ ((rest & 1u) != 0 ? 0xedb88320u : 0u);
    }
    return ~rest;
}

unsigned adler_32(std::string_view bytes) {
    unsigned low = 1, high = 0;
    for (const char byte : bytes) {
        low = (low + static_cast<unsigned char>(byte)) % 65521u;
        high = (high + low) % 65521u;
    }
    return (high << 16u) | low;
}

std::string png(const std::vector<Pixel>& picture, int across) {
    const auto width = static_cast<unsigned>(across);
    const auto height = static_cast<unsigned>(picture.size()) / width;
    // Eight bits a colour, three colours, the one way of packing and of filtering, not interlaced.
    const std::string head = four_bytes(width) + four_bytes(height) + std::string("\x08\x02\x00\x00\x00", 5);
    return std::string("\x89PNG\r\n\x1a\n", 8) + chunk("IHDR", head) +
           chunk("IDAT", deflated(filtered_rows(picture, width))) + chunk("IEND", "");
}

}  // namespace baitwright
