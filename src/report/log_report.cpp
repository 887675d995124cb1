#include "report/log_report.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "quantities/clock.h"
#include "quantities/date.h"
#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/log_json.h"
#include "report/log_words.h"
#include "report/stock_text.h"

namespace baitwright {

namespace {

constexpr std::size_t most_groups_told = 12, most_put_ins_told = 4;

template <class Kind>
bool is(const LogEntry& entry) {
    return std::holds_alternative<Kind>(entry.what);
}

std::string money_known(const std::optional<Money>& cost) {
    return cost ? "cost " + money_text(*cost) : std::string();
}

/// Of a session, what is told of it in a line beside its name: when, where, the water, the cost.
std::string told_of_session(const LoggedSession& session) {
    std::vector<std::string> parts;
    if (!session.start.empty()) parts.push_back("from " + session.start);
    if (!session.venue.empty()) parts.push_back(session.venue);
    if (session.water || !session.clarity.empty()) {
        std::string water = "water";
        if (session.water) water += " of " + shown_temperature(*session.water);
        parts.push_back(water + (session.clarity.empty() ? "" : ", " + session.clarity));
    }
    if (session.cost) parts.push_back(money_known(session.cost));
    return joined(parts, "; ");
}

/// A note as it is told: its lines one after the other.
std::string in_one_line(std::string note) {
    for (char& letter : note)
        if (letter == '\n' || letter == '\r' || letter == '\t') letter = ' ';
    return note;
}

/// Put-ins are many: how many of what.
std::string put_ins_text(const std::vector<LogEntry>& belonging) {
    std::vector<std::pair<std::string, int>> counts;
    for (const LogEntry& entry : belonging) {
        const auto* put_in = std::get_if<LoggedPutIn>(&entry.what);
        if (!put_in) continue;
        const std::string name = put_in->of.empty() ? "feed" : put_in->of;
        auto count = counts.begin();
        while (count != counts.end() && count->first != name) ++count;
        if (count == counts.end()) count = counts.insert(counts.end(), {name, 0});
        ++count->second;
    }
    std::vector<std::string> told;
    for (const auto& [name, count] : counts) {
        if (told.size() == most_put_ins_told) {
            told.emplace_back("more");
            break;
        }
        told.push_back(count == 1 ? name + " once" : fmt::format("{} {} times", name, count));
    }
    return told.empty() ? "" : "put in: " + joined(told, ", ");
}

/// What belongs to a session, but its put-ins one by one and its catches, which are in its own line.
void tell_belonging(Told& told, const LoggedGroup& group) {
    if (const auto* session = std::get_if<LoggedSession>(&group.entry.what)) {
        if (const std::string text = told_of_session(*session); !text.empty()) told.entry("  - ", text);
        if (!session->note.empty()) told.entry("  - ", in_one_line(session->note));
    }
    if (const std::string text = put_ins_text(group.belonging); !text.empty()) told.entry("  - ", text);
    for (const LogEntry& entry : group.belonging)
        if (!is<LoggedPutIn>(entry) && !is<LoggedCatch>(entry)) told.entry("  - ", log_entry_text(entry.what));
}

std::string number_and(const LogEntry& entry, const std::string& text) {
    const std::string of = entry.session == 0 ? "" : fmt::format(", with the session of number {}", entry.session);
    return fmt::format("In the log as number {}{}: {}", entry.id, of, text);
}

void tell_many(Told& told, const std::vector<LoggedGroup>& groups) {
    std::size_t sessions = 0, others = 0;
    std::int64_t last = 0;
    for (const LoggedGroup& group : groups) {
        ++(is<LoggedSession>(group.entry) ? sessions : others);
        last = group.belonging.empty() ? group.entry.id : group.belonging.back().id;
    }
    std::vector<std::string> kinds;
    if (sessions > 0) kinds.push_back(fmt::format("{} session{}", sessions, sessions == 1 ? "" : "s"));
    if (others > 0) kinds.push_back(fmt::format("{} other {}", others, others == 1 ? "entry" : "entries"));
    told.say(fmt::format("In the log: {}, numbers {} to {}.", listed(kinds), groups.front().entry.id, last));
}

void tell_entered(Told& told, const std::vector<LoggedGroup>& groups) {
    if (groups.size() > most_groups_told) return tell_many(told, groups);
    for (const LoggedGroup& group : groups) {
        told.say(number_and(group.entry, log_group_text(group)) + ".");
        tell_belonging(told, group);
    }
}

void tell_known(Told& told, const LogAnswer& answer) {
    std::size_t shown = 0;
    for (const KnownSession& known : answer.known) {
        if (++shown > most_groups_told) break;
        const std::string number = std::to_string(known.entry.id);
        std::string text = "Already in the log, as number " + number + ": " + log_entry_text(known.entry.what) +
                           " on " + date_text(known.entry.on) + ".";
        if (known.differs)
            text += " These notes say something else; to have them instead: baitwright log undo " + number +
                    ", then add them again.";
        told.say(text);
    }
    if (answer.known.size() > most_groups_told)
        told.say(fmt::format("And {} more sessions that the log has already.", answer.known.size() - most_groups_told));
    if (answer.known_alone > 0)
        told.say(fmt::format("{} other {} in the log already.", answer.known_alone,
                             answer.known_alone == 1 ? "entry is" : "entries are"));
}

/// The mixes and what of the shed came with notes.
void tell_brought(Told& told, const LogAnswer& answer) {
    for (const MixFromNotes& mix : answer.mixes) {
        if (mix.became == MixFromNotes::Became::added) told.say("A new mix in your library: " + mix.name + ".");
        if (mix.became == MixFromNotes::Became::replaced)
            told.say("A mix in your library is now as in the notes: " + mix.name + ". What it was is kept.");
    }
    if (answer.stock.size() > most_groups_told)
        told.say(fmt::format("In the shed: {} entries.", answer.stock.size()));
    else
        for (const StockReceipt& receipt : answer.stock) told.say("In the shed, " + receipt_sentence(receipt) + ".");
    if (answer.known_stock > 0)
        told.say(fmt::format("{} {} of the shed came before.", answer.known_stock,
                             answer.known_stock == 1 ? "entry" : "entries"));
}

void tell_undone(Told& told, const LogAnswer& answer) {
    if (answer.undone.empty()) return;
    std::size_t belonging = 0;
    const LogEntry* first = &answer.undone.front();
    for (const LogEntry& entry : answer.undone) {
        if (is<LoggedSession>(entry)) first = &entry;
        if (entry.session != 0) ++belonging;
    }
    std::string text =
        fmt::format("Taken back, number {} of {}: {}", first->id, date_text(first->on), log_entry_text(first->what));
    if (is<LoggedSession>(*first) && belonging > 0)
        text += fmt::format(", with the {} {} that {} to it", belonging, belonging == 1 ? "entry" : "entries",
                            belonging == 1 ? "belongs" : "belong");
    told.say(text + ".");
}

/// "4h", "270min": as it is typed.
std::string plain_time(Time time) {
    const double hours = time.in(hour);
    return hours == std::round(hours) ? number_text(hours) + "h" : number_text(time.in(minute)) + "min";
}

std::string book_command(const SessionToBook& book) {
    std::string command = "baitwright stock session \"" + book.strategy + "\" --on " + date_text(book.on);
    if (book.length) command += " --length " + plain_time(*book.length);
    if (book.people) command += fmt::format(" --people {}", *book.people);
    return command;
}

/// Whether anything in it teaches something of bait; a catch or a put-in does not.
bool teaches(const LoggedGroup& group) {
    const auto heeded = [](const LogEntry& entry) {
        const auto* mix = std::get_if<LoggedMix>(&entry.what);
        return (mix && mix->water) || is<LoggedSoak>(entry) || is<LoggedWeight>(entry) || is<LoggedLook>(entry);
    };
    for (const LogEntry& entry : group.belonging)
        if (heeded(entry)) return true;
    return heeded(group.entry);
}

void tell_next(Told& told, const LogAnswer& answer) {
    std::size_t shown = 0;
    for (const SessionToBook& book : answer.to_book)
        if (++shown <= 3) told.line("Shed", "take it out of the shed: " + book_command(book));
    bool learns = false;
    for (const LoggedGroup& group : answer.entered) learns = learns || teaches(group);
    if (learns) told.line("Learn", "what your log teaches: baitwright learn");
}

Told log_told(const LogAnswer& answer) {
    Told told;
    tell_undone(told, answer);
    tell_entered(told, answer.entered);
    tell_known(told, answer);
    tell_brought(told, answer);
    told.mind(answer.warnings);
    tell_next(told, answer);
    return told;
}

Told log_list_told(const LogListAnswer& answer) {
    Told told;
    if (answer.groups.empty()) {
        told.as_written(
            "The log is empty. Write down what you mixed and caught, for example\n"
            "  baitwright log mix \"silt bed\" --dry 1kg --water 680ml --feel firm\n"
            "  baitwright log add --planned \"open carpet\" --caught \"bream=12 9.5kg\"\n");
        return told;
    }
    if (answer.not_shown > 0)
        told.say(fmt::format("{} earlier ones are not shown; to see all: baitwright log list --all", answer.not_shown));
    for (const LoggedGroup& group : answer.groups)
        told.row({std::to_string(group.entry.id), date_text(group.entry.on)}, log_group_text(group));
    return told;
}

Told log_shown_told(const LoggedGroup& group) {
    Told told;
    const bool says_itself = is<LogUndone>(group.entry) || is<LoggedUse>(group.entry) || is<LoggedBag>(group.entry);
    told.title(fmt::format("Number {}, {}{}: {}", group.entry.id, date_text(group.entry.on),
                           says_itself ? "" : ", a " + log_kind_text(group.entry.what), log_group_text(group)));
    tell_belonging(told, group);
    if (const auto* mix = std::get_if<LoggedMix>(&group.entry.what))
        for (const WeighedPart& part : mix->parts)
            told.entry("  - ", part.of + ", " + shown_mass(part.mass) +
                                   (part.moisture ? ", " + shown_percent(*part.moisture) + " damp" : ""));
    for (const LogEntry& entry : group.belonging)
        if (is<LoggedCatch>(entry)) told.entry("  - ", "caught " + log_entry_text(entry.what));
    if (group.entry.believed) told.say("You said that it is true, however far off.");
    if (group.entry.undone_by != 0) told.say(fmt::format("It was taken back by number {}.", group.entry.undone_by));
    return told;
}

}  // namespace

Reply log_reply(const std::string& command, LogAnswer answer) {
    const auto kept = std::make_shared<const LogAnswer>(std::move(answer));
    return {0, [kept] { return log_told(*kept); }, [kept, command] { return log_json(command, *kept); }};
}

Reply log_list_reply(LogListAnswer answer) {
    return reply_of(std::move(answer), log_list_told, log_list_json, log_rows);
}

Reply log_shown_reply(LoggedGroup group) {
    return reply_of(std::move(group), log_shown_told, log_shown_json);
}

}  // namespace baitwright
