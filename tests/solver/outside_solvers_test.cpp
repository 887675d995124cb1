// What two solvers of others (glpsol of GLPK, cbc of COIN-OR) find for 200 random blends and 200 random pack problems.
// Where a tool is missing the test says so and is passed over.
#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <sstream>

#include "answers/blend_programme.h"
#include "answers/blending.h"
#include "answers/buy_packs.h"
#include "answers/resolved_blend.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;
using namespace blending;
using P = MixProperty;

/// A tool, and how it is asked for the optimum of a CPLEX LP file.
struct Tool {
    const char* name;
    const char* arguments;  // {0}: the programme; {1}: what it writes
    const char* before;     // what stands before the optimum there
};

const Tool tools[] = {
    {"glpsol", "--lp {0} -o {1}", "Objective:  cost = "},
    {"cbc", "{0} solve solution {1}", "objective value"},
};

bool is_there(const Tool& tool) {
    if (std::system(fmt::format("command -v {} > /dev/null 2>&1", tool.name).c_str()) == 0) return true;
    WARN(tool.name << " is not here (Debian: " << (tool.name[0] == 'c' ? "coinor-cbc" : "glpk-utils") << "): not held against it");
    return false;
}

class TemporaryFolder {
public:
    TemporaryFolder() {
        std::string name = (fs::temp_directory_path() / "outside_XXXXXX").string();
        if (!mkdtemp(name.data())) throw std::runtime_error("no temporary folder");
        path_ = name;
    }
    ~TemporaryFolder() { fs::remove_all(path_); }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    [[nodiscard]] std::string file(const char* name) const { return (path_ / name).string(); }

private:
    fs::path path_;
};

/// The least cost that the tool finds.
double optimum(const Tool& tool, const TemporaryFolder& folder, const std::string& programme) {
    const std::string in = folder.file("programme.lp"), out = folder.file("solution.txt");
    std::ofstream(in) << programme;
    fs::remove(out);
    const std::string command = fmt::format(fmt::runtime(std::string(tool.name) + " " + tool.arguments + " > /dev/null 2>&1"), in, out);
    if (std::system(command.c_str()) != 0) throw std::runtime_error("does not run: " + command);
    std::ifstream stream(out);
    const std::string text((std::istreambuf_iterator<char>(stream)), {});
    const auto at = text.find(tool.before);
    if (at == std::string::npos) throw std::runtime_error("no optimum in: " + text);
    return std::stod(text.substr(at + std::string(tool.before).size()));
}

using Random = std::mt19937;
int pick(Random& random, int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); }

std::vector<Made> random_candidates(Random& random) {
    std::vector<Made> all;
    const int count = pick(random, 3, 10);
    for (int i = 0; i < count; ++i)
        all.push_back({fmt::format("made {}", i), double(pick(random, 0, 70)), double(pick(random, 0, 25)), double(pick(random, 0, 8)), pick(random, 50, 400)});
    return all;
}

/// The blend as the tools read it, written from the spec and not from our programme; by the kilogram.
std::string blend_text(const std::vector<Made>& all, const BlendSpec& spec) {
    std::string cost = "Minimize\n cost: ", whole = " whole: ", protein = " protein: ", fibre = " fibre: ", salt = " salt: ", bounds = "Bounds\n";
    for (std::size_t i = 0; i < all.size(); ++i) {
        cost += fmt::format("{:+} x{} ", all[i].pence, i);
        whole += fmt::format("+ x{} ", i);
        protein += fmt::format("{:+} x{} ", all[i].protein, i);
        fibre += fmt::format("{:+} x{} ", all[i].fibre, i);
        salt += fmt::format("{:+} x{} ", all[i].salt, i);
        bounds += fmt::format(" {} <= x{} <= {}\n", spec.candidates[i].share.least.value_or(0), i, spec.candidates[i].share.most.value_or(1));
    }
    return cost + "\nSubject To\n" + whole + "= 1\n" + protein + fmt::format(">= {}\n", *spec.limits[0].bounds.least) + fibre +
           fmt::format("<= {}\n", *spec.limits[1].bounds.most) + salt + fmt::format("<= {}\n", *spec.limits[2].bounds.most) + bounds + "End\n";
}

