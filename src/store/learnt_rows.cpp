#include <bit>
#include <cmath>
#include <cstring>
#include <set>
#include <stdexcept>

#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "store/log_book.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/store_fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_learnt_of =
    "SELECT part, name, mean, mixes, factor, measured FROM learnt_water WHERE folded = ?1 ORDER BY part";
constexpr const char* select_hand =
    "SELECT part, name, mean, mixes, factor, measured FROM learnt_water WHERE folded = '' ORDER BY part";
constexpr const char* select_learnt_bags =
    "SELECT part, name, mean, mixes, factor, measured FROM learnt_water WHERE folded <> '' ORDER BY id";
constexpr const char* select_learnt_mix = "SELECT part, name, mean, sigma, times FROM learnt_mix WHERE folded = ?1";
constexpr const char* select_learnt_mixes =
    "SELECT part, name, mean, sigma, times FROM learnt_mix ORDER BY folded, part";
constexpr const char* forget_water = "DELETE FROM learnt_water";
constexpr const char* forget_mixes = "DELETE FROM learnt_mix";
constexpr const char* insert_learnt =
    "INSERT INTO learnt_water (part, name, folded, mean, mixes, measured, factor) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
constexpr const char* insert_learnt_mix = "INSERT INTO learnt_mix VALUES (?1, ?2, ?3, ?4, ?5, ?6)";

/// Logarithms of factors, their spreads, and counts: beyond these nothing is one of bait.
constexpr double largest_log = 20;
constexpr double largest_mark = 100;  // g/g
constexpr std::int64_t largest_count = 1'000'000'000;

enum class WaterPart { hand, memory, absorption, gap };
constexpr std::size_t number_bytes = 8;

/// Little-endian in the store, whatever the machine.
std::uint64_t turned_for_store(std::uint64_t bits) {
    if constexpr (std::endian::native == std::endian::big) return __builtin_bswap64(bits);
    return bits;
}

std::string bytes_of_numbers(const double* first, std::size_t count) {
    std::string bytes(count * number_bytes, '\0');
    for (std::size_t i = 0; i < count; ++i) {
        const std::uint64_t bits = turned_for_store(std::bit_cast<std::uint64_t>(first[i]));
        std::memcpy(bytes.data() + i * number_bytes, &bits, number_bytes);
    }
    return bytes;
}

double number_at(std::string_view bytes, std::size_t index) {
    std::uint64_t bits = 0;
    std::memcpy(&bits, bytes.data() + index * number_bytes, number_bytes);
    return std::bit_cast<double>(turned_for_store(bits));
}

bool is_log(double number) {
    return std::abs(number) <= largest_log;  // false for what is no number
}

std::string told_bag(const std::string& name) {
    return name.empty() ? "your hand" : in_quotes(name);
}

double learnt_mean(const Query& row) {
    const double mean = row.number(2);
    if (!is_log(mean)) throw stored_learnt_out_of_range(told_bag(row.text(1)), "its logarithm must be from -20 to 20");
    return mean;
}

int learnt_count(const Query& row, int column) {
    const std::int64_t count = row.whole(column);
    if (count < 0 || count > largest_count)
        throw stored_learnt_out_of_range(told_bag(row.text(1)), "it cannot have been seen that often");
    return static_cast<int>(count);
}

double measured_mark(const Query& row) {
    const double mark = row.number(5);
    if (!(mark >= 0 && mark <= largest_mark))
        throw stored_learnt_out_of_range(told_bag(row.text(1)), "what was measured of it must be from 0 to 100 g/g");
    return mark;
}

/// Adds the row's factor; the first one says how long all are.
void append_factor(const Query& row, LearntWater& water) {
    const std::string_view bytes = row.bytes(4);
    if (water.rank == 0) water.rank = bytes.size() / number_bytes;
    if (bytes.empty() || bytes.size() != water.rank * number_bytes)
        throw stored_learnt_out_of_range(told_bag(row.text(1)), "the row of its spread has not the right length");
    for (std::size_t i = 0; i < water.rank; ++i) {
        const double number = number_at(bytes, i);
        if (!is_log(number)) throw stored_learnt_out_of_range(told_bag(row.text(1)), "its spread must be from 0 to 20");
        water.factor.push_back(number);
    }
}

WaterPart water_part_in(const StoreConnection& connection, const Query& row) {
    const std::string word = row.text(0);
    const auto part = value_of<WaterPart>(learnt_water_words, word);
    if (!part) throw connection.damaged("the word '" + word + "' in what was learnt");
    return *part;
}

/// False where nothing was learnt.
bool read_hand(StoreConnection& connection, Query& rows, LearntWater& water) {
    for (const WaterPart expected : {WaterPart::hand, WaterPart::memory}) {
        if (!rows.next()) {
            if (expected == WaterPart::hand) return false;
            throw connection.damaged("what was learnt of your hand is not whole");
        }
        if (water_part_in(connection, rows) != expected)
            throw connection.damaged("what was learnt of your hand is not whole");
        (expected == WaterPart::hand ? water.log_hand : water.log_memory) = learnt_mean(rows);
        append_factor(rows, water);
    }
    return true;
}

/// Two rows a bag, its absorption first.
void read_bags(StoreConnection& connection, Query&& rows, LearntWater& water) {
    while (rows.next()) {
        LearntWater::Bag bag;
        bag.name = rows.text(1);
        for (const WaterPart expected : {WaterPart::absorption, WaterPart::gap}) {
            if ((expected == WaterPart::gap && !rows.next()) || rows.text(1) != bag.name ||
                water_part_in(connection, rows) != expected)
                throw connection.damaged("what was learnt of " + in_quotes(bag.name) + " is not whole");
            (expected == WaterPart::absorption ? bag.log_absorption : bag.log_gap) = learnt_mean(rows);
            (expected == WaterPart::absorption ? bag.measured_absorption : bag.measured_slump) = measured_mark(rows);
            bag.mixes = learnt_count(rows, 3);
            append_factor(rows, water);
        }
        water.bags.push_back(std::move(bag));
    }
}

