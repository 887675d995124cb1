#pragma once

namespace baitwright {

/// Ctrl-C, a closed terminal and a polite end take away what is half-written, wipe what is said on the way, and end the
/// program as the shell expects it: by the signal itself, which a shell calls 130 for Ctrl-C.
void leave_nothing_when_stopped();

}  // namespace baitwright
