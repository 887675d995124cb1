#include "page/bank_page.h"

#include <stdexcept>

#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr std::string_view place_of_plain = "@PLAIN@", place_of_data = "@BANK_DATA@", place_of_more = "@BANK_MORE@";

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

}  // namespace

std::string bank_page(std::string_view left, std::string_view plain, Json data) {
    if (left.empty())
        throw StorageError(
            FaultClass::cannot_create, "no-page-engine",
            "this program was built without the engine that a page carries",
            "build it again where Emscripten is installed (Debian: emscripten, zopfli), with -DBAITWRIGHT_PAGE=ON");
    const Json more = data["more"];
    data.erase("more");
    std::string page(cut_at(place_of_plain, left));
    page += plain;
    page += cut_at(place_of_data, left);
    page += as_script_text(data);
    page += cut_at(place_of_more, left);
    page += as_script_text(more);
    return page += left;
}

}  // namespace baitwright
