#include "files/value_reader.h"

#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

bool suggests(const Fault& fault) {
    return fault.hint.substr(0, 3) == "did";
}

/// Read as a mass and as a volume, it fits neither: one fault that offers the units of both.
[[noreturn]] void refuse_both(std::string_view text, const Fault& as_mass, const Fault& as_volume) {
    const bool wrong = as_mass.code == "wrong-dimension";
    std::string hint = as_mass.hint;
    if (suggests(as_volume) && !suggests(as_mass))
        hint = as_volume.hint;
    else if (!suggests(as_mass) && as_volume.hint != as_mass.hint)
        hint += "; " + as_volume.hint;
    throw InputError(as_mass.code, wrong ? in_quotes(text) + " is neither a mass nor a volume" : as_mass.message, hint);
}

template <class Q>
void check_range(const toml::node& node, std::string_view key, Q amount, FileFaults& faults) {
    if (lies_in_range(amount)) return;
    faults.add(place_of(node), "out-of-range",
               in_quotes(key) + " must be " + range_text<Q>() + ", not " +
                   (node.is_string() ? in_quotes(node.as_string()->get()) : shown(node)),
               "check the unit, as in " + std::string(range_of<Q>().example));
}

}  // namespace

std::variant<Mass, Volume> parse_mass_or_volume(std::string_view text) {
    try {
        return parse<Mass>(text);
    } catch (const InputError& as_mass) {
        try {
            return parse<Volume>(text);
        } catch (const InputError& as_volume) {
            refuse_both(text, as_mass.faults().front(), as_volume.faults().front());
        }
    }
}

void check_amount(const toml::node& node, std::string_view key, Mass amount, FileFaults& faults) {
    check_range(node, key, amount, faults);
}
void check_amount(const toml::node& node, std::string_view key, Volume amount, FileFaults& faults) {
    check_range(node, key, amount, faults);
}
void check_amount(const toml::node& node, std::string_view key, Time amount, FileFaults& faults) {
    check_range(node, key, amount, faults);
}

}  // namespace baitwright
