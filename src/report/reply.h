#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "answers/shared/warning.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/shown_units.h"
#include "report/told.h"

namespace baitwright {

/// An answer ready to be given, by a terminal and a page alike. Each form is made only when it is asked for. What is
/// told heeds the units shown; JSON and rows, which programs read, are the same in all of them.
struct Reply {
    int status = 0;  ///< that the program ends with: 1 where the answer is no
    std::function<Told()> told;
    std::function<Json()> json;
    std::function<Rows()> rows = {};  ///< empty where a spreadsheet has no use for it
};

/// 1 where one of the warnings says that the answer is no.
int status_of(const std::vector<Warning>& warnings);

/// The reply that the functions of a report give of an answer.
template <class Answer>
Reply reply_of(Answer answer, Told (*told)(const Answer&), Json (*json)(const Answer&),
               Rows (*rows)(const Answer&) = nullptr, int status = 0) {
    const auto kept = std::make_shared<const Answer>(std::move(answer));
    Reply reply{status, [kept, told] { return told(*kept); },
                [kept, json] {
                    const UnitsShownHere as_ever{ShownUnits{}};
                    return json(*kept);
                }};
    if (rows)
        reply.rows = [kept, rows] {
            const UnitsShownHere as_ever{ShownUnits{}};
            return rows(*kept);
        };
    return reply;
}

/// An answer whose warnings say whether it is no.
template <class Answer>
Reply warned(Answer answer, Told (*told)(const Answer&), Json (*json)(const Answer&),
             Rows (*rows)(const Answer&) = nullptr) {
    const int status = status_of(answer.warnings);
    return reply_of(std::move(answer), told, json, rows, status);
}

}  // namespace baitwright
