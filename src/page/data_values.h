#pragma once

#include <optional>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

#include "quantities/date.h"
#include "quantities/money.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"
#include "report/json.h"

/// Values of the library as a page carries them: numbers in SI, each read back to the same bits. What is empty is left
/// out of its record.
namespace baitwright {

inline double bare_number(double number) {
    return number;
}
template <class D>
double bare_number(Quantity<D> quantity) {
    return quantity.si();
}
inline double bare_number(Temperature temperature) {
    return temperature.in_kelvin();
}

template <class Q>
Q dressed_number(const Json& number) {
    if constexpr (std::is_same_v<Q, Temperature>)
        return Temperature::from_kelvin(number.number());
    else if constexpr (std::is_same_v<Q, double>)
        return number.number();
    else
        return Q::from_si(number.number());
}

void put_text(Json& record, const char* key, const std::string& text);
std::string text_in(const Json& record, const char* key);
void put_texts(Json& record, const char* key, const std::vector<std::string>& texts);
std::vector<std::string> texts_in(const Json& record, const char* key);
int whole_in(const Json& number);

template <class Q>
void put_stated(Json& record, const char* key, const std::optional<Q>& number) {
    if (number) record[key] = bare_number(*number);
}

template <class Q>
void take_stated(const Json& record, const char* key, std::optional<Q>& number) {
    if (const Json* stated = record.find(key)) number = dressed_number<Q>(*stated);
}

/// [0, kilograms] or [1, cubic metres].
Json amount_data(const std::variant<Mass, Volume>& amount);
std::variant<Mass, Volume> amount_in(const Json& data);

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
