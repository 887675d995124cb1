#include "report/stock_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "bait/kitchen_rounding.h"
#include "bait/stock_rules.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string shown(Milligrams mass) {
    return shown_mass(mass_of(mass));
}

std::string with_kind(const std::string& name, StockKind kind) {
    return kind == StockKind::mix ? name + " (mix)" : name;
}

std::string state_cell(const Lot& lot) {
    return std::string(name_of(lot.state)) + (lot.refrozen > 0 ? ", refrozen" : "");
}

/// "silt bed (mix), firm"; of one among several "- lot 7, firm".
std::string lot_cell(const StockItem& item, const Lot& lot) {
    std::string cell = item.lots.size() > 1 ? "- lot " + std::to_string(lot.id) : with_kind(item.name, item.kind);
    return lot.feel.empty() ? cell : cell + ", " + lot.feel;
}

std::string best_cell(const Lot& lot, Date today) {
    if (!lot.best_before) return "not known";
    return date_text(*lot.best_before) + (is_past(lot, today) ? ", past" : "");
}

/// "the bag of 2026-01-02", as one says it of a lot among others.
std::string bag_text(const Lot& lot, StockKind kind) {
    return std::string(kind == StockKind::mix ? "the tub of " : "the bag of ") + date_text(lot.got_on);
}

Milligrams magnitude(Milligrams mass) {
    return mass < Milligrams{} ? -mass : mass;
}

std::string none_or(Milligrams mass) {
    return mass == Milligrams{} ? "none" : shown(mass);
}

/// What an entry did to one thing: its lots, in the order of the entry.
struct ThingChanged {
    std::string name;
    StockKind kind;
    std::vector<const StockReceipt::Line*> lots;
    Milligrams by;    ///< out of or into all of them
    Milligrams left;  ///< of it in all
};

/// The things of an entry, each once: a session touches many. Every sum that is told is taken here, of one thing.
std::vector<ThingChanged> things_changed(const StockReceipt& receipt) {
    std::vector<ThingChanged> things;
    for (const StockReceipt::Line& line : receipt.lines) {
        auto thing = std::find_if(things.begin(), things.end(), [&](const ThingChanged& one) {
            return one.name == line.name && one.kind == line.kind;
        });
        if (thing == things.end()) thing = things.insert(things.end(), {line.name, line.kind, {}, {}, {}});
        thing->lots.push_back(&line);
        thing->by += line.by;
        thing->left = line.left;
    }
    return things;
}

std::string counted_text(const ThingChanged& thing) {
    std::string text = "counted, " + none_or(thing.left) + " there: ";
    if (thing.by == Milligrams{}) return text + "as the ledger said";
    if (thing.by == thing.left) return text + "the ledger had none";
    return text + shown(magnitude(thing.by)) + (thing.by < Milligrams{} ? " less" : " more") + " than the ledger said";
}

std::string came_text(const ThingChanged& thing) {
    const Lot& lot = thing.lots.front()->lot;
    std::string text = shown(thing.by) + " in, " + state_cell(lot) + ", ";
    if (!lot.feel.empty()) text += lot.feel + ", ";
    text += lot.best_before ? "best before " + date_text(*lot.best_before) : "how long it keeps is not known";
    if (thing.left > thing.by) text += "; " + shown(thing.left) + " in all";
    return text;
}

std::string went_text(const ThingChanged& thing, Happening what) {
    return shown(-thing.by) + (what == Happening::wasted ? " thrown out; " : " out; ") + none_or(thing.left) + " left";
}

std::string undone_text(const ThingChanged& thing) {
    return fmt::format("{} {}; {} there now", shown(magnitude(thing.by)),
                       thing.by < Milligrams{} ? "out again" : "back in", none_or(thing.left));
}

std::string change_sentence(const ThingChanged& thing, Happening what) {
    switch (what) {
        case Happening::bought:
        case Happening::kept:
            return came_text(thing);
        case Happening::counted:
            return counted_text(thing);
        case Happening::undone:
            return undone_text(thing);
        default:
            return went_text(thing, what);
    }
}

/// Where a thing's mass came out of several lots: how much out of which.
void tell_by_lot(Told& told, const ThingChanged& thing, const std::string& margin) {
    if (thing.lots.size() < 2) return;
    for (const StockReceipt::Line* line : thing.lots)
        told.entry(margin,
                   fmt::format("{} {} {}; {}", shown(magnitude(line->by)), line->by < Milligrams{} ? "out of" : "into",
                               bag_text(line->lot, line->kind),
                               line->lot.left == Milligrams{} ? "empty now" : shown(line->lot.left) + " left in it"));
}

/// What an entry of many things was.
std::string entry_head(const StockReceipt& receipt) {
    const std::string number = fmt::format(" (entry {})", receipt.entry);
    if (receipt.what == Happening::undone) return fmt::format("entry {} undone{}", receipt.undoes, number);
    return "out of the shed for " + receipt.session + number;
}

std::string thing_name(const ThingChanged& thing, const std::vector<ThingChanged>& things) {
    const bool twice = std::count_if(things.begin(), things.end(),
                                     [&](const ThingChanged& one) { return one.name == thing.name; }) > 1;
    return twice ? with_kind(thing.name, thing.kind) : thing.name;
}

/// "£2.20 for 1 kg, from the mill."
std::string price_told_text(const Pack& pack) {
    return money_text(*pack.price) + " for " + shown_pack(pack) + (pack.shop.empty() ? "" : ", from " + pack.shop) +
           ".";
}