/// Small packs of 50 g and more, so that grams are few.
PackNeed random_need(Random& random) {
    PackNeed need;
    for (int s = 0; s < 8; ++s) need.grams.push_back(50 * pick(random, 0, 20));
    const int packs = pick(random, 1, 2);
    for (int p = 0; p < packs; ++p) need.packs.push_back({50 * pick(random, 5, 40), pick(random, 40, 300)});
    need.shelf_life = pick(random, 1, 8);
    return need;
}

constexpr double money_first = 4000;  // a penny outweighs all the 50 g that can be bought too much

/// Packs bought for session t of ingredient i, and how many 50 g of them go into session s; first the money, then what is
/// bought. No further row says when it is best to buy.
std::string packs_text(const std::vector<PackNeed>& needs) {
    std::string cost = "Minimize\n cost: ", rows = "\nSubject To\n", whole = "General\n";
    for (std::size_t i = 0; i < needs.size(); ++i) {
        const PackNeed& need = needs[i];
        const int sessions = int(need.grams.size());
        for (int t = 0; t < sessions; ++t) {
            std::string holds = fmt::format(" h{}_{}: ", i, t);
            for (std::size_t p = 0; p < need.packs.size(); ++p) {
                const auto size = double(need.packs[p].grams) / 50;
                cost += fmt::format("+ {} n{}_{}_{}\n ", money_first * double(need.packs[p].price_minor) + size, i, t, p);
                holds += fmt::format("+ {} n{}_{}_{} ", size, i, t, p);
                whole += fmt::format(" n{}_{}_{}\n", i, t, p);
            }
            for (int s = t; s < std::min(sessions, t + need.shelf_life); ++s) holds += fmt::format("- x{}_{}_{} ", i, t, s);
            rows += holds + ">= 0\n";
            std::string fed = fmt::format(" f{}_{}: ", i, t);
            for (int from = std::max(0, t - need.shelf_life + 1); from <= t; ++from) fed += fmt::format("+ x{}_{}_{} ", i, from, t);
            rows += fed + fmt::format("= {}\n", double(need.grams[std::size_t(t)]) / 50);
        }
    }
    return cost + rows + whole + "End\n";
}

}  // namespace

TEST_CASE("glpsol and cbc find the cost of 200 random blends") {
    const TemporaryFolder folder;
    for (const Tool& tool : tools) {
        if (!is_there(tool)) continue;
        Random random(6);
        for (int done = 0; done < 200;) {
            const std::vector<Made> all = random_candidates(random);
            BlendSpec spec = spec_of(all, {on(P::protein, pick(random, 5, 45)), on(P::fibre, {}, pick(random, 3, 15)), on(P::salt, {}, pick(random, 1, 6))});
            spec.candidates[0].share.most = pick(random, 10, 60) / 100.0;
            spec.candidates[1].share.least = pick(random, 0, 20) / 100.0;
            ClpSolver solver;
            const MadeShelf shelf(all);
            const LinearSolution ours = solver.solve(programme_of(resolve_blend(spec, shelf, usual_batch)).programme);
            if (ours.status != LinearStatus::optimal) continue;
            const double theirs = optimum(tool, folder, blend_text(all, spec));
            INFO(tool.name << ", blend " << done);
            CHECK(ours.cost == Approx(theirs).epsilon(1e-6));
            ++done;
        }
    }
}

TEST_CASE("glpsol and cbc find the outlay of 200 random pack problems, and of ties what leaves least over") {
    const TemporaryFolder folder;
    for (const Tool& tool : tools) {
        if (!is_there(tool)) continue;
        Random random(7);
        for (int done = 0; done < 200; ++done) {
            const std::vector<PackNeed> needs{random_need(random), random_need(random), random_need(random)};
            const auto ours = buy_packs({needs, {}, false});
            REQUIRE(ours);
            double weighed = money_first * double(ours->total_minor);
            for (const PackPlan& plan : ours->plans) weighed += double(plan.bought) / 50;
            const double theirs = optimum(tool, folder, packs_text(needs));
            INFO(tool.name << ", problem " << done);
            CHECK(std::abs(weighed - theirs) < 0.5);
        }
    }
}

}  // namespace baitwright
