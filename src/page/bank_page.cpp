#include "page/bank_page.h"

#include <array>
#include <stdexcept>

#include "page/page_letters.h"

namespace baitwright {

namespace {

constexpr std::string_view place_of_plain = "@PLAIN@", place_of_data = "@BANK_DATA@",
                           place_of_library = "@BANK_LIBRARY@";

/// What only the engine reads.
constexpr std::array keys_for_engine{"library", "usual", "advice", "learnt"};

/// JSON that cannot end the script element it stands in, whatever names it holds. In ASCII, for one other letter makes
/// a browser keep the whole page in twice the room.
std::string as_script_text(const Json& data) {
    std::string text;
    for (const char letter : json_line(data, JsonLetters::ascii)) {
        if (letter == '<')
            text += "\\u003c";
        else
            text += letter;
    }
    return text;
}

/// The page up to the place, which is taken off what is left of it.
std::string_view cut_at(std::string_view place, std::string_view& left) {
    const auto at = left.find(place);
    if (at == std::string_view::npos) throw std::logic_error("the page has no place for its data");
    const std::string_view before = left.substr(0, at);
    left.remove_prefix(at + place.size());
    return before;
}

Json taken_out(Json& data) {
    Json for_engine = Json::object();
    for (const char* key : keys_for_engine)
        if (const Json* value = data.find(key)) for_engine[key] = *value;
    for (const char* key : keys_for_engine) data.erase(key);
    return for_engine;
}

}  // namespace

std::string bank_page(std::string_view left, std::string_view plain, Json data) {
    const Json for_engine = taken_out(data);
    std::string page(cut_at(place_of_plain, left));
    page += plain;
    page += cut_at(place_of_data, left);
    page += as_script_text(data);
    page += cut_at(place_of_library, left);
    page += packed_letters(json_line(for_engine, JsonLetters::utf8));
    return page += left;
}

}  // namespace baitwright
