#pragma once

#include <string>

#include "page/opened_bank.h"
#include "questions/arguments.h"
#include "report/json.h"

namespace baitwright {

/// Which forms of an answer a request wants.
struct Wanted {
    bool told = false, json = false, picture = false;
    bool narrow = false;  ///< the picture for a phone held upright
};
Wanted wanted_of(const Json& request);

/// The reply to one of the questions of `Bank`. Throws the project's errors; NotFound for a question that is none of
/// them.
Json answer_of(const OpenedBank& bank, const std::string& question, const Arguments& arguments, const Wanted& wanted);

}  // namespace baitwright
