#include "report/stirred_in_last.h"

#include "quantities/listed.h"
#include "report/display.h"

namespace baitwright {

std::string told_last(const std::string& name, Mass mass) {
    return mass > Mass{} ? shown_weighed(mass) + " of " + name : "the soaked " + name;
}

std::string stirred_in_last(const std::vector<std::string>& what, const std::string& before_let_down) {
    return "stir in " + listed(what) +
           (before_let_down.empty() ? " at the very end" : " once all of it is " + before_let_down);
}

std::string stirring_in_text(const PrepJob& job) {
    std::vector<std::string> what;
    what.reserve(job.portions.size());
    for (const PrepPortion& portion : job.portions) what.push_back(told_last(portion.of, portion.amount));
    return job.subject + ": " + stirred_in_last(what, job.feel);
}

}  // namespace baitwright
