#pragma once

#include <cmath>
#include <exception>
#include <string>
#include <utility>
#include <vector>

#include "quantities/fault.h"

/// What every refusal must have, for the fuzz targets and their seeds.
namespace baitwright::fuzz {

/// What the faults lack; empty where nothing.
inline std::string lacking(const std::vector<Fault>& faults) {
    if (faults.empty()) return "a refusal without a fault";
    for (const Fault& fault : faults) {
        if (fault.more > 0) continue;  // how many more there are
        if (fault.code.empty()) return "a fault without a code";
        if (fault.message.empty()) return "a fault without a message";
        if (fault.hint.empty()) return "a fault without a hint: " + fault.message;
    }
    return {};
}

/// The same of the faults of a file, each of which has a place; they stand in its order.
inline std::string lacking_in_file(const std::vector<Fault>& faults) {
    int line = 1, column = 0;
    for (const Fault& fault : faults) {
        if (fault.more > 0) break;  // behind the others
        if (fault.column < 1) return "a fault without a place: " + fault.message;
        if (fault.line < line || (fault.line == line && fault.column < column)) return "faults are out of order";
        line = fault.line;
        column = fault.column;
    }
    return faults.empty() ? std::string() : lacking(faults);
}

/// Runs it; says what is wrong with how it ended. Nothing but the project's own errors may leave it.
template <class Run>
std::string wrong_with(Run&& run) {
    try {
        return run();
    } catch (const Error& error) {
        return lacking(error.faults());
    } catch (const std::exception& error) {
        return std::string("what is no error of ours came out: ") + error.what();
    }
}

}  // namespace baitwright::fuzz
