#include "quantities/worded.h"

namespace baitwright {

namespace {

WordsFor& reader_now() {
    static WordsFor reader = WordsFor::terminal;
    return reader;
}

}  // namespace

WordsFor words_for() {
    return reader_now();
}

std::string worded(std::string_view terminal, std::string_view phone) {
    return std::string(words_for() == WordsFor::phone ? phone : terminal);
}

WordedHere::WordedHere(WordsFor reader) : before_(words_for()) {
    reader_now() = reader;
}

WordedHere::~WordedHere() {
    reader_now() = before_;
}

}  // namespace baitwright
