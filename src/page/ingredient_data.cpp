#include "page/ingredient_data.h"

#include "bait/ingredient_facts.h"
#include "page/data_values.h"

namespace baitwright {

namespace {

/// Gathers the stated ones of the properties that it is shown, in turn.
class PropertyList {
public:
    explicit PropertyList(SourceTable& sources) : sources_(sources) {}
    template <class Q>
    void add(const Property<Q>& property) {
        const int place = place_++;
        if (!property.stated()) return;
        list_.push_back(place);
        list_.push_back(property.value.si());
        list_.push_back(property.spread.si());
        list_.push_back(sources_.place_of(property.source));
    }
    void put(Json& record, const char* key) const {
        if (!list_.empty()) record[key] = list_;
    }

private:
    SourceTable& sources_;
    Json list_ = Json::array();
    int place_ = 0;
};

/// Gives them back to the properties that it is shown, in the same turn.
class StatedProperties {
public:
    StatedProperties(const Json* list, const SourceTable& sources) : list_(list), sources_(sources) {}
    template <class Q>
    void take(Property<Q>& property) {
        const int place = place_++;
        if (!list_ || at_ >= list_->size() || whole_in((*list_)[at_]) != place) return;
        property = {dressed_number<Q>((*list_)[at_ + 1]), (*list_)[at_ + 2].number(), sources_.at((*list_)[at_ + 3])};
        at_ += 4;
    }

private:
    const Json* list_;
    const SourceTable& sources_;
    std::size_t at_ = 0;
    int place_ = 0;
};

Json pack_data(const Pack& pack) {
    Json data{{"size", held_data(pack.size)}};
    if (pack.price) data["price"] = money_data(*pack.price);
    if (pack.on) data["on"] = day_data(*pack.on);
    put_text(data, "shop", pack.shop);
    return data;
}

Pack pack_in(const Json& data) {
    Pack pack{held_in<std::variant<Mass, Volume>>(data["size"]), {}, {}, text_in(data, "shop")};
    if (const Json* price = data.find("price")) pack.price = money_in(*price);
    if (const Json* on = data.find("on")) pack.on = day_in(*on);
    return pack;
}

void put_keeping(Json& data, const Keeping& keeps) {
    Json times = Json::object();
    put_stated(times, "dry", keeps.dry);
    put_stated(times, "cold", keeps.cold);
    put_stated(times, "frozen", keeps.frozen);
    if (!times.empty()) data["keeps"] = std::move(times);
}

Keeping keeping_in(const Json& times) {
    Keeping keeps;
    take_stated(times, "dry", keeps.dry);
    take_stated(times, "cold", keeps.cold);
    take_stated(times, "frozen", keeps.frozen);
    return keeps;
}

}  // namespace

SourceTable::SourceTable(const Json& data) {
    for (const Json& source : data) sources_.push_back({static_cast<Origin>(whole_in(source[0])), source[1].text()});
}

int SourceTable::place_of(const Source& source) {
    const auto next = static_cast<int>(sources_.size());
    const auto [entry, is_new] =
        places_.emplace(std::to_string(static_cast<int>(source.origin)) + " " + source.detail, next);
    if (is_new) sources_.push_back(source);
    return entry->second;
}

const Source& SourceTable::at(const Json& place) const {
    return sources_.at(static_cast<std::size_t>(whole_in(place)));
}

Json SourceTable::data() const {
    return list_data(sources_, [](const Source& source) {
        return Json::array({static_cast<int>(source.origin), source.detail});
    });
}

Json rate_data(const DoseRate& rate) {
    const Json each = held_data(rate.each);
    return Json::array({static_cast<int>(rate.basis), each[0], each[1]});
}

DoseRate rate_in(const Json& data) {
    return {static_cast<DoseBasis>(whole_in(data[0])),
            held_in<std::variant<Mass, Volume>>(Json::array({data[1], data[2]}))};
}

Json ingredient_data(const Ingredient& ingredient, SourceTable& sources) {
    Json data{{"name", ingredient.name}, {"kind", static_cast<int>(ingredient.kind)}};
    PropertyList properties(sources), shares(sources);
    visit_properties(ingredient, [&](const auto&, const auto& property) { properties.add(property); });
    visit_composition(ingredient.composition, [&](std::string_view, const auto& share) { shares.add(share); });
    properties.put(data, "properties");
    shares.put(data, "composition");
    put_text(data, "colour", ingredient.colour);
    put_text(data, "solute", ingredient.solute);
    if (ingredient.label_dose) data["label_dose"] = rate_data(*ingredient.label_dose);
    put_list(data, "packs", ingredient.packs, pack_data);
    put_keeping(data, ingredient.keeps);
    put_texts(data, "cautions", ingredient.cautions);
    put_text(data, "note", ingredient.note);
    return data;
}

Ingredient ingredient_in(const Json& data, const SourceTable& sources) {
    Ingredient ingredient;
    ingredient.name = data["name"].text();
    ingredient.kind = static_cast<IngredientKind>(whole_in(data["kind"]));
    StatedProperties properties(data.find("properties"), sources), shares(data.find("composition"), sources);
    visit_properties(ingredient, [&](const auto&, auto& property) { properties.take(property); });
    visit_composition(ingredient.composition, [&](std::string_view, auto& share) { shares.take(share); });
    ingredient.colour = text_in(data, "colour");
    ingredient.solute = text_in(data, "solute");
    if (const Json* rate = data.find("label_dose")) ingredient.label_dose = rate_in(*rate);
    take_list(data, "packs", ingredient.packs, pack_in);
    if (const Json* keeps = data.find("keeps")) ingredient.keeps = keeping_in(*keeps);
    ingredient.cautions = texts_in(data, "cautions");
    ingredient.note = text_in(data, "note");
    return ingredient;
}

}  // namespace baitwright
