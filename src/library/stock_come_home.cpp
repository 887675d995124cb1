#include "library/stock_come_home.h"

#include <fmt/format.h>

#include <map>

#include "files/value_text.h"
#include "library/change_shed.h"
#include "library/stock_name.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// All that it says, for what has no mark of its own.
std::string words_of(const NotedStock& noted) {
    return fmt::format("{} {} {} {} {} {}", date_text(noted.on), name_of(noted.what), folded_name(noted.of),
                       noted.amount, noted.price ? money_text(*noted.price) : "", folded_name(noted.shop));
}

/// Takes entries in one by one, inside one change.
class ShedFromNotes {
public:
    explicit ShedFromNotes(Store& store) : store_(store) {}

    /// Nothing where it is known.
    std::optional<StockReceipt> take(const NotedStock& noted) {
        const std::string mark = mark_of(noted);
        Shed shed = store_.shed();
        if (shed.knows_mark(mark)) return std::nullopt;
        StockReceipt receipt = entered(shed, noted);
        shed.note_mark(mark, receipt.entry);
        return receipt;
    }

private:
    /// Two alike without a mark are two: the second of the file is known by being the second.
    std::string mark_of(const NotedStock& noted) {
        if (!noted.mark.empty()) return noted.mark;
        const std::string words = words_of(noted);
        return fmt::format("{} #{}", words, ++alike_[words]);
    }

    StockReceipt entered(Shed& shed, const NotedStock& noted) {
        const Reach reach{noted.on, std::nullopt};
        if (noted.what == Happening::bought) {
            Purchase purchase = purchase_of(store_.ingredient(noted.of), noted.amount, noted.on);
            purchase.pack.price = noted.price;
            purchase.pack.shop = store_.find_shop(noted.shop).value_or(noted.shop);
            return enter_purchase(store_, purchase);
        }
        const StockName named = stock_name(noted.of, store_);
        if (noted.what == Happening::counted)
            return shed.count({named.name, named.kind, read_counted_mass(noted.amount, named), {}}, reach);
        return shed.take(noted.what, {named.name, read_stock_mass(noted.amount, named)}, reach);
    }

    Store& store_;
    std::map<std::string, int> alike_;
};

/// What is wrong with one entry, at its place.
[[noreturn]] void throw_at(Position place, std::vector<Fault> faults, const Notes& notes) {
    for (Fault& fault : faults) fault.subject = "stock";
    place_faults(faults, {{"stock", place}}, notes.text, notes.name);
    throw InputError(std::move(faults));
}

}  // namespace

void take_stock_home(Store& store, const Notes& notes, LogAnswer& answer) {
    ShedFromNotes shed(store);
    for (const NotedStock& noted : notes.stock) {
        try {
            if (auto receipt = shed.take(noted))
                answer.stock.push_back(*std::move(receipt));
            else
                ++answer.known_stock;
        } catch (const StorageError&) {
            throw;
        } catch (const NotFound& unknown) {
            throw_at(noted.named_at, unknown.faults(), notes);
        } catch (const Error& error) {
            throw_at(noted.said_at, error.faults(), notes);
        }
    }
}

}  // namespace baitwright
