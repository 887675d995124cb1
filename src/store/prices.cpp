#include <algorithm>

#include "bait/beyond_range.h"
#include "bait/price_book.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_packs =
    "SELECT measure, size, price_minor, currency, priced_on, shop FROM pack WHERE ingredient_id = ?1 ORDER BY position";
constexpr const char* select_priced_ingredients =
    "SELECT id, name FROM ingredient WHERE id IN (SELECT ingredient_id FROM pack) ORDER BY folded";
constexpr const char* select_currencies =
    "SELECT currency, count(*) FROM pack WHERE price_minor IS NOT NULL GROUP BY currency ORDER BY currency";
constexpr const char* select_old_prices =
    "SELECT measure, size, price_minor, currency, priced_on, shop FROM old_price WHERE ingredient_id = ?1 ORDER BY id";
constexpr const char* select_old_prices_by_id =
    "SELECT measure, size, price_minor, currency, priced_on, shop, id FROM old_price WHERE ingredient_id = ?1";
constexpr const char* delete_old_price = "DELETE FROM old_price WHERE id = ?1";
constexpr const char* select_id = "SELECT id FROM ingredient WHERE folded = ?1";
constexpr const char* select_shops = "SELECT name FROM shop ORDER BY folded";
constexpr const char* select_shop = "SELECT name FROM shop WHERE folded = ?1";
constexpr const char* delete_packs = "DELETE FROM pack WHERE ingredient_id = ?1";
constexpr const char* insert_pack = "INSERT INTO pack VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)";
constexpr const char* insert_shop = "INSERT OR IGNORE INTO shop (name, folded) VALUES (?1, ?2)";
constexpr const char* insert_old_price =
    "INSERT OR IGNORE INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
// Whatever an ingredient's packs are replaced by, the prices they had are kept; what is a price in use is not an old
// one.
constexpr const char* keep_prices =
    "INSERT OR IGNORE INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT ingredient_id, measure, size, price_minor, currency, priced_on, shop FROM pack"
    " WHERE ingredient_id = ?1 AND price_minor IS NOT NULL";
constexpr const char* drop_prices_in_use =
    "DELETE FROM old_price WHERE ingredient_id = ?1 AND EXISTS (SELECT 1 FROM pack p WHERE p.ingredient_id = ?1"
    " AND p.measure = old_price.measure AND p.size = old_price.size AND p.price_minor = old_price.price_minor"
    " AND p.currency = old_price.currency AND p.priced_on = old_price.priced_on AND p.shop = old_price.shop)";

Pack pack_in(const StoreConnection& connection, const Query& row) {
    const auto size = mass_or_volume(row.text(0), row.number(1));
    if (!size) throw connection.damaged("a pack measured by '" + row.text(0) + "'");
    Pack pack{*size, std::nullopt, std::nullopt, row.name(5)};
    try {
        if (const std::string on = row.text(4); !on.empty()) pack.on = parse_stored_date(on);
        if (row.empty(2)) return pack;
        pack.price = Money(row.whole(2), currency_named(row.text(3)));
    } catch (const InputError& error) {
        throw connection.damaged(error.what());
    }
    return pack;
}

std::vector<Pack> packs_in(StoreConnection& connection, Query&& rows) {
    std::vector<Pack> packs;
    while (rows.next()) packs.push_back(pack_in(connection, rows));
    return packs;
}

void write_shop(StoreConnection& connection, const std::string& shop) {
    if (!shop.empty()) Query(connection, insert_shop, shop, folded_name(shop)).run();
}

void write_packs(StoreConnection& connection, std::int64_t ingredient, const std::vector<Pack>& packs) {
    std::int64_t position = 0;
    for (const Pack& pack : packs) {
        const StoredAmount size = stored(pack.size);
        std::optional<std::int64_t> price;
        std::optional<std::string_view> currency;
        if (pack.price) {
            price = pack.price->minor();
            currency = pack.price->currency().code;
        }
        Query(connection, insert_pack, ingredient, ++position, size.measure, size.number, price, currency,
              date_or_blank(pack.on), pack.shop)
            .run();
        write_shop(connection, pack.shop);
    }
}

void write_old_price(StoreConnection& connection, std::int64_t ingredient, const Pack& pack) {
    const StoredAmount size = stored(pack.size);
    Query(connection, insert_old_price, ingredient, size.measure, size.number, pack.price->minor(),
          pack.price->currency().code, date_or_blank(pack.on), pack.shop)
        .run();
}

