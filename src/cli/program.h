#pragma once

#include <string>
#include <vector>

#include "cli/command.h"
#include "quantities/fault.h"

namespace baitwright {

/// Runs what a person typed (without the program's name) and returns what to print. Throws the project's errors.
CommandResult run_program(const std::vector<std::string>& given);

/// Whether errors are to be JSON too.
bool wants_json(const std::vector<std::string>& given);

/// Errors for a person, or as JSON where `--json` was asked for.
std::string error_text(const Error& error, const std::vector<std::string>& given);

/// The exit status of a class of faults: BSD's sysexits where one fits.
int exit_status(FaultClass fault_class);

}  // namespace baitwright
