#include "files/library_text.h"

#include "bait/ingredient_facts.h"
#include "files/toml_writer.h"
#include "files/value_text.h"

namespace baitwright {

namespace {

std::string property_text(std::string_view value, Ratio spread, const Source& source) {
    return "{ value = " + std::string(value) + ", spread = " + toml_quoted(percent_text(spread)) +
           ", source = " + toml_quoted(source_text(source)) + " }";
}

template <class D>
std::string value_toml(const PropertyFacts<D>& facts, Quantity<D> value) {
    const std::string text = value_text(facts, value);
    return facts.bare_number ? text : toml_quoted(text);
}

void write_properties(TomlWriter& out, const Ingredient& ingredient) {
    visit_properties(ingredient, [&](const auto& facts, const auto& property) {
        if (property.stated())
            out.line(facts.key, property_text(value_toml(facts, property.value), property.spread, property.source));
    });
}

void write_composition(TomlWriter& out, const Composition& composition) {
    std::string shares;
    visit_composition(composition, [&](std::string_view key, const Property<Ratio>& share) {
        if (!share.stated()) return;
        shares += (shares.empty() ? " " : ", ") + std::string(key) + " = " +
                  property_text(toml_quoted(percent_text(share.value)), share.spread, share.source);
    });
    if (!shares.empty()) out.line("composition", "{" + shares + " }");
}

void write_keeping(TomlWriter& out, const Keeping& keeps) {
    std::string times;
    const auto add = [&](std::string_view key, const std::optional<Time>& time) {
        if (time) times += (times.empty() ? " " : ", ") + std::string(key) + " = " + toml_quoted(keeping_text(*time));
    };
    add("dry", keeps.dry);
    add("cold", keeps.cold);
    add("frozen", keeps.frozen);
    if (!times.empty()) out.line("keeps", "{" + times + " }");
}

void write_cautions(TomlWriter& out, const std::vector<std::string>& cautions) {
    std::string words;
    for (const std::string& word : cautions) words += (words.empty() ? "" : ", ") + toml_quoted(word);
    if (!words.empty()) out.line("cautions", "[" + words + "]");
}

void write_pack(TomlWriter& out, const Pack& pack) {
    out.inner_heading("ingredient.pack");
    out.text("size", amount_text(pack.size));
    if (pack.price) out.text("price", money_text(*pack.price));
    if (pack.on) out.line("on", date_text(*pack.on));
    out.text("shop", pack.shop);
}

void write_ingredient(TomlWriter& out, const Ingredient& ingredient) {
    out.heading("ingredient");
    out.text("name", ingredient.name);
    out.text("kind", name_of(ingredient.kind));
    write_properties(out, ingredient);
    write_composition(out, ingredient.composition);
    out.text("colour", ingredient.colour);
    out.text("solute", ingredient.solute);
    if (ingredient.label_dose) out.text("label_dose", dose_rate_text(*ingredient.label_dose));
    write_keeping(out, ingredient.keeps);
    write_cautions(out, ingredient.cautions);
    out.text("note", ingredient.note);
    for (const Pack& pack : ingredient.packs) write_pack(out, pack);
}

struct AmountLine {
    TomlWriter& out;
    void operator()(Mass mass) const { out.text("mass", amount_text(mass)); }
    void operator()(Volume volume) const { out.text("volume", amount_text(volume)); }
    void operator()(WholePacks packs) const { out.line("packs", number_text(packs.count)); }
    void operator()(Share share) const { out.line("share", number_text(share.parts)); }
};

}  // namespace

std::string toml_text(const std::vector<Ingredient>& ingredients) {
    TomlWriter out;
    for (const Ingredient& ingredient : ingredients) write_ingredient(out, ingredient);
    return out.str();
}

std::string toml_text(const Recipe& recipe) {
    TomlWriter out;
    out.heading("mix");
    out.text("name", recipe.name);
    out.text("feel", recipe.feel);
    out.text("purpose", recipe.purpose);
    out.text("avoid", recipe.avoid);
    out.text("why", recipe.why);
    out.text("note", recipe.note);
    for (const Part& part : recipe.parts) {
        out.inner_heading("mix.part");
        out.text("of", part.of);
        std::visit(AmountLine{out}, part.amount);
        if (part.prepare == Preparation::soaked) out.text("prepare", "soaked");
    }
    for (const Dose& dose : recipe.doses) {
        out.inner_heading("mix.dose");
        out.text("of", dose.of);
        out.text("amount", dose_rate_text(dose.rate));
    }
    return out.str();
}

std::string toml_text(const std::vector<Feel>& feels) {
    TomlWriter out;
    for (const Feel& feel : feels) {
        out.heading("feel");
        out.text("name", feel.name);
        out.line("aim", number_text(feel.aim));
        out.line("below", number_text(feel.below));
        out.text("purpose", feel.purpose);
    }
    return out.str();
}

}  // namespace baitwright
