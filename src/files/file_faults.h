#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "files/position.h"
#include "quantities/fault.h"

namespace baitwright {

/// Gives the lines of a text one after the other, without line ends or byte order mark.
class LineWalker {
public:
    explicit LineWalker(std::string_view text);
    /// The line of that number, from 1; empty below the last. Numbers asked for must not fall. A line too long to be
    /// shown (over 2000 bytes) comes back empty.
    std::string_view line(int number);

private:
    std::string_view rest_;
    std::string_view current_;
    int number_ = 0;
};

/// Gathers what is wrong with one file: the first faults by their places, and how many there are in all.
class FileFaults {
public:
    FileFaults(std::string_view text, std::string file_name) : text_(text), file_name_(std::move(file_name)) {}

    void add(Position place, std::string code, std::string message, std::string hint);
    /// Takes over what a reader of quantities has to say, and adds the place.
    void add(Position place, const Error& error);
    [[nodiscard]] std::size_t count() const { return count_; }
    /// Whether a fault there would be among those told: what is costly to work out (a suggestion) can be spared.
    [[nodiscard]] bool tells_of(Position place) const;
    /// The first of them by line and column, with the lines concerned, and how many more there are.
    [[nodiscard]] std::vector<Fault> in_file_order() const;

private:
    std::string_view text_;
    std::string file_name_;
    std::vector<Fault> faults_;  // by place; at most those that are told
    std::size_t count_ = 0;
};

}  // namespace baitwright
