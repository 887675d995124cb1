// A unit is X.h with X.cpp; it uses another where either of its files includes the other's header.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "architecture/source_files.h"

using namespace source_files;

namespace {

using Circle = std::set<std::string>;
using Uses = std::map<std::string, std::set<std::string>>;

enum class Files { headers, all };

Uses uses_between(Files which) {
    const std::regex include("#include \"([^\"]+)\\.h\"");
    Uses uses;
    for (const fs::path& path : sources()) {
        if (which == Files::headers && path.extension() != ".h") continue;
        const std::string unit = fs::relative(path, source_root).replace_extension().generic_string();
        uses[unit];
        for (const std::string& used : matches(whole_file(path), include))
            if (used != unit) uses[unit].insert(used);
    }
    return uses;
}

/// Those that lead back to each other: the strongly connected parts of more than one, by Tarjan's algorithm.
class CircleFinder {
public:
    explicit CircleFinder(Uses uses) : uses_(std::move(uses)) {
        for (const auto& [unit, used] : uses_)
            if (place_.count(unit) == 0) visit(unit);
    }
    std::set<Circle> found;

private:
    std::size_t visit(const std::string& unit) {
        const std::size_t own = place_.size() + 1;
        std::size_t lowest = place_[unit] = own;
        open_.push_back(unit);
        for (const std::string& used : uses_[unit]) {
            if (place_.count(used) == 0)
                lowest = std::min(lowest, visit(used));
            else if (std::find(open_.begin(), open_.end(), used) != open_.end())
                lowest = std::min(lowest, place_[used]);
        }
        if (lowest == own) close(unit);
        return lowest;
    }

    void close(const std::string& unit) {
        const auto begin = std::find(open_.begin(), open_.end(), unit);
        if (open_.end() - begin > 1) found.emplace(begin, open_.end());
        open_.erase(begin, open_.end());
    }

    Uses uses_;
    std::map<std::string, std::size_t> place_;
    std::vector<std::string> open_;
};

}  // namespace

TEST_CASE("a circle is found, and what only leads to it is not in it") {
    const Uses uses{{"a", {"b"}}, {"b", {"c", "e"}}, {"c", {"a"}}, {"d", {"a"}}, {"e", {}}, {"f", {"g"}}, {"g", {"f"}}};
    CHECK(CircleFinder(uses).found == std::set<Circle>{{"a", "b", "c"}, {"f", "g"}});
}

TEST_CASE("no header leads back to itself") {
    const Uses uses = uses_between(Files::headers);
    REQUIRE(uses.size() > 100);
    CHECK(CircleFinder(uses).found == std::set<Circle>{});
}

TEST_CASE("units use each other one way") {
    for (const Circle& circle : CircleFinder(uses_between(Files::all)).found) {
        std::string names;
        for (const std::string& unit : circle) names += unit + " ";
        INFO(names);
        CHECK(circle.empty());
    }
}
