#include "page/library_answers.h"

#include "answers/plan/searched_venue.h"
#include "answers/shared/searched_entry.h"
#include "answers/strategy/advise.h"
#include "questions/advise_question.h"
#include "report/entry_replies.h"
#include "report/find_report.h"
#include "report/replies.h"

namespace baitwright {

namespace {

std::vector<SearchedEntry> searched_here(const OpenedBank& bank) {
    const Shelf& shelf = bank.here();
    std::vector<SearchedEntry> all;
    for (const std::string& name : shelf.ingredient_names()) all.push_back(searched(shelf.ingredient(name)));
    for (const std::string& name : shelf.recipe_names()) all.push_back(searched(shelf.recipe(name)));
    for (const std::string& name : shelf.strategy_names()) all.push_back(searched(shelf.strategy(name)));
    for (const Venue& venue : bank.venues) all.push_back(searched(venue));
    return all;
}

}  // namespace

Reply asked_advice(const OpenedBank& bank, const Arguments& arguments) {
    return advise_reply(advise(bank.here(), bank.advice, circumstances(arguments)));
}

Reply asked_find(const OpenedBank& bank, const Arguments& arguments) {
    return find_reply(find_entries(arguments.words(), searched_here(bank)));
}

Reply asked_ingredient(const OpenedBank& bank, const Arguments& arguments) {
    return ingredient_reply(bank.here().ingredient(arguments.words().front()));
}

Reply asked_recipe(const OpenedBank& bank, const Arguments& arguments) {
    return recipe_reply(bank.here().recipe(arguments.words().front()));
}

Reply asked_strategy(const OpenedBank& bank, const Arguments& arguments) {
    return strategy_reply(bank.here().strategy(arguments.words().front()));
}

}  // namespace baitwright
