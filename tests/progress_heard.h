#pragma once

#include <functional>
#include <string>
#include <vector>

#include "quantities/progress.h"

namespace baitwright {

/// What is heard while `work` is done: "mixing 1/3", in the order in which it is told.
inline std::vector<std::string> progress_heard_in(const std::function<void()>& work) {
    static std::vector<std::string> heard;
    heard.clear();
    listen_to_progress([](std::string_view doing, std::size_t done, std::size_t of) {
        heard.push_back(std::string(doing) + " " + std::to_string(done) + "/" + std::to_string(of));
    });
    work();
    listen_to_progress(nullptr);
    return heard;
}

}  // namespace baitwright
