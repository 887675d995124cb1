#include "quantities/unfinished_names.h"

#include <algorithm>

namespace baitwright {

namespace {

struct NameSlot {
    std::array<char, 4096> text{};
    bool taken = false;              ///< by an owner; read by nobody else
    std::atomic<bool> whole{false};  ///< the text stands
};

std::array<NameSlot, 64> name_slots;

}  // namespace

UnfinishedName::UnfinishedName(std::string_view name) {
    auto* const slot =
        std::find_if(name_slots.begin(), name_slots.end(), [](const NameSlot& each) { return !each.taken; });
    if (slot == name_slots.end() || name.size() >= slot->text.size()) return;
    slot->taken = true;
    *std::copy(name.begin(), name.end(), slot->text.begin()) = '\0';
    slot->whole = true;
    known_ = &slot->whole;
}

UnfinishedName::~UnfinishedName() {
    if (known_ == nullptr) return;
    *known_ = false;
    for (NameSlot& slot : name_slots)
        if (&slot.whole == known_) slot.taken = false;
}

void look_at_unfinished_names(void (*look)(const char* name)) {
    for (const NameSlot& slot : name_slots)
        if (slot.whole) look(slot.text.data());
}

}  // namespace baitwright
