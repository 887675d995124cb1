#pragma once

#include <algorithm>
#include <cmath>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "quantities/bare_number.h"
#include "quantities/plain_words.h"
#include "store/connection.h"

namespace baitwright {

/// Bytes to be bound as they are.
struct StoredBytes {
    std::string_view bytes;
};

/// One run of a statement: its values are bound when it is made, and it is free for the next run when it ends.
class Query {
public:
    template <class... Values>
    Query(StoreConnection& connection, const char* sql, const Values&... values)
        : statement_(connection.prepared(sql)) {
        (bind_next(values), ...);
    }
    ~Query() { statement_.tryReset(); }
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    /// Binds the value behind those that are bound.
    template <class Value>
    void bind_next(const Value& value) {
        bind(++bound_, value);
    }

    /// Goes to the next row; false after the last.
    bool next() { return statement_.executeStep(); }
    void run() { statement_.exec(); }

    [[nodiscard]] bool empty(int column) const { return statement_.isColumnNull(column); }
    [[nodiscard]] std::string text(int column) const { return statement_.getColumn(column).getString(); }
    /// Of an entry or a shop: what an older program let through is mended (`plain_words.h`); empty where there is none.
    [[nodiscard]] std::string name(int column) const {
        const std::string stored = text(column);
        return stored.empty() ? stored : mended_name(stored);
    }
    /// An infinite one is read as a number that lies in no range and is finite in every unit, so that it is named and
    /// mended like the others.
    [[nodiscard]] double number(int column) const {
        const double stored = statement_.getColumn(column).getDouble();
        return std::isfinite(stored) ? stored : std::copysign(1e300, stored);
    }
    /// They last until the next row.
    [[nodiscard]] std::string_view bytes(int column) const {
        const SQLite::Column stored = statement_.getColumn(column);
        const auto* first = static_cast<const char*>(stored.getBlob());
        return first ? std::string_view(first, static_cast<std::size_t>(stored.getBytes())) : std::string_view();
    }
    [[nodiscard]] std::int64_t whole(int column) const { return statement_.getColumn(column).getInt64(); }
    /// As the type holds it, which may hold nothing. What is too large for a count lies outside every range.
    template <class Value>
    [[nodiscard]] Value as(int column) const {
        if constexpr (std::is_same_v<Value, std::string>) {
            return text(column);
        } else if constexpr (std::is_integral_v<Value>) {
            return static_cast<Value>(std::clamp<std::int64_t>(whole(column), -1, 2'000'000'000));
        } else if constexpr (requires(Value value) { value.has_value(); }) {
            return empty(column) ? Value() : Value(as<typename Value::value_type>(column));
        } else {
            return dressed_number<Value>(number(column));
        }
    }

private:
    void bind(int index, std::string_view text) { statement_.bind(index, std::string(text)); }
    void bind(int index, StoredBytes bytes) {
        statement_.bind(index, bytes.bytes.data(), static_cast<int>(bytes.bytes.size()));
    }
    void bind(int index, double number) { statement_.bind(index, number); }
    void bind(int index, Temperature temperature) { statement_.bind(index, temperature.in_kelvin()); }
    template <class D>
    void bind(int index, Quantity<D> quantity) {
        statement_.bind(index, quantity.si());
    }
    template <std::integral Whole>
    void bind(int index, Whole whole) {
        statement_.bind(index, static_cast<std::int64_t>(whole));
    }
    template <class Value>
    void bind(int index, const std::optional<Value>& value) {
        if (value)
            bind(index, *value);
        else
            statement_.bind(index);
    }

    SQLite::Statement& statement_;
    int bound_ = 0;
};

}  // namespace baitwright
