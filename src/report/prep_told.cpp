#include "report/prep_told.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/plan/last_in_tub.h"
#include "quantities/clock.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/session_moment.h"
#include "report/stirred_in_last.h"

namespace baitwright {

namespace {

std::string shown_water_of(Mass water) {
    return shown_water(jug_water(water));
}

/// "235 g of A", "85 ml on B and 90 ml on C": each portion, with the word between.
std::string job_portions_text(const PrepJob& job, std::string_view word, std::string (*shown)(Mass)) {
    std::vector<std::string> portions;
    portions.reserve(job.portions.size());
    for (const PrepPortion& portion : job.portions)
        portions.push_back(fmt::format("{} {} {}", shown(portion.amount), word, portion.of));
    return listed(portions);
}

std::string weighing_text(const PrepJob& job) {
    if (job.count == 1 || job.portions.size() > 1) return "weigh " + job_portions_text(job, "of", shown_weighed);
    return fmt::format("weigh the {} dry parts of {}, {} in all, and stir them together", job.count, job.subject,
                       shown_mass(scale_mass(job.amount)));
}

std::string job_text(const PrepJob& job) {
    switch (job.task) {
        case PrepTask::weigh:
            return weighing_text(job);
        case PrepTask::pump:
            return "pump " + job.subject + " in at least " + shown_water_of(job.amount) +
                   " of water, dyed if you dye them";
        case PrepTask::pour_on:
            return "pour " + job_portions_text(job, "on", shown_water_of);
        case PrepTask::drain:
            return "drain " + job.subject + "; let them stand, covered";
        case PrepTask::riddle:
            return "riddle " + job.subject;
        case PrepTask::second_wetting:
            return fmt::format("{}: add the rest by feel, about {}", job.subject, shown_water_of(job.amount));
        case PrepTask::let_down:
            return fmt::format("{}: take {} of it apart and let it down to {} with about {} of water", job.subject,
                               shown_mass(scale_mass(job.take)), job.feel, shown_water(jug_water(job.amount)));
        case PrepTask::shape:
            return job.count == 1 ? "shape the first ball of " + job.subject
                                  : fmt::format("shape the first {} balls of {}", job.count, job.subject);
        case PrepTask::travel:
            return "travel to the water, " + hours_and_minutes(job.waiting);
        case PrepTask::bring_to_hand:
            return "at the water: bring it all to hand and feel each mix again, a little water where it has dried; "
                   "drop nothing in yet";
        case PrepTask::thaw:
            return fmt::format("take {} of {} out of the freezer; thaw it covered in the cool overnight",
                               shown_mass(scale_mass(job.amount)), job.subject);
        case PrepTask::stir_in:
            return stirring_in_text(job);
        case PrepTask::first_wetting:
        case PrepTask::load:
            break;
    }
    return {};
}

/// ", with corn steep liquor in it": what of the mix is poured.
std::string with_liquids(const PlannedBatch& batch) {
    std::vector<std::string> liquids;
    for (const PlannedTotal& part : batch.parts)
        if (part.liquid) liquids.push_back(part.name);
    return liquids.empty() ? std::string() : ", with " + listed(liquids) + " in it";
}

std::string first_wetting_text(const SessionPlan& plan, const PrepJob& job) {
    if (!(job.amount > 0.5 * gram)) return job.subject + ": no water to pour; stir in what is wet already";
    const auto batch = std::find_if(plan.batches.begin(), plan.batches.end(),
                                    [&](const PlannedBatch& one) { return one.name == job.subject; });
    const std::string liquids = batch == plan.batches.end() ? std::string() : with_liquids(*batch);
    if (batch != plan.batches.end() && batch->kept_dry > Mass{})
        return fmt::format("{}: keep {} dry, stir the first {} of water{} into the rest", job.subject,
                           shown_mass(scale_mass(kept_meal(*batch))), shown_water_of(job.amount),
                           liquids.empty() ? "" : liquids + ",");
    return fmt::format("{}: stir in the first {} of water{}", job.subject, shown_water_of(job.amount), liquids);
}

std::string load_text(const SessionPlan& plan) {
    return plan.travel > Time{} ? "load it all up, covered: nothing is left to make"
                                : "bring it all to hand; drop nothing in yet";
}

std::string text_in_plan(const SessionPlan& plan, const PrepJob& job) {
    if (job.task == PrepTask::load) return load_text(plan);
    return job.task == PrepTask::first_wetting ? first_wetting_text(plan, job) : job_text(job);
}

std::vector<PrepJob> jobs_of(const SessionPlan& plan, PrepJob::When when) {
    std::vector<PrepJob> jobs;
    for (const PrepJob& job : plan.prep)
        if (job.when == when) jobs.push_back(job);
    return jobs;
}

bool is_by_several(const std::vector<PrepJob>& jobs) {
    return std::any_of(jobs.begin(), jobs.end(), [&](const PrepJob& job) { return job.pair != jobs.front().pair; });
}

std::string hands_text(const PrepJob& job) {
    if (!(job.hands_on > Time{})) return {};
    return fmt::format("{:.0f} min", std::max(1.0, std::ceil(job.hands_on.in(minute)-1e-9)));
}

/// More than a day before the day: under no heading is that plain.
bool is_days_before(const SessionPlan& plan, const PrepJob& job) {
    return *plan.start + std::round(job.at.in(minute)) < -24 * 60;
}

using JobCells = std::vector<std::string>;

/// When, how long for the hands, whose where several work at once. The evening has moments by the clock alone.
std::vector<JobCells> job_cells_of(const SessionPlan& plan, const std::vector<PrepJob>& jobs) {
    const bool on_the_day = jobs.front().when == PrepJob::When::on_the_day, whose = is_by_several(jobs);
    std::vector<JobCells> rows{{"hands"}};
    if (plan.start || on_the_day) rows.front().insert(rows.front().begin(), plan.start ? "clock" : "before");
    if (whose) rows.front().emplace_back("pair");
    rows.reserve(jobs.size() + 1);
    for (const PrepJob& job : jobs) {
        JobCells cells;
        if (on_the_day && (!plan.start || is_days_before(plan, job)))
            cells.push_back(moment_before(plan, job.at));
        else if (plan.start)
            cells.push_back(session_moment(plan, job.at));
        cells.push_back(hands_text(job));
        if (whose) cells.push_back(std::to_string(job.pair));
        rows.push_back(std::move(cells));
    }
    return rows;
}

/// "1 h 5 min" and "55 min" end below each other.
void align_moments(std::vector<JobCells>& rows) {
    std::size_t widest = 0;
    for (const JobCells& cells : rows) widest = std::max(widest, cells.front().size());
    for (JobCells& cells : rows) cells.front().insert(0, widest - cells.front().size(), ' ');
}

/// Without a clock nobody knows where midnight is.
bool is_on_day(const SessionPlan& plan, const PrepJob& job) {
    return !plan.start || *plan.start + std::round(job.at.in(minute)) >= 0;
}

void tell_jobs(Told& told, const SessionPlan& plan, const std::string& heading, const std::vector<PrepJob>& jobs) {
    if (jobs.empty()) return;
    told.heading(heading);
    told.gap();
    std::vector<JobCells> rows = job_cells_of(plan, jobs);
    align_moments(rows);
    told.row(std::move(rows.front()), "do this");
    for (std::size_t i = 0; i < jobs.size(); ++i) told.row(std::move(rows[i + 1]), text_in_plan(plan, jobs[i]));
    told.gap();
}

bool works_the_evening_before(const SessionPlan& plan) {
    return std::any_of(plan.prep.begin(), plan.prep.end(), [](const PrepJob& job) {
        return job.when == PrepJob::When::evening_before && job.hands_on > Time{};
    });
}

std::string begin_text(const SessionPlan& plan) {
    const std::string before = hours_and_minutes(Time{} - plan.begin) + " before the start";
    std::string text = plan.start
                           ? fmt::format("Begin by {}, {}, at the latest", moment_before(plan, plan.begin), before)
                           : fmt::format("Begin {} at the latest", before);
    if (plan.travel > Time{}) text += "; " + hours_and_minutes(plan.travel) + " of that is the way to the water";
    const std::string_view counting = works_the_evening_before(plan) ? ", counting the evening before" : "";
    if (plan.hands > 1)
        return text + fmt::format(". {} pairs of hands share {} of work{}.", plan.hands, work_text(plan), counting);
    return text + fmt::format(". Your hands are busy for {} in all{}.", work_text(plan), counting);
}

}  // namespace

Told prep_told(const SessionPlan& plan) {
    Told told;
    tell_jobs(told, plan, "The evening before", jobs_of(plan, PrepJob::When::evening_before));
    const std::vector<PrepJob> jobs = jobs_of(plan, PrepJob::When::on_the_day);
    const auto midnight =
        std::find_if(jobs.begin(), jobs.end(), [&](const PrepJob& job) { return is_on_day(plan, job); });
    tell_jobs(told, plan, "Before midnight", {jobs.begin(), midnight});
    tell_jobs(told, plan, "On the day", {midnight, jobs.end()});
    told.line("Begin", begin_text(plan));
    return told;
}

}  // namespace baitwright
