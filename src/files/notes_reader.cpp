#include "files/notes_reader.h"

#include "bait/log_limits.h"
#include "files/logged_things_reader.h"
#include "files/recipe_reader.h"
#include "files/toml_syntax.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

constexpr std::string_view what_notes_hold =
    "notes hold blocks headed [[session]], or [[mixed]], [[soaked]], [[weighed]], [[seen]], [[bag]], [[catch]] or "
    "[[stock]], each with its day: on = 2026-11-21; and mixes of yours, headed [[mix]]";

/// Reads the blocks of one file of notes.
class NotesReader {
public:
    NotesReader(const toml::table& root, Notes& notes, FileFaults& faults, Date latest)
        : root_(root, {1, 1}, "these notes", faults), notes_(notes), latest_(latest) {}

    void read() {
        root_.each_block("session", "a session", [&](TableReader& table) { read_session(table); });
        read_loose("mixed", "a mix", read_logged_mix);
        read_loose("soaked", "a soak", read_logged_soak);
        read_loose("weighed", "a weighing", read_logged_weight);
        read_loose("seen", "a look", read_logged_look);
        read_loose("bag", "a new bag", read_logged_bag);
        read_loose("catch", "a catch", read_catch);
        read_made();
        read_stock();
        if (notes_.groups.empty() && root_.table().empty())
            root_.faults().add({1, 1}, "nothing-here", "there are no notes in this file", std::string(what_notes_hold));
        root_.refuse_unknown_keys();
    }

private:
    /// A day that has come.
    Date read_day(TableReader& table) {
        const auto day = table.date("on");
        if (day && *day > latest_)
            table.faults().add(table.place_of_value("on"), "in-the-future", date_text(*day) + " has not come yet",
                               "enter what has happened, not what is planned");
        return day.value_or(Date{});
    }

    Date required_day(TableReader& table) {
        table.required("on", "2026-11-21");
        return read_day(table);
    }

    /// All that the block says; what can only be judged as a whole is, where nothing in it is wrong already.
    template <class Thing>
    LogEntry read_entry(TableReader& table, Thing (*read_thing)(TableReader&), Date on) {
        const std::size_t faults_before = table.faults().count();
        LogEntry entry;
        entry.on = on;
        entry.what = read_thing(table);
        entry.believed = table.truth("believed").value_or(false);
        if (table.faults().count() == faults_before)
            for (const Fault& fault : log_faults(entry.what))
                table.faults().add(table.place_of_value(fault.subject), fault.code, fault.message, fault.hint);
        return entry;
    }

    template <class Thing>
    void read_loose(std::string_view key, std::string_view what, Thing (*read_thing)(TableReader&)) {
        root_.each_block(key, what, [&](TableReader& table) {
            const Date on = required_day(table);
            notes_.groups.push_back({{read_entry(table, read_thing, on)}, table.place()});
            table.refuse_unknown_keys();
        });
    }

    void read_made() {
        EntryNames names;
        root_.each_block("mix", "a mix", [&](TableReader& table) {
            Entry<Recipe> mix = read_recipe(table, names);
            if (!mix.faulty) notes_.made.recipes.push_back(std::move(mix));
        });
    }

    void read_stock() {
        root_.each_block("stock", "an entry of the shed", [&](TableReader& table) {
            const Date on = required_day(table);
            notes_.stock.push_back(read_noted_stock(table));
            notes_.stock.back().on = on;
            table.refuse_unknown_keys();
        });
    }

    /// On the day of the session, where it does not say another.
    template <class Thing>
    void read_belonging(TableReader& session, NotedGroup& group, std::string_view key, std::string_view what,
                        Thing (*read_thing)(TableReader&)) {
        const Date day = group.entries.front().on;
        session.each_block(key, what, [&](TableReader& table) {
            const Date on = table.has("on") ? read_day(table) : day;
            group.entries.push_back(read_entry(table, read_thing, on));
            table.refuse_unknown_keys();
        });
    }

    void read_session(TableReader& table) {
        NotedGroup group;
        group.place = table.place();
        const Date on = required_day(table);
        group.entries.push_back(read_entry(table, read_logged_session, on));
        read_belonging(table, group, "put_in", "a put-in", read_put_in);
        read_belonging(table, group, "mixed", "a mix", read_logged_mix);
        read_belonging(table, group, "used", "a use", read_logged_use);
        read_belonging(table, group, "soaked", "a soak", read_logged_soak);
        read_belonging(table, group, "weighed", "a weighing", read_logged_weight);
        read_belonging(table, group, "seen", "a look", read_logged_look);
        read_belonging(table, group, "bag", "a new bag", read_logged_bag);
        read_belonging(table, group, "catch", "a catch", read_catch);
        table.refuse_unknown_keys();
        notes_.groups.push_back(std::move(group));
    }

    TableReader root_;
    Notes& notes_;
    Date latest_;
};

}  // namespace

Notes read_notes(std::string_view text, std::string file_name, Date latest) {
    Notes notes;
    notes.name = notes.made.name = std::move(file_name);
    notes.text = text;
    FileFaults faults(text, notes.name);
    if (const auto root = parse_toml(text, faults)) NotesReader(*root, notes, faults, latest).read();
    notes.faults = faults.in_file_order();
    return notes;
}

}  // namespace baitwright
