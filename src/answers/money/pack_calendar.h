#pragma once

#include <cstdint>
#include <vector>

#include "answers/money/buy_packs.h"

namespace baitwright {

/// Where what is there runs short, or goes off: the session that is to be bought for next, or the end.
struct RunsShort {
    int session;
    std::int64_t left;      ///< milligrams, usable, and used up in that session
    std::int64_t lost = 0;  ///< milligrams gone off
};

/// The sessions of one ingredient: how far the stock reaches, and how far a purchase for one of them does.
class PackCalendar {
public:
    explicit PackCalendar(const PackNeed& need);

    [[nodiscard]] int sessions() const { return static_cast<int>(needed_before_.size()) - 1; }
    [[nodiscard]] std::int64_t need_at(int session) const;
    /// Where the stock alone runs short.
    [[nodiscard]] const RunsShort& stock() const { return stock_; }
    [[nodiscard]] bool stock_reaches() const { return stock_.session == sessions(); }
    /// What comes of the stock alone: what is used of it, what is left over and what went past its best.
    [[nodiscard]] const PackPlan& without_buying() const { return without_buying_; }
    /// All that the stock does not reach for.
    [[nodiscard]] std::int64_t to_buy() const { return needed_before_.back() - without_buying_.from_stock; }
    /// All that a purchase for that session can be used for.
    [[nodiscard]] std::int64_t window(int session) const;
    /// Of the sessions that are to be bought for.
    [[nodiscard]] std::int64_t widest_window() const;
    /// After a session with so much left, all of it bought for that session.
    [[nodiscard]] RunsShort after(int session, std::int64_t left) const;

private:
    void use(std::vector<StockedMilligrams> lots);
    [[nodiscard]] int last_good(int bought_for) const;

    int shelf_life_;
    std::vector<std::int64_t> needed_before_{0};  // by session, and at the end the sum
    RunsShort stock_{0, 0};
    PackPlan without_buying_;
};

}  // namespace baitwright
