// What two solvers of others (glpsol of GLPK, cbc of COIN-OR) find: for 200 random blends, eight programmes of 25
// blends side by side, for starting a tool takes longer than a blend; for 200 random pack problems of three ingredients
// over eight sessions, each ingredient an integer programme of its own. Where a tool is missing the test says so and is
// passed over.
#include <fmt/format.h>
#include <catch2/catch.hpp>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <sstream>
#include <string_view>

#include "answers/blend/blend_programme.h"
#include "answers/blend/resolved_blend.h"
#include "answers/blending.h"
#include "answers/money/buy_packs.h"
#include "reference/whole_file.h"

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
    {"glpsol", "--cuts --tmlim 60 --lp {0} -o {1}", "Objective:  cost = "},
    {"cbc", "{0} ratioGap 0 allowableGap 0 seconds 60 solve solution {1}", "objective value"},
};

bool is_there(const Tool& tool) {
    if (std::system(fmt::format("command -v {} > /dev/null 2>&1", tool.name).c_str()) == 0) return true;
    WARN(tool.name << " is not here (Debian: " << (tool.name[0] == 'c' ? "coinor-cbc" : "glpk-utils")
                   << "): not held against it");
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
    const std::string command =
        fmt::format(fmt::runtime(std::string(tool.name) + " " + tool.arguments + " > /dev/null 2>&1"), in, out);
    if (std::system(command.c_str()) != 0) throw std::runtime_error("does not run: " + command);
    const std::string text = whole_file(out);
    const auto at = text.find(tool.before);
    if (at == std::string::npos) throw std::runtime_error("no optimum in: " + text);
    return std::stod(text.substr(at + std::string(tool.before).size()));
}

using Random = std::mt19937;
int pick(Random& random, int low, int high) {
    return std::uniform_int_distribution<int>(low, high)(random);
}

std::vector<Made> random_candidates(Random& random) {
    std::vector<Made> all;
    const int count = pick(random, 3, 10);
    for (int i = 0; i < count; ++i)
        all.push_back({fmt::format("made {}", i), double(pick(random, 0, 70)), double(pick(random, 0, 25)),
                       double(pick(random, 0, 8)), pick(random, 50, 400)});
    return all;
}

/// Blends side by side as the tools read them, written from the specs and not from our programmes; by the kilogram.
class BlendsText {
public:
    void add(const std::vector<Made>& all, const BlendSpec& spec) {
        std::string whole, protein, fibre, salt;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string x = fmt::format("x{}_{}", count_, i);
            cost_ += fmt::format("{:+} {}\n ", all[i].pence, x);
            whole += "+ " + x + " ";
            protein += fmt::format("{:+} {} ", all[i].protein, x);
            fibre += fmt::format("{:+} {} ", all[i].fibre, x);
            salt += fmt::format("{:+} {} ", all[i].salt, x);
            bounds_ += fmt::format(" {} <= {} <= {}\n", spec.candidates[i].share.least.value_or(0), x,
                                   spec.candidates[i].share.most.value_or(1));
        }
        rows_ += fmt::format(" w{0}: {1}= 1\n p{0}: {2}>= {3}\n f{0}: {4}<= {5}\n s{0}: {6}<= {7}\n", count_, whole,
                             protein, *spec.limits[0].bounds.least, fibre, *spec.limits[1].bounds.most, salt,
                             *spec.limits[2].bounds.most);
        ++count_;
    }

    [[nodiscard]] std::string text() const {
        return "Minimize\n cost: " + cost_ + "\nSubject To\n" + rows_ + "Bounds\n" + bounds_ + "End\n";
    }

private:
    int count_ = 0;
    std::string cost_, rows_, bounds_;
};

constexpr int sessions = 8;

/// One to three packs, some in stock, anything from one session to all of them until it goes off.
PackNeed random_need(Random& random) {
    PackNeed need;
    for (int s = 0; s < sessions; ++s) need.milligrams.push_back(pick(random, 0, 3) == 0 ? 0 : pick(random, 20, 400));
    for (int p = pick(random, 1, 3); p > 0; --p)
        need.packs.push_back({50 * pick(random, 4, 30), pick(random, 80, 600)});
    need.shelf_life = pick(random, 1, 9);
    if (pick(random, 0, 1) == 1) need.stock.push_back({pick(random, 1, 900), pick(random, 0, sessions - 1)});
    return need;
}

