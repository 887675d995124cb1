#include "cli/read_flags.h"

namespace baitwright {

MassOrVolume read_amount(const std::string& text) {
    try {
        return above_zero(parse<Mass>(text));
    } catch (const InputError& error) {
        if (error.faults().front().code != "wrong-dimension") throw;
        return above_zero(parse<Volume>(text));
    }
}

}  // namespace baitwright
