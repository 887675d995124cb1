#include "bait/venue.h"

namespace baitwright {

namespace {

struct SubjectName {
    std::string operator()(AllFeed) const { return "all feed"; }
    std::string operator()(Groundbait) const { return "groundbait"; }
    std::string operator()(IngredientKind kind) const { return std::string(name_of(kind)); }
    std::string operator()(const OneIngredient& one) const { return one.name; }
};

}  // namespace

std::string name_of(const RuleSubject& subject) {
    return std::visit(SubjectName{}, subject);
}

}  // namespace baitwright
