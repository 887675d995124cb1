#pragma once

#include <concepts>
#include <cstdint>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace baitwright {

struct JsonData;

/// A JSON value: null, true or false, a number, text, a list, or a record whose keys keep their order. It is written
/// and read by a library (`json_text`, `parsed_json`), which only one file includes: its header takes longer to compile
/// than most answers.
///
/// In braces, pairs that begin with text are a record, all else is a list: `{{"name", name}, {"mass_g", 12.5}}`,
/// `{"told", "json"}`.
class Json {
public:
    Json();
    Json(const Json& other);
    Json(Json&& other) noexcept;
    Json& operator=(const Json& other);
    Json& operator=(Json&& other) noexcept;
    ~Json();

    Json(std::nullptr_t) : Json() {}
    template <std::same_as<bool> Truth>
    Json(Truth truth) : Json(Tag::truth, truth) {}
    template <std::integral Whole>
    requires(!std::same_as<Whole, bool>) Json(Whole number) : Json(Tag::whole, static_cast<std::int64_t>(number)) {}
    template <std::floating_point Real>
    Json(Real number) : Json(Tag::real, static_cast<double>(number)) {}
    Json(const char* text);
    Json(std::string_view text);
    Json(std::string text);
    Json(const std::vector<std::string>& texts);
    Json(std::initializer_list<Json> items);

    static Json array(std::initializer_list<Json> items = {});
    static Json object();

    [[nodiscard]] bool is_null() const { return !data_; }
    [[nodiscard]] bool empty() const { return size() == 0; }
    [[nodiscard]] std::size_t size() const;  ///< of a list or record; 0 of all else
    [[nodiscard]] bool contains(std::string_view key) const { return find(key) != nullptr; }

    /// What stands under the key; nullptr where nothing does, or it is no record.
    [[nodiscard]] const Json* find(std::string_view key) const;
    /// The same, where the lack of it is a mistake: std::out_of_range.
    [[nodiscard]] const Json& at(std::string_view key) const&;
    [[nodiscard]] Json at(std::string_view key) &&;  ///< so that nothing is left of a value that is gone
    [[nodiscard]] const Json& operator[](std::string_view key) const& { return at(key); }
    /// A key that is not there yet is added, with null.
    Json& operator[](std::string_view key) &;
    template <std::integral Place>
    const Json& operator[](Place place) const {
        return item(static_cast<std::size_t>(place));
    }
    template <std::integral Place>
    Json& operator[](Place place) {
        return const_cast<Json&>(item(static_cast<std::size_t>(place)));
    }

    void push_back(Json item);
    /// Takes over every key of the other record.
    void update(const Json& other);
    void erase(std::string_view key);

    /// The items of a list, the values of a record.
    [[nodiscard]] const std::vector<Json>& items() const&;
    [[nodiscard]] std::vector<Json> items() && { return std::as_const(*this).items(); }
    [[nodiscard]] std::vector<Json>::const_iterator begin() const { return items().begin(); }
    [[nodiscard]] std::vector<Json>::const_iterator end() const { return items().end(); }
    /// Of a record, in the order of its values.
    [[nodiscard]] const std::vector<std::string>& keys() const;

    /// What it holds; std::invalid_argument where it holds something else.
    [[nodiscard]] bool truth() const;
    [[nodiscard]] double number() const;
    [[nodiscard]] const std::string& text() const;
    [[nodiscard]] std::vector<std::string> texts() const;

    /// For the writer. nullptr is null.
    [[nodiscard]] const JsonData* data() const { return data_.get(); }

    friend bool operator==(const Json& a, const Json& b);

private:
    enum class Tag { truth, whole, real };
    Json(Tag tag, double number);
    Json(Tag tag, std::int64_t number);
    Json(Tag tag, bool truth);

    [[nodiscard]] const Json& item(std::size_t place) const;

    mutable std::unique_ptr<JsonData> data_;  // taken over from the lists in braces, whose items are const
};

/// What a `Json` that is not null holds.
struct JsonData {
    struct List {
        std::vector<Json> items;
    };
    struct Record {
        std::vector<std::string> keys;
        std::vector<Json> values;
    };
    std::variant<bool, std::int64_t, double, std::string, List, Record> value;
};

}  // namespace baitwright
