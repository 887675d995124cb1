#pragma once

#include <string>
#include <vector>

namespace baitwright {

/// One thing that may come next, whole, and what is said of it; empty where nothing is.
struct Candidate {
    std::string text, says;
};

/// What else the shell may offer by itself.
enum class OfferedFiles { none, files, folders };

struct Completion {
    std::vector<Candidate> candidates;
    OfferedFiles files = OfferedFiles::none;
};

}  // namespace baitwright
