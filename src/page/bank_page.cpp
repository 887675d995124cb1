#include "page/bank_page.h"

#include <stdexcept>

#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr std::string_view place_of_data = "@BANK_DATA@";

/// JSON that cannot end the script element it stands in, whatever names it holds.
std::string as_script_text(const Json& data) {
    std::string text;
    for (const char letter : data.dump(-1, ' ', false, Json::error_handler_t::replace)) {
        if (letter == '<')
            text += "\\u003c";
        else
            text += letter;
    }
    return text;
}

}  // namespace

std::string bank_page(const Json& data) {
    const std::string_view whole = bank_template();
    if (whole.empty())
        throw StorageError(FaultClass::cannot_create, "no-page-engine", "this program was built without the engine that a page carries",
                           "build it again where Emscripten is installed (Debian: emscripten), with -DBAITWRIGHT_PAGE=ON");
    const auto at = whole.find(place_of_data);
    if (at == std::string_view::npos) throw std::logic_error("the page has no place for its data");
    return std::string(whole.substr(0, at)) + as_script_text(data) + std::string(whole.substr(at + place_of_data.size()));
}

}  // namespace baitwright
