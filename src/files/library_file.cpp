#include "files/library_file.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>

#include "files/advice_reader.h"
#include "files/blend_reader.h"
#include "files/feel_reader.h"
#include "files/file_faults.h"
#include "files/ingredient_reader.h"
#include "files/recipe_reader.h"
#include "files/strategy_reader.h"
#include "files/toml_syntax.h"
#include "files/venue_reader.h"

namespace baitwright {

namespace {

constexpr std::string_view what_a_file_holds =
    "a file holds one ingredient (it has a kind), one mix (it has a [[part]]), one strategy (it has a [[feed]]), one "
    "blend (it has a [[candidate]]) or the rules of one venue (it has a [[limit]], [[ban]] or [[rule]]), or blocks headed "
    "[[ingredient]], [[mix]], [[strategy]], [[blend]], [[venue]], [[feel]] or [[advice]]";

/// What stands at the top of a file, above or without any blocks.
enum class Top { nothing, ingredient, mix, strategy, blend, venue, several };

/// A key that tells what the top of a file is.
struct Telling {
    std::string_view key, as, heading;
};
constexpr std::array<Telling, 4> tellings{{{"kind", "a kind, as an ingredient", "[[ingredient]]"},
                                           {"part", "a part, as a mix", "[[mix]]"},
                                           {"feed", "a feed, as a strategy", "[[strategy]]"},
                                           {"candidate", "a candidate, as a blend", "[[blend]]"}}};

bool is_mix_key(std::string_view key) {
    constexpr std::array<std::string_view, 5> keys{"part", "dose", "purpose", "avoid", "why"};
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

/// `length` is also a pellet's.
bool is_strategy_key(std::string_view key) {
    constexpr std::array<std::string_view, 5> keys{"hookbait", "spare", "pace", "feed", "air"};
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

/// A blend has limits, too.
bool is_venue(const toml::table& root, bool blend) {
    return root.contains("ban") || root.contains("rule") || (root.contains("limit") && !blend);
}

/// Told by what only one of them has; a kind, a part, a feed or a candidate weighs more than
/// the rest.
Top top_of(const toml::table& root) {
    int told = 0;
    for (const Telling& telling : tellings) told += int{root.contains(telling.key)};
    if (told > 1) return Top::several;
    if (root.contains("kind")) return Top::ingredient;
    if (root.contains("part")) return Top::mix;
    if (root.contains("candidate")) return Top::blend;
    bool ingredient = false, mix = false, strategy = false, blend = false;
    for (auto&& [key, value] : root) {
        ingredient = ingredient || is_ingredient_key(key.str());
        strategy = strategy || is_strategy_key(key.str());
        blend = blend || (is_blend_key(key.str()) && key.str() != "limit");
        mix = mix || is_mix_key(key.str()) || (key.str() == "feel" && value.is_string());
    }
    if (is_venue(root, blend)) return Top::venue;
    if (strategy || (mix && root.contains("length"))) return Top::strategy;  // a mix has no length
    if (blend) return Top::blend;
    if (ingredient) return Top::ingredient;
    return mix ? Top::mix : Top::nothing;
}

/// Reads one file's blocks, then what stands at its top.
class LibraryReader {
public:
    LibraryReader(const toml::table& root, LibraryFile& file, FileFaults& faults)
        : root_(root, {1, 1}, "this file", faults), file_(file) {}

    void read() {
        const Top top = top_of(root_.table());
        const bool names_feel = (top == Top::mix || top == Top::blend) && names_a_feel(root_);
        read_blocks("ingredient", "an ingredient", file_.ingredients,
                    [&](TableReader& table) { return read_ingredient(table, ingredient_names_); });
        read_blocks("mix", "a mix", file_.recipes,
                    [&](TableReader& table) { return std::optional(read_recipe(table, recipe_names_)); });
        read_blocks("strategy", "a strategy", file_.strategies,
                    [&](TableReader& table) { return std::optional(read_strategy(table, strategy_names_)); });
        read_blocks("blend", "a blend", file_.blends,
                    [&](TableReader& table) { return sound(read_blend(table, blend_names_)); });
        read_blocks("venue", "a venue", file_.venues,
                    [&](TableReader& table) { return std::optional(read_venue(table, venue_names_)); });
        if (!names_feel)
            read_blocks("feel", "a feel", file_.feels, [&](TableReader& table) { return feels_.read(table); });
        root_.each_block("advice", "an advice", [&](TableReader& table) {  // kept by `read_advice_rules`
            found_blocks_ = true;
            read_advice(table);
        });
        leave_notes();
        read_top(top);
        set_faulty_aside(file_.recipes, file_.faulty_recipes);
        set_faulty_aside(file_.strategies, file_.faulty_strategies);
        set_faulty_aside(file_.venues, file_.faulty_venues);
    }

private:
    template <class Entry>
    static void set_faulty_aside(std::vector<Entry>& entries, std::vector<Entry>& aside) {
        const auto faulty =
            std::stable_partition(entries.begin(), entries.end(), [](const Entry& entry) { return !entry.faulty; });
        aside.assign(std::make_move_iterator(faulty), std::make_move_iterator(entries.end()));
        entries.erase(faulty, entries.end());
    }

    template <class Entry, class Read>
    void read_blocks(std::string_view key, std::string_view what, std::vector<Entry>& entries, Read read) {
        root_.each_block(key, what, [&](TableReader& table) {
            found_blocks_ = true;
            if (auto entry = read(table)) entries.push_back(std::move(*entry));
        });
        // A block in single brackets has a fault.
        if (root_.has(key) && root_.table().get(key)->is_table()) entries.clear();
    }

    /// Session notes that stand in the same file are for the log (`read_notes`).
    void leave_notes() {
        for (const char* key : {"session", "mixed", "soaked", "weighed", "seen", "bag", "catch", "stock"})
            if (root_.has(key)) root_.find(key);
    }

    void read_top(Top top) {
        switch (top) {
            case Top::ingredient:
                return read_top_ingredient();
            case Top::mix:
                return read_top_mix();
            case Top::strategy:
                return read_top_strategy();
            case Top::blend:
                return read_top_blend();
            case Top::venue:
                return read_top_venue();
            case Top::several:
                return refuse_several();
            case Top::nothing:
                return read_no_top();
        }
    }

    void read_top_ingredient() {
        root_.call("an ingredient");
        if (auto ingredient = read_ingredient(root_, ingredient_names_))
            file_.ingredients.insert(file_.ingredients.begin(), std::move(*ingredient));
    }

    void read_top_mix() {
        root_.call("a mix");
        file_.recipes.insert(file_.recipes.begin(), read_recipe(root_, recipe_names_));
    }

    void read_top_strategy() {
        root_.call("a strategy");
        file_.strategies.insert(file_.strategies.begin(), read_strategy(root_, strategy_names_));
    }

    void read_top_blend() {
        root_.call("a blend");
        if (auto blend = sound(read_blend(root_, blend_names_)))
            file_.blends.insert(file_.blends.begin(), std::move(*blend));
    }

    static std::optional<Entry<BlendSpec>> sound(Entry<BlendSpec> entry) {
        return entry.faulty ? std::nullopt : std::optional(std::move(entry));
    }

    void read_top_venue() {
        root_.call("a venue");
        file_.venues.insert(file_.venues.begin(), read_venue(root_, venue_names_));
    }

    void refuse_several() {
        std::string has, heads;
        std::string_view last;
        for (const Telling& telling : tellings) {
            if (!root_.has(telling.key)) continue;
            has += (has.empty() ? "" : ", and ") + std::string(telling.as);
            heads += (heads.empty() ? "" : " and ") + std::string(telling.heading);
            last = telling.key;
        }
        root_.faults().add(root_.place_of_key(last), "two-entries", "the top of the file has both " + has,
                           "head them " + heads);
    }

    void read_no_top() {
        if (found_blocks_ || root_.faults().count() > 0) return root_.refuse_unknown_keys();
        Position first{1, 1};
        if (!root_.table().empty()) first = first_key();
        root_.faults().add(first, "nothing-here",
                           "there is no ingredient, mix, strategy, blend, venue or feel in this file",
                           std::string(what_a_file_holds));
    }

    [[nodiscard]] Position first_key() const {
        Position first = root_.place_of_key(root_.table().begin()->first.str());
        for (auto&& [key, value] : root_.table()) {
            const Position place = root_.place_of_key(key.str());
            if (std::pair(place.line, place.column) < std::pair(first.line, first.column)) first = place;
        }
        return first;
    }

    TableReader root_;
    LibraryFile& file_;
    EntryNames ingredient_names_, recipe_names_, strategy_names_, blend_names_, venue_names_;
    FeelReader feels_;
    bool found_blocks_ = false;
};

}  // namespace

LibraryFile read_library_file(std::string_view text, std::string file_name) {
    LibraryFile file;
    file.name = std::move(file_name);
    FileFaults faults(text, file.name);
    if (const auto root = parse_toml(text, faults)) LibraryReader(*root, file, faults).read();
    file.faults = faults.in_file_order();
    return file;
}

void place_faults(std::vector<Fault>& faults, const EntryPlaces& places, std::string_view text,
                  std::string_view file_name) {
    for (Fault& fault : faults) {
        if (fault.more > 0) continue;
        fault.file = file_name;
        const auto place = places.find(fault.subject);
        if (place == places.end()) continue;
        fault.line = place->second.line;
        fault.column = place->second.column;
        fault.source_line = LineWalker(text).line(fault.line);
    }
}

}  // namespace baitwright
