#include "answers/learn/linear_form.h"

#include <algorithm>

namespace baitwright {

double value_of(const LinearForm& form, const std::vector<double>& at) {
    double sum = 0;
    for (const auto& [i, coefficient] : form) sum += coefficient * at[i];
    return sum;
}

double variance_before(const LinearForm& form) {
    double sum = 0;
    for (const auto& [i, coefficient] : form) sum += coefficient * coefficient;
    return sum;
}

LinearForm sum_of(const LinearForm& a, const LinearForm& b, double factor) {
    LinearForm sum;
    sum.reserve(a.size() + b.size());
    auto x = a.begin();
    auto y = b.begin();
    while (x != a.end() || y != b.end()) {
        if (y == b.end() || (x != a.end() && x->first < y->first)) {
            sum.push_back(*x++);
        } else if (x == a.end() || y->first < x->first) {
            sum.emplace_back(y->first, factor * y->second);
            ++y;
        } else {
            sum.emplace_back(x->first, x->second + factor * y->second);
            ++x, ++y;
        }
    }
    return sum;
}

void FormSum::add(const LinearForm& form, double factor) {
    for (const auto& [i, coefficient] : form) {
        if (!used_[i]) touched_.push_back(i);
        used_[i] = 1;
        at_[i] += factor * coefficient;
    }
}

LinearForm FormSum::take() {
    std::sort(touched_.begin(), touched_.end());
    LinearForm form;
    form.reserve(touched_.size());
    for (const std::size_t i : touched_) {
        form.emplace_back(i, at_[i]);
        at_[i] = 0;
        used_[i] = 0;
    }
    touched_.clear();
    return form;
}

}  // namespace baitwright
