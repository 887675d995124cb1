#include "questions/mix_targets.h"

#include <fmt/format.h>

#include <algorithm>

#include "answers/plan/plan_request.h"
#include "quantities/in_quotes.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// The cups and pots of the person's usual kit, or its feeders.
std::vector<KitItem> usual_vessels(const Arguments& arguments, bool feeders) {
    std::vector<KitItem> found;
    for (const std::string& text : arguments.usual_values("kit")) {
        KitItem item = parse_kit(text);
        const bool cup = item.kind == KitItem::Kind::cup || item.kind == KitItem::Kind::pot;
        if (feeders ? item.kind == KitItem::Kind::feeder : cup) found.push_back(std::move(item));
    }
    return found;
}

[[noreturn]] void ask_for_size(const std::string& count, const char* flag, const std::string& called,
                               const std::string& usual_ones, const char* size) {
    const std::string which = usual_ones.empty() ? "" : "the usual ones are " + usual_ones + "; ";
    throw InputError("no-size", fmt::format("how large is a {}?", called),
                     fmt::format("{}type {} {}x{}", which, flag, trimmed(count), size));
}

/// "4" of the one cup, pot or feeder that the person always uses.
Vessels vessels_alone(const std::string& count, const std::string& called, const Arguments& arguments) {
    const bool feeders = called == "feeder";
    const int number = parse_count(count);
    const std::vector<KitItem> usual = usual_vessels(arguments, feeders);
    if (usual.size() == 1) arguments.heed_usual(feeders ? "the size of --feeders" : "the size of --cups", "kit");
    if (usual.size() == 1) return {number, usual.front().size, called};
    std::string names;
    for (const KitItem& item : usual) names += (names.empty() ? "" : ", ") + item.name;
    if (names.empty() && !feeders) names = vessel_size_names();
    ask_for_size(count, feeders ? "--feeders" : "--cups", called, names, feeders ? "30ml" : "250ml");
}

Vessels vessels(const std::string& text, std::string called, const Arguments& arguments) {
    if (is_bare_number(text)) return vessels_alone(text, called, arguments);
    const CountedSize counted = parse_counted_size(text);
    return {counted.count, in_range(parse_vessel_size(counted.size)), std::move(called)};
}

Balls balls(const std::string& text) {
    if (is_bare_number(text)) {
        parse_count(text);
        ask_for_size(text, "--balls", "ball", ball_size_names(), "55mm");
    }
    const CountedSize counted = parse_counted_size(text);
    return {counted.count, in_range(parse_ball_size(counted.size))};
}

TargetAtFeel without_feel(const std::string& flag, const std::string& text, const Arguments& arguments) {
    if (flag == "--balls") return {balls(text), std::nullopt};
    return {vessels(text, flag == "--cups" ? "cup" : "feeder", arguments), std::nullopt};
}

/// Whether "soft" of "4 soft", or of "2x250ml soft", may be a feel: of a count alone not "x 250", which is a slip.
bool may_be_feel(const std::string& before, const std::string& words) {
    if (words.empty()) return false;
    return !is_bare_number(before) || std::string_view("xX*0123456789").find(words.front()) == std::string_view::npos;
}

/// One of them, where its last words are a feel: "2x250ml soft". Where it cannot be read either way, what is wrong is
/// told of the whole.
TargetAtFeel target_with_feel(const std::string& flag, const std::string& text, const Arguments& arguments) {
    try {
        return without_feel(flag, text, arguments);
    } catch (const InputError&) {
        for (auto blank = text.rfind(' '); blank != std::string::npos && blank > 0;
             blank = text.rfind(' ', blank - 1)) {
            const std::string before(trimmed(text.substr(0, blank))), words(trimmed(text.substr(blank)));
            if (!may_be_feel(before, words)) continue;
            try {
                TargetAtFeel target = without_feel(flag, before, arguments);
                target.feel = words;
                return target;
            } catch (const InputError&) {  // a word of the size
            }
        }
        throw;
    }
}

bool is_digit_at(const std::string& text, std::size_t at) {
    return at < text.size() && text[at] >= '0' && text[at] <= '9';
}

/// The items of a list with commas; "1,5" is no list but a slip that its reader tells.
std::vector<std::string> listed_items(const std::string& text) {
    std::vector<std::string> items(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool between_digits = i > 0 && is_digit_at(text, i - 1) && is_digit_at(text, i + 1);
        if (text[i] == ',' && !between_digits)
            items.emplace_back();
        else
            items.back() += text[i];
    }
    for (std::string& item : items) item = std::string(trimmed(item));
    if (items.size() > 1 && std::any_of(items.begin(), items.end(), [](const auto& item) { return item.empty(); }))
        throw InputError("empty-item", in_quotes(text) + " has nothing on one side of a comma",
                         "put something between the commas, or leave one out");
    return items;
}

std::string feels_in_words(std::size_t count) {
    return count == 1 ? "1 feel" : fmt::format("{} feels", count);
}

[[noreturn]] void refuse_feels(std::size_t feels, std::size_t open, std::size_t targets) {
    if (open == 0)
        throw UsageError("unequal-feels",
                         targets == 1 ? "--feel: the feel is said twice, with the size too"
                                      : "--feel: all of them say their own feel already",
                         "leave --feel out");
    throw UsageError("unequal-feels",
                     fmt::format("--feel: {} for {}{}", feels_in_words(feels), open,
                                 open == targets ? (open == 1 ? " target" : " targets")
                                 : open == 1     ? " that says none of its own"
                                                 : " that say none of their own"),
                     "give one feel for all of them, or one for each in the order typed, as in --feel soft,firm");
}

/// Gives those that say no feel of their own that of --feel.
void give_feels(const Arguments& arguments, std::vector<TargetAtFeel>& targets) {
    const auto text = arguments.value("--feel");
    if (!text) return;
    const std::vector<std::string> feels = flag_value("--feel", [&] { return listed_items(*text); });
    std::vector<TargetAtFeel*> open;
    open.reserve(targets.size());
    for (TargetAtFeel& target : targets)
        if (!target.feel) open.push_back(&target);
    if (open.empty() || (feels.size() > 1 && feels.size() != open.size()))
        refuse_feels(feels.size(), open.size(), targets.size());
    for (std::size_t i = 0; i < open.size(); ++i) open[i]->feel = feels[feels.size() == 1 ? 0 : i];
}

}  // namespace

std::vector<TargetAtFeel> typed_targets(const Arguments& arguments) {
    std::vector<TargetAtFeel> targets;
    for (const auto& [flag, value] : arguments.in_typed_order({portion_flags.begin(), portion_flags.end()}))
        flag_value(flag, [&, &flag = flag, &value = value] {
            for (const std::string& item : listed_items(value))
                targets.push_back(target_with_feel(flag, item, arguments));
        });
    if (!targets.empty()) give_feels(arguments, targets);
    return targets;
}

}  // namespace baitwright
