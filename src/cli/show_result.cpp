#include "cli/show_result.h"

#include <unistd.h>

#include "cli/colour.h"
#include "cli/pager.h"
#include "report/degree_sign.h"

namespace baitwright {

std::string dressed_answer(const CommandResult& result, const TerminalWishes& wishes) {
    if (result.form != OutputForm::told && result.form != OutputForm::listed) return result.output;
    const std::string text = ::isatty(STDOUT_FILENO) ? in_letters_of_terminal(result.output) : result.output;
    return takes_colour(STDOUT_FILENO, wishes.colour) ? coloured_answer(text) : text;
}

std::string dressed_errors(const std::string& told, const TerminalWishes& wishes) {
    const std::string text = ::isatty(STDERR_FILENO) ? in_letters_of_terminal(told) : told;
    return takes_colour(STDERR_FILENO, wishes.colour) ? coloured_errors(text) : text;
}

bool paged(const CommandResult& result, const std::string& dressed, const TerminalWishes& wishes) {
    return result.form == OutputForm::listed && wishes.pager && is_worth_a_pager(dressed) && shown_in_pager(dressed);
}

}  // namespace baitwright
