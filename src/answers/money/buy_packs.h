#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/money/pack_on_offer.h"

/// What to buy of each ingredient for one or many sessions, in whole packs. Everything is in whole milligrams and whole
/// minor units of one currency, so that the cheapest is the cheapest and ties are ties.
namespace baitwright {

/// What is there already; the last session it is good for, from 0. What is past it is not used. It is not reckoned to
/// keep longer than what is bought for the first session.
struct StockedMilligrams {
    std::int64_t milligrams = 0;
    int last_session = 0;
};

/// One ingredient over all sessions.
struct PackNeed {
    std::vector<std::int64_t> milligrams;  ///< by session
    std::vector<PackOnOffer> packs;
    int shelf_life = 1;  ///< sessions, the one it is bought for among them: 1 keeps for that one alone
    std::vector<StockedMilligrams> stock;
    std::optional<std::int64_t> most_left_over;  ///< milligrams of what is bought, past their best or not
};

/// A shop: what it asks for bringing it all, once, however much is bought there.
struct PackShop {
    std::string name;
    std::int64_t delivery_minor = 0;
};

/// The purchases for one ingredient, each as late as it can be. Masses in milligrams.
struct PackPlan {
    std::vector<PackBought> purchases;
    std::int64_t outlay_minor = 0;
    std::int64_t from_stock = 0;  ///< used of what is there already
    std::int64_t bought = 0;
    std::int64_t left_over = 0;       ///< after the last session, and all that went past its best
    std::int64_t past_best = 0;       ///< of which past its best before the last session, and so lost
    std::int64_t at_least_minor = 0;  ///< no purchases cost less than that: the outlay, where all were weighed
    bool least_left = true;           ///< none that cost as much leave less over

    [[nodiscard]] bool proven() const { return at_least_minor == outlay_minor; }
};

/// As much work as an answer is waited for: so many ways to buy are tried, of one ingredient or of all together.
/// Counted and not timed, so that a question has one answer wherever it is asked.
inline constexpr std::int64_t most_ways_tried = 12'000'000;

/// The cheapest purchases, of those the ones that leave least over, and of those the latest; nothing where no packs
/// keep the most left over, or none are for sale.
///
/// Where that is more than `most_ways_tried`, the best that is found in a few steps (`bulk_packs`), with what no
/// purchases can undercut. Throws InputError "too-many-ways" where it finds none that leave as little over as is asked.
///
/// Prices do not change, so buying as late as possible costs no more and keeps longest: packs are bought for a session
/// only where what is there does not reach, and that is then used up first. So what is left after a purchase is all of
/// one age, and what can happen next hangs on the session and that mass alone. Of plans that reach a session in need
/// with as much left or more, for no more money and no more bought, one is kept.
/// **Source**: ours; dynamic programme over states (session, mass left), what is bought by `pack_sums.h`. The dominance
/// of stock on hand is that of the lot-sizing problem, Wagner & Whitin 1958 (from memory). **Valid for**: needs from 0,
/// in all at most 10 t.
/// **Test**: every way to buy, for small needs, `tests/answers/buy_packs_test.cpp`; integer programmes of two other
/// solvers, `tests/solver/outside_solvers_test.cpp`.
std::optional<PackPlan> cheapest_packs_over(const PackNeed& need);
/// The same where only so many ways may be tried; those that were are taken off them.
std::optional<PackPlan> cheapest_packs_over(const PackNeed& need, std::int64_t& ways);

/// Purchases where there are too many ways to try them all: for as long as an ingredient keeps the cheapest packs for
/// what is then needed, each of them bought as late as the others allow. No purchases cost less than the cheapest packs
/// for all of it at once, were it to keep for ever: that is the bound. Nothing where nothing is for sale. Throws
/// InputError "too-many-ways" where it leaves more over than is asked.
/// **Source**: ours; a relaxation for the bound. **Valid for**: as `cheapest_packs_over`. **Test**: never cheaper than
/// the exact programme, and its bound never dearer, `tests/answers/bulk_packs_test.cpp`.
std::optional<PackPlan> bulk_packs(const PackNeed& need);

/// All ingredients together, with shops that may ask for delivery.
struct PackQuestion {
    std::vector<PackNeed> needs;
    std::vector<PackShop> shops;
    bool one_shop = false;  ///< all that has a shop is bought at one of them
};

struct PackAnswer {
    std::vector<PackPlan> plans;  ///< by ingredient
    std::vector<int> shops;       ///< those that something is bought at, by number
    std::int64_t delivery_minor = 0;
    std::int64_t total_minor = 0;     ///< delivery among it
    std::int64_t at_least_minor = 0;  ///< nothing costs less than that: the total, where all was weighed
    bool least_left = true;           ///< nothing that costs as much leaves less over
};

/// More shops than this that ask for delivery are too many to try each choice of them.
inline constexpr std::size_t most_delivering_shops = 6;

/// The cheapest over every choice of the shops that ask for delivery. Nothing where no choice sells it all. Throws
/// InputError "too-many-shops" above `most_delivering_shops`, and what `cheapest_packs_over` throws. `most_ways_tried`
/// is shared out evenly to the ingredients and the choices of shops.
std::optional<PackAnswer> buy_packs(const PackQuestion& question);

}  // namespace baitwright
