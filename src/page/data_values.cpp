#include "page/data_values.h"

namespace baitwright {

void put_text(Json& record, std::string_view key, const std::string& text) {
    if (!text.empty()) record[key] = text;
}

std::string text_in(const Json& record, std::string_view key) {
    const Json* text = record.find(key);
    return text ? text->text() : std::string();
}

void put_texts(Json& record, const char* key, const std::vector<std::string>& texts) {
    if (!texts.empty()) record[key] = texts;
}

std::vector<std::string> texts_in(const Json& record, const char* key) {
    const Json* texts = record.find(key);
    return texts ? texts->texts() : std::vector<std::string>{};
}

int whole_in(const Json& number) {
    return static_cast<int>(number.number());
}

Json money_data(const Money& money) {
    return Json::array({money.minor(), money.currency().code});
}

Money money_in(const Json& data) {
    const JsonData* held = data[0].data();
    const auto* minor = held ? std::get_if<std::int64_t>(&held->value) : nullptr;  // a double would round a large one
    return {minor ? *minor : static_cast<std::int64_t>(data[0].number()), currency_named(data[1].text())};
}

Json day_data(Date date) {
    return date.time_since_epoch().count();
}

Date day_in(const Json& data) {
    return Date(std::chrono::days(whole_in(data)));
}

}  // namespace baitwright
