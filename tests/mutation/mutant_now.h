#pragma once

#include <cstdlib>

// Stands at the head of each source that `tests/mutation/run` puts slips into: which of them is on is asked when the
// program runs, so that all of them are compiled once.
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wparentheses"
#pragma GCC diagnostic ignored "-Wextra"
#pragma GCC diagnostic ignored "-Wall"
#pragma GCC diagnostic ignored "-Wunused-variable"
#pragma GCC diagnostic ignored "-Wunused-parameter"
#pragma GCC diagnostic ignored "-Wunused-function"
#pragma GCC diagnostic ignored "-Wsign-compare"
#pragma GCC diagnostic ignored "-Wtype-limits"
#pragma GCC diagnostic ignored "-Wbool-compare"
#pragma GCC diagnostic ignored "-Wbool-operation"
#pragma GCC diagnostic ignored "-Wtautological-compare"
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"

inline bool mutant_is(int number) {
    static const int now = [] {
        const char* told = std::getenv("BAITWRIGHT_MUTANT");
        return told ? std::atoi(told) : 0;
    }();
    return number == now;
}
