#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <exception>
#include <new>
#include <string>
#include <vector>

#include "cli/program.h"
#include "cli/progress_line.h"
#include "cli/show_result.h"
#include "cli/stopped.h"
#include "cli/terminal_letters.h"
#include "report/shown_columns.h"

namespace {

/// Prints all of it; 0, or the status for output that could not be written. `done` is said then: what is done even so.
int print(std::FILE* stream, const std::string& text, const std::string& done = {}) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stream) == text.size() && std::fflush(stream) == 0;
    if (written) return 0;
    const std::string hint = done.empty() ? "make room, then try again" : done;
    std::fputs(("error: the output could not be written (is the disk full?)\n  hint: " + hint + "\n").c_str(), stderr);
    return baitwright::exit_status(baitwright::FaultClass::input_output);
}

/// The answer, in a pager or at once.
int show(const baitwright::CommandResult& result, const baitwright::TerminalWishes& wishes) {
    const std::string answer = baitwright::dressed_answer(result, wishes);
    const int printed = baitwright::paged(result, answer, wishes) ? 0 : print(stdout, answer, result.done_already);
    if (!result.aside.empty()) print(stderr, baitwright::dressed_errors(result.aside, wishes));
    return printed ? printed : result.status;
}

int run(std::vector<std::string> given) {
    baitwright::TerminalWishes wishes;
    try {
        baitwright::write_for(baitwright::terminal_letters());
        baitwright::show_columns(baitwright::terminal_columns(STDOUT_FILENO));
        baitwright::show_progress_on_terminal();
        wishes = baitwright::take_terminal_wishes(given);
        return show(baitwright::run_program(given), wishes);
    } catch (const baitwright::Error& error) {
        const std::string told = baitwright::error_text(error, given);
        print(stderr, baitwright::wants_json(given) ? told : baitwright::dressed_errors(told, wishes));
        return baitwright::exit_status(error.fault_class());
    } catch (const std::bad_alloc&) {
        throw;
    } catch (const std::exception& error) {
        print(stderr, std::string("error: a mistake in baitwright itself: ") + error.what() +
                          "\n  hint: please report it with the command that you typed\n");
        return 70;
    }
}

}  // namespace

int main(int count, char** words) {
    std::signal(SIGXFSZ, SIG_IGN);  // where a file may not grow, writing it fails as on a full disk
    baitwright::leave_nothing_when_stopped();
    // Where memory has run out, telling of it must not ask for more: hence plain text, and nothing made on the way.
    try {
        return run(std::vector<std::string>(words + 1, words + count));
    } catch (...) {
        std::fputs(
            "error: there is not enough memory for this\n"
            "  hint: close other programs or ask for less, such as a shorter session or a smaller file\n",
            stderr);
        return baitwright::exit_status(baitwright::FaultClass::try_again);
    }
}
