#include "page/json_words.h"

#include "quantities/loose_words.h"
#include "quantities/number_text.h"

namespace baitwright {

namespace {

bool is_a_number(const Json& value) {
    const JsonData* data = value.data();
    return data && (std::holds_alternative<double>(data->value) || std::holds_alternative<std::int64_t>(data->value));
}

}  // namespace

std::string word_of(const Json& told, std::string_view key) {
    const Json* value = told.find(key);
    if (!value || value->is_null()) return {};
    return is_a_number(*value) ? number_text(value->number()) : std::string(trimmed(value->text()));
}

std::vector<Json> items_of(const Json& told, std::string_view key) {
    const Json* list = told.find(key);
    return list && !list->is_null() ? list->items() : std::vector<Json>{};
}

}  // namespace baitwright