/// What an older program took for a price, and nobody can pay, is no old price either.
void drop_nonsense(StoreConnection& connection, std::int64_t ingredient, std::vector<Pack>& packs) {
    const auto is_nonsense = [](const Pack& pack) { return !beyond_range(pack).empty(); };
    packs.erase(std::remove_if(packs.begin(), packs.end(), is_nonsense), packs.end());
    Query old(connection, select_old_prices_by_id, ingredient);
    std::vector<std::int64_t> nonsense;
    while (old.next())
        if (is_nonsense(pack_in(connection, old))) nonsense.push_back(old.whole(6));
    for (const std::int64_t id : nonsense) Query(connection, delete_old_price, id).run();
}

std::optional<std::int64_t> id_of(StoreConnection& connection, std::string_view ingredient) {
    Query row(connection, select_id, folded_name(ingredient));
    if (!row.next()) return std::nullopt;
    return row.whole(0);
}

/// By the name as it is shown, even where it had to be mended.
std::int64_t id_of_shown(StoreConnection& connection, std::string_view ingredient) {
    auto id = id_of(connection, ingredient);
    if (!id)
        if (const auto stored = unmended_name(connection, "ingredient", ingredient)) id = id_of(connection, *stored);
    if (!id) throw std::logic_error("packs of no ingredient");
    return *id;
}

void check_in_range(const std::string& ingredient, const std::vector<Pack>& packs) {
    for (const Pack& pack : packs)
        if (const std::string beyond = beyond_range(pack); !beyond.empty())
            throw stored_out_of_range(ingredient, beyond);
}

}  // namespace

std::vector<Pack> read_packs(StoreConnection& connection, std::int64_t ingredient) {
    return packs_in(connection, Query(connection, select_packs, ingredient));
}

std::vector<Pack> read_old_prices(StoreConnection& connection, std::string_view ingredient) {
    const auto id = id_of(connection, ingredient);
    std::vector<Pack> packs;
    if (id) packs = packs_in(connection, Query(connection, select_old_prices, *id));
    check_in_range(std::string(ingredient), packs);
    return packs;
}

std::vector<NamedPacks> read_all_packs(StoreConnection& connection) {
    std::vector<NamedPacks> all;
    Query rows(connection, select_priced_ingredients);
    while (rows.next()) {
        all.push_back({rows.name(1), read_packs(connection, rows.whole(0))});
        check_in_range(all.back().name, all.back().packs);
    }
    return all;
}

std::vector<CurrencyCount> count_currencies(StoreConnection& connection) {
    std::vector<CurrencyCount> counts;
    Query rows(connection, select_currencies);
    while (rows.next()) {
        try {
            counts.push_back({&currency_named(rows.text(0)), rows.whole(1)});
        } catch (const InputError& error) {
            throw connection.damaged(error.what());
        }
    }
    return counts;
}

std::vector<std::string> read_shops(StoreConnection& connection) {
    std::vector<std::string> shops;
    Query rows(connection, select_shops);
    while (rows.next()) shops.push_back(rows.name(0));
    return shops;
}

std::optional<std::string> read_shop(StoreConnection& connection, std::string_view name) {
    Query row(connection, select_shop, folded_name(name));
    if (!row.next()) return std::nullopt;
    return row.name(0);
}

void replace_packs(StoreConnection& connection, std::int64_t ingredient, const std::vector<Pack>& packs) {
    for (const char* sql : {keep_prices, delete_packs}) Query(connection, sql, ingredient).run();
    write_packs(connection, ingredient, packs);
    Query(connection, drop_prices_in_use, ingredient).run();
}

void write_packs_of(StoreConnection& connection, std::string_view ingredient, const std::vector<Pack>& packs) {
    stamp(connection, stamp_of_packs, folded_name(ingredient));
    replace_packs(connection, id_of_shown(connection, ingredient), packs);
}

void write_price(StoreConnection& connection, std::string_view ingredient, const Pack& told) {
    const auto id = id_of(connection, ingredient);
    if (!id) throw std::logic_error("a price of no ingredient");
    stamp(connection, stamp_of_packs, folded_name(ingredient));
    PriceBook book{read_packs(connection, *id), {}};
    drop_nonsense(connection, *id, book.packs);
    enter_price(book, told);
    Query(connection, delete_packs, *id).run();
    write_packs(connection, *id, book.packs);
    for (const Pack& old : book.old) write_old_price(connection, *id, old);
    write_shop(connection, told.shop);
}

}  // namespace baitwright
