#include <catch2/catch.hpp>

#include "cli/program_run.h"
#include "opened_page.h"

using namespace baitwright;

namespace {

Json own_mix_request(Json parts, const char* feel = "firm") {
    return {{"ask", "put"}, {"recipe", {{"name", "my silt"}, {"feel", feel}, {"parts", std::move(parts)}}}};
}

Json two_parts() {
    return Json::array({{{"of", "brown crumb"}, {"share", 3}}, {{"of", "ground hemp, toasted"}, {"share", "1"}}});
}

Json mix_of(Bank& bank, const char* name) {
    return bank.ask({{"ask", "mix"}, {"words", {name}}, {"flags", {{"--dry-mass", {"1kg"}}}}, {"give", {"json"}}});
}

std::string first_field(const Json& reply) {
    return reply.at("errors")[0].at("field").text();
}

class OpenBank {
public:
    OpenBank() { opened_page::open(bank, *shelf_, {"open carpet"}, program_run::today); }
    Bank bank;

private:
    std::unique_ptr<Shelf> shelf_ = shipped_shelf();
};

}  // namespace

TEST_CASE("a mix made on the phone is on the shelf for all later questions, and its text is taken by recipe add") {
    OpenBank phone;
    const Json put = phone.bank.ask(own_mix_request(two_parts()));
    REQUIRE_FALSE(put.contains("errors"));
    CHECK_FALSE(put["mixes"].empty());
    CHECK_FALSE(put["care"].empty());  // dust, gluten
    const std::string text = phone.bank.ask({{"ask", "text"}, {"recipe", "my silt"}})["text"].text();
    const program_run::Folder folder;
    program_run::write(folder.path() / "mine.toml", text);
    REQUIRE(program_run::run(folder.path(), "recipe add mine.toml").status == 0);
    const auto ran = program_run::run(folder.path(), "mix 'my silt' --dry-mass 1kg --json");
    REQUIRE(ran.status == 0);
    CHECK(json_text(mix_of(phone.bank, "my silt")["json"]) == json_text(*parsed_json(ran.output)));
}

TEST_CASE("what is wrong with a mix of the phone is told piece by piece, and nothing is put") {
    OpenBank phone;
    const Json part{{"of", "brown crumb"}, {"share", 1}};
    const auto field = [&](Json parts) { return first_field(phone.bank.ask(own_mix_request(std::move(parts)))); };
    CHECK(field(Json::array({part, {{"of", "brawn crumb"}, {"share", 1}}})) == "part 2");
    CHECK(field(Json::array({part, {{"of", "maize meal"}}})) == "part 2");
    CHECK(field(Json::array({{{"of", "maize meal"}, {"mass", "400 miles"}}})) == "part 1");
    CHECK(field(Json::array({{{"of", "maize meal"}, {"share", -1}}, part})) == "part 1");
    CHECK(first_field(phone.bank.ask(own_mix_request(Json::array({part}), "runny"))) == "feel");
    const Json many = phone.bank.ask(
        own_mix_request(Json::array({{{"of", "no such"}, {"share", 1}}, {{"of", "nor such"}, {"mass", "5"}}})));
    CHECK(many["errors"].size() >= 2);
    CHECK(phone.bank.ask(own_mix_request(Json::array()))["errors"][0]["code"] == "empty-mix");
    Json taken = own_mix_request(two_parts());
    taken["recipe"]["name"] = "Brown Crumb";
    CHECK(phone.bank.ask(taken)["errors"][0]["code"] == "name-taken");
    CHECK(mix_of(phone.bank, "my silt").contains("errors"));
}

TEST_CASE("raw pulses are refused at their place in a mix of the phone, and are told how to be cooked") {
    OpenBank phone;
    const auto put = [&](const char* name) {
        return phone.bank.ask(
            own_mix_request(Json::array({{{"of", "brown crumb"}, {"share", 1}}, {{"of", name}, {"share", 1}}})));
    };
    const Json raw = put("maple peas, dry");
    CHECK(first_field(raw) == "part 2");
    CHECK(raw["errors"][0]["hint"].text().find("boil hard") != std::string::npos);
    CHECK(raw["errors"][0]["hint"].text().find("'cooked maple peas'") != std::string::npos);
    CHECK(mix_of(phone.bank, "my silt").contains("errors"));
    const Json cooked = put("cooked maple peas");
    REQUIRE(cooked.contains("care"));
    CHECK(json_text(cooked["care"]).find("boil hard") != std::string::npos);
    CHECK(json_text(put("chickpea flour")["care"]).find("heat-treated") != std::string::npos);
}

