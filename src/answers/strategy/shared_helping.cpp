#include "answers/strategy/shared_helping.h"

#include "answers/shared/take_out.h"
#include "bait/feed_feels.h"
#include "bait/recipe_names.h"
#include "bait/strategy_names.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// The shares of what is left of it.
double shares_in(const Feed& feed, const std::vector<std::string>& without) {
    double shares = 0;
    for (const FeedPart& part : feed.parts)
        if (!is_named(without, part.of)) shares += part.share;
    return shares;
}

FeedSize size_like(const FeedSize& whole, const HelpingPart& part) {
    if (std::holds_alternative<Mass>(whole)) return part.each.wet_mass * part.dry;
    return part.each.wet_volume * part.dry;
}

/// Fills the size with all of them: so much dry mass for each share that their wet masses or volumes add up to it.
void fill_together(std::vector<HelpingPart>& parts, const FeedSize& size, const std::vector<std::string>& without) {
    FedPerDry all{};
    for (const HelpingPart& part : parts) {
        const double shares = shares_in(part.feed, without);
        all.wet_mass = double(all.wet_mass) + shares * double(part.each.wet_mass);
        all.wet_volume += shares * part.each.wet_volume;
    }
    const Mass each_share = dry_mass_of(size, all);
    for (HelpingPart& part : parts) {
        part.dry = shares_in(part.feed, without) * each_share;
        part.feed.size = size_like(size, part);
    }
}

void refuse_unknown_feels(const Feed& feed, std::size_t number, const Shelf& shelf) {
    const std::vector<Feel> feels = shelf.feels();
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < feed.parts.size(); ++i)
        if (!feed.parts[i].feel.empty() && !find_feel(feels, feed.parts[i].feel))
            faults.push_back(unknown_feel(feed.parts[i].feel, shelf, feed_part_feel_subject(number, i + 1)));
    if (!faults.empty()) throw InputError(std::move(faults));
}

}  // namespace

std::vector<HelpingPart> helping_of(const Feed& feed, std::size_t number, const Shelf& shelf,
                                    const std::optional<std::string>& feel, const std::vector<std::string>& without) {
    const std::vector<Feed> feeds = feeds_by_feel(feed);
    if (feeds.size() > 1 && feed.form == FeedForm::ball)
        throw InputError({"unfit-feel", "a ball has one feel, and the parts of this one have several",
                          "give the feed one feel, or feed the parts in a cup", feed_feel_subject(number)});
    refuse_unknown_feels(feed, number, shelf);
    std::vector<HelpingPart> parts;
    parts.reserve(feeds.size());
    for (const Feed& some : feeds) {
        auto fed = fed_mix(some, number, shelf, feel, without);
        if (!fed) continue;
        const FedPerDry each = per_dry(*fed, numbers_of(fed->mix));
        parts.push_back({some, *std::move(fed), each, {}});
    }
    if (parts.size() == 1)
        parts.front().dry = dry_mass_of(feed.size, parts.front().each);
    else
        fill_together(parts, feed.size, without);
    return parts;
}

}  // namespace baitwright
