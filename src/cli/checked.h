#pragma once

#include "cli/command.h"
#include "report/check_report.h"
#include "report/fault_text.h"
#include "report/json.h"

namespace baitwright {

/// The end of a command that checks a mix or a strategy: its faults, status 1; or what is odd about it. `odd_of` takes
/// the word that was given and returns the oddities, or throws the faults.
template <class OddOf>
CommandResult checked(const Arguments& arguments, const char* what, OddOf&& odd_of) {
    const std::string& given = arguments.words().front();
    const std::string word = given == "-" ? "standard input" : given;
    std::vector<Fault> faults;
    std::vector<Warning> odd;
    try {
        odd = odd_of(given);
    } catch (const InputError& error) {
        faults = error.faults();
    }
    if (arguments.has("--json")) return {json_text(check_json(what, word, faults, odd)), faults.empty() ? 0 : 1};
    if (!faults.empty()) return {fault_text(faults), 1};
    return {check_text(word, odd), 0};
}

}  // namespace baitwright
