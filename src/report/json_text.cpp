// The one file that includes the library for JSON.
#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "quantities/plain_words.h"
#include "report/json.h"

namespace baitwright {

namespace {

using Library = nlohmann::ordered_json;

Library for_library(const Json& json);

struct ForLibrary {
    Library operator()(bool truth) const { return truth; }
    Library operator()(std::int64_t number) const { return number; }
    Library operator()(double number) const {
        if (!std::isfinite(number)) throw std::logic_error("a number in the answer is not finite");
        return number;
    }
    Library operator()(const std::string& text) const { return text; }
    Library operator()(const JsonData::List& list) const {
        Library all = Library::array();
        for (const Json& item : list.items) all.push_back(for_library(item));
        return all;
    }
    Library operator()(const JsonData::Record& record) const {
        // The keys are known to differ; the library would look for each among all the others.
        Library::object_t all;
        for (std::size_t i = 0; i < record.keys.size(); ++i)
            all.std::vector<Library::object_t::value_type>::emplace_back(record.keys[i], for_library(record.values[i]));
        return all;
    }
};

Library for_library(const Json& json) {
    return json.is_null() ? Library() : std::visit(ForLibrary{}, json.data()->value);
}

Json from_library(const Library& library) {
    if (library.is_object()) {
        Json record = Json::object();
        for (const auto& [key, value] : library.items()) record[key] = from_library(value);
        return record;
    }
    if (library.is_array()) {
        Json list = Json::array();
        for (const Library& item : library) list.push_back(from_library(item));
        return list;
    }
    if (library.is_string()) return library.get<std::string>();
    if (library.is_boolean()) return library.get<bool>();
    if (library.is_number_integer()) return library.get<std::int64_t>();
    if (library.is_number()) return library.get<double>();
    return {};
}

std::string json_escape(char32_t code) {
    if (code <= 0xFFFFU) return fmt::format("\\u{:04x}", static_cast<std::uint32_t>(code));
    const auto above = static_cast<std::uint32_t>(code) - 0x10000U;
    return fmt::format("\\u{:04x}\\u{:04x}", 0xD800U + (above >> 10U), 0xDC00U + (above & 0x3FFU));
}

/// What a terminal would obey, as JSON's own escapes: the same text to a program. It can only stand in strings.
std::string with_escapes(std::string_view text) {
    std::string result;
    for (std::size_t at = 0;;) {
        const auto unfit = first_unfit_letter(text, LineBreaks::allowed, at);
        result += text.substr(at, unfit ? unfit->at - at : std::string_view::npos);
        if (!unfit) return result;
        result += json_escape(unfit->code);
        at = unfit->at + unfit->size;
    }
}

}  // namespace

std::string json_text(const Json& json) {
    return with_escapes(for_library(json).dump(2, ' ', false, Library::error_handler_t::replace)) + "\n";
}

std::string json_line(const Json& json, JsonLetters letters) {
    return for_library(json).dump(-1, ' ', letters == JsonLetters::ascii, Library::error_handler_t::replace);
}

std::optional<Json> parsed_json(std::string_view text) {
    const Library library = Library::parse(text, nullptr, false);
    if (library.is_discarded()) return std::nullopt;
    return from_library(library);
}

}  // namespace baitwright
