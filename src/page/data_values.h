#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "quantities/bare_number.h"
#include "quantities/date.h"
#include "quantities/money.h"
#include "report/json.h"

/// Values of the library as a page carries them: numbers in SI, each read back to the same bits. What is empty is left
/// out of its record.
namespace baitwright {

template <class Q>
Q dressed_number(const Json& number) {
    return dressed_number<Q>(number.number());
}

void put_text(Json& record, std::string_view key, const std::string& text);
std::string text_in(const Json& record, std::string_view key);
void put_texts(Json& record, const char* key, const std::vector<std::string>& texts);
std::vector<std::string> texts_in(const Json& record, const char* key);
int whole_in(const Json& number);

template <class Q>
void put_stated(Json& record, std::string_view key, const std::optional<Q>& number) {
    if (number) record[key] = bare_number(*number);
}

template <class Q>
void take_stated(const Json& record, std::string_view key, std::optional<Q>& number) {
    if (const Json* stated = record.find(key)) number = dressed_number<Q>(*stated);
}

/// [index, number] of an alternative: [0, kilograms] or [1, cubic metres].
template <class Alternatives>
Json held_data(const Alternatives& value) {
    return Json::array({value.index(), bare_number(value)});
}
template <class Alternatives>
Alternatives held_in(const Json& data) {
    const auto which = static_cast<std::size_t>(whole_in(data[0]));
    return dressed_number<Alternatives>(which, data[1].number()).value_or(Alternatives());
}

/// [minor units, ISO 4217 code].
Json money_data(const Money& money);
Money money_in(const Json& data);

/// Days since 1970-01-01.
Json day_data(Date date);
Date day_in(const Json& data);

/// Each of a list, by the function.
template <class Entry, class Write>
Json list_data(const std::vector<Entry>& entries, Write&& write) {
    Json list = Json::array();
    for (const Entry& entry : entries) list.push_back(write(entry));
    return list;
}

/// Adds what the function makes of each item under the key, if there is any.
template <class Entry, class Read>
void take_list(const Json& record, const char* key, std::vector<Entry>& entries, Read&& read) {
    const Json* list = record.find(key);
    if (!list) return;
    entries.reserve(entries.size() + list->size());
    for (const Json& item : *list) entries.push_back(read(item));
}

template <class Entry, class Write>
void put_list(Json& record, const char* key, const std::vector<Entry>& entries, Write&& write) {
    if (!entries.empty()) record[key] = list_data(entries, write);
}

}  // namespace baitwright
