#include "library/learn_from_store.h"

#include "answers/learn/learn_from_log.h"
#include "bait/shelf_over.h"
#include "library/before_learning.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

bool is_an_observation(const LoggedThing& what) {
    return std::holds_alternative<LoggedMix>(what) || std::holds_alternative<LoggedSoak>(what) ||
           std::holds_alternative<LoggedWeight>(what) || std::holds_alternative<LoggedLook>(what);
}

void check_believable(const LogBook& log, std::int64_t id) {
    const std::optional<LogEntry> entry = log.find(id);
    const std::string number = std::to_string(id);
    if (!entry)
        throw NotFound("unknown-entry", "there is no entry " + number + " in the log",
                       "see them with: baitwright log list");
    if (!is_an_observation(entry->what))
        throw UsageError("teaches-nothing",
                         "entry " + number + " is a " + std::string(name_of(entry->what)) + ", which teaches no value",
                         "name a mix, a soak, a weighing or a look: baitwright log list");
}

/// The store's shelf, where also a person's own ingredient is known as it was before anything was learnt of it.
class ShelfBeforeLearning : public ShelfOver {
public:
    explicit ShelfBeforeLearning(const Store& store) : ShelfOver(store), store_(store) {}

    [[nodiscard]] std::optional<Ingredient> find_usual(std::string_view name) const override {
        auto shipped = store_.find_usual(name);
        return shipped ? shipped : own_before_learning(store_, std::string(name));
    }

private:
    const Store& store_;
};

}  // namespace

LearnAnswer learn_from_store(Store& store, Date today) {
    LearnRequest request{store.log().entries(), {}, today};
    for (const NewLot& lot : store.shed().arrivals()) request.bags.push_back({lot.name, lot.on});
    return learn_from_log(ShelfBeforeLearning(store), request);
}

void set_belief(Store& store, const std::vector<std::int64_t>& entries, Belief belief) {
    store.change([&] {
        for (const std::int64_t id : entries) {
            check_believable(store.log(), id);
            store.log().believe(id, belief == Belief::believed);
        }
    });
}

}  // namespace baitwright
