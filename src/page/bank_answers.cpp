#include "page/bank_answers.h"

#include <algorithm>
#include <map>

#include "answers/drop/compare_drops.h"
#include "answers/drop/drop_feed.h"
#include "answers/drop/own_looks.h"
#include "answers/mix/answer_mix.h"
#include "answers/mix/dosed_name.h"
#include "answers/mix/dry_out.h"
#include "answers/mix/right_a_mix.h"
#include "answers/pellets/soak_pellets.h"
#include "bait/bait_called.h"
#include "page/library_answers.h"
#include "page/session_answers.h"
#include "questions/dose_question.h"
#include "questions/drop_question.h"
#include "questions/dry_question.h"
#include "questions/mix_question.h"
#include "questions/soak_question.h"
#include "questions/tub_question.h"
#include "report/drop_plot.h"
#include "report/replies.h"

namespace baitwright {

namespace {

Reply asked_mix(const OpenedBank& bank, const Arguments& arguments) {
    MixRequest request = mix_request(arguments);
    request.today = bank.today;
    return mix_reply(
        answer_mix(bank.here(), bait_called(arguments.words().front(), bank.here(), BaitUse::wetted), request));
}

Reply asked_tub(const OpenedBank& bank, const Arguments& arguments) {
    const TubRequest request = tub_request(arguments);
    return tub_reply(right_a_mix(bank.here(), bank.here().recipe(arguments.words().front()), request));
}

Reply asked_dry(const OpenedBank& bank, const Arguments& arguments) {
    const DryRequest request = dry_request(arguments);
    return dry_reply(dry_out(bank.here(), bank.here().recipe(arguments.words().front()), request));
}

Reply asked_soak(const OpenedBank& bank, const Arguments& arguments) {
    SoakRequest request = soak_request(arguments);
    SoakAnswer answer = soak_pellets(bank.here(), request);
    refuse_unfit_soak_flags(arguments, !answer.soaked.empty(), !answer.pumped.empty());
    if (!arguments.has("--compare-temps")) return soak_reply(std::move(answer));
    std::vector<SoakAnswer> answers;
    for (const Temperature water : waters_to_compare(arguments, request.water)) {
        request.water = water;
        answers.push_back(soak_pellets(bank.here(), request));
    }
    return soak_comparison_reply(std::move(answers));
}

Reply asked_dose(const OpenedBank& bank, const Arguments& arguments) {
    const std::string of = dosed_name(bank.here(), arguments.words().front());
    if (bank.here().find_ingredient(of)) {
        AdditiveRequest request = additive_request(arguments);
        request.additive = of;
        return dose_reply(dose_additive(bank.here(), request));
    }
    refuse_additive_flags(arguments);
    return dose_reply(dose_mix(bank.here(), bank.here().recipe(of), mix_amount_request(arguments)));
}

/// The forms that are wanted.
Json in_forms(const Reply& reply, const Wanted& wanted) {
    Json json{{"status", reply.status}};
    if (wanted.told) json["told"] = told_json(reply.told());
    if (wanted.json) json["json"] = reply.json();
    return json;
}

/// One feed, or several side by side.
struct Dropped {
    std::vector<DropAnswer> answers;
    bool side_by_side = false;
};

Dropped dropped(const OpenedBank& bank, const Arguments& arguments) {
    const DropRequest request = drop_request(arguments);
    const auto by = drop_comparison(arguments);
    const auto wish = drop_wish(arguments);
    const Recipe bait = bait_called(arguments.words().front(), bank.here(), BaitUse::dropped);
    if (by) return {compare_drops(bank.here(), bait, request, *by), true};
    if (wish) return {drops_wished(bank.here(), bait, request, *wish), true};
    DropAnswer answer = drop_feed(bank.here(), bait, request);
    refuse_no_ball(request, answer);
    refuse_idle_looks(answer);
    return {{std::move(answer)}, false};
}

Json drop_in_forms(const OpenedBank& bank, const Arguments& arguments, const Wanted& wanted) {
    const Dropped found = dropped(bank, arguments);
    const DropTelling telling = arguments.has("--full") ? DropTelling::full : DropTelling::brief;
    Json json = in_forms(
        found.side_by_side ? drop_comparison_reply(found.answers) : drop_reply(found.answers.front(), telling), wanted);
    if (wanted.picture)
        json["picture"] = drop_plot(found.answers, wanted.narrow ? PictureWidth::phone : PictureWidth::page);
    return json;
}

/// A question that the engine answers, and whether it is asked of something.
struct Question {
    Reply (*answer)(const OpenedBank&, const Arguments&);
    bool of_a_word = true;
};

const std::map<std::string_view, Question>& questions() {
    static const std::map<std::string_view, Question> all{
        {"mix", {asked_mix}},         {"water", {asked_tub}},
        {"dry", {asked_dry}},         {"soak", {asked_soak}},
        {"dose", {asked_dose}},       {"cost", {asked_cost}},
        {"compare", {asked_compare}}, {"shop", {asked_shop}},
        {"plan", {asked_plan}},       {"advise", {asked_advice, false}},
        {"find", {asked_find}},       {"ingredient", {asked_ingredient}},
        {"recipe", {asked_recipe}},   {"strategy", {asked_strategy}}};
    return all;
}

void refuse_no_word(const Arguments& arguments) {
    if (arguments.words().empty())
        throw UsageError("missing-word", "a question without a name", "say of what it is asked");
}

}  // namespace

Wanted wanted_of(const Json& request) {
    const Json *given = request.find("give"), *narrow = request.find("narrow");
    const auto give = given ? given->texts() : std::vector<std::string>{"told"};
    const auto asked = [&](const char* form) { return std::find(give.begin(), give.end(), form) != give.end(); };
    return {asked("told"), asked("json"), asked("picture"), narrow && narrow->truth()};
}

Json answer_of(const OpenedBank& bank, const std::string& question, const Arguments& arguments, const Wanted& wanted) {
    const auto found = questions().find(question);
    if (question != "drop" && found == questions().end())
        throw NotFound("unknown-question", "the page's engine has no answer called '" + question + "'",
                       "open the page afresh; if it stays so, make the page anew");
    if (question == "drop" || found->second.of_a_word) refuse_no_word(arguments);
    if (question == "drop") return drop_in_forms(bank, arguments, wanted);
    return in_forms(found->second.answer(bank, arguments), wanted);
}

}  // namespace baitwright
