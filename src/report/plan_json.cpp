#include <algorithm>

#include "quantities/clock.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/hot_day_report.h"
#include "report/kept_text.h"
#include "report/learnt_json.h"
#include "report/measured_words.h"
#include "report/plan_report.h"

namespace baitwright {

namespace {

Json clock_json(const SessionPlan& plan, Time at) {
    return plan.start ? Json(clock_text(*plan.start + at.in(minute))) : Json();
}

Json diameter_json(const FeedSize& size) {
    const Length* diameter = std::get_if<Length>(&size);
    return diameter ? Json(diameter->in(millimetre)) : Json();
}

Json put_in_json(const SessionPlan& plan, const PlannedFeed& put_in) {
    return {{"minute", put_in.at.in(minute)},
            {"clock", clock_json(plan, put_in.at)},
            {"of", put_in.name},
            {"as", name_of(put_in.form)},
            {"count", put_in.count},
            {"size_ml", put_in.each_volume.in(millilitre)},
            {"diameter_mm", diameter_json(put_in.size)},
            {"size_g", put_in.each_mass.in(gram)},
            {"mass_g", put_in.mass.in(gram)},
            {"volume_ml", put_in.volume.in(millilitre)},
            {"with", text_or_null(put_in.with)},
            {"fills", put_in.fills}};
}

Json slow_json(const PlannedSlowFeed& slow) {
    return {{"when", "slow"},
            {"expected", slow.times},
            {"from_minute", slow.each.at.in(minute)},
            {"until_minute", slow.until ? Json(slow.until->in(minute)) : Json()},
            {"of", slow.each.name},
            {"as", name_of(slow.each.form)},
            {"count", slow.each.count},
            {"size_ml", slow.each.each_volume.in(millilitre)},
            {"diameter_mm", diameter_json(slow.each.size)},
            {"size_g", slow.each.each_mass.in(gram)},
            {"mass_g", slow.each.mass.in(gram)},
            {"volume_ml", slow.each.volume.in(millilitre)},
            {"with", text_or_null(slow.each.with)},
            {"fills", slow.each.fills}};
}

Json call_json(const SlowTopUp& call) {
    return {{"of", call.each.name},
            {"as", name_of(call.each.form)},
            {"count", call.each.count},
            {"diameter_mm", diameter_json(call.each.size)},
            {"volume_ml", call.each.volume.in(millilitre)},
            {"mass_g", call.each.mass.in(gram)},
            {"more", call.more}};
}

/// The evening before has no moment where there is no clock.
bool has_moment(const SessionPlan& plan, const PrepJob& job) {
    return plan.start || job.when == PrepJob::When::on_the_day;
}

Json job_json(const SessionPlan& plan, const PrepJob& job) {
    Json portions = Json::array();
    for (const PrepPortion& portion : job.portions)
        portions.push_back(
            {{"of", portion.of}, {"amount_g", portion.amount > Mass{} ? Json(portion.amount.in(gram)) : Json()}});
    return {{"minute", has_moment(plan, job) ? Json(job.at.in(minute)) : Json()},
            {"clock", clock_json(plan, job.at)},
            {"task", name_of(job.task)},
            {"of", text_or_null(job.subject)},
            {"amount_g", job.amount > Mass{} ? Json(job.amount.in(gram)) : Json()},
            {"take_g", job.take > Mass{} ? Json(job.take.in(gram)) : Json()},
            {"feel", text_or_null(job.feel)},
            {"count", job.count > 0 ? Json(job.count) : Json()},
            {"hands_on_minutes", job.hands_on.in(minute)},
            {"waiting_minutes", job.waiting.in(minute)},
            {"evening_before", job.when == PrepJob::When::evening_before},
            {"portions", std::move(portions)},
            {"pair", job.hands_on > Time{} ? Json(job.pair) : Json()}};
}

Json total_json(const PlannedTotal& total) {
    return {{"name", total.name},
            {"mass_g", total.mass.in(gram)},
            {"soaked_g", total.soaked.in(gram)},
            {"volume_ml", total.volume.in(millilitre)}};
}

Json let_down_json(const LetDown& wetter) {
    return {{"feel", wetter.feel},
            {"dry_mass_g", wetter.dry.in(gram)},
            {"take_g", wetter.take.in(gram)},
            {"water_g", wetter.water.in(gram)},
            {"water_p05_g", wetter.water_range.low.in(gram)},
            {"water_p95_g", wetter.water_range.high.in(gram)},
            {"wet_mass_g", wetter.wet_mass.in(gram)},
            {"wet_volume_ml", wetter.wet_volume.in(millilitre)}};
}

Json batch_json(const PlannedBatch& batch) {
    Json json{{"name", batch.name},
              {"feel", text_or_null(batch.feel)},
              {"dry_mass_g", batch.dry.in(gram)},
              {"water_g", batch.water.in(gram)},
              {"water_p05_g", batch.water_range.low.in(gram)},
              {"water_p95_g", batch.water_range.high.in(gram)},
              {"water_first_g", batch.water_first.in(gram)},
              {"water_rest_g", batch.water_rest.in(gram)},
              {"rest_minutes", batch.rest.in(minute)},
              {"wet_mass_g", batch.wet_mass.in(gram)},
              {"wet_volume_ml", batch.wet_volume.in(millilitre)},
              {"containers", batch.containers},
              {"kept_dry_g", batch.kept_dry.in(gram)},
              {"kept", kept_json(batch.kept)},
              {"parts", Json::array()},
              {"let_downs", Json::array()}};
    for (const PlannedTotal& part : batch.parts) json["parts"].push_back(total_json(part));
    for (const LetDown& wetter : batch.let_downs) json["let_downs"].push_back(let_down_json(wetter));
    return json;
}

Json soak_json_of(const PlannedSoak& soak) {
    return {{"name", soak.name},
            {"into", soak.into},
            {"dry_mass_g", soak.dry.in(gram)},
            {"water_to_pour_g", soak.pour.in(gram)},
            {"soak_minutes", soak.soak.in(minute)},
            {"stand_minutes", soak.stand.in(minute)},
            {"wet_mass_g", soak.wet.in(gram)},
            {"strokes", soak.strokes > 0 ? Json(soak.strokes) : Json()},
            {"for_the_hook", soak.for_the_hook}};
}

/// As a rule in words has it, and as numbers.
struct BreachAmount {
    Json& json;
    std::string key;
    void operator()(Mass mass) const { json[key + "_g"] = mass.in(gram); }
    void operator()(Volume volume) const { json[key + "_ml"] = volume.in(millilitre); }
};
std::string amount_words(const std::variant<Mass, Volume>& amount) {
    if (const Mass* mass = std::get_if<Mass>(&amount)) return number_text_within(mass->in(gram), 0.5) + " g";
    return number_text_within(std::get<Volume>(amount).in(millilitre), 0.5) + " ml";
}

Json breach_json(const PlanBreach& breach) {
    Json json{{"rule", breach.rule},
              {"of", breach.subject},
              {"limit", breach.limit ? Json(amount_words(*breach.limit)) : Json()},
              {"planned", amount_words(breach.planned)},
              {"limit_g", nullptr},
              {"limit_ml", nullptr},
              {"planned_g", nullptr},
              {"planned_ml", nullptr}};
    if (breach.limit) std::visit(BreachAmount{json, "limit"}, *breach.limit);
    std::visit(BreachAmount{json, "planned"}, breach.planned);
    return json;
}

Json cost_json_of(const StrategyCost& cost) {
    Json json{{"used_minor", cost.currency ? Json(cost.used_minor) : Json()},
              {"outlay_minor", cost.currency ? Json(cost.outlay_minor) : Json()},
              {"currency", cost.currency ? Json(cost.currency->code) : Json()},
              {"complete", cost.complete()},
              {"unpriced", cost.unpriced},
              {"no_price", Json::array()},
              {"packs", Json::array()}};
    for (const CostLine& line : cost.lines)
        if (std::find(cost.unpriced.begin(), cost.unpriced.end(), line.name) != cost.unpriced.end())
            json["no_price"].push_back(
                {{"name", line.name}, {"mass_g", line.need.in(gram)}, {"from_stock_g", line.from_stock.in(gram)}});
    for (const PackBought& bought : cost.packs)
        json["packs"].push_back({{"name", bought.name},
                                 {"size_g", bought.mass.in(gram)},
                                 {"count", bought.count},
                                 {"price_minor", bought.price_minor}});
    return json;
}

template <class Values, class ToJson>
Json array_of(const Values& values, ToJson&& to_json) {
    Json array = Json::array();
    for (const auto& value : values) array.push_back(to_json(value));
    return array;
}

Json advice_json(const PlanAdvice& advice) {
    return {{"text", advice.text}, {"reason", metric_words(advice.reason)}};
}

Json rest_put_ins_json(const RestPutIns& put_ins) {
    const Length* width = std::get_if<Length>(&put_ins.size);
    return {{"as", name_of(put_ins.form)},
            {"count", put_ins.count},
            {"diameter_mm", width ? Json(width->in(millimetre)) : Json()},
            {"size_ml", put_ins.each_volume.in(millilitre)},
            {"size_g", put_ins.each_mass.in(gram)},
            {"put_ins", put_ins.put_ins},
            {"first_minutes", put_ins.first.in(minute)},
            {"every_minutes", put_ins.gap.in(minute)},
            {"spare", !put_ins.planned}};
}

/// That of most put-ins, or nothing.
RestPutIns main_put_ins(const RestOfFeed& feed) {
    RestPutIns most;
    for (const RestPutIns& one : feed.then)
        if (one.put_ins > most.put_ins) most = one;
    return most;
}

Json rest_feed_json(const RestOfFeed& feed) {
    const RestPutIns main = main_put_ins(feed);
    return {{"of", feed.name},
            {"left_ml", feed.left.in(millilitre)},
            {"left_g", feed.left_mass.in(gram)},
            {"goes_in_ml", feed.goes_in.in(millilitre)},
            {"still_planned_ml", feed.still_planned.in(millilitre)},
            {"still_planned_g", feed.still_planned_mass.in(gram)},
            {"planned_put_ins", feed.planned_put_ins},
            {"top_up_ml", feed.top_up.in(millilitre)},
            {"top_up_as", feed.top_up > Volume{} ? Json(name_of(feed.top_up_as)) : Json()},
            {"ball_mm", feed.ball > Length{} ? Json(feed.ball.in(millimetre)) : Json()},
            {"put_ins", main.put_ins},
            {"each_ml", (main.put_ins > 0 ? main.count : 0) * main.each_volume.in(millilitre)},
            {"every_minutes", main.put_ins > 0 ? Json(main.gap.in(minute)) : Json()},
            {"then", array_of(feed.then, rest_put_ins_json)},
            {"home_ml", feed.home_left.in(millilitre)},
            {"home_g", feed.home.in(gram)}};
}

constexpr std::array<std::string_view, 3> bites_names{"steady", "slow", "none"};

}  // namespace

Json plan_json(const SessionPlan& plan) {
    Json json = json_record("plan", plan.warnings);
    json["strategy"] = plan.strategy;
    json["venue"] = text_or_null(plan.venue);
    json["start"] = plan.start ? Json(clock_text(*plan.start)) : Json();
    json["length_minutes"] = plan.length.in(minute);
    json["people"] = plan.people;
    json["sessions"] = plan.times;
    json["water_temp_c"] = plan.water.in_celsius();
    json["feeds"] = array_of(plan.put_ins, [&](const PlannedFeed& put_in) { return put_in_json(plan, put_in); });
    json["when_slow"] = array_of(plan.slow, slow_json);
    json["prep"] = array_of(plan.prep, [&](const PrepJob& job) { return job_json(plan, job); });
    json["begin_minute"] = plan.begin.in(minute);
    json["hands"] = plan.hands;
    json["travel_minutes"] = plan.travel.in(minute);
    json["hands_on_minutes"] = plan.hands_on.in(minute);
    json["totals"] = array_of(plan.totals, total_json);
    json["batches"] = array_of(plan.batches, batch_json);
    json["soaks"] = array_of(plan.soaks, soak_json_of);
    json["hookbaits"] = array_of(plan.hookbaits, [](const HookbaitNeed& hook) {
        return Json{{"name", hook.name}, {"count", hook.count}, {"mass_g", hook.mass.in(gram)}};
    });
    json["kept"] = kept_json(plan.kept);
    json["dry_mass_g"] = plan.dry.in(gram);
    json["wet_mass_g"] = plan.wet_mass.in(gram);
    json["wet_volume_ml"] = plan.wet_volume.in(millilitre);
    json["water_to_carry_g"] = plan.water_to_carry.in(gram);
    json["containers"] = plan.containers;
    json["hot_day"] = hot_day_json(plan);
    json["in_the_swim"] = array_of(plan.in_the_swim, [](const InTheSwim& at) {
        return Json{{"minute", at.at.in(minute)}, {"free_offerings", at.grains}, {"mass_g", at.mass.in(gram)}};
    });
    json["cost"] = cost_json_of(plan.cost);
    json["breaches"] = array_of(plan.breaches, breach_json);
    json["venue_rules"] = plan.venue_notes;
    json["advice"] = array_of(plan.advice, advice_json);
    json["cautions"] = plan.cautions;
    json["now"] = nullptr;
    add_learnt(plan.learnt, json);
    return json;
}

Json rest_json(const SessionPlan& plan, const RestOfSession& rest) {
    Json json = plan_json(plan);
    json["now"] = {{"minute", rest.now.in(minute)},
                   {"minutes_left", rest.left.in(minute)},
                   {"bites", bites_names[static_cast<std::size_t>(rest.bites)]},
                   {"put_in_now", array_of(rest.put_in_now, call_json)},
                   {"feeds", array_of(rest.feeds, rest_feed_json)},
                   {"advice", array_of(rest.advice, advice_json)}};
    return json;
}

}  // namespace baitwright
