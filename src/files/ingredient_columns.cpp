#include "files/ingredient_columns.h"

#include "bait/ingredient_facts.h"

namespace baitwright {

namespace {

using Form = IngredientColumn::Form;

void add_property(std::vector<IngredientColumn>& columns, const std::string& heading, const std::string& key,
                  Form form) {
    columns.push_back({heading, key + ".value", form});
    columns.push_back({heading + " spread", key + ".spread", Form::value, heading});
    columns.push_back({heading + " source", key + ".source", Form::text, heading});
}

void add_pack(std::vector<IngredientColumn>& columns, int number) {
    const std::string pack = "pack " + std::to_string(number) + " ";
    columns.push_back({pack + "size", "size", Form::value, {}, number});
    columns.push_back({pack + "price", "price", Form::value, {}, number});
    columns.push_back({pack + "on", "on", Form::date, {}, number});
    columns.push_back({pack + "shop", "shop", Form::text, {}, number});
}

}  // namespace

std::vector<IngredientColumn> ingredient_columns(int packs) {
    std::vector<IngredientColumn> columns{{"name", "name", Form::text}, {"kind", "kind", Form::value}};
    const Ingredient none;
    visit_properties(none, [&](const auto& facts, const auto&) {
        const std::string key(facts.key);
        add_property(columns, key, key, facts.bare_number ? Form::number : Form::value);
    });
    visit_composition(none.composition, [&](std::string_view part, const auto&) {
        add_property(columns, "composition " + std::string(part), "composition." + std::string(part), Form::value);
    });
    columns.push_back({"colour", "colour", Form::text});
    columns.push_back({"solute", "solute", Form::value});
    columns.push_back({"label_dose", "label_dose", Form::value});
    columns.push_back({"cautions", "cautions", Form::words});
    for (const char* way : {"dry", "cold", "frozen"})
        columns.push_back({std::string("keeps ") + way, std::string("keeps.") + way, Form::value});
    columns.push_back({"note", "note", Form::text});
    for (int number = 1; number <= packs; ++number) add_pack(columns, number);
    return columns;
}

int pack_number(std::string_view heading) {
    constexpr std::string_view pack = "pack ";
    if (heading.substr(0, pack.size()) != pack) return 0;
    heading.remove_prefix(pack.size());
    const std::string_view digits = heading.substr(0, heading.find(' '));
    if (digits.empty() || digits.size() > 3 || digits.find_first_not_of("0123456789") != std::string_view::npos)
        return 0;
    return std::stoi(std::string(digits));
}

}  // namespace baitwright
