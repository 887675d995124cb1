// What is live, cooked or thawed in all we ship: weighed on the day, and stirred in after the last riddling. Common
// practice, no source.
#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "answers/money/cost_strategy.h"
#include "answers/plan/plan_session.h"
#include "library/open_library.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/mix_steps.h"
#include "report/replies.h"
#include "report/session_sheet.h"

using namespace baitwright;

namespace {

const MemoryShelf& fresh_feed_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

bool is_fresh(const std::string& name) {
    const std::optional<Ingredient> found = fresh_feed_shelf().find_ingredient(name);
    return found && is_fresh_feed(found->kind);
}

SessionPlan plan_of(const std::string& strategy, std::optional<int> start) {
    PlanRequest request;
    request.start = start;
    return plan_session(fresh_feed_shelf(), fresh_feed_shelf().strategy(strategy), {}, request);
}

const PrepJob* job_on(const SessionPlan& plan, PrepTask task, const std::string& of) {
    const auto found = std::find_if(plan.prep.begin(), plan.prep.end(),
                                    [&](const PrepJob& job) { return job.task == task && job.subject == of; });
    return found == plan.prep.end() ? nullptr : &*found;
}

Mass dry_of_batch(const PlannedBatch& batch) {
    Mass dry;
    for (const PlannedTotal& part : batch.parts)
        if (!part.liquid && !is_fresh(part.name) &&
            std::none_of(batch.doses.begin(), batch.doses.end(),
                         [&](std::size_t dose) { return &batch.parts[dose] == &part; }))
            dry += part.mass - part.soaked;
    return dry;
}

/// That feed is stirred in once, all of it, when there is nothing left to riddle or to pour but to let it down.
void check_stirred_in(const SessionPlan& plan, const PlannedBatch& batch, const PlannedTotal& feed) {
    CAPTURE(batch.name, feed.name);
    const PrepJob *stirred = job_on(plan, PrepTask::stir_in, batch.name),
                  *riddled = job_on(plan, PrepTask::riddle, batch.name),
                  *second = job_on(plan, PrepTask::second_wetting, batch.name),
                  *weighed = job_on(plan, PrepTask::weigh, batch.name);
    REQUIRE((stirred && riddled && second && weighed));
    CHECK(stirred->when == PrepJob::When::on_the_day);
    CHECK(stirred->at >= riddled->at + riddled->hands_on);
    CHECK(stirred->at >= second->at + second->hands_on);
    const auto portion = std::find_if(stirred->portions.begin(), stirred->portions.end(),
                                      [&](const PrepPortion& one) { return one.of == feed.name; });
    REQUIRE(portion != stirred->portions.end());
    CHECK(portion->amount.in(gram) == Approx(feed.mass.in(gram)));
    CHECK(weighed->amount.in(gram) == Approx(dry_of_batch(batch).in(gram)));
}

std::size_t place_of(const std::vector<std::string>& steps, const std::string& words, bool last) {
    std::size_t place = steps.size();
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].find(words) != std::string::npos && (last || place == steps.size())) place = i;
    return place;
}

}  // namespace

TEST_CASE("no evening job of a shipped strategy's plan names a part that is live, cooked or thawed") {
    for (const std::string& name : fresh_feed_shelf().strategy_names())
        for (const std::optional<int> start : {std::optional<int>(570), std::optional<int>()}) {
            const SessionPlan plan = plan_of(name, start);
            CAPTURE(name);
            for (const PrepJob& job : plan.prep) {
                if (job.when != PrepJob::When::evening_before) continue;
                for (const PrepPortion& portion : job.portions) CHECK_FALSE(is_fresh(portion.of));
            }
        }
}

