#pragma once

#include <cstddef>
#include <string>
#include <string_view>

/// Work that may last says how far it is; who listens may show it. Where nobody does, a step costs nothing.
namespace baitwright {

/// Hears each step; at the end of the work, with `done` equal to `of`. Where nobody knows how many steps it takes, `of`
/// is 0. Set once a run, before any work.
using ProgressListener = void (*)(std::string_view doing, std::size_t done, std::size_t of);
void listen_to_progress(ProgressListener listener);

/// One piece of work: "reading the log", of so many steps; 0 where it is not known how many. Work within work is part
/// of its step and is not heard.
class Progress {
public:
    Progress(std::string doing, std::size_t of);
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    Progress(Progress&&) = delete;
    Progress& operator=(Progress&&) = delete;

    void step() { reach(done_ + 1); }
    void reach(std::size_t done);

private:
    std::string doing_;
    std::size_t of_, done_ = 0;
    bool heard_ = false;
};

}  // namespace baitwright
