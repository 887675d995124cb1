#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include "cli/program.h"

namespace {

/// Prints all of it; 0, or the status for output that could not be written. `done` is said then: what is done even so.
int print(std::FILE* stream, const std::string& text, const std::string& done = {}) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stream) == text.size() && std::fflush(stream) == 0;
    if (written) return 0;
    std::fputs("error: the output could not be written (is the disk full?)\n", stderr);
    if (!done.empty()) std::fputs(("  hint: " + done + "\n").c_str(), stderr);
    return baitwright::exit_status(baitwright::FaultClass::input_output);
}

}  // namespace

int main(int count, char** words) {
    const std::vector<std::string> given(words + 1, words + count);
    try {
        const baitwright::CommandResult result = baitwright::run_program(given);
        const int printed = print(stdout, result.output, result.done_already);
        if (!result.aside.empty()) print(stderr, result.aside);
        return printed ? printed : result.status;
    } catch (const baitwright::Error& error) {
        print(stderr, baitwright::error_text(error, given));
        return baitwright::exit_status(error.fault_class());
    } catch (const std::exception& error) {
        print(stderr, std::string("error: a mistake in baitwright itself: ") + error.what() +
                          "\n  hint: please report it with the command that you typed\n");
        return 70;
    }
}
