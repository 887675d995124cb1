#include "library/entry_references.h"

#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

enum class Refers { to_ingredients, to_mixes_too };

class Following {
public:
    explicit Following(const Store& store) : entries_(store.entries()) {}

    bool follow(std::string& name, Refers refers) {
        if (name.empty() || is_there(name, refers)) return false;
        std::optional<EntryKind> removed;
        for (const EntryKind kind : {EntryKind::ingredient, EntryKind::mix}) {
            if (kind == EntryKind::mix && refers == Refers::to_ingredients) continue;
            const auto became = entries_.became(kind, name);
            if (!became) continue;
            if (!became->empty() && entries_.find_name(kind, *became)) {
                name = *became;
                return true;
            }
            removed = kind;
            break;
        }
        if (removed)
            faults_.push_back(
                {"unknown-ingredient",
                 "it needs the " + std::string(name_of(*removed)) + " " + in_quotes(name) + ", which was removed",
                 "put that back first: baitwright " + command_word(*removed) + " restore \"" + name + "\""});
        return false;
    }
    void refuse() {
        if (!faults_.empty()) throw InputError(std::move(faults_));
    }

private:
    [[nodiscard]] bool is_there(const std::string& name, Refers refers) const {
        return entries_.find_name(EntryKind::ingredient, name) ||
               (refers == Refers::to_mixes_too && entries_.find_name(EntryKind::mix, name));
    }

    EntryRegister entries_;
    std::vector<Fault> faults_;
};

}  // namespace

void follow_renames(const Store& store, LibraryFile& file) {
    Following following(store);
    for (Entry<Recipe>& entry : file.recipes) {
        for (Part& part : entry.value.parts) following.follow(part.of, Refers::to_mixes_too);
        for (Dose& dose : entry.value.doses) following.follow(dose.of, Refers::to_ingredients);
    }
    for (Entry<Strategy>& entry : file.strategies) {
        for (Feed& feed : entry.value.feeds)
            for (FeedPart& part : feed.parts) following.follow(part.of, Refers::to_mixes_too);
        for (Hookbait& hookbait : entry.value.hookbaits) following.follow(hookbait.of, Refers::to_ingredients);
    }
    const auto follow = [&](std::string& name) { return following.follow(name, Refers::to_ingredients); };
    for (Entry<Venue>& entry : file.venues) each_name(entry.value, follow);
    for (Entry<BlendSpec>& entry : file.blends) each_name(entry.value, follow);
    following.refuse();
}

}  // namespace baitwright
