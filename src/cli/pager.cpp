#include "cli/pager.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>

#include "cli/terminal.h"

namespace baitwright {

namespace {

/// Not found, as the shell says it.
constexpr int no_such_command = 127;

/// Empty where there is to be none. Of our own choice no complaint is heard where it is missing.
std::string pager_command() {
    const char* named = std::getenv("PAGER");
    const std::string command = named ? named : "command -v less >/dev/null || exit 127; exec less";
    return command == "cat" ? "" : command;
}

/// While it lives a signal is let pass: Ctrl-C is the pager's, and one that is left early takes no more text.
class Unheeded {
public:
    explicit Unheeded(int number) : number_(number), before_(std::signal(number, SIG_IGN)) {}
    ~Unheeded() { std::signal(number_, before_); }
    Unheeded(const Unheeded&) = delete;
    Unheeded& operator=(const Unheeded&) = delete;
    void heed_again() const { std::signal(number_, SIG_DFL); }

private:
    int number_;
    void (*before_)(int);
};

void write_all_of(int to, const std::string& text) {
    for (std::size_t at = 0; at < text.size();) {
        const ssize_t put = ::write(to, text.data() + at, text.size() - at);
        if (put < 0 && errno != EINTR) return;
        at += static_cast<std::size_t>(std::max<ssize_t>(put, 0));
    }
}

/// In the child: reads from `from`, and becomes the command.
[[noreturn]] void become(const std::string& command, int from) {
    ::dup2(from, STDIN_FILENO);
    ::setenv("LESS", "FRX", 0);  // one screen is printed and left, colours pass, the screen stays
    ::execl("/bin/sh", "sh", "-c", command.c_str(), static_cast<char*>(nullptr));
    ::_exit(no_such_command);
}

}  // namespace

bool is_worth_a_pager(const std::string& text) {
    const char* terminal = std::getenv("TERM");
    return ::isatty(STDIN_FILENO) && ::isatty(STDOUT_FILENO) && terminal && std::string(terminal) != "dumb" &&
           static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) >= terminal_lines(STDOUT_FILENO);
}

bool shown_in_pager(const std::string& text) {
    const std::string command = pager_command();
    std::array<int, 2> ends{};
    if (command.empty() || ::pipe2(ends.data(), O_CLOEXEC) != 0) return false;
    const Unheeded interrupt(SIGINT), closed_pipe(SIGPIPE);
    const pid_t child = ::fork();
    if (child == 0) {
        interrupt.heed_again();
        closed_pipe.heed_again();
        become(command, ends[0]);
    }
    ::close(ends[0]);
    if (child > 0) write_all_of(ends[1], text);
    ::close(ends[1]);
    int status = 0;
    while (child > 0 && ::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    return child > 0 && !(WIFEXITED(status) && WEXITSTATUS(status) == no_such_command);
}

}  // namespace baitwright
