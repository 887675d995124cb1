#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <tuple>
#include <vector>

#include "answers/money/buy_packs.h"

/// Small pack problems worked out by trying every way to buy, at any session, of any pack: nothing of the programme
/// under test is used, nor any of its reasons (that late is best, that ways make others needless).
namespace baitwright::every_way {

struct Lot {
    std::int64_t milligrams;
    int last;
};

struct Found {
    std::int64_t outlay, bought;
    friend bool operator==(const Found& a, const Found& b) { return a.outlay == b.outlay && a.bought == b.bought; }
};

class Trial {
public:
    explicit Trial(const PackNeed& need) : need_(need) {
        for (const StockedMilligrams& lot : need.stock) stock_.push_back({lot.milligrams, lot.last_session});
    }

    std::optional<Found> run() {
        try_session(0, stock_, {0, 0}, 0);
        return best_;
    }

private:
    /// Takes the need of a session out of the lots, the first to go off first; false where they do not reach.
    bool feed(int session, std::vector<Lot>& lots, std::int64_t& from_bought, std::size_t stocked) const {
        std::int64_t need = need_.milligrams[std::size_t(session)];
        std::vector<std::size_t> order;
        for (std::size_t i = 0; i < lots.size(); ++i) order.push_back(i);
        // Of lots that go off together what is there already goes first.
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return lots[a].last < lots[b].last; });
        for (const std::size_t i : order) {
            if (lots[i].last < session) continue;
            const std::int64_t taken = std::min(need, lots[i].milligrams);
            lots[i].milligrams -= taken;
            need -= taken;
            if (i >= stocked) from_bought += taken;
        }
        return need == 0;
    }

    void try_session(int session, const std::vector<Lot>& lots, Found so_far, std::int64_t used) {
        if (best_ && so_far.outlay > best_->outlay) return;
        if (session == int(need_.milligrams.size())) return settle(so_far, used);
        try_pack(0, session, lots, so_far, used, 0);
    }

    void try_pack(std::size_t pack, int session, const std::vector<Lot>& lots, Found so_far, std::int64_t used,
                  std::int64_t now) {
        if (pack == need_.packs.size()) {
            std::vector<Lot> more = lots;
            if (now > 0) more.push_back({now, session + need_.shelf_life - 1});
            std::int64_t of_it = used;
            if (feed(session, more, of_it, stock_.size())) try_session(session + 1, more, so_far, of_it);
            return;
        }
        std::int64_t ahead = 0;  // more than all that is still to come is never wanted
        for (std::size_t s = std::size_t(session); s < need_.milligrams.size(); ++s) ahead += need_.milligrams[s];
        for (int count = 0; (count - 1) * need_.packs[pack].milligrams < ahead; ++count) {
            const Found next{so_far.outlay + count * need_.packs[pack].price_minor,
                             so_far.bought + count * need_.packs[pack].milligrams};
            try_pack(pack + 1, session, lots, next, used, now + count * need_.packs[pack].milligrams);
        }
    }

    void settle(Found found, std::int64_t used) {
        if (need_.most_left_over && found.bought > 0 && found.bought - used > *need_.most_left_over) return;
        if (!best_ || std::tie(found.outlay, found.bought) < std::tie(best_->outlay, best_->bought)) best_ = found;
    }

    const PackNeed& need_;
    std::vector<Lot> stock_;
    std::optional<Found> best_;
};

inline std::optional<Found> cheapest(const PackNeed& need) {
    return Trial(need).run();
}

}  // namespace baitwright::every_way
