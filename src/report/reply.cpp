#include "report/reply.h"

#include <algorithm>

namespace baitwright {

int status_of(const std::vector<Warning>& warnings) {
    const bool no =
        std::any_of(warnings.begin(), warnings.end(), [](const Warning& warning) { return warning.answer_is_no; });
    return no ? 1 : 0;
}

}  // namespace baitwright
