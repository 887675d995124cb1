#include "answers/money/convert_prices.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "quantities/amount_range.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

/// The currency that is converted; null where every price is in `to`.
const Currency* currency_converted(const std::vector<NamedPacks>& library, const ConvertRequest& request) {
    if (request.from) return request.from;
    std::vector<std::string> codes;
    const Currency* other = nullptr;
    for (const NamedPacks& one : library) {
        for (const Pack& pack : one.packs) {
            if (!pack.price || pack.price->currency() == *request.to) continue;
            const std::string code(pack.price->currency().code);
            if (std::find(codes.begin(), codes.end(), code) == codes.end()) codes.push_back(code);
            other = &pack.price->currency();
        }
    }
    if (codes.size() > 1)
        throw UsageError("several-currencies",
                         "the prices are in " + listed(codes) + ", and each has a rate of its own",
                         "say which to turn into " + std::string(request.to->code) + ", one after the other: --from " +
                             codes.front());
    return other;
}

class Converter {
public:
    Converter(const ConvertRequest& request, const Currency* from) {
        found_.asked = request;
        found_.from = from;
    }

    PriceConversion run(const std::vector<NamedPacks>& library) {
        for (const NamedPacks& one : library) {
            NamedPacks then = one;
            bool changes = false;
            for (Pack& pack : then.packs) changes = convert(one.name, pack) || changes;
            if (changes) found_.changed.push_back(std::move(then));
        }
        if (!faults_.empty()) throw InputError(std::move(faults_));
        return std::move(found_);
    }

private:
    /// Whether it changes.
    bool convert(const std::string& name, Pack& pack) {
        if (!pack.price) return false;
        if (!found_.from || !(pack.price->currency() == *found_.from) || *found_.from == *found_.asked.to) {
            ++found_.unchanged;
            return false;
        }
        const Pack was = pack;
        pack.price = converted(*was.price, found_.asked.rate, *found_.asked.to);
        pack.on = found_.asked.on;
        check(name, was, *pack.price);
        found_.converted.push_back({name, was, pack});
        return true;
    }

    void check(const std::string& name, const Pack& was, const Money& is) {
        const bool nothing = is.minor() == 0 && was.price->minor() != 0;
        if (!nothing && lies_in_range(is)) return;
        const std::string code(found_.asked.to->code);
        faults_.push_back({"unfit-price",
                           "at that rate the " + money_text(*was.price) + " of " + in_quotes(name) +
                               (nothing ? " would come to nothing in " + code
                                        : " would be more than any price in " + code + " can be"),
                           "check --at: how many " + code + " one " + std::string(found_.from->code) + " buys"});
    }

    PriceConversion found_;
    std::vector<Fault> faults_;
};

PriceConversion without_prices(const std::vector<NamedPacks>& library, const ConvertRequest& request) {
    PriceConversion found;
    found.asked = request;
    for (const NamedPacks& one : library) {
        NamedPacks then{one.name, {}};
        std::size_t priced = 0;
        for (const Pack& pack : one.packs) {
            if (pack.price) ++priced;
            const auto same = [&](const Pack& other) { return other.size == pack.size; };
            if (std::none_of(then.packs.begin(), then.packs.end(), same))
                then.packs.push_back({pack.size, std::nullopt, std::nullopt, {}});
        }
        found.taken_out += priced;
        if (priced > 0) found.changed.push_back(std::move(then));
    }
    return found;
}

}  // namespace

Money converted(const Money& money, double rate, const Currency& to) {
    const double scale = std::pow(10.0, to.minor_digits - money.currency().minor_digits);
    double exact = static_cast<double>(money.minor()) * rate * scale;
    // 250 x 1.17 is 292.5, a half, though no double is 1.17.
    const double half = std::round(2 * exact) / 2;
    if (std::abs(exact - half) <= 4 * std::numeric_limits<double>::epsilon() * std::abs(exact)) exact = half;
    return {round_half_even(exact), to};
}

PriceConversion convert_prices(const std::vector<NamedPacks>& library, const ConvertRequest& request) {
    if (!request.to) return without_prices(library, request);
    return Converter(request, currency_converted(library, request)).run(library);
}

}  // namespace baitwright
