#include "answers/strategy/unroll_strategy.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "answers/pellets/soak_amounts.h"
#include "answers/shared/wanted_feel.h"
#include "answers/strategy/feed_times.h"
#include "answers/strategy/kept_in_feeds.h"
#include "answers/strategy/named_in_strategy.h"
#include "answers/strategy/put_in_times.h"
#include "answers/strategy/shared_helping.h"
#include "bait/amount.h"
#include "bait/caution.h"
#include "bait/feed_order.h"
#include "bait/free_offerings.h"
#include "bait/ingredient_cautions.h"
#include "bait/raw_seed.h"
#include "bait/strategy_names.h"
#include "bait/suggesting_shelf.h"
#include "quantities/fault.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

void check_request(const StrategyRequest& request) {
    if (request.length && !(*request.length >= 1.0 * minute && *request.length <= 24.0 * hour))
        throw UsageError("out-of-range", "a session lasts from 1 min to 24 h", "for example --length 3h");
    if (request.people < 1 || request.people > 1000)
        throw UsageError("out-of-range", "the number of people must be from 1 to 1000", "for example --people 4");
    if (request.times < 1 || request.times > 1000)
        throw UsageError("out-of-range", "a strategy is reckoned for 1 to 1000 sessions",
                         "for example \"open carpet=3\"");
    if (!(request.reused >= 0 && request.reused <= 0.5))
        throw UsageError("out-of-range", "at most half of a mix can come from the freezer each time",
                         "so nothing is frozen twice; for example --reused-frozen 50%");
    if (request.reused > 0 && request.times == 1)
        throw UsageError("unfit-flag", "frozen mix is used at the next session, and there is only one",
                         "say how many there are, as in \"open carpet=2\"");
}

/// Works one strategy out, keeping every fault for the end.
class Unroller {
public:
    Unroller(const Shelf& shelf, const Strategy& strategy, const StrategyRequest& request)
        : shelf_(shelf), suggesting_(shelf), strategy_(strategy), request_(request) {
        result_.name = strategy.name;
        result_.length = request.length.value_or(strategy.length);
        result_.people = request.people;
        result_.times = request.times;
        result_.spare = strategy.spare;
    }

    UnrolledStrategy unroll() {
        for (const std::string& word : request_.without) leave_out(word);
        if (request_.feel)
            static_cast<void>(wanted_feel(shelf_.feels(), {}, request_.feel));  // once, with no feed to blame
        if (std::vector<Fault> order = feed_order_faults(strategy_); !order.empty()) throw InputError(std::move(order));
        for (std::size_t i = 0; i < strategy_.feeds.size(); ++i) guard([&] { add_feed(i); });
        for (std::size_t i = 0; i < strategy_.hookbaits.size(); ++i) guard([&] { add_hookbait(i); });
        if (!faults_.empty()) throw InputError(std::move(faults_));
        if (result_.feeds.empty() && result_.hookbaits.empty())
            throw UsageError("nothing-left", "nothing is left to feed in '" + strategy_.name + "'",
                             "leave less out, or make the session longer");
        sort_stably(result_.put_ins.begin(), result_.put_ins.end(),
                    [](const PutIn& a, const PutIn& b) { return a.at < b.at; });
        use_kept(result_.feeds, {shelf_, strategy_, request_, without_});
        add_up();
        return std::move(result_);
    }

private:
    template <class Work>
    void guard(Work&& work) {
        try {
            work();
        } catch (const InputError& error) {
            faults_.insert(faults_.end(), error.faults().begin(), error.faults().end());
        }
    }

    /// How many times as much as one angler feeds in one session, the spare in it.
    [[nodiscard]] double all_of(const FedMix& fed) const {
        const double fresh = fed.feel.empty() ? request_.times : 1 + (request_.times - 1) * (1 - request_.reused);
        return request_.people * fresh * (1 + strategy_.spare);
    }

    void add_feed(std::size_t written) {
        const Feed& feed = strategy_.feeds[written];
        const FeedTimes times = feed_times(strategy_, written, result_.length);
        std::vector<HelpingPart> helping =
            helping_of(feed, written + 1, suggesting_.after(faults_.size()), request_.feel, without_);
        if (!(times.count() > 0)) return;
        for (HelpingPart& part : helping) add_part(part, times, written);
    }

