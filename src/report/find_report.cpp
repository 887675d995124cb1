#include "report/find_report.h"

#include <algorithm>

#include "quantities/edit_distance.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr std::size_t most_found_told = 20, line_width = 80, widest_name = 40, narrowest_words = 16;
constexpr std::size_t words_in_json = 60;

bool is_inside_a_letter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

/// Whole words of a text around one of its words, of about so many letters; dots stand for what is left out.
std::string words_around(const FoundEntry& found, std::size_t letters) {
    const std::string& text = found.where.text;
    if (letter_count(text) <= letters) return text;
    const std::size_t room = letters > found.size + 6 ? letters - found.size - 6 : 0;  // less dots at both ends
    std::size_t begin = found.at - std::min(found.at, room / 3);
    std::size_t end = std::min(text.size(), begin + found.size + room);
    if (begin > 0) begin = std::min(text.find(' ', begin - 1) + 1, found.at);
    if (end < text.size()) end = std::max(text.rfind(' ', end), found.at + found.size);
    while (end < text.size() && is_inside_a_letter(text[end])) ++end;
    return (begin > 0 ? "..." : "") + text.substr(begin, end - begin) + (end < text.size() ? "..." : "");
}

bool is_note(const FoundEntry& found) {
    return found.where.sort == SearchedText::Sort::note;
}

std::string padded_to(const std::string& text, std::size_t width) {
    const std::size_t letters = letter_count(text);
    return text + std::string(width > letters ? width - letters : 0, ' ');
}

std::string said_of(const FindAnswer& answer) {
    return in_quotes(joined(answer.words, " "));
}

Told nothing_told(const FindAnswer& answer) {
    Told told;
    told.say("Nothing is called " + said_of(answer) + ", and no note says it.");
    told.say(answer.near.empty()
                 ? "Try one word of it, or look through a list" + worded(": baitwright ingredient list", ".")
                 : "Near: " + joined(answer.near, "; "));
    return told;
}

Told find_told(const FindAnswer& answer) {
    if (answer.found.empty()) return nothing_told(answer);
    const std::size_t shown = std::min(answer.found.size(), most_found_told);
    std::size_t name_width = 0, is_width = 0;
    for (std::size_t i = 0; i < shown; ++i) {
        name_width = std::max(name_width, std::min(letter_count(answer.found[i].name), widest_name));
        is_width = std::max(is_width, letter_count(answer.found[i].is));
    }
    const std::size_t before = 2 + name_width + 2 + is_width + 2;
    const std::size_t room = std::max(narrowest_words, line_width > before ? line_width - before : 0);
    Told told;
    for (std::size_t i = 0; i < shown; ++i) {
        const FoundEntry& found = answer.found[i];
        const std::string lead = "  " + padded_to(found.name, name_width) + "  ";
        if (is_note(found))
            told.entry(lead + padded_to(found.is, is_width) + "  ", words_around(found, room));
        else
            told.entry(lead, found.is);
    }
    if (const std::size_t more = answer.found.size() - shown; more > 0)
        told.say("and " + std::to_string(more) + " more: add a word");
    return told;
}

Json find_json(const FindAnswer& answer) {
    Json json = json_record("find", {});
    json["words"] = answer.words;
    json["found"] = Json::array();
    for (const FoundEntry& found : answer.found)
        json["found"].push_back({{"name", found.name},
                                 {"kind", name_of(found.kind)},
                                 {"is", found.is},
                                 {"where", found.where.key},
                                 {"text", words_around(found, words_in_json)}});
    json["near"] = answer.near;
    return json;
}

Rows find_rows(const FindAnswer& answer) {
    Rows rows{{"name", "kind", "is", "where", "text"}};
    for (const FoundEntry& found : answer.found)
        rows.push_back({found.name, std::string(name_of(found.kind)), found.is, std::string(found.where.key),
                        words_around(found, words_in_json)});
    return rows;
}

}  // namespace

Reply find_reply(FindAnswer answer) {
    const int status = answer.found.empty() ? 1 : 0;
    return reply_of(std::move(answer), find_told, find_json, find_rows, status);
}

}  // namespace baitwright
