#include "cli/typed_line.h"

namespace baitwright {

namespace {

bool is_blank(char letter) {
    return letter == ' ' || letter == '\t' || letter == '\n';
}

/// Reads the line letter by letter. **Source**: POSIX.1-2017, Shell Command Language, 2.2 Quoting (from memory).
class LineReader {
public:
    LineReader(std::string_view line, std::string_view breaks) : line_(line), breaks_(breaks) {}

    TypedLine read() {
        for (; at_ < line_.size(); ++at_) take(line_[at_]);
        read_.words.push_back(word_);
        return read_;
    }

private:
    void take(char letter) {
        if (read_.quote == '\'')
            letter == '\'' ? close() : put(letter);
        else if (read_.quote == '"')
            take_in_double_quotes(letter);
        else
            take_bare(letter);
    }

    void take_in_double_quotes(char letter) {
        const char next = at_ + 1 < line_.size() ? line_[at_ + 1] : '\0';
        const bool escapes = next == '$' || next == '`' || next == '"' || next == '\\';
        if (letter == '"')
            close();
        else
            put(letter == '\\' && escapes ? line_[++at_] : letter);
    }

    void take_bare(char letter) {
        if (is_blank(letter)) return end_word();
        begun_ = true;
        if (letter == '\\') {
            if (at_ + 1 < line_.size()) put(line_[++at_]);
        } else if (letter == '\'' || letter == '"') {
            read_.quote = letter;
            kept_before_quote_ = read_.kept;
            read_.kept = word_.size();
        } else {
            put(letter);
            if (breaks_.find(letter) != std::string_view::npos) read_.kept = word_.size();
        }
    }

    void put(char letter) { word_ += letter; }

    void close() {
        read_.quote = 0;
        read_.kept = kept_before_quote_;
    }

    void end_word() {
        if (begun_) read_.words.push_back(word_);
        word_.clear();
        begun_ = false;
        read_.kept = 0;
    }

    std::string_view line_, breaks_;
    std::size_t at_ = 0;
    TypedLine read_;
    std::string word_;
    bool begun_ = false;
    std::size_t kept_before_quote_ = 0;
};

bool is_plain(char letter) {
    const auto byte = static_cast<unsigned char>(letter);
    return byte >= 0x80 || (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') ||
           (byte >= '0' && byte <= '9') || std::string_view("_-+./,=%@").find(letter) != std::string_view::npos;
}

std::string bare(std::string_view text) {
    std::string typed;
    for (const char letter : text) typed += is_plain(letter) ? std::string(1, letter) : std::string{'\\', letter};
    return typed;
}

/// Between double quotes an exclamation mark would call an old command back, with a backslash too.
std::string in_double_quotes(std::string_view text) {
    std::string typed;
    for (const char letter : text)
        if (letter == '!')
            typed += "\"'!'\"";
        else
            typed += std::string_view("$`\"\\").find(letter) != std::string_view::npos ? std::string{'\\', letter}
                                                                                       : std::string(1, letter);
    return typed;
}

std::string in_single_quotes(std::string_view text) {
    std::string typed;
    for (const char letter : text) typed += letter == '\'' ? std::string(R"('\'')") : std::string(1, letter);
    return typed;
}

}  // namespace

TypedLine typed_line(std::string_view line, std::string_view breaks) {
    return LineReader(line, breaks).read();
}

std::string quoted_for_bash(std::string_view text, char quote) {
    if (quote == '"') return in_double_quotes(text);
    return quote == '\'' ? in_single_quotes(text) : bare(text);
}

}  // namespace baitwright
