#include "answers/money/buy_packs.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "quantities/fault.h"

namespace baitwright {

namespace {

/// Which shops are gone to.
using Choice = std::vector<bool>;

bool sold(const PackOnSale& pack, const Choice& choice) {
    return pack.shop < 0 || choice[static_cast<std::size_t>(pack.shop)];
}

/// The plan of one ingredient for each choice of shops, worked out once for all choices that sell it alike.
class PlansOfOne {
public:
    explicit PlansOfOne(const PackNeed& need) : need_(need) {}

    /// Ways that are tried are taken off those.
    const std::optional<PackPlan>& plan(const Choice& choice, std::int64_t& ways) {
        std::vector<bool> on_sale;
        for (const PackOnSale& pack : need_.packs) on_sale.push_back(sold(pack, choice));
        const auto known = plans_.find(on_sale);
        if (known != plans_.end()) return known->second;
        return plans_.emplace(on_sale, worked_out(on_sale, ways)).first->second;
    }

private:
    [[nodiscard]] std::optional<PackPlan> worked_out(const std::vector<bool>& on_sale, std::int64_t& ways) const {
        PackNeed need = need_;
        std::vector<std::size_t> places;
        need.packs.clear();
        for (std::size_t i = 0; i < on_sale.size(); ++i) {
            if (!on_sale[i]) continue;
            need.packs.push_back(need_.packs[i]);
            places.push_back(i);
        }
        auto plan = cheapest_packs_over(need, ways);
        if (plan)
            for (PackPurchase& purchase : plan->purchases) purchase.pack = places[purchase.pack];
        return plan;
    }

    const PackNeed& need_;
    std::map<std::vector<bool>, std::optional<PackPlan>> plans_;
};

/// Tries choices of shops and keeps the best.
class PackBuyer {
public:
    explicit PackBuyer(const PackQuestion& question) : question_(question) {
        for (const PackNeed& need : question.needs) ingredients_.emplace_back(need);
        plans_to_come_ = static_cast<std::int64_t>(ingredients_.size());
    }

    std::optional<PackAnswer> run() {
        question_.one_shop ? try_one_by_one() : try_subsets();
        if (best_) best_->at_least_minor = at_least_;
        return std::move(best_);
    }

private:
    void try_one_by_one() {
        if (question_.shops.empty()) return try_choice({}, 0);
        plans_to_come_ *= static_cast<std::int64_t>(question_.shops.size());
        for (std::size_t shop = 0; shop < question_.shops.size(); ++shop) {
            Choice choice(question_.shops.size(), false);
            choice[shop] = true;
            try_choice(choice, 0);  // what is sold anywhere may be all that is bought
        }
    }

    void try_subsets() {
        std::vector<std::size_t> delivering;
        for (std::size_t shop = 0; shop < question_.shops.size(); ++shop)
            if (question_.shops[shop].delivery_minor > 0) delivering.push_back(shop);
        if (delivering.size() > most_delivering_shops)
            throw InputError("too-many-shops",
                             std::to_string(delivering.size()) + " shops ask for delivery, and at most " +
                                 std::to_string(most_delivering_shops) + " can be weighed against each other",
                             "leave out those that you would not go to");
        plans_to_come_ <<= static_cast<int>(delivering.size());
        for (unsigned mask = 0; mask < 1U << delivering.size(); ++mask) {
            Choice choice(question_.shops.size(), true);
            std::int64_t charges = 0;
            for (std::size_t i = 0; i < delivering.size(); ++i) {
                choice[delivering[i]] = (mask >> i & 1U) != 0;
                if (choice[delivering[i]]) charges += question_.shops[delivering[i]].delivery_minor;
            }
            try_choice(choice, charges);
        }
    }

    /// Who buys at all the shops of the choice pays at least those charges; who buys at fewer is of another choice.
    void try_choice(const Choice& choice, std::int64_t charges) {
        PackAnswer answer;
        std::int64_t bought = 0, at_least = 0;
        Choice used(choice.size(), false);
        for (std::size_t i = 0; i < ingredients_.size(); ++i) {
            const std::optional<PackPlan>& plan = plan_of(i, choice);
            if (!plan) return;
            answer.total_minor += plan->outlay_minor;
            at_least += plan->at_least_minor;
            answer.least_left = answer.least_left && plan->least_left;
            bought += plan->bought;
            for (const PackPurchase& purchase : plan->purchases) {
                const int shop = question_.needs[i].packs[purchase.pack].shop;
                if (shop >= 0) used[static_cast<std::size_t>(shop)] = true;
            }
            answer.plans.push_back(*plan);
        }
        for (std::size_t shop = 0; shop < used.size(); ++shop) {
            if (!used[shop]) continue;
            answer.shops.push_back(static_cast<int>(shop));
            answer.delivery_minor += question_.shops[shop].delivery_minor;
        }
        answer.total_minor += answer.delivery_minor;
        const bool all_weighed = at_least == answer.total_minor - answer.delivery_minor;
        bound(all_weighed ? answer.total_minor : at_least + charges);
        if (best_ && std::tie(best_->total_minor, bought_) <= std::tie(answer.total_minor, bought)) return;
        best_ = std::move(answer);
        bought_ = bought;
    }

    /// Each has its share of the ways, and what those before it did not need.
    const std::optional<PackPlan>& plan_of(std::size_t ingredient, const Choice& choice) {
        const std::int64_t share = ways_ / std::max<std::int64_t>(1, plans_to_come_--);
        std::int64_t left = share;
        const std::optional<PackPlan>& plan = ingredients_[ingredient].plan(choice, left);
        ways_ -= share - left;
        return plan;
    }

    /// Whatever the cheapest is, it is of one of the choices, and costs no less than that one asks for at the least.
    void bound(std::int64_t at_least) {
        at_least_ = choices_ == 0 ? at_least : std::min(at_least_, at_least);
        ++choices_;
    }

    const PackQuestion& question_;
    std::vector<PlansOfOne> ingredients_;
    std::int64_t ways_ = most_ways_tried, plans_to_come_ = 1, choices_ = 0, at_least_ = 0;
    std::optional<PackAnswer> best_;
    std::int64_t bought_ = 0;
};

}  // namespace

std::optional<PackAnswer> buy_packs(const PackQuestion& question) {
    return PackBuyer(question).run();
}

}  // namespace baitwright
