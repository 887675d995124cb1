#include "page/bank_answers.h"

#include <algorithm>

#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/mix/right_a_mix.h"
#include "answers/money/cost_strategy.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "answers/plan/rest_of_session.h"
#include "questions/cost_question.h"
#include "questions/drop_question.h"
#include "questions/mix_question.h"
#include "questions/plan_question.h"
#include "questions/rest_question.h"
#include "questions/soak_question.h"
#include "questions/tub_question.h"
#include "report/cost_report.h"
#include "report/drop_plot.h"
#include "report/drop_report.h"
#include "report/mix_json.h"
#include "report/mix_text.h"
#include "report/plan_report.h"
#include "report/soak_json.h"
#include "report/soak_text.h"
#include "report/tub_report.h"

namespace baitwright {

namespace {

int status_of(const std::vector<Warning>& warnings) {
    return std::any_of(warnings.begin(), warnings.end(), [](const Warning& warning) { return warning.answer_is_no; })
               ? 1
               : 0;
}

/// `tell` and `record` make the forms that are wanted.
template <class Tell, class Record>
Json reply(const Wanted& wanted, int status, Tell&& tell, Record&& record) {
    Json json{{"status", status}};
    if (wanted.told) json["told"] = told_json(tell());
    if (wanted.json) json["json"] = record();
    return json;
}

Json mix_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    MixRequest request = mix_request(arguments);
    request.today = bank.today;
    const MixAnswer answer = answer_mix(bank.shelf, bank.shelf.recipe(arguments.words().front()), request);
    return reply(
        wanted, status_of(answer.warnings), [&] { return mix_told(answer); }, [&] { return mix_json(answer); });
}

Json tub_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    const TubRequest request = tub_request(arguments);
    const TubAnswer answer = right_a_mix(bank.shelf, bank.shelf.recipe(arguments.words().front()), request);
    return reply(
        wanted, 0, [&] { return tub_told(answer); }, [&] { return tub_json(answer); });
}

Json soak_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    const SoakRequest request = soak_request(arguments);
    const SoakAnswer answer = soak_pellets(bank.shelf, request);
    refuse_unfit_soak_flags(arguments, !answer.soaked.empty(), !answer.pumped.empty());
    return reply(
        wanted, status_of(answer.warnings), [&] { return soak_told(answer); }, [&] { return soak_json(answer); });
}

Json drop_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    const DropRequest request = drop_request(arguments);
    const DropAnswer answer = drop_feed(bank.shelf, bank.shelf.recipe(arguments.words().front()), request);
    refuse_no_ball(request, answer);
    Json json = reply(
        wanted, status_of(answer.warnings), [&] { return drop_told(answer); }, [&] { return drop_json(answer); });
    if (wanted.picture) json["picture"] = drop_plot(answer, wanted.narrow ? PictureWidth::phone : PictureWidth::page);
    return json;
}

Json cost_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    CostRequest request = cost_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.what_if.times = word.times;
    const StrategyCost cost =
        cost_strategy(bank.shelf, bank.shelf.strategy(word.strategy), bank.stock(arguments), request);
    return reply(
        wanted, cost.complete() ? 0 : 1, [&] { return cost_told(cost); }, [&] { return cost_json(cost); });
}

Json plan_reply(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    refuse_unfit_rest_flags(arguments);
    PlanRequest request = plan_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.cost.what_if.times = word.times;
    const RestRequest asked = rest_request(arguments, request.start);
    const SessionPlan plan =
        plan_session(bank.shelf, bank.shelf.strategy(word.strategy), bank.stock(arguments), request);
    if (!arguments.has("--now"))
        return reply(
            wanted, plan.breaches.empty() ? status_of(plan.warnings) : 1, [&] { return plan_told(plan); },
            [&] { return plan_json(plan); });
    const RestOfSession rest = rest_of_session(plan, asked);
    return reply(
        wanted, 0, [&] { return rest_told(plan, rest); }, [&] { return rest_json(plan, rest); });
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
    if (question == "mix") return mix_reply(bank, arguments, wanted);
    if (question == "water") return tub_reply(bank, arguments, wanted);
    if (question == "soak") return soak_reply(bank, arguments, wanted);
    if (question == "drop") return drop_reply(bank, arguments, wanted);
    if (question == "cost") return cost_reply(bank, arguments, wanted);
    if (question == "plan") return plan_reply(bank, arguments, wanted);
    throw NotFound("unknown-question", "the page's engine has no answer called '" + question + "'",
                   "it answers mix, water, soak, drop, cost and plan");
}

}  // namespace baitwright
