#include "answers/mix/price_mix.h"

#include <cstdint>
#include <optional>
#include <vector>

#include "answers/shared/stale_prices.h"
#include "bait/one_currency.h"
#include "bait/pricing.h"

namespace baitwright {

namespace {

class MixPricer {
public:
    MixPricer(const ResolvedMix& mix, MixAnswer& answer) : answer_(answer) {
        for (std::size_t i = 0; i < mix.solids.size(); ++i)
            lines_.push_back({&mix.solids[i].ingredient, answer.parts[i].mass, &answer.parts[i].cost});
        for (std::size_t i = 0; i < answer.additives.size(); ++i)
            lines_.push_back({&additive_ingredient(mix, i), answer.additives[i].mass, &answer.additives[i].cost});
    }

    void price(const Currency* usual) {
        std::vector<PricedIn> priced;
        for (const PricedLine& line : lines_) add_currencies(priced, *line.ingredient);
        answer_.currency = answer_currency(priced, usual);
        const bool complete = warn_of_missing();
        if (!answer_.currency) return;
        std::vector<double> exact;
        for (const PricedLine& line : lines_) exact.push_back(cost_of(line).value_or(0));
        const std::vector<std::int64_t> minor = round_to_sum(exact);
        Money total(0, *answer_.currency);
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            if (!cost_of(lines_[i])) continue;
            *lines_[i].cost = Money(minor[i], *answer_.currency);
            total += **lines_[i].cost;
        }
        if (complete) answer_.cost = total;
    }

private:
    struct PricedLine {
        const Ingredient* ingredient;
        Mass mass;
        std::optional<Money>* cost;
    };

    [[nodiscard]] std::optional<double> cost_of(const PricedLine& line) const {
        return exact_cost_minor(*line.ingredient, line.mass, answer_.currency);
    }

    bool warn_of_missing() {
        bool complete = true;
        std::vector<PricedElsewhere> elsewhere;
        for (const PricedLine& line : lines_) {
            if (cost_of(line)) continue;
            complete = false;
            if (auto other = priced_elsewhere(*line.ingredient, answer_.currency))
                elsewhere.push_back(*std::move(other));
            else
                answer_.warnings.push_back(
                    {"no-price", "no price is known for " + line.ingredient->name + ", so the cost leaves it out"});
        }
        if (elsewhere.empty()) return complete;
        answer_.warnings.push_back(
            other_currency_warning(elsewhere, *answer_.currency, leaves_out("the cost", elsewhere.size())));
        answer_.warnings.back().answer_is_no = false;  // the mix is right all the same
        return complete;
    }

    MixAnswer& answer_;
    std::vector<PricedLine> lines_;
};

}  // namespace

void price_mix(const ResolvedMix& mix, const Currency* usual, MixAnswer& answer) {
    MixPricer(mix, answer).price(usual);
}

}  // namespace baitwright
