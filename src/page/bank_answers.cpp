#include "page/bank_answers.h"

#include <algorithm>
#include <map>

#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/mix/dry_out.h"
#include "answers/mix/right_a_mix.h"
#include "answers/money/cost_strategy.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "answers/plan/rest_of_session.h"
#include "questions/cost_question.h"
#include "questions/drop_question.h"
#include "questions/dry_question.h"
#include "questions/mix_question.h"
#include "questions/plan_question.h"
#include "questions/rest_question.h"
#include "questions/soak_question.h"
#include "questions/tub_question.h"
#include "report/drop_plot.h"
#include "report/replies.h"

namespace baitwright {

namespace {

Reply asked_mix(const OpenedBank& bank, const Arguments& arguments) {
    MixRequest request = mix_request(arguments);
    request.today = bank.today;
    return mix_reply(answer_mix(bank.shelf, bank.shelf.recipe(arguments.words().front()), request));
}

Reply asked_tub(const OpenedBank& bank, const Arguments& arguments) {
    const TubRequest request = tub_request(arguments);
    return tub_reply(right_a_mix(bank.shelf, bank.shelf.recipe(arguments.words().front()), request));
}

Reply asked_dry(const OpenedBank& bank, const Arguments& arguments) {
    const DryRequest request = dry_request(arguments);
    return dry_reply(dry_out(bank.shelf, bank.shelf.recipe(arguments.words().front()), request));
}

Reply asked_soak(const OpenedBank& bank, const Arguments& arguments) {
    const SoakRequest request = soak_request(arguments);
    SoakAnswer answer = soak_pellets(bank.shelf, request);
    refuse_unfit_soak_flags(arguments, !answer.soaked.empty(), !answer.pumped.empty());
    return soak_reply(std::move(answer));
}

DropAnswer dropped(const OpenedBank& bank, const Arguments& arguments) {
    const DropRequest request = drop_request(arguments);
    DropAnswer answer = drop_feed(bank.shelf, bank.shelf.recipe(arguments.words().front()), request);
    refuse_no_ball(request, answer);
    return answer;
}

Reply asked_cost(const OpenedBank& bank, const Arguments& arguments) {
    CostRequest request = cost_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.what_if.times = word.times;
    return cost_reply(cost_strategy(bank.shelf, bank.shelf.strategy(word.strategy), bank.stock(arguments), request));
}

Reply asked_plan(const OpenedBank& bank, const Arguments& arguments) {
    refuse_unfit_rest_flags(arguments);
    PlanRequest request = plan_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.cost.what_if.times = word.times;
    const RestRequest asked = rest_request(arguments, request.start);
    const SessionPlan plan =
        plan_session(bank.shelf, bank.shelf.strategy(word.strategy), bank.stock(arguments), request);
    if (!arguments.has("--now")) return plan_reply(plan);
    return rest_reply(plan, rest_of_session(plan, asked));
}

/// The forms that are wanted.
Json in_forms(const Reply& reply, const Wanted& wanted) {
    Json json{{"status", reply.status}};
    if (wanted.told) json["told"] = told_json(reply.told());
    if (wanted.json) json["json"] = reply.json();
    return json;
}

Json drop_in_forms(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    const DropAnswer answer = dropped(bank, arguments);
    const DropTelling telling = arguments.has("--full") ? DropTelling::full : DropTelling::brief;
    Json json = in_forms(drop_reply(answer, telling), wanted);
    if (wanted.picture) json["picture"] = drop_plot(answer, wanted.narrow ? PictureWidth::phone : PictureWidth::page);
    return json;
}

}  // namespace

StockOnHand OpenedBank::stock(const Arguments& arguments) const {
    return arguments.has("--have") || arguments.has("--empty-shed") ? stock_told(arguments, shelf) : have;
}

Wanted wanted_of(const Json& request) {
    const Json *given = request.find("give"), *narrow = request.find("narrow");
    const auto give = given ? given->texts() : std::vector<std::string>{"told"};
    const auto asked = [&](const char* form) { return std::find(give.begin(), give.end(), form) != give.end(); };
    return {asked("told"), asked("json"), asked("picture"), narrow && narrow->truth()};
}

Json answer_of(const OpenedBank& bank, const std::string& question, const Arguments& arguments, const Wanted& wanted) {
    if (question == "drop") return drop_in_forms(bank, arguments, wanted);
    using Asked = Reply (*)(const OpenedBank&, const Arguments&);
    static const std::map<std::string_view, Asked> questions{{"mix", asked_mix},   {"water", asked_tub},
                                                             {"dry", asked_dry},   {"soak", asked_soak},
                                                             {"cost", asked_cost}, {"plan", asked_plan}};
    if (const auto found = questions.find(question); found != questions.end())
        return in_forms(found->second(bank, arguments), wanted);
    throw NotFound("unknown-question", "the page's engine has no answer called '" + question + "'",
                   "it answers mix, water, dry, soak, drop, cost and plan");
}

}  // namespace baitwright