/// Rows of several mixes, those of one together.
std::vector<LearntMix> learnt_mixes_in(StoreConnection& connection, Query&& rows) {
    std::vector<LearntMix> mixes;
    while (rows.next()) {
        const std::string name = rows.text(1), word = rows.text(0);
        if (mixes.empty() || mixes.back().name != name) mixes.push_back({name, {}, {}, {}});
        const LearntFactor factor{learnt_mean(rows), rows.number(3), learnt_count(rows, 4)};
        if (!(factor.sigma >= 0 && factor.sigma <= largest_log))
            throw stored_learnt_out_of_range(told_bag(name), "its spread must be from 0 to 20");
        LearntMix& mix = mixes.back();
        if (word == learnt_mix_words[0])
            mix.cup_weight = factor;
        else if (word == learnt_mix_words[1])
            mix.hold = factor;
        else if (word == learnt_mix_words[2])
            mix.carpet = factor;
        else
            throw connection.damaged("the word '" + word + "' in what was learnt");
    }
    return mixes;
}

struct WriteLearnt {
    StoreConnection& connection;
    const LearntWater& water;

    void row(WaterPart part, std::size_t index, const std::string& name, double mean, int mixes = 0,
             double measured = 0) const {
        const std::string factor = bytes_of_numbers(water.factor.data() + index * water.rank, water.rank);
        Query(connection, insert_learnt, word_of(learnt_water_words, part), name, folded_name(name), mean,
              std::int64_t{mixes}, measured, StoredBytes{factor})
            .run();
    }
    void all() const {
        row(WaterPart::hand, LearntWater::hand, "", water.log_hand);
        row(WaterPart::memory, LearntWater::memory, "", water.log_memory);
        for (std::size_t i = 0; i < water.bags.size(); ++i) {
            const LearntWater::Bag& bag = water.bags[i];
            row(WaterPart::absorption, LearntWater::absorption(i), bag.name, bag.log_absorption, bag.mixes,
                bag.measured_absorption);
            row(WaterPart::gap, LearntWater::gap(i), bag.name, bag.log_gap, bag.mixes, bag.measured_slump);
        }
    }
};

void write_learnt_mix(StoreConnection& connection, const LearntMix& mix) {
    const std::string folded = folded_name(mix.name);
    std::size_t part = 0;
    for (const auto& factor : {mix.cup_weight, mix.hold, mix.carpet}) {
        const std::string_view word = learnt_mix_words.at(part++);
        if (factor)
            Query(connection, insert_learnt_mix, folded, word, mix.name, factor->mean, factor->sigma,
                  std::int64_t{factor->times})
                .run();
    }
}

/// What the learning itself must never give.
void require_whole(const LearntWater& water) {
    bool whole = water.factor.size() == (2 + 2 * water.bags.size()) * water.rank && is_log(water.log_hand) &&
                 is_log(water.log_memory);
    for (const LearntWater::Bag& bag : water.bags)
        whole = whole && !bag.name.empty() && is_log(bag.log_absorption) && is_log(bag.log_gap);
    for (const double number : water.factor) whole = whole && is_log(number);
    if (!whole) throw std::logic_error("what was learnt of water is not whole");
}

}  // namespace

// While the hand's rows are not read to their end, all reading sees one state of the store, and where nothing was
// learnt that one query is all.
LearntWater LogBook::learnt_water(const std::vector<std::string>& bags) const {
    return connection_->guarded([&] {
        LearntWater water;
        Query hand(*connection_, select_hand);
        if (!read_hand(*connection_, hand, water)) return water;
        std::set<std::string> asked{""};  // what is asked for twice is given once
        for (const std::string& name : bags)
            if (std::string folded = folded_name(name); asked.insert(folded).second)
                read_bags(*connection_, Query(*connection_, select_learnt_of, folded), water);
        return water;
    });
}

LearntWater LogBook::learnt_water() const {
    return connection_->guarded([&] {
        LearntWater water;
        Query hand(*connection_, select_hand);
        if (read_hand(*connection_, hand, water))
            read_bags(*connection_, Query(*connection_, select_learnt_bags), water);
        return water;
    });
}

std::optional<LearntMix> LogBook::learnt_mix(std::string_view mix) const {
    return connection_->guarded([&]() -> std::optional<LearntMix> {
        auto found = learnt_mixes_in(*connection_, Query(*connection_, select_learnt_mix, folded_name(mix)));
        return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
    });
}

std::vector<LearntMix> LogBook::learnt_mixes() const {
    return connection_->guarded(
        [&] { return learnt_mixes_in(*connection_, Query(*connection_, select_learnt_mixes)); });
}

void LogBook::put_learnt(const LearntWater& water, const std::vector<LearntMix>& mixes) {
    connection_->require_change();
    connection_->guarded([&] {
        stamp(*connection_, stamp_of_learnt, "");
        Query(*connection_, forget_water).run();
        Query(*connection_, forget_mixes).run();
        if (water.known()) {
            require_whole(water);
            WriteLearnt{*connection_, water}.all();
        }
        for (const LearntMix& mix : mixes) write_learnt_mix(*connection_, mix);
    });
}

}  // namespace baitwright
