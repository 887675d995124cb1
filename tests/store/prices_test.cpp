#include <catch2/catch.hpp>

#include "bait/price_book.h"
#include "day_of.h"
#include "quantities/fault.h"
#include "quantities/quantity_text.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

Pack pack(const char* size, const char* price, std::string on, std::string shop = {}) {
    return {parse<Mass>(size), parse_money(price), day_of(on), std::move(shop)};
}

void put(Store& store, std::vector<Pack> packs) {
    Ingredient crumb = ingredient_named("brown crumb");
    crumb.packs = std::move(packs);
    store.change([&] { store.put(crumb, EntryOwner::shipped); });
}

void tell(Store& store, const Pack& told) {
    store.change([&] { store.put_price("Brown Crumb", told); });
}

std::vector<std::string> texts(const std::vector<Pack>& packs) {
    std::vector<std::string> texts;
    for (const Pack& one : packs)
        texts.push_back(money_text(*one.price) + " " + date_or_blank(one.on) + " " + one.shop);
    return texts;
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE("a new price is the one in use, the old one is kept, and the rest of the ingredient stays") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, {pack("1 kg", "£2.10", "2026-02-07", "the mill"), pack("5 kg", "£7.90", "2026-03-14", "the mill")});
    tell(store, pack("1 kg", "£2.30", "2026-06-01", "the mill"));
    CHECK(texts(store.find_ingredient("brown crumb")->packs) ==
          Texts{"£2.30 2026-06-01 the mill", "£7.90 2026-03-14 the mill"});
    CHECK(texts(store.old_prices("brown crumb")) == Texts{"£2.10 2026-02-07 the mill"});
    CHECK(store.old_prices("moon dust").empty());
}

TEST_CASE("replacing an ingredient keeps the prices that its packs had") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, {pack("1 kg", "£2.10", "2026-02-07"), pack("5 kg", "£7.90", "2026-03-14")});
    put(store, {pack("1 kg", "£2.40", "2026-05-01"), pack("5 kg", "£7.90", "2026-03-14")});
    CHECK(texts(store.old_prices("brown crumb")) == Texts{"£2.10 2026-02-07 "});
    put(store, {});
    CHECK(store.old_prices("brown crumb").size() == 3);
}

TEST_CASE("every shop that a price was told of is known, whatever its case") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, {pack("1 kg", "£2.10", "2026-02-07", "the mill")});
    tell(store, pack("1 kg", "£2.10", "2026-02-07", "the village shop"));
    CHECK(store.shops() == Texts{"the mill", "the village shop"});
    CHECK(store.find_shop("The  Mill") == "the mill");
    CHECK_FALSE(store.find_shop("the barge"));
}

TEST_CASE("a price in another currency takes the place of that pack's older one, which is kept") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, {pack("1 kg", "£2.10", "2026-02-07"), pack("5 kg", "£7.90", "2026-03-14")});
    tell(store, pack("1 kg", "€2.40", "2026-06-01"));
    CHECK(texts(store.find_ingredient("brown crumb")->packs) == Texts{"€2.40 2026-06-01 ", "£7.90 2026-03-14 "});
    CHECK(texts(store.old_prices("brown crumb")) == Texts{"£2.10 2026-02-07 "});
}

TEST_CASE("packs that are put in place of others keep the prices that go, once each") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, {pack("1 kg", "£2.10", "2026-02-07", "the mill"), pack("5 kg", "£7.90", "2026-03-14", "the mill")});
    const std::vector<NamedPacks> all = store.all_packs();
    REQUIRE(all.size() == 1);
    CHECK(all[0].name == "brown crumb");
    CHECK(texts(all[0].packs) == Texts{"£2.10 2026-02-07 the mill", "£7.90 2026-03-14 the mill"});
    for (int i = 0; i < 2; ++i)
        store.change([&] {
            store.put_packs("Brown Crumb", {pack("1 kg", "€2.46", "2026-11-25", "the mill"), all[0].packs[1]});
        });
    CHECK(texts(store.find_ingredient("brown crumb")->packs) ==
          Texts{"€2.46 2026-11-25 the mill", "£7.90 2026-03-14 the mill"});
    CHECK(texts(store.old_prices("brown crumb")) == Texts{"£2.10 2026-02-07 the mill"});
    const std::vector<CurrencyCount> counts = store.currencies_in_use();
    REQUIRE(counts.size() == 2);
    CHECK(counts[0].currency->code == "EUR");
    CHECK(counts[1].prices == 1);
}
