#include "questions/blend_question.h"

#include "questions/read_flags.h"

namespace baitwright {

BlendRequest blend_request(const Arguments& arguments) {
    BlendRequest request;
    request.usual_currency = usual_currency(arguments);
    read_flag(arguments, "--batch", [&](const std::string& text) { request.batch = read_batch(text); });
    return request;
}

int bags_asked(const Arguments& arguments) {
    int bags = 0;
    read_flag(arguments, "--bags",
              [&](const std::string& text) { bags = read_count(text, "as in --bags 6, one for each angler"); });
    return bags;
}

}  // namespace baitwright
