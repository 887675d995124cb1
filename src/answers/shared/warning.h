#pragma once

#include <string>

namespace baitwright {

/// Something the person should know about an answer that is given all the same.
struct Warning {
    std::string code;           ///< short and stable, for programs
    std::string message;        ///< one sentence for a person
    bool answer_is_no = false;  ///< the command ends with exit status 1
};

}  // namespace baitwright
