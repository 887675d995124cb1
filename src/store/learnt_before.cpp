#include <array>

#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "store/log_book.h"
#include "store/query.h"
#include "store/stamp.h"

namespace baitwright {

namespace {

constexpr std::array forget_what_lies_by{"DELETE FROM learnt_water_before", "DELETE FROM learnt_mix_before",
                                         "DELETE FROM learnt_written"};
constexpr std::array lay_by_learnt{"INSERT INTO learnt_water_before SELECT * FROM learnt_water",
                                   "INSERT INTO learnt_mix_before SELECT * FROM learnt_mix"};
constexpr std::array take_up_learnt{"DELETE FROM learnt_water", "DELETE FROM learnt_mix",
                                    "INSERT INTO learnt_water SELECT * FROM learnt_water_before",
                                    "INSERT INTO learnt_mix SELECT * FROM learnt_mix_before"};
constexpr const char* insert_written = "INSERT INTO learnt_written VALUES (?1, ?2, ?3, ?4)";
// The row without a name says that something was laid by, be it nothing.
constexpr const char* select_laid_by = "SELECT 1 FROM learnt_written WHERE folded = ''";
constexpr const char* select_learnt_written =
    "SELECT name, text_before, text_after FROM learnt_written WHERE folded <> '' ORDER BY folded";

}  // namespace

void LogBook::keep_learnt_before(const std::vector<LearntWrite>& written) {
    connection_->require_change();
    connection_->guarded([&] {
        for (const char* sql : forget_what_lies_by) Query(*connection_, sql).run();
        for (const char* sql : lay_by_learnt) Query(*connection_, sql).run();
        Query(*connection_, insert_written, "", "", "", "").run();
        for (const LearntWrite& row : written)
            Query(*connection_, insert_written, folded_name(row.name), row.name, row.before, row.after).run();
    });
}

bool LogBook::can_restore_learnt() const {
    return connection_->guarded([&] { return Query(*connection_, select_laid_by).next(); });
}

std::vector<LearntWrite> LogBook::learnt_written() const {
    return connection_->guarded([&] {
        std::vector<LearntWrite> written;
        Query rows(*connection_, select_learnt_written);
        while (rows.next()) written.push_back({rows.text(0), rows.text(1), rows.text(2)});
        return written;
    });
}

void LogBook::restore_learnt() {
    connection_->require_change();
    connection_->guarded([&] {
        stamp(*connection_, stamp_of_learnt, "");
        for (const char* sql : take_up_learnt) Query(*connection_, sql).run();
        for (const char* sql : forget_what_lies_by) Query(*connection_, sql).run();
    });
}

}  // namespace baitwright
