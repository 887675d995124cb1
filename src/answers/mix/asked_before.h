#pragma once

#include <optional>
#include <utility>

namespace baitwright {

/// The last question and what came of it. A slider asks for another amount of the same mix many times a second, and all
/// that is drawn is per gram: it is worked out once. `Question` holds all that the answer depends on, compared exactly.
template <class Question, class Answer>
class AskedBefore {
public:
    template <class Work>
    const Answer& answer(Question question, Work&& work) {
        if (!question_ || !(*question_ == question)) {
            question_.reset();  // where the work throws, nothing is known
            answer_ = work();
            question_ = std::move(question);
        }
        return answer_;
    }

private:
    std::optional<Question> question_;
    Answer answer_{};
};

}  // namespace baitwright
