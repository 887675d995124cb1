#include "answers/buy_packs.h"

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

    const std::optional<PackPlan>& plan(const Choice& choice) {
        std::vector<bool> on_sale;
        for (const PackOnSale& pack : need_.packs) on_sale.push_back(sold(pack, choice));
        const auto known = plans_.find(on_sale);
        if (known != plans_.end()) return known->second;
        return plans_.emplace(on_sale, worked_out(on_sale)).first->second;
    }

private:
    [[nodiscard]] std::optional<PackPlan> worked_out(const std::vector<bool>& on_sale) const {
        PackNeed need = need_;
        std::vector<std::size_t> places;
        need.packs.clear();
        for (std::size_t i = 0; i < on_sale.size(); ++i) {
            if (!on_sale[i]) continue;
            need.packs.push_back(need_.packs[i]);
            places.push_back(i);
        }
        auto plan = cheapest_packs_over(need);
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
    }

    std::optional<PackAnswer> run() {
        question_.one_shop ? try_one_by_one() : try_subsets();
        return std::move(best_);
    }

private:
    void try_one_by_one() {
        if (question_.shops.empty()) return try_choice({});
        for (std::size_t shop = 0; shop < question_.shops.size(); ++shop) {
            Choice choice(question_.shops.size(), false);
            choice[shop] = true;
            try_choice(choice);
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
        for (unsigned mask = 0; mask < 1U << delivering.size(); ++mask) {
            Choice choice(question_.shops.size(), true);
            for (std::size_t i = 0; i < delivering.size(); ++i) choice[delivering[i]] = (mask >> i & 1U) != 0;
            try_choice(choice);
        }
    }

    void try_choice(const Choice& choice) {
        PackAnswer answer;
        std::int64_t bought = 0;
        Choice used(choice.size(), false);
        for (std::size_t i = 0; i < ingredients_.size(); ++i) {
            const std::optional<PackPlan>& plan = ingredients_[i].plan(choice);
            if (!plan) return;
            answer.total_minor += plan->outlay_minor;
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
        if (best_ && std::tie(best_->total_minor, bought_) <= std::tie(answer.total_minor, bought)) return;
        best_ = std::move(answer);
        bought_ = bought;
    }

    const PackQuestion& question_;
    std::vector<PlansOfOne> ingredients_;
    std::optional<PackAnswer> best_;
    std::int64_t bought_ = 0;
};

}  // namespace

std::optional<PackAnswer> buy_packs(const PackQuestion& question) {
    return PackBuyer(question).run();
}

}  // namespace baitwright