TEST_CASE("in a shipped strategy's plan live and cooked feed of a wetted tub is stirred in after its last riddling") {
    int checked = 0;
    for (const std::string& name : fresh_feed_shelf().strategy_names()) {
        const SessionPlan plan = plan_of(name, 570);
        CAPTURE(name);
        for (const PlannedBatch& batch : plan.batches)
            for (const PlannedTotal& part : batch.parts)
                if (!batch.feel.empty() && is_fresh(part.name)) {
                    check_stirred_in(plan, batch, part);
                    ++checked;
                }
        Time sum;
        for (const PrepJob& job : plan.prep) sum += job.hands_on;
        CHECK(sum.in(minute) == Approx(plan.hands_on.in(minute)));
    }
    CHECK(checked >= 5);
}

TEST_CASE("in each shipped mix with live or cooked feed the step that stirs it in comes after the last riddle") {
    int checked = 0;
    for (const std::string& name : fresh_feed_shelf().recipe_names()) {
        for (const Mass dry : {1.0 * kilogram, 9.0 * kilogram}) {
            MixRequest request;
            request.target = DryMass{dry};
            const MixAnswer answer = answer_mix(fresh_feed_shelf(), fresh_feed_shelf().recipe(name), request);
            const std::vector<std::string> steps = mix_steps(answer);
            const std::size_t riddle = place_of(steps, "through a riddle", true);
            for (const PartAnswer& part : answer.parts) {
                if (!is_fresh(part.name)) continue;
                CAPTURE(name, part.name);
                REQUIRE(riddle < steps.size());
                CHECK(place_of(steps, part.name, false) > riddle);
                CHECK(place_of(steps, part.name, false) < steps.size());
                ++checked;
            }
        }
    }
    CHECK(checked >= 8);
}

TEST_CASE("the sheet of a shipped strategy says in the plan's words what goes in last") {
    for (const std::string& name : fresh_feed_shelf().strategy_names()) {
        const SessionPlan plan = plan_of(name, 570);
        const CardSheet sheet = session_sheet(plan, Date{});
        const std::string told = plan_reply(plan).told().text();
        std::string words;
        for (const CardSection& section : sheet.sections)
            for (const CardRow& row : section.rows) words += row.what + "\n";
        CAPTURE(name);
        const bool any = std::any_of(plan.prep.begin(), plan.prep.end(),
                                     [](const PrepJob& job) { return job.task == PrepTask::stir_in; });
        CHECK((words.find("at the very end") != std::string::npos) == any);
        CHECK((words.find("(goes in last)") != std::string::npos) == any);
        CHECK((told.find("very end") != std::string::npos || told.find("very\n") != std::string::npos) == any);
        CHECK(told.find(" 0 ml of water") == std::string::npos);
    }
}

// What was bought is what is taken and what is left: to the gram; below ten grams to a tenth, where what is left is
// below a hundred.
TEST_CASE("in the costs of each shipped strategy what is taken and what is left come to what is bought") {
    int checked = 0;
    for (const std::string& name : fresh_feed_shelf().strategy_names()) {
        const Reply reply = cost_reply(cost_strategy(fresh_feed_shelf(), fresh_feed_shelf().strategy(name), {}, {}));
        const Told told = reply.told();
        for (const Told::Piece& piece : told.pieces()) {
            if (piece.kind != Told::Piece::Kind::table || piece.table.rows().front().front() != "take") continue;
            for (const std::vector<std::string>& row : piece.table.rows()) {
                if (row.size() < 6 || row[3].find(" x ") == std::string::npos) continue;
                if (row[3].find('+') != std::string::npos || row[3].back() != 'g') continue;
                CAPTURE(name, row[0], row[1], row[3], row[5]);
                const double bought = std::stod(row[3]) * parse<Mass>(row[3].substr(row[3].find(" x ") + 3)).in(gram);
                const double taken = parse<Mass>(row[1]).in(gram),
                             left = row[5].empty() ? 0.0 : parse<Mass>(row[5]).in(gram);
                CHECK(taken + left == Approx(bought).epsilon(0).margin(taken < 10 && left >= 100 ? 0.5 : 1e-6));
                if (taken < 10) ++checked;
            }
        }
    }
    CHECK(checked >= 2);
}
