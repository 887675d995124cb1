#include "report/stock_text.h"

#include <fmt/format.h>

#include "bait/stock_rules.h"
#include "quantities/listed.h"
#include "quantities/units.h"
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

std::string best_cell(const Lot& lot, Date today) {
    if (!lot.best_before) return "not known";
    return date_text(*lot.best_before) + (is_past(lot, today) ? ", past" : "");
}

/// "the bag of 2026-01-02", as one says it of a lot among others.
std::string bag_text(const Lot& lot, StockKind kind) {
    return std::string(kind == StockKind::mix ? "the tub of " : "the bag of ") + date_text(lot.got_on);
}

Milligrams sum_of(const StockReceipt& receipt) {
    Milligrams sum;
    for (const StockReceipt::Line& line : receipt.lines) sum += line.by;
    return sum;
}

std::string entry_number(const StockReceipt& receipt) {
    return fmt::format(" (entry {})", receipt.entry);
}

std::string counted_text(const StockReceipt& receipt) {
    if (receipt.entry == 0) return "none, and the shed never held any";
    const Milligrams sum = sum_of(receipt), left = receipt.lines.front().left;
    std::string text = "counted, " + (left == Milligrams{} ? "none" : shown(left)) + " there: ";
    if (sum == Milligrams{}) return text + "as the ledger said";
    if (sum == left) return text + "the ledger knew of none";
    return text + shown(sum < Milligrams{} ? -sum : sum) + (sum < Milligrams{} ? " less" : " more") +
           " than the ledger said";
}

std::string came_text(const StockReceipt& receipt) {
    const StockReceipt::Line& line = receipt.lines.front();
    std::string text = shown(line.by) + " in, " + std::string(name_of(line.lot.state)) + ", ";
    text += line.lot.best_before ? "best before " + date_text(*line.lot.best_before) : "how long it keeps is not known";
    if (line.left > line.by) text += "; " + shown(line.left) + " in all";
    return text;
}

std::string went_text(const StockReceipt& receipt) {
    const Milligrams left = receipt.lines.front().left;
    return shown(-sum_of(receipt)) + (receipt.what == Happening::wasted ? " thrown out; " : " out; ") +
           (left == Milligrams{} ? "none" : shown(left)) + " left";
}

std::string change_sentence(const StockReceipt& receipt) {
    switch (receipt.what) {
        case Happening::bought:
        case Happening::kept:
            return came_text(receipt);
        case Happening::counted:
            return counted_text(receipt);
        default:
            return went_text(receipt);
    }
}

/// Where one name's mass came out of several lots: how much out of which.
std::string by_lot(const StockReceipt& receipt) {
    std::string text;
    if (receipt.lines.size() < 2) return text;
    for (const StockReceipt::Line& line : receipt.lines)
        text += fmt::format("  {} {} {}; {}\n", shown(line.by < Milligrams{} ? -line.by : line.by),
                            line.by < Milligrams{} ? "out of" : "into", bag_text(line.lot, line.kind),
                            line.lot.left == Milligrams{} ? "empty now" : shown(line.lot.left) + " left in it");
    return text;
}

std::string undone_text(const StockReceipt& receipt) {
    std::string text = fmt::format("entry {} undone{}\n", receipt.undoes, entry_number(receipt));
    for (std::size_t i = 0; i < receipt.lines.size();) {
        const StockReceipt::Line& line = receipt.lines[i];
        Milligrams sum;  // of the lots of one name, which stand together
        for (; i < receipt.lines.size() && receipt.lines[i].name == line.name; ++i) sum += receipt.lines[i].by;
        const char* where = sum < Milligrams{} ? "out again" : "back in";
        text += paragraph("  " + line.name + ": ",
                          fmt::format("{} {}; {} there now", shown(sum < Milligrams{} ? -sum : sum), where,
                                      line.left == Milligrams{} ? "none" : shown(line.left)));
    }
    return text;
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

}  // namespace

std::string shed_text(const ShedAnswer& answer) {
    if (answer.items.empty())
        return "The shed is empty. Say what is in it, for example\n"
               "  baitwright stock count \"brown crumb\" 1.5kg\n"
               "  baitwright stock buy \"brown crumb\" 1kg --price £2.10\n";
    TextTable table({Align::left, Align::right, Align::left, Align::left, Align::left, Align::left});
    table.row({"in the shed", "left", "kept", "since", "opened", "best before"});
    for (const StockItem& item : answer.items) {
        const bool several = item.lots.size() > 1;
        if (several) table.row({with_kind(item.name, item.kind) + ", in all", shown(item.left)});
        for (const Lot& lot : item.lots)
            table.row({several ? "- lot " + std::to_string(lot.id) : with_kind(item.name, item.kind), shown(lot.left),
                       state_cell(lot), date_text(lot.got_on), date_or_blank(lot.opened_on),
                       best_cell(lot, answer.today)});
    }
    std::string text = table.text();
    if (answer.not_shown > 0)
        text += fmt::format("  and {} more that keep longer; see them with --all\n", answer.not_shown);
    for (const Warning& warning : answer.warnings) text += "\n" + paragraph("Mind      ", sentence(warning.message));
    return text;
}

std::string stock_change_text(const StockChangeAnswer& answer) {
    const StockReceipt& receipt = answer.receipt;
    std::string text;
    if (receipt.what == Happening::undone)
        text = undone_text(receipt);
    else if (receipt.lines.empty())
        text = change_sentence(receipt) + "\n";
    else
        text = paragraph(receipt.lines.front().name + ": ", change_sentence(receipt) + entry_number(receipt)) +
               by_lot(receipt);
    for (const Warning& warning : answer.warnings) text += paragraph("Mind  ", sentence(warning.message));
    return text;
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

std::string stock_history_text(const StockHistory& history) {
    TextTable table({Align::left, Align::left, Align::left, Align::right, Align::right, Align::left});
    table.row({"entry", "on", "what", "change", "left", ""});
    Milligrams left;
    for (const StockEntry& entry : history.entries) {
        left += change_of(entry);
        table.row({std::to_string(entry.id), date_text(entry.on), std::string(name_of(entry.what)),
                   signed_mass(change_of(entry)), left == Milligrams{} ? "none" : shown(left), note_of(entry)});
    }
    return history.name + "\n\n" + table.text();
}

}  // namespace baitwright
