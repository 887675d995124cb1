#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "answers/shared/store_contents.h"

namespace baitwright {

/// What is to be done about what the doctor mends.
inline constexpr const char* put_right_todo = "put it right: baitwright doctor --mend";

/// One thing that is wrong with a store.
struct StoreFinding {
    std::string code;       ///< short and stable, for programs
    std::string what;       ///< a sentence without its end
    std::string todo;       ///< how to put it right
    bool mendable = false;  ///< `doctor --mend` does it
};

/// What was found. Of what is wrong alike, the first few are told and the others counted.
class StoreFindings {
public:
    void add(StoreFinding finding);
    void add_all(const StoreFindings& others);
    /// So many more, alike, that nobody wants to read.
    void add_untold(std::size_t count) { untold_ += count; }

    [[nodiscard]] const std::vector<StoreFinding>& told() const { return told_; }
    [[nodiscard]] std::size_t count() const { return told_.size() + untold_; }
    [[nodiscard]] std::size_t untold() const { return untold_; }
    [[nodiscard]] bool any_mendable() const;
    [[nodiscard]] bool has(const std::string& code) const;

    static constexpr std::size_t most_alike = 5;  ///< of one code that are told

private:
    std::vector<StoreFinding> told_;
    std::size_t untold_ = 0;
};

/// What a doctor says of a store.
struct StoreHealth {
    std::string store;
    StoreContents contents;  ///< nothing where it cannot be read
    StoreFindings findings;  ///< after mending, what is left
    bool mended = false;     ///< mending was asked for
    std::size_t found_before = 0;
    std::string copy;  ///< the backup made before mending; empty where there was nothing to mend
};

}  // namespace baitwright