/// Whole packs x bought for a session, grams y of them and z of the stock that go to sessions in which they are good.
/// Nothing here knows that late is best, or what is used up first. `outlay`: nothing, to ask for the least; or the most
/// that may be paid, to ask for the least grams bought.
std::string packs_text(const PackNeed& need, std::optional<std::int64_t> outlay) {
    std::string price, grams, rows, whole;
    std::vector<std::string> into(sessions);
    std::int64_t stocked = 0, needed = 0;
    for (const StockedMilligrams& lot : need.stock) stocked += lot.milligrams;
    for (int s = 0; s < sessions; ++s) {
        std::string bought;
        for (std::size_t p = 0; p < need.packs.size(); ++p) {
            const std::string x = fmt::format("x{}_{}", s, p);
            price += fmt::format("+ {} {}\n ", need.packs[p].price_minor, x);
            grams += fmt::format("+ {} {}\n ", need.packs[p].milligrams, x);
            bought += fmt::format("- {} {} ", need.packs[p].milligrams, x);
            whole += " " + x + "\n";
        }
        for (int u = s; u < std::min(sessions, s + need.shelf_life); ++u) {
            bought += fmt::format("+ y{}_{} ", s, u);
            into[std::size_t(u)] += fmt::format("+ y{}_{} ", s, u);
        }
        rows += " " + bought + "<= 0\n";
        needed += need.milligrams[std::size_t(s)];
    }
    for (std::size_t l = 0; l < need.stock.size(); ++l) {
        std::string out;
        for (int u = 0; u <= std::min(need.stock[l].last_session, need.shelf_life - 1) && u < sessions; ++u) {
            out += fmt::format("+ z{}_{} ", l, u);
            into[std::size_t(u)] += fmt::format("+ z{}_{} ", l, u);
        }
        rows += fmt::format(" {}<= {}\n", out, need.stock[l].milligrams);
    }
    for (int s = 0; s < sessions; ++s)
        rows += fmt::format(" {}>= {}\n", into[std::size_t(s)], need.milligrams[std::size_t(s)]);
    rows += fmt::format(" {} >= {}\n", grams, needed - stocked);  // follows from the rest; helps the tools
    if (outlay) rows += fmt::format(" {} <= {}\n", price, *outlay);
    return "Minimize\n cost: " + (outlay ? grams : price) + "\nSubject To\n" + rows + "General\n" + whole + "End\n";
}

}  // namespace

TEST_CASE("glpsol and cbc find the outlay of 200 random pack problems, and what is bought at the least for it") {
    const TemporaryFolder folder;
    for (const Tool& tool : tools) {
        if (!is_there(tool)) continue;
        Random random(8);
        for (int problem = 0; problem < 200; ++problem) {
            INFO(tool.name << ", problem " << problem);
            for (int ingredient = 0; ingredient < 3; ++ingredient) {
                const PackNeed need = random_need(random);
                const auto ours = cheapest_packs_over(need);
                REQUIRE(ours);
                if (tool.name == std::string_view("cbc") && ingredient > 0)
                    continue;  // it takes ten times as long to start
                CHECK(optimum(tool, folder, packs_text(need, {})) ==
                      Approx(double(ours->outlay_minor)).margin(1e-4).epsilon(0));
                if (ingredient == 0 && ours->outlay_minor > 0)
                    CHECK(optimum(tool, folder, packs_text(need, ours->outlay_minor)) ==
                          Approx(double(ours->bought)).margin(1e-3).epsilon(0));
            }
        }
    }
}

TEST_CASE("glpsol and cbc find the cost of 200 random blends") {
    const TemporaryFolder folder;
    for (const Tool& tool : tools) {
        if (!is_there(tool)) continue;
        Random random(6);
        for (int programme = 0; programme < 8; ++programme) {
            BlendsText text;
            double ours = 0;
            for (int done = 0; done < 25;) {
                const std::vector<Made> all = random_candidates(random);
                BlendSpec spec =
                    spec_of(all, {on(P::protein, pick(random, 5, 45)), on(P::fibre, {}, pick(random, 3, 15)),
                                  on(P::salt, {}, pick(random, 1, 6))});
                spec.candidates[0].share.most = pick(random, 10, 60) / 100.0;
                spec.candidates[1].share.least = pick(random, 0, 20) / 100.0;
                ClpSolver solver;
                const MadeShelf shelf(all);
                const LinearSolution solution =
                    solver.solve(programme_of(resolve_blend(spec, shelf, usual_batch)).programme);
                if (solution.status != LinearStatus::optimal) continue;
                ours += solution.cost;
                text.add(all, spec);
                ++done;
            }
            INFO(tool.name << ", programme " << programme);
            CHECK(ours == Approx(optimum(tool, folder, text.text())).epsilon(1e-6));
        }
    }
}

}  // namespace baitwright
