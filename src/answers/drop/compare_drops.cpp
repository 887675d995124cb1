#include "answers/drop/compare_drops.h"

#include <algorithm>
#include <cmath>

#include "answers/drop/drop_feed.h"
#include "bait/pellets_alone.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

std::vector<DropForm> usual_sizes(const DropForm& form) {
    std::vector<DropForm> sizes;
    if (std::holds_alternative<DroppedBall>(form))
        for (const double across : {30, 43, 50, 60, 75}) sizes.emplace_back(DroppedBall{across * millimetre});
    else
        for (const double volume : {25, 40, 100, 250, 500}) sizes.emplace_back(DroppedCup{volume * millilitre});
    return sizes;
}

/// The usual ones, a form that was told in place of those of its kind.
std::vector<DropForm> forms_compared(const std::vector<DropForm>& told) {
    const std::vector<DropForm> usual{DroppedCup{250.0 * millilitre}, DroppedCup{25.0 * millilitre},
                                      DroppedBall{55.0 * millimetre}, DroppedFeeder{30.0 * millilitre},
                                      DroppedLoose{100.0 * millilitre}};
    std::vector<DropForm> forms;
    for (const DropForm& form : usual) {
        const auto own =
            std::find_if(told.begin(), told.end(), [&](const DropForm& t) { return t.index() == form.index(); });
        if (own == told.end())
            forms.push_back(form);
        else if (forms.empty() || forms.back().index() != own->index())
            forms.push_back(*own);
    }
    return forms;
}

/// How far an answer is from the wish; 0 is right.
double distance(const DropAnswer& answer, const DropWish& wish) {
    if (answer.classes.empty() || answer.breaks == Breaks::bottom) return 1e9;
    const Length has = wish.of == DropWish::Of::carpet ? answer.width.most : answer.breaks_depth;
    return has > Length{} ? std::abs(std::log(has / wish.wanted)) : 1e8;
}

}  // namespace

std::vector<DropAnswer> compare_drops(const Shelf& shelf, const Recipe& recipe, DropRequest request,
                                      DropComparison by) {
    std::vector<DropAnswer> answers;
    if (by == DropComparison::feels) {
        for (const Feel& feel : shelf.feels()) {
            request.feel = feel.name;
            answers.push_back(drop_feed(shelf, recipe, request));
            if (answers.back().feel == feel_of_pellets || answers.back().feel == feel_as_it_is)
                break;  // whatever is asked
        }
        return answers;
    }
    for (const DropForm& form :
         by == DropComparison::sizes ? usual_sizes(request.form) : forms_compared(request.told_forms)) {
        request.form = form;
        answers.push_back(drop_feed(shelf, recipe, request));
    }
    return answers;
}

std::vector<DropAnswer> drops_wished(const Shelf& shelf, const Recipe& recipe, DropRequest request,
                                     const DropWish& wish) {
    std::vector<DropAnswer> answers;
    for (const DropForm& form : {DropForm(DroppedCup{250.0 * millilitre}), DropForm(DroppedBall{50.0 * millimetre})}) {
        request.form = form;
        for (const Feel& feel : shelf.feels()) {
            request.feel = feel.name;
            for (DropAnswer& answer : compare_drops(shelf, recipe, request, DropComparison::sizes))
                if (answer.warnings.empty()) answers.push_back(std::move(answer));
        }
    }
    sort_stably(answers.begin(), answers.end(),
                [&](const DropAnswer& a, const DropAnswer& b) { return distance(a, wish) < distance(b, wish); });
    constexpr std::size_t shown = 5;
    if (answers.size() > shown) answers.erase(answers.begin() + shown, answers.end());
    return answers;
}

}  // namespace baitwright