TEST_CASE("a bag measured on the phone answers as one measured by the command") {
    OpenBank phone;
    const program_run::Folder folder;
    const Json told = phone.bank.ask({{"ask", "measured"}, {"ingredient", "brown crumb"}, {"absorption", "0.7 g/g"}});
    REQUIRE(told.contains("told"));
    REQUIRE(program_run::run(folder.path(), "ingredient measure 'brown crumb' --absorption '0.7 g/g'").status == 0);
    const auto ran = program_run::run(folder.path(), "mix 'silt bed' --dry-mass 1kg --json");
    CHECK(json_text(mix_of(phone.bank, "silt bed")["json"]) == json_text(*parsed_json(ran.output)));
    const Json wrong = phone.bank.ask({{"ask", "measured"}, {"ingredient", "brown crumb"}, {"absorption", "70"}});
    CHECK(wrong.contains("errors"));
    CHECK(phone.bank.ask({{"ask", "measured"}, {"ingredient", "brown crumb"}})["errors"][0]["code"] ==
          "nothing-measured");
}

TEST_CASE("a price told on the phone is reckoned with as one told by the command, and anew takes it back") {
    OpenBank phone;
    const program_run::Folder folder;
    const auto cost = [&] {
        return phone.bank.ask({{"ask", "cost"},
                               {"words", {"open carpet"}},
                               {"flags", {{"--empty-shed", {""}}}},
                               {"give", {"json"}}})["json"];
    };
    const Json before = cost();
    const Json told = phone.bank.ask(
        {{"ask", "price"}, {"of", "brown crumb"}, {"pack", "1 kg"}, {"price", "\u00a39.99"}, {"shop", "the mill"}});
    REQUIRE(told.contains("told"));
    REQUIRE(program_run::run(folder.path(), "price 'brown crumb' --pack 1kg --is 9.99GBP --shop 'the mill' --new-shop")
                .status == 0);
    const auto ran = program_run::run(folder.path(), "cost 'open carpet' --empty-shed --json");
    CHECK(json_text(cost()) == json_text(*parsed_json(ran.output)));
    CHECK_FALSE(json_text(cost()) == json_text(before));
    CHECK(phone.bank.ask({{"ask", "price"}, {"of", "brown crumb"}})["errors"][0]["code"] == "no-price");
    phone.bank.ask({{"ask", "anew"}});
    CHECK(json_text(cost()) == json_text(before));
}

TEST_CASE("the shed on the phone goes by the rules of the program's") {
    OpenBank phone;
    const program_run::Folder folder;
    const Json entries =
        Json::array({{{"what", "buy"}, {"of", "brown crumb"}, {"amount", "2x1kg"}, {"price", "\u00a32.10"}},
                     {{"what", "use"}, {"of", "brown crumb"}, {"amount", "600g"}},
                     {{"what", "count"}, {"of", "maize meal"}, {"amount", "300g"}},
                     {{"what", "use"}, {"of", "maize meal"}, {"amount", "5kg"}},
                     {{"what", "buy"}, {"of", "silt bod"}, {"amount", "1kg"}},
                     {{"what", "use"}, {"of", "brown crumb"}, {"amount", "some"}}});
    const Json shed = phone.bank.ask({{"ask", "shed"}, {"entries", entries}});
    REQUIRE(shed.contains("told"));
    REQUIRE(shed["refused"].size() == 3);
    CHECK(shed["refused"][0]["entry"] == 3);
    CHECK(shed["refused"][0]["code"] == "short-of-stock");
    CHECK(shed["refused"][1]["entry"] == 4);
    CHECK(shed["refused"][2]["entry"] == 5);
    for (const char* line : {"stock buy 'brown crumb' 2x1kg --price 2.10GBP", "stock use 'brown crumb' 600g",
                             "stock count 'maize meal' 300g"})
        REQUIRE(program_run::run(folder.path(), line).status == 0);
    const auto stock = parsed_json(program_run::run(folder.path(), "stock --json").output);
    REQUIRE(stock);
    CHECK(json_text(shed["json"]) == json_text(*stock));
    const auto ran = program_run::run(folder.path(), "cost 'open carpet' --json");
    const Json cost = phone.bank.ask({{"ask", "cost"}, {"words", {"open carpet"}}, {"give", {"json"}}});
    CHECK(json_text(cost["json"]) == json_text(*parsed_json(ran.output)));
    const Json again = phone.bank.ask({{"ask", "shed"}, {"entries", Json::array()}});
    CHECK(again["json"]["items"].empty());
}
