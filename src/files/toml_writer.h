#pragma once

#include <string>
#include <string_view>

#include "quantities/quantity_text.h"

namespace baitwright {

/// The text in quotes, with escapes where TOML asks for them.
std::string toml_quoted(std::string_view text);

/// Gathers lines of TOML. What is empty is left out.
class TomlWriter {
public:
    void heading(std::string_view blocks) { text_ += (text_.empty() ? "[[" : "\n[[") + std::string(blocks) + "]]\n"; }
    /// A heading that belongs to the block above it.
    void inner_heading(std::string_view blocks) { text_ += "[[" + std::string(blocks) + "]]\n"; }
    void line(std::string_view key, std::string_view value) {
        text_ += std::string(key) + " = " + std::string(value) + "\n";
    }
    void text(std::string_view key, std::string_view value) {
        if (!value.empty()) line(key, toml_quoted(value));
    }
    [[nodiscard]] const std::string& str() const { return text_; }

private:
    std::string text_;
};

}  // namespace baitwright
