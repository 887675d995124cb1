#include "cli/stopped.h"

#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>

#include "cli/progress_line.h"
#include "quantities/unfinished_names.h"

namespace baitwright {

namespace {

/// Only what POSIX lets a signal's handler do. **Source**: POSIX.1-2017, System Interfaces, 2.4.3.
void take_away(const char* name) {
    if (::unlink(name) == 0 || (errno != EISDIR && errno != EPERM)) return;
    const pid_t child = ::fork();  // a folder
    if (child == 0) {
        ::execl("/bin/rm", "rm", "-rf", "--", name, static_cast<char*>(nullptr));
        ::_exit(127);
    }
    if (child > 0) ::waitpid(child, nullptr, 0);
}

void stop(int number) {
    look_at_unfinished_names(take_away);
    wipe_progress_at_once();
    ::signal(number, SIG_DFL);
    ::raise(number);
}

}  // namespace

void leave_nothing_when_stopped() {
    for (const int number : {SIGINT, SIGTERM, SIGHUP}) {
        struct sigaction before {};
        if (::sigaction(number, nullptr, &before) == 0 && before.sa_handler == SIG_IGN) continue;  // nohup
        struct sigaction action {};
        action.sa_handler = stop;
        ::sigemptyset(&action.sa_mask);
        ::sigaction(number, &action, nullptr);
    }
}

}  // namespace baitwright
