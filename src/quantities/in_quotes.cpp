#include "quantities/in_quotes.h"

#include "quantities/plain_words.h"

namespace baitwright {

namespace {

constexpr std::size_t longest_quote = 60;

bool continues_a_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

}  // namespace

std::string in_quotes(std::string_view text) {
    const bool cut = text.size() > longest_quote;
    if (cut) {
        std::size_t end = longest_quote;
        while (end > 0 && continues_a_character(text[end])) --end;
        text = text.substr(0, end);
    }
    return "'" + written_out(text) + (cut ? "...'" : "'");
}

}  // namespace baitwright
