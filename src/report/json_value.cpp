#include "report/json_value.h"

#include <algorithm>
#include <stdexcept>

namespace baitwright {

namespace {

template <class Value>
std::unique_ptr<JsonData> data_of(Value value) {
    return std::make_unique<JsonData>(JsonData{std::move(value)});
}

template <class Value>
const Value* held(const JsonData* data) {
    return data ? std::get_if<Value>(&data->value) : nullptr;
}

template <class Value>
const Value& held_or_throw(const JsonData* data, const char* what) {
    const auto* value = held<Value>(data);
    if (!value) throw std::invalid_argument(std::string("this JSON is no ") + what);
    return *value;
}

bool is_member(const Json& pair) {
    const auto* list = held<JsonData::List>(pair.data());
    return list && list->items.size() == 2 && held<std::string>(list->items[0].data());
}

std::size_t place_of(const std::vector<std::string>& keys, std::string_view key) {
    return static_cast<std::size_t>(std::find(keys.begin(), keys.end(), key) - keys.begin());
}

}  // namespace

Json::Json() = default;
Json::Json(const Json& other) : data_(other.data_ ? std::make_unique<JsonData>(*other.data_) : nullptr) {}
Json::Json(Json&& other) noexcept = default;
Json& Json::operator=(const Json& other) {
    if (this != &other) *this = Json(other);
    return *this;
}
Json& Json::operator=(Json&& other) noexcept = default;
Json::~Json() = default;

Json::Json(Tag, double number) : data_(data_of(number)) {}
Json::Json(Tag, std::int64_t number) : data_(data_of(number)) {}
Json::Json(Tag, bool truth) : data_(data_of(truth)) {}
Json::Json(const char* text) : Json(std::string(text)) {}
Json::Json(std::string_view text) : Json(std::string(text)) {}
Json::Json(std::string text) : data_(data_of(std::move(text))) {}

Json::Json(const std::vector<std::string>& texts) : data_(data_of(JsonData::List{})) {
    for (const std::string& text : texts) push_back(text);
}

Json::Json(std::initializer_list<Json> items) {
    const bool record = std::all_of(items.begin(), items.end(), is_member);
    if (!record) {
        *this = array(items);
        return;
    }
    *this = object();
    for (const Json& item : items) {
        auto& pair = std::get<JsonData::List>(item.data_->value).items;
        (*this)[std::get<std::string>(pair[0].data_->value)] = std::move(pair[1]);
    }
}

Json Json::array(std::initializer_list<Json> items) {
    JsonData::List list;
    list.items.reserve(items.size());
    for (const Json& item : items) list.items.emplace_back().data_ = std::move(item.data_);
    Json json;
    json.data_ = data_of(std::move(list));
    return json;
}

Json Json::object() {
    Json json;
    json.data_ = data_of(JsonData::Record{});
    return json;
}

std::size_t Json::size() const {
    return items().size();
}

const Json* Json::find(std::string_view key) const {
    const auto* record = held<JsonData::Record>(data_.get());
    const std::size_t place = record ? place_of(record->keys, key) : 0;
    return record && place < record->keys.size() ? &record->values[place] : nullptr;
}

const Json& Json::at(std::string_view key) const& {
    const Json* found = find(key);
    if (!found) throw std::out_of_range("this JSON has no '" + std::string(key) + "'");
    return *found;
}

Json Json::at(std::string_view key) && {
    return std::as_const(*this).at(key);
}

Json& Json::operator[](std::string_view key) & {
    if (!data_) *this = object();
    auto* record = std::get_if<JsonData::Record>(&data_->value);
    if (!record) throw std::invalid_argument("this JSON is no record");
    const std::size_t place = place_of(record->keys, key);
    if (place == record->keys.size()) {
        record->keys.emplace_back(key);
        record->values.emplace_back();
    }
    return record->values[place];
}

void Json::push_back(Json item) {
    if (!data_) *this = array();
    auto* list = std::get_if<JsonData::List>(&data_->value);
    if (!list) throw std::invalid_argument("this JSON is no list");
    list->items.push_back(std::move(item));
}

void Json::update(const Json& other) {
    const auto& record = held_or_throw<JsonData::Record>(other.data_.get(), "record");
    for (std::size_t i = 0; i < record.keys.size(); ++i) (*this)[record.keys[i]] = record.values[i];
}

void Json::erase(std::string_view key) {
    auto* record = data_ ? std::get_if<JsonData::Record>(&data_->value) : nullptr;
    const std::size_t place = record ? place_of(record->keys, key) : 0;
    if (!record || place == record->keys.size()) return;
    record->keys.erase(record->keys.begin() + static_cast<std::ptrdiff_t>(place));
    record->values.erase(record->values.begin() + static_cast<std::ptrdiff_t>(place));
}

const std::vector<Json>& Json::items() const& {
    static const std::vector<Json> none;
    if (const auto* list = held<JsonData::List>(data_.get())) return list->items;
    if (const auto* record = held<JsonData::Record>(data_.get())) return record->values;
    return none;
}

const std::vector<std::string>& Json::keys() const {
    return held_or_throw<JsonData::Record>(data_.get(), "record").keys;
}

const Json& Json::item(std::size_t place) const {
    return items().at(place);
}

bool Json::truth() const {
    return held_or_throw<bool>(data_.get(), "true or false");
}

double Json::number() const {
    if (const auto* whole = held<std::int64_t>(data_.get())) return static_cast<double>(*whole);
    return held_or_throw<double>(data_.get(), "number");
}

const std::string& Json::text() const {
    return held_or_throw<std::string>(data_.get(), "text");
}

std::vector<std::string> Json::texts() const {
    std::vector<std::string> all;
    for (const Json& one : held_or_throw<JsonData::List>(data_.get(), "list").items) all.push_back(one.text());
    return all;
}

bool operator==(const Json& a, const Json& b) {
    if (a.is_null() || b.is_null()) return a.is_null() && b.is_null();
    const auto is_number = [](const Json& json) {
        return held<std::int64_t>(json.data()) || held<double>(json.data());
    };
    if (is_number(a) && is_number(b)) return a.number() == b.number();
    if (a.data()->value.index() != b.data()->value.index()) return false;
    if (const auto* record = held<JsonData::Record>(a.data()); record && record->keys != b.keys()) return false;
    if (const auto* text = held<std::string>(a.data())) return *text == b.text();
    if (const bool* truth = held<bool>(a.data())) return *truth == b.truth();
    return a.items() == b.items();
}

}  // namespace baitwright
