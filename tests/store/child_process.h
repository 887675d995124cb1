#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <functional>

namespace baitwright {

/// Runs the work in a process of its own, which ends with 0, or with 1 where the work throws.
inline pid_t start_child(const std::function<void()>& work) {
    const pid_t child = ::fork();
    if (child != 0) return child;
    try {
        work();
    } catch (...) {
        ::_exit(1);
    }
    ::_exit(0);
}

/// Waits for the end; the exit status, or -1 where a signal ended it.
inline int end_of(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace baitwright
