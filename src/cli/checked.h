#pragma once

#include "cli/result_formats.h"
#include "report/check_report.h"

namespace baitwright {

/// The end of a command that checks a mix or a strategy: its faults, status 1; or what is odd about it. `odd_of` takes
/// the word that was given and returns the oddities, or throws the faults.
template <class OddOf>
CommandResult checked(const Arguments& arguments, const char* what, OddOf&& odd_of) {
    const std::string& asked = arguments.words().front();
    const std::string word = asked == "-" ? "standard input" : asked;
    std::vector<Fault> faults;
    std::vector<Warning> odd;
    try {
        odd = odd_of(asked);
    } catch (const InputError& error) {
        faults = error.faults();
    }
    return given(arguments, {faults.empty() ? 0 : 1, [&] { return check_told(word, faults, odd); },
                             [&] { return check_json(what, word, faults, odd); }});
}

}  // namespace baitwright
