#include "cli/for_machines.h"

#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <exception>

#include "cli/choices.h"
#include "cli/completion.h"
#include "cli/manual.h"
#include "cli/typed_line.h"
#include "quantities/plain_words.h"

namespace baitwright {

namespace {

extern "C" void give_up(int) {
    std::_Exit(0);
}

/// Whoever waits for the next letter waits no longer than a second, wherever the files are.
class LongestWait {
public:
    LongestWait() : before_(std::signal(SIGALRM, give_up)) { alarm(1); }
    ~LongestWait() {
        alarm(0);
        std::signal(SIGALRM, before_);
    }
    LongestWait(const LongestWait&) = delete;
    LongestWait& operator=(const LongestWait&) = delete;

private:
    void (*before_)(int);
};

std::string files_line(OfferedFiles files) {
    if (files == OfferedFiles::none) return "";
    return files == OfferedFiles::files ? "\tfiles\n" : "\tfolders\n";
}

std::string lines_for_shells(const Completion& completion) {
    std::string lines;
    for (const Candidate& candidate : completion.candidates)
        if (unfit_in(candidate.text).empty())
            lines += candidate.text + (candidate.says.empty() ? "" : "\t" + written_out(candidate.says)) + "\n";
    return lines + files_line(completion.files);
}

std::string lines_for_bash(const Completion& completion, const TypedLine& line) {
    const std::string kept = line.words.back().substr(0, line.kept);
    std::string lines;
    for (const Candidate& candidate : completion.candidates)
        if (unfit_in(candidate.text).empty() && begins_so(candidate.text, kept))
            lines += quoted_for_bash(candidate.text.substr(kept.size()), line.quote) + "\n";
    return lines + files_line(completion.files);
}

/// `line` is all that is typed up to the cursor, from the program's name on.
std::string answer_to_bash(const std::string& breaks, const std::string& typed) {
    TypedLine line = typed_line(typed, breaks);
    line.words.erase(line.words.begin());
    if (line.words.empty()) return "";
    return lines_for_bash(completion_of(line.words), line);
}

std::string answer_to_shell(const std::vector<std::string>& words) {
    const LongestWait patience;
    try {
        const bool bash = words.size() == 3 && words[0] == "--bash";
        return bash ? answer_to_bash(words[1], words[2]) : lines_for_shells(completion_of(words));
    } catch (const std::exception&) {
        return "";  // a person is typing: there is nobody to tell
    }
}

}  // namespace

bool is_for_machines(std::string_view word) {
    return word == "complete" || word == "manual";
}

CommandResult run_for_machines(const std::vector<std::string>& given) {
    const std::vector<std::string> words(given.begin() + 1, given.end());
    return {given.front() == "complete" ? answer_to_shell(words) : manual_answer(words), 0};
}

}  // namespace baitwright
