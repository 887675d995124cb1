#include "quantities/progress.h"

#include <utility>

namespace baitwright {

namespace {

ProgressListener progress_listener = nullptr;
bool some_progress_is_heard = false;

}  // namespace

void listen_to_progress(ProgressListener listener) {
    progress_listener = listener;
}

Progress::Progress(std::string doing, std::size_t of) : doing_(std::move(doing)), of_(of) {
    if (progress_listener == nullptr || some_progress_is_heard) return;
    some_progress_is_heard = heard_ = true;
}

Progress::~Progress() {
    if (!heard_) return;
    some_progress_is_heard = false;
    progress_listener(doing_, of_, of_);
}

void Progress::reach(std::size_t done) {
    done_ = done;
    // The end is told once, by the destructor.
    if (heard_ && (done_ < of_ || of_ == 0)) progress_listener(doing_, done_, of_);
}

}  // namespace baitwright
