#include "files/library_text.h"
#include "files/toml_writer.h"
#include "files/value_text.h"

namespace baitwright {

namespace {

void write_subject(TomlWriter& out, const RuleSubject& subject) {
    out.text(std::holds_alternative<OneIngredient>(subject) ? "of" : "kind", name_of(subject));
}

}  // namespace

std::string toml_text(const Venue& venue) {
    TomlWriter out;
    out.heading("venue");
    out.text("name", venue.name);
    out.text("note", venue.note);
    for (const VenueLimit& limit : venue.limits) {
        out.inner_heading("venue.limit");
        write_subject(out, limit.subject);
        out.text("max", amount_text(limit.most));
        if (limit.reckoned == VenueLimit::Reckoned::wet) out.text("as", "wet");
        if (limit.per == VenueLimit::Per::everyone) out.text("per", "everyone");
    }
    for (const VenueBan& ban : venue.bans) {
        out.inner_heading("venue.ban");
        write_subject(out, ban.subject);
        out.text("why", ban.why);
    }
    for (const std::string& rule : venue.rules) {
        out.inner_heading("venue.rule");
        out.text("text", rule);
    }
    return out.str();
}

}  // namespace baitwright
