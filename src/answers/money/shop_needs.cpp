#include "answers/money/shop_needs.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "bait/pricing.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// A sum that is a whole number of grams but for rounding is that number.
constexpr double gram_slack = 1e-6;

bool gone_to(const Pack& pack, const std::vector<std::string>& at) {
    return at.empty() || pack.shop.empty() || std::find(at.begin(), at.end(), pack.shop) != at.end();
}

int days_between(Date from, Date to) {
    return static_cast<int>((to - from).count());
}

/// The last session on or before that day; -1 where all are later.
int last_session_by(Date last, const std::vector<SessionNeed>& sessions) {
    int session = -1;
    for (const SessionNeed& need : sessions) session += need.on <= last ? 1 : 0;
    return session;
}

}  // namespace

std::vector<ShoppedIngredient> shopped_ingredients(const std::vector<SessionNeed>& sessions,
                                                   const std::vector<std::string>& at) {
    std::map<std::string, ShoppedIngredient> by_name;
    for (std::size_t session = 0; session < sessions.size(); ++session) {
        for (const IngredientNeed& need : sessions[session].needs) {
            if (!(need.mass > Mass{})) continue;
            ShoppedIngredient& shopped = by_name[need.ingredient.name];
            shopped.ingredient = need.ingredient;
            shopped.grams.resize(sessions.size());
            shopped.grams[session] += need.mass.in(gram);
        }
    }
    std::vector<ShoppedIngredient> all;
    for (auto& [name, shopped] : by_name) {
        shopped.packs = offered_packs(shopped.ingredient);
        for (const Pack& pack : shopped.packs)
            if (gone_to(pack, at)) shopped.sold.push_back(pack);
        all.push_back(std::move(shopped));
    }
    return all;
}

int sessions_good_for(const Keeping& keeps, const std::vector<SessionNeed>& sessions) {
    const auto longest = keeps.dry ? keeps.dry : keeps.cold ? keeps.cold : keeps.frozen;
    const auto all = static_cast<int>(sessions.size());
    if (!longest) return all;
    // Sessions need not be evenly spaced: what counts is the fewest that fit in, so that nothing is reckoned to keep
    // longer than it does.
    int fewest = all;
    for (std::size_t first = 0; first < sessions.size(); ++first) {
        std::size_t past = first;
        while (past < sessions.size() &&
               days_between(sessions[first].on, sessions[past].on) <= longest->in(day) + gram_slack)
            ++past;
        if (past < sessions.size()) fewest = std::min(fewest, static_cast<int>(past - first));
    }
    return std::max(1, fewest);
}

std::vector<std::int64_t> whole_grams(const std::vector<double>& grams) {
    std::vector<std::int64_t> whole;
    double sum = 0;
    std::int64_t before = 0;
    for (const double each : grams) {
        sum += each;
        const auto now = static_cast<std::int64_t>(std::ceil(sum - gram_slack));
        whole.push_back(now - before);
        before = now;
    }
    return whole;
}

PackNeed pack_need(const ShoppedIngredient& shopped, const std::vector<SessionNeed>& sessions, const StockOnHand& stock,
                   const std::vector<std::string>& shops) {
    PackNeed need;
    need.grams = whole_grams(shopped.grams);
    need.shelf_life = sessions_good_for(shopped.ingredient.keeps, sessions);
    for (const Pack& pack : shopped.sold) {
        const auto shop = std::find(shops.begin(), shops.end(), pack.shop);
        need.packs.push_back({std::max<std::int64_t>(1, static_cast<std::int64_t>(
                                                            mass_in(pack, shopped.ingredient).in(gram) + gram_slack)),
                              pack.price->minor(), shop == shops.end() ? -1 : static_cast<int>(shop - shops.begin())});
    }
    for (const StockLot& lot : stock.lots(shopped.ingredient.name, sessions.front().on)) {
        const auto grams = static_cast<std::int64_t>(lot.mass.in(gram) + gram_slack);
        const int last =
            !lot.best_before ? static_cast<int>(sessions.size()) - 1 : last_session_by(*lot.best_before, sessions);
        if (grams > 0 && last >= 0) need.stock.push_back({grams, last});
    }
    return need;
}

}  // namespace baitwright