    void add_part(HelpingPart& part, const FeedTimes& times, std::size_t written) {
        if (static_cast<double>(result_.put_ins.size() + times.moments.size()) > most_put_ins)
            throw InputError({"too-many-put-ins", "all feeds together would go in more than 20,000 times",
                              "make the gaps longer, or leave feeds out", feed_subject(written + 1)});
        add_put_ins(part.feed, times.moments, part.each.wet_volume * part.dry, part.each.wet_mass * part.dry);
        FeedNeed need;
        need.written = written;
        need.name = part.fed.mix.name;
        need.form = part.feed.form;
        need.size = part.feed.size;
        need.count = part.feed.count;
        need.put_ins = static_cast<std::size_t>(std::ceil(times.count()));
        need.slow_times = times.slow;
        need.slow_from = part.feed.when.from;
        need.slow_until = part.feed.when.until;
        need.portions = times.count() * part.feed.count * all_of(part.fed);
        need.fed = std::move(part.fed);
        fill(need, part.each, need.portions * part.dry);
        if (part.each.too_wet)
            result_.warnings.push_back({"too-wet", "the liquids in " + need.name + " are more than the feel '" +
                                                       need.fed.feel + "' asks for; it is reckoned as wet as it is"});
        result_.feeds.push_back(std::move(need));
    }

    void add_put_ins(const Feed& feed, const std::vector<Time>& moments, Volume volume, Mass mass) {
        for (const Time at : moments)
            result_.put_ins.push_back({at, result_.feeds.size(), feed.form, feed.count, volume, mass,
                                       feed.count * volume, feed.count * mass});
    }

    void add_hookbait(std::size_t i) {
        const Hookbait& hookbait = strategy_.hookbaits[i];
        const std::string subject = hookbait_subject(i + 1);
        const auto ingredient = shelf_.find_ingredient(hookbait.of);
        if (!ingredient) throw InputError(unknown_hookbait(hookbait.of, subject, suggesting_.after(faults_.size())));
        if (is_left_out(ingredient->name)) return;
        if (!is_free_offering(ingredient->kind))
            throw InputError(
                {"unfit-hookbait",
                 "'" + ingredient->name + "' is a " + std::string(name_of(ingredient->kind)) + ", nothing for a hook",
                 "hookbaits are pellets, expanders, seeds and live or cooked feed", subject});
        if (is_raw_seed(*ingredient))
            throw InputError(raw_seed_fault(*ingredient, suggesting_.after(faults_.size()), subject));
        const double everyone = double(request_.people) * request_.times;
        HookbaitNeed need{ingredient->name, 0, {}, {}};
        const double grains_a_kilogram = free_offerings_in(*ingredient, 1.0 * kilogram);
        if (const BitesPerHour* bites = std::get_if<BitesPerHour>(&hookbait.amount)) {
            const double wanted =
                bites->bites * result_.length.in(hour)*pellets_per_bite * (1 + strategy_.spare) * everyone;
            need.count = std::ceil(wanted - 1e-9);
            need.mass = need.count / grains_a_kilogram * kilogram;
        } else {
            const Mass* mass = std::get_if<Mass>(&hookbait.amount);
            need.mass = everyone * (mass ? *mass : std::get<Volume>(hookbait.amount) * measured_density(*ingredient));
            need.count = need.mass.in(kilogram)*grains_a_kilogram;
        }
        need.volume = need.mass / measured_density(*ingredient);
        hooks_.push_back({*ingredient, need.mass, {}});
        result_.hookbaits.push_back(std::move(need));
    }

    [[nodiscard]] bool is_left_out(const std::string& name) const {
        return std::find(without_.begin(), without_.end(), name) != without_.end();
    }

    void leave_out(const std::string& word) {
        const std::set<std::string> names = names_in(strategy_, shelf_);
        if (request_.absent == StrategyRequest::Absent::refused)
            without_.push_back(named_in(word, names, "'" + strategy_.name + "' feeds"));
        else if (const auto name = exactly_among(word, names))
            without_.push_back(*name);
    }

    void add_up() {
        std::vector<std::string> words;
        for (const FeedNeed& feed : result_.feeds) {
            result_.dry += feed.dry;
            result_.wet_mass += feed.wet_mass;
            result_.wet_volume += feed.wet_volume;
            result_.water += feed.water;
            result_.soak_water += feed.soak_water;
            result_.free_offerings += feed.free_offerings;
            for (const IngredientNeed& need : feed.ingredients) add_need(result_.totals, need);
            for (const KeptUse& use : feed.kept) add_use(result_.kept, use);
        }
        for (const IngredientNeed& hook : hooks_) add_need(result_.totals, hook);
        for (const IngredientNeed& need : result_.totals) add_caution_words(need.ingredient, words);
        result_.cautions = caution_sentences(words);
    }

    const Shelf& shelf_;
    const SuggestingShelf suggesting_;
    const Strategy& strategy_;
    const StrategyRequest& request_;
    UnrolledStrategy result_;
    std::vector<IngredientNeed> hooks_;
    std::vector<std::string> without_;  // as they are called on the shelf
    std::vector<Fault> faults_;
};

}  // namespace

UnrolledStrategy unroll_strategy(const Shelf& shelf, const Strategy& strategy, const StrategyRequest& request) {
    check_request(request);
    return Unroller(shelf, strategy, request).unroll();
}

}  // namespace baitwright
