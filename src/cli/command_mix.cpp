#include "cli/commands.h"

#include "answers/mix/answer_mix.h"
#include "cli/mix_flags.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/change_shed.h"
#include "library/named.h"
#include "questions/mix_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

/// Names in the warnings what is past its best, unless the booking will do so.
void limit_by_shed(const Arguments& arguments, const Named<Recipe>& named, Store& store, MixRequest& request,
                   std::vector<Warning>& warnings) {
    if (!arguments.has("--from-stock")) return;
    std::vector<Warning> past;
    request.target = with_places(named, [&] {
        return on_hand_in_shed(named.value, named.shelf(), store.shed(), request, *request.today, past);
    });
    if (!arguments.has("--book")) warnings = std::move(past);
}

/// An answer that is no is not booked: the bait will hardly be made so.
void book(const Arguments& arguments, Store& store, MixAnswer& answer, Date on) {
    if (!arguments.has("--book")) return;
    if (status_of(answer.warnings) == 0)
        book_mix(store, answer, on);
    else
        answer.warnings.push_back({"not-booked", "nothing was taken out of the shed, for the answer is no"});
}

CommandResult run_mix(const Arguments& arguments, const Surroundings& around) {
    MixRequest request = mix_request(arguments);
    request.today = around.today;
    const Date on = day_of(arguments, around);
    if (arguments.has("--on") && !arguments.has("--book"))
        throw UsageError("unfit-flag", "--on is the day of a booking", "add --book, or leave it out");
    const bool asks_shed = arguments.has("--from-stock") || arguments.has("--book");
    std::optional<Store> store;
    if (asks_shed) store.emplace(store_of(around));
    const std::unique_ptr<Shelf> library = asks_shed ? nullptr : open_library(around.library);
    const Named<Recipe> named = named_bait(arguments.words().front(), asks_shed ? *store : *library, BaitUse::wetted);
    std::vector<Warning> past;
    if (asks_shed) limit_by_shed(arguments, named, *store, request, past);
    MixAnswer answer = with_places(named, [&] { return answer_mix(named.shelf(), named.value, request); });
    answer.warnings.insert(answer.warnings.end(), past.begin(), past.end());
    if (asks_shed) book(arguments, *store, answer, on);
    return given(arguments, mix_reply(std::move(answer)));
}

}  // namespace

CommandSpec command_mix() {
    return {"mix",
            "scale a mix: what to weigh, how much water and when, what it costs",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
            mix_flags(),
            run_mix,
            R"(baitwright mix "silt bed" --wet-volume 3l
baitwright mix "silt bed" --balls 20x55mm --feel firm)"};
}

}  // namespace baitwright
