#include "bait/log_entry.h"

namespace baitwright {

namespace {

struct SubjectOfLogged {
    std::string operator()(const LoggedSession& session) const { return session.strategy; }
    std::string operator()(const LoggedCatch& caught) const { return caught.fish; }
    std::string operator()(const LogUndone&) const { return {}; }
    template <class Thing>
    std::string operator()(const Thing& thing) const {
        return thing.of;
    }
};

}  // namespace

std::string subject_of(const LoggedThing& what) {
    return std::visit(SubjectOfLogged{}, what);
}

}  // namespace baitwright
