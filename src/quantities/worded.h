#pragma once

#include <string>
#include <string_view>

/// Whom words are for. At a terminal they name the command or the flag to type; on a phone there is neither. Like a
/// locale it holds for the whole process, and only words for a person heed it.
namespace baitwright {

enum class WordsFor { terminal, phone };

/// Who reads what is said now: a terminal, unless told otherwise.
WordsFor words_for();

/// The one or the other, by who reads it.
std::string worded(std::string_view terminal, std::string_view phone);

/// Words for somebody else until the end of its scope.
class WordedHere {
public:
    explicit WordedHere(WordsFor reader);
    ~WordedHere();
    WordedHere(const WordedHere&) = delete;
    WordedHere& operator=(const WordedHere&) = delete;

private:
    WordsFor before_;
};

}  // namespace baitwright
