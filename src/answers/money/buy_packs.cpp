#include "answers/money/buy_packs.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "quantities/fault.h"
#include "quantities/progress.h"

namespace baitwright {

namespace {

/// Which shops are gone to.
using Choice = std::vector<bool>;

/// Tries choices of shops and keeps the best.
class PackBuyer {
public:
    explicit PackBuyer(const PackQuestion& question) : question_(question), plans_(question.needs.size()) {}

    std::optional<PackAnswer> run() {
        const bool each_alone = question_.one_shop && !question_.shops.empty();
        const std::vector<Choice> choices = each_alone ? one_by_one() : subsets();
        const std::size_t plans = choices.size() * question_.needs.size();
        plans_to_come_ = static_cast<std::int64_t>(plans);
        Progress progress("choosing packs", plans);
        for (const Choice& choice : choices) try_choice(choice, progress);
        if (best_) best_->at_least_minor = *at_least_;
        return std::move(best_);
    }

private:
    [[nodiscard]] std::vector<Choice> one_by_one() const {
        std::vector<Choice> choices(question_.shops.size(), Choice(question_.shops.size(), false));
        for (std::size_t shop = 0; shop < choices.size(); ++shop) choices[shop][shop] = true;
        return choices;
    }

    /// Of those that ask for delivery; the others are gone to at any rate.
    [[nodiscard]] std::vector<Choice> subsets() const {
        std::vector<std::size_t> delivering;
        for (std::size_t shop = 0; shop < question_.shops.size(); ++shop)
            if (question_.shops[shop].delivery_minor > 0) delivering.push_back(shop);
        if (delivering.size() > most_delivering_shops)
            throw InputError("too-many-shops",
                             std::to_string(delivering.size()) + " shops ask for delivery, and at most " +
                                 std::to_string(most_delivering_shops) + " can be weighed against each other",
                             "leave out those that you would not go to");
        std::vector<Choice> choices(std::size_t{1} << delivering.size(), Choice(question_.shops.size(), true));
        for (std::size_t mask = 0; mask < choices.size(); ++mask)
            for (std::size_t i = 0; i < delivering.size(); ++i) choices[mask][delivering[i]] = (mask >> i & 1U) != 0;
        return choices;
    }

    void try_choice(const Choice& choice, Progress& progress) {
        PackAnswer answer;
        std::int64_t bought = 0, at_least = 0;
        Choice used(choice.size(), false);
        for (std::size_t i = 0; i < plans_.size(); ++i) {
            const std::optional<PackPlan>& plan = plan_of(i, choice);
            progress.step();
            if (!plan) return;
            answer.total_minor += plan->outlay_minor;
            at_least += plan->at_least_minor;
            answer.least_left = answer.least_left && plan->least_left;
            bought += plan->bought;
            for (const PackBought& purchase : plan->purchases)
                if (purchase.shop >= 0) used[static_cast<std::size_t>(purchase.shop)] = true;
            answer.plans.push_back(*plan);
        }
        for (std::size_t shop = 0; shop < used.size(); ++shop) {
            if (!used[shop]) continue;
            answer.shops.push_back(static_cast<int>(shop));
            answer.delivery_minor += question_.shops[shop].delivery_minor;
        }
        const bool all_weighed = at_least == answer.total_minor;
        answer.total_minor += answer.delivery_minor;
        at_least = all_weighed ? answer.total_minor : at_least + charges(choice);
        // Whatever the cheapest is, it is of one of the choices, and costs no less than that one asks for at the least.
        at_least_ = std::min(at_least_.value_or(at_least), at_least);
        if (best_ && std::tie(best_->total_minor, bought_) <= std::tie(answer.total_minor, bought)) return;
        best_ = std::move(answer);
        bought_ = bought;
    }

    /// Who buys at all the shops of the choice pays at least those charges; who buys at fewer is of another choice. At
    /// one shop what is sold anywhere may be all that is bought.
    [[nodiscard]] std::int64_t charges(const Choice& choice) const {
        std::int64_t sum = 0;
        for (std::size_t shop = 0; shop < choice.size() && !question_.one_shop; ++shop)
            if (choice[shop]) sum += question_.shops[shop].delivery_minor;
        return sum;
    }

    /// Worked out once for all choices that sell it alike. Each has its share of the ways, and what those before it did
    /// not need.
    const std::optional<PackPlan>& plan_of(std::size_t ingredient, const Choice& choice) {
        PackNeed need = question_.needs[ingredient];
        std::vector<bool> on_sale;
        for (const PackOnOffer& pack : need.packs)
            on_sale.push_back(pack.shop < 0 || choice[static_cast<std::size_t>(pack.shop)]);
        const std::int64_t share = ways_ / std::max<std::int64_t>(1, plans_to_come_--);
        const auto [known, is_new] = plans_[ingredient].try_emplace(on_sale);
        if (!is_new) return known->second;
        need.packs.clear();
        for (std::size_t i = 0; i < on_sale.size(); ++i)
            if (on_sale[i]) need.packs.push_back(question_.needs[ingredient].packs[i]);
        std::int64_t left = share;
        known->second = cheapest_packs_over(need, left);
        ways_ -= share - left;
        return known->second;
    }

    const PackQuestion& question_;
    std::vector<std::map<std::vector<bool>, std::optional<PackPlan>>> plans_;  // of each ingredient, by what is on sale
    std::int64_t ways_ = most_ways_tried, plans_to_come_ = 1;
    std::optional<std::int64_t> at_least_;
    std::optional<PackAnswer> best_;
    std::int64_t bought_ = 0;
};

}  // namespace

std::optional<PackAnswer> buy_packs(const PackQuestion& question) {
    return PackBuyer(question).run();
}

}  // namespace baitwright
