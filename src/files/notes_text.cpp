#include "files/notes_text.h"

#include <map>

#include "files/toml_writer.h"
#include "files/value_text.h"
#include "quantities/number_text.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// The lines of one block, below its heading.
class LoggedLines {
public:
    LoggedLines(TomlWriter& out, std::string heading) : out_(out), heading_(std::move(heading)) {}

    void operator()(const LoggedSession& session) {
        out_.text("start", session.start);
        if (session.length > Time{}) out_.text("length", time_text(session.length));
        out_.line("anglers", std::to_string(session.anglers));
        out_.text("page", session.page);
        out_.text("venue", session.venue);
        out_.text("clarity", session.clarity);
        if (session.water) out_.text("water_temperature", exact_text(*session.water));
        if (session.cost) out_.text("cost", money_text(*session.cost));
        out_.text("note", session.note);
    }
    void operator()(const LoggedPutIn& put_in) { moment(put_in.at); }
    void operator()(const LoggedUse& use) { out_.text("amount", amount_text(use.amount)); }
    void operator()(const LoggedCatch& caught) {
        moment(caught.at);
        out_.text("fish", caught.fish);
        out_.line("count", std::to_string(caught.count));
        if (caught.mass) out_.text("mass", exact_text(*caught.mass, kilogram, "kg"));
    }
    void operator()(const LoggedMix& mix) {
        if (mix.dry) out_.text("dry", amount_text(*mix.dry));
        if (mix.water) out_.text("water", exact_text(mix.water->in(gram)*millilitre, millilitre, "ml"));
        out_.text("feel", mix.feel);
        if (mix.wetness) out_.line("wetness", number_text(*mix.wetness));
        if (mix.within > 0) out_.line("within", number_text(mix.within));
        if (mix.wetting > Mass{}) out_.text("wetting", amount_text(mix.wetting));
    }
    void operator()(const LoggedSoak& soak) {
        out_.text("dry", amount_text(soak.dry));
        out_.text("drained", amount_text(soak.drained));
        out_.text("under_water", time_text(soak.under_water));
        out_.text("water_temperature", exact_text(soak.water));
    }
    void operator()(const LoggedWeight& weight) {
        out_.text("feel", weight.feel);
        out_.text("vessel", amount_text(weight.vessel));
        out_.text("weighs", amount_text(weight.mass));
    }
    void operator()(const LoggedLook& look) {
        out_.text("feel", look.feel);
        if (const auto* cup = std::get_if<Volume>(&look.form)) out_.text("cup", amount_text(*cup));
        if (const auto* ball = std::get_if<Length>(&look.form)) {
            out_.text("ball", exact_text(*ball, millimetre, "mm"));
            out_.text("squeeze", name_of(look.squeeze));
        }
        if (look.depth > Length{}) out_.text("depth", exact_text(look.depth, metre, "m"));
        if (look.holds) out_.text("hold", exact_text(*look.holds, second, "s"));
        if (look.breaks_at) out_.text("breaks_at", exact_text(*look.breaks_at, metre, "m"));
        if (look.carpet) out_.text("carpet_seen", exact_text(*look.carpet, metre, "m"));
    }
    void operator()(const LoggedBag&) {}
    void operator()(const LogUndone&) {}

    /// They are blocks of their own, so they come last.
    void parts_of(const LoggedThing& what) {
        const auto* mix = std::get_if<LoggedMix>(&what);
        if (!mix) return;
        for (const WeighedPart& part : mix->parts) {
            out_.inner_heading(heading_ + ".part");
            out_.text("of", part.of);
            out_.text("mass", amount_text(part.mass));
            if (part.moisture) out_.text("moisture", percent_text(*part.moisture));
        }
    }

private:
    static std::string time_text(Time time) { return exact_text(time, minute, "min"); }
    void moment(const std::optional<Time>& at) {
        if (at) out_.text("at", time_text(*at));
    }

    TomlWriter& out_;
    std::string heading_;
};

/// In the order of the kinds; undoings have none.
constexpr std::array<std::string_view, 10> headings{"session", "put_in",  "used", "catch", "mixed",
                                                    "soaked",  "weighed", "seen", "bag",   ""};

std::string_view subject_key(const LoggedThing& what) {
    if (std::holds_alternative<LoggedSession>(what)) return "strategy";
    return std::holds_alternative<LoggedCatch>(what) ? "" : "of";  // a catch tells its fish itself
}

void write_entry(TomlWriter& out, const LogEntry& entry, const LogEntry* session) {
    const std::string heading = (session ? "session." : "") + std::string(headings.at(entry.what.index()));
    session ? out.inner_heading(heading) : out.heading(heading);
    LoggedLines lines(out, heading);
    if (const auto key = subject_key(entry.what); !key.empty()) out.text(key, subject_of(entry.what));
    if (!session || entry.on != session->on) out.line("on", date_text(entry.on));
    std::visit(lines, entry.what);
    if (entry.believed) out.line("believed", "true");
    lines.parts_of(entry.what);
}

}  // namespace

std::string notes_text(const std::vector<LogEntry>& entries) {
    std::map<std::int64_t, std::vector<const LogEntry*>> of_session;
    for (const LogEntry& entry : entries)
        if (std::holds_alternative<LoggedSession>(entry.what)) of_session[entry.id];
    const auto belongs = [&](const LogEntry& entry) {
        return entry.session != 0 && of_session.count(entry.session) > 0;
    };
    for (const LogEntry& entry : entries)
        if (belongs(entry)) of_session[entry.session].push_back(&entry);
    TomlWriter out;
    for (const LogEntry& entry : entries) {
        if (std::holds_alternative<LogUndone>(entry.what) || belongs(entry)) continue;
        write_entry(out, entry, nullptr);
        if (!std::holds_alternative<LoggedSession>(entry.what)) continue;
        for (const LogEntry* belonging : of_session[entry.id])
            if (!std::holds_alternative<LogUndone>(belonging->what)) write_entry(out, *belonging, &entry);
    }
    return out.str();
}

}  // namespace baitwright
