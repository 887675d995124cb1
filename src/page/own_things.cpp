#include "page/own_things.h"

#include <map>

#include "answers/mix/odd_mix.h"
#include "answers/money/price_answer.h"
#include "answers/shared/stale_prices.h"
#include "bait/caution.h"
#include "bait/ingredient_cautions.h"
#include "bait/price_book.h"
#include "bait/resolve_mix.h"
#include "files/library_text.h"
#include "page/json_words.h"
#include "page/own_bag.h"
#include "page/own_mix.h"
#include "page/shed_answers.h"
#include "quantities/fault.h"
#include "questions/price_question.h"
#include "report/entry_replies.h"
#include "report/price_report.h"

namespace baitwright {

namespace {

using Keys = std::map<std::string, std::string>;

/// A record's texts as flags of the command.
Arguments with_flags(const Json& request, const Arguments& arguments, const char* name, const Keys& keys) {
    std::vector<std::string> words = arguments.words();
    if (const std::string of = word_of(request, name); !of.empty()) words = {of};
    if (words.empty()) throw UsageError("missing-word", "which ingredient is it?", "name it");
    std::map<std::string, std::vector<std::string>> flags;
    for (const auto& [key, flag] : keys) {
        if (arguments.has(flag)) flags[flag] = arguments.values(flag);
        if (const std::string value = word_of(request, key); !value.empty()) flags[flag] = {value};
    }
    return {std::move(words), std::move(flags), arguments.all_usual()};
}

Json told_of(const Reply& reply) {
    return {{"status", reply.status}, {"told", told_json(reply.told())}};
}

Date day_told(const Json& request, Date today) {
    const std::string text = word_of(request, "on");
    return text.empty() ? today : flag_value("--on", [&] { return parse_date(text); });
}

/// What can hurt in it, and what is odd about it.
Json put_mix(OpenedBank& bank, const Json& request, const Arguments&) {
    const Recipe recipe = own_mix(request.at("recipe"), bank.here());
    const ResolvedMix mix = resolve(recipe, bank.here());
    std::vector<std::string> words, odd;
    for (const Ingredient* ingredient : ingredients_of(mix)) add_caution_words(*ingredient, words);
    for (const Warning& warning : oddities_of(mix, bank.here().feels())) odd.push_back(warning.message);
    bank.own().put(recipe);
    return {{"status", 0}, {"care", caution_sentences(words)}, {"odd", odd}};
}

Json mix_as_text(OpenedBank& bank, const Json& request, const Arguments&) {
    return {{"status", 0}, {"text", toml_text(bank.here().recipe(word_of(request, "recipe")))}};
}

Json put_measured(OpenedBank& bank, const Json& request, const Arguments& given) {
    const Arguments arguments = with_flags(request, given, "ingredient",
                                           {{"absorption", "--absorption"},
                                            {"slump", "--slump"},
                                            {"moisture", "--moisture"},
                                            {"vessel", "--vessel"},
                                            {"holds", "--holds"},
                                            {"how", "--how"},
                                            {"spread", "--spread"}});
    const Ingredient old = bank.here().ingredient(arguments.words().front());
    bank.own().put(measured_bag(old, arguments, day_told(request, bank.today)));
    return told_of(ingredient_reply(bank.here().ingredient(old.name)));
}

Json put_price(OpenedBank& bank, const Json& request, const Arguments& given) {
    const Arguments arguments =
        with_flags(request, given, "of", {{"pack", "--pack"}, {"price", "--is"}, {"shop", "--shop"}});
    Ingredient ingredient = bank.here().ingredient(arguments.words().front());
    if (!arguments.has("--is")) throw UsageError("no-price", "--is: what does a pack of it cost?", "for example £4.20");
    Pack told = priced_pack(arguments, ingredient, day_told(request, bank.today), pack_sizes_typed(ingredient));
    told.shop = arguments.value("--shop").value_or("");
    const PriceChange change = price_change(ingredient, told);
    bank.put_price(std::move(ingredient), told);
    return told_of(reply_of(change, price_change_told, price_change_json, price_change_rows));
}

Json forget_all(OpenedBank& bank, const Json&, const Arguments&) {
    bank.forget_own();
    return {{"status", 0}};
}

}  // namespace

std::optional<Json> own_thing(OpenedBank& bank, const std::string& what, const Json& request,
                              const Arguments& arguments) {
    using Take = Json (*)(OpenedBank&, const Json&, const Arguments&);
    static const std::map<std::string_view, Take> all{{"put", put_mix},           {"text", mix_as_text},
                                                      {"measured", put_measured}, {"price", put_price},
                                                      {"shed", take_shed},        {"anew", forget_all}};
    const auto found = all.find(what);
    if (found == all.end()) return std::nullopt;
    return found->second(bank, request, arguments);
}

}  // namespace baitwright
