#pragma once

#include <cmath>

namespace baitwright {

/// What the sessions of one way of feeding brought, as far as the model needs it: blanks apart, and of the others the
/// logarithms of what each brought (kg an hour and angler, or kg for each unit of money).
struct Takings {
    int blanks = 0, caught = 0;  ///< sessions without fish, and with
    double log_mean = 0;         ///< over the sessions with fish
    double log_squares = 0;      ///< of the deviations from it, summed

    [[nodiscard]] int sessions() const { return blanks + caught; }

    /// One more session; nothing caught is a blank. The mean and squares by Welford 1962 (from memory).
    void add(double amount) {
        if (!(amount > 0)) {
            ++blanks;
            return;
        }
        ++caught;
        const double away = std::log(amount) - log_mean;
        log_mean += away / caught;
        log_squares += away * (std::log(amount) - log_mean);
    }
};

}  // namespace baitwright