Told receipt_told(const StockReceipt& receipt) {
    Told told;
    if (receipt.entry == 0) {
        told.say("none, and the shed never held any");
        return told;
    }
    const std::vector<ThingChanged> things = things_changed(receipt);
    const bool one_thing = receipt.what != Happening::undone && receipt.what != Happening::booked;
    if (one_thing && things.size() == 1) {
        told.entry(things[0].name + ": ",
                   change_sentence(things[0], receipt.what) + fmt::format(" (entry {})", receipt.entry));
        tell_by_lot(told, things[0], "  ");
        return told;
    }
    told.heading(entry_head(receipt));
    for (const ThingChanged& thing : things) {
        told.entry("  " + thing_name(thing, things) + ": ", change_sentence(thing, receipt.what));
        if (receipt.what != Happening::undone) tell_by_lot(told, thing, "    ");
    }
    return told;
}

std::string note_of(const StockEntry& entry) {
    std::string note = entry.session.empty() ? "" : "for " + entry.session;
    const auto add = [&note](const std::string& more) { note += (note.empty() ? "" : "; ") + more; };
    if (entry.undoes != 0) add(fmt::format("takes back {}", entry.undoes));
    if (entry.undone_by != 0) add(fmt::format("undone by {}", entry.undone_by));
    return note;
}

std::string signed_mass(Milligrams mass) {
    if (mass == Milligrams{}) return "0 g";
    return mass < Milligrams{} ? "-" + shown(-mass) : "+" + shown(mass);
}

/// What to type, with the spare as the amount; where there is none an amount is to be weighed first.
std::string keep_command(const ComingHome& home) {
    const double spare = kitchen_mass(home.spare).in(gram);
    std::string command = "baitwright stock keep \"" + home.mix + "\" ";
    command += spare > 0 ? fmt::format("{:.0f}g", spare) : "AMOUNT";
    if (home.keeps_best == StockState::frozen) command += " --frozen";
    return home.feel.empty() ? command : command + " --feel " + home.feel;
}

std::string coming_home_text(const ComingHome& home) {
    const Keeping keeps = keeping_of_mix();
    const std::string cold = fmt::format("{:.0f} days cold", keeps.cold->in(day));
    std::string text = "What damp " + home.mix + " comes home keeps " + cold;
    text += home.keeps_best == StockState::frozen
                ? fmt::format(" or {:.0f} months frozen, once", keeps.frozen->in(month))
                : " and is not frozen again, for some of it was";
    return text + " (common practice, no source). Weigh it, and put it by: " + keep_command(home);
}

}  // namespace

Told shed_told(const ShedAnswer& answer) {
    Told told;
    if (answer.items.empty()) {
        if (words_for() == WordsFor::phone) {
            told.say("Nothing is in the shed yet. Enter what is there.");
            return told;
        }
        told.as_written(
            "The shed is empty. Say what is in it, for example\n"
            "  baitwright stock count \"brown crumb\" 1.5kg\n"
            "  baitwright stock buy \"brown crumb\" 1kg\n");
        return told;
    }
    TextTable table({Align::left, Align::right, Align::left, Align::left, Align::left, Align::left});
    table.row({"in the shed", "left", "kept", "since", "opened", "best before"});
    for (const StockItem& item : answer.items) {
        const bool several = item.lots.size() > 1;
        if (several) table.row({with_kind(item.name, item.kind) + ", in all", shown(item.left)});
        for (const Lot& lot : item.lots)
            table.row({lot_cell(item, lot), shown(lot.left), state_cell(lot), date_text(lot.got_on),
                       date_or_blank(lot.opened_on), best_cell(lot, answer.today)});
    }
    told.table(std::move(table));
    if (answer.not_shown > 0)
        told.entry("  ", fmt::format("and {} more that keep longer; name one to see it", answer.not_shown));
    for (const Warning& warning : answer.warnings) {
        told.gap();
        told.mind({warning});
    }
    return told;
}

Told stock_change_told(const StockChangeAnswer& answer) {
    Told told = receipt_told(answer.receipt);
    if (answer.priced) told.line("Price", price_told_text(*answer.priced));
    told.mind(answer.warnings);
    for (const ComingHome& home : answer.coming_home) told.line("Come home", coming_home_text(home));
    return told;
}

std::string receipt_sentence(const StockReceipt& receipt) {
    if (receipt.entry == 0) return "none, and the shed never held any";
    const ThingChanged thing = things_changed(receipt).front();
    return thing.name + ": " + change_sentence(thing, receipt.what) + fmt::format(" (entry {})", receipt.entry);
}

std::string booked_text(const StockReceipt& receipt) {
    std::string text = fmt::format("out of the shed for {}, entry {}; baitwright stock undo takes it back.",
                                   receipt.session, receipt.entry);
    std::vector<std::string> empty;
    for (const StockReceipt::Line& line : receipt.lines)
        if (line.left == Milligrams{} && (empty.empty() || empty.back() != line.name)) empty.push_back(line.name);
    if (!empty.empty()) text += " None is left of " + listed(empty) + ".";
    return text;
}

Told stock_history_told(const StockHistory& history) {
    Told told;
    if (history.entries.empty()) {
        told.say("The shed never held any " + history.name + ".");
        return told;
    }
    TextTable table({Align::left, Align::left, Align::left, Align::right, Align::right, Align::left});
    table.row({"entry", "on", "what", "change", "left", ""});
    Milligrams left;
    for (const StockEntry& entry : history.entries) {
        left += change_of(entry);
        table.row({std::to_string(entry.id), date_text(entry.on), std::string(name_of(entry.what)),
                   signed_mass(change_of(entry)), left == Milligrams{} ? "none" : shown(left), note_of(entry)});
    }
    told.title(history.name);
    told.table(std::move(table));
    return told;
}

}  // namespace baitwright
