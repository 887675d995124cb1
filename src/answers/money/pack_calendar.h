#pragma once

#include <cstdint>
#include <vector>

#include "answers/money/buy_packs.h"

namespace baitwright {

/// Where what was bought runs short, or goes off: the session that is to be bought for next, or the end.
struct RunsShort {
    int session;
    std::int64_t left;      ///< grams, usable, and used up in that session
    std::int64_t lost = 0;  ///< grams gone off
};

/// The sessions of one ingredient, and how far a purchase for one of them reaches.
class PackCalendar {
public:
    explicit PackCalendar(const PackNeed& need);

    [[nodiscard]] int sessions() const { return static_cast<int>(needed_before_.size()) - 1; }
    [[nodiscard]] std::int64_t need_at(int session) const;
    /// All that a purchase for that session can be used for.
    [[nodiscard]] std::int64_t window(int session) const;
    [[nodiscard]] std::int64_t widest_window(int from) const;
    /// After a session with so much left, all of it bought for that session.
    [[nodiscard]] RunsShort after(int session, std::int64_t left) const;

private:
    [[nodiscard]] int last_good(int bought_for) const;

    int shelf_life_;
    std::vector<std::int64_t> needed_before_;  // by session, and at the end the sum
};

}  // namespace baitwright
