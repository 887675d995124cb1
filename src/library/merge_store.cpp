#include "library/merge_store.h"

#include <algorithm>
#include <map>

#include "bait/resolve_mix.h"
#include "library/merge_entries.h"
#include "library/told_twice.h"
#include "quantities/fault.h"
#include "store/other_store.h"

namespace baitwright {

namespace {

/// Thrown out of a change that is only to be shown.
struct OnlyShown {};

std::vector<std::string> mixes_that_fail(const Store& store) {
    std::vector<std::string> names;
    for (const std::string& name : store.recipe_names()) {
        try {
            static_cast<void>(resolve(store.recipe(name), store));
        } catch (const Error&) {
            names.push_back(name);
        }
    }
    return names;
}

std::map<std::string, Milligrams> overdrawn_by_name(const MergeBook& book) {
    std::map<std::string, Milligrams> items;
    for (const Overdrawn& item : book.overdrawn()) items[item.name] = item.by;
    return items;
}

void merge_all(Store& store, Store& other, Date today, MergeAnswer& answer) {
    MergeBook book = store.merging();
    const std::map<std::string, Milligrams> over_before = overdrawn_by_name(book);
    std::int64_t clock = std::max(book.clock(), other.merging().clock());
    book.begin();
    MergingEntries entries(store, other, today, answer);
    const RowsBrought rows = book.bring_rows();
    entries.merge();
    entries.mend_references();
    book.bring_prices(entries.ingredients_now());
    book.end();
    for (const auto& [feel, changed] : book.clocks("feel")) clock = std::max(clock, changed);  // that stand as one
    book.set_clock(clock);
    answer.shed_entries = rows.shed_entries;
    answer.log_entries = rows.log_entries;
    answer.sessions = rows.sessions;
    answer.usual = rows.usual;
    answer.learnt = rows.learnt;
    answer.beliefs = rows.beliefs;
    for (const auto& [name, by] : overdrawn_by_name(book)) {
        const auto before = over_before.find(name);
        if (before == over_before.end() || before->second < by) answer.overdrawn.emplace_back(name, by);
    }
}

}  // namespace

MergeAnswer merge_store(Store& store, const std::filesystem::path& other, Date today, MergeDoing doing) {
    MergeAnswer answer;
    answer.other = other.string();
    answer.only_shown = doing == MergeDoing::only_shown;
    OtherStore theirs(other, store.path());
    try {
        const MarksToGive marks = marks_of_told_twice(store, theirs.store());
        if (!marks.theirs.empty()) {
            theirs.refuse_damaged();  // it is read until then
            theirs.store().change([&] { theirs.store().log().put_marks(marks.theirs); });
        }
        store.change_beside(theirs.path(), [&] {
            store.log().put_marks(marks.ours);
            const std::vector<std::string> failed_before = mixes_that_fail(store);
            merge_all(store, theirs.store(), today, answer);
            for (const std::string& name : mixes_that_fail(store))
                if (std::find(failed_before.begin(), failed_before.end(), name) == failed_before.end())
                    answer.broken_mixes.push_back(name);
            theirs.refuse_damaged();
            if (answer.only_shown) throw OnlyShown{};
        });
    } catch (const OnlyShown&) {
        return answer;
    } catch (const StorageError& met) {
        theirs.refuse_damaged(met);
    }
    return answer;
}

}  // namespace baitwright
