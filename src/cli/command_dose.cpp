#include "cli/commands.h"

#include "answers/mix/dose_amounts.h"
#include "answers/mix/dosed_name.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "questions/dose_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_dose(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::string& said = arguments.words().front();
    const std::string word = means_a_file(said) ? said : dosed_name(*shelf, said);
    DoseAnswer answer;
    if (!means_a_file(word) && shelf->find_ingredient(word)) {
        AdditiveRequest request = additive_request(arguments);
        request.additive = word;
        answer = dose_additive(*shelf, request);
    } else {
        refuse_additive_flags(arguments);
        const MixRequest request = mix_amount_request(arguments);
        const Named<Recipe> named = named_recipe(word, *shelf);
        answer = with_places(named, [&] { return dose_mix(named.shelf(), named.value, request); });
    }
    return given(arguments, dose_reply(answer));
}

}  // namespace

CommandSpec command_dose() {
    return {"dose",
            "how much of an additive: by its rate, its label, or as you dosed another bait",
            {{"WHAT", "a mix, for all its additives; or one additive, for a bait"}},
            {{"--amount", "AMOUNT", "of the bait: 500g, 2pt; of a mix its dry mass, or a volume of it wet"},
             {"--bait", "INGREDIENT", "what the additive goes on; a volume needs it"},
             {"--rate", "RATE", R"("25 ml per kg dry", "2 %" (default: the label's))"},
             {"--as", "DOSE", "as much as on another bait: \"15ml in 0.5pt of fishmeal micro pellet 2 mm\""},
             {"--water", "VOLUME", "what it is stirred into; tells the strength"},
             {"--feel", "FEEL", "of a mix"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_dose,
            R"(baitwright dose "sweet liquid" --amount 500g --rate "20 ml per kg dry"
baitwright dose "silt bed" --amount 1kg)"};
}

}  // namespace baitwright
