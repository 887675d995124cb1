// What two solvers of others (glpsol of GLPK, cbc of COIN-OR) find for 200 random blends, eight programmes of 25
// blends side by side, for starting a tool takes longer than a blend.
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
            bounds_ += fmt::format(" {} <= {} <= {}\n", spec.candidates[i].share.least.value_or(0), x, spec.candidates[i].share.most.value_or(1));
        }
        rows_ += fmt::format(" w{0}: {1}= 1\n p{0}: {2}>= {3}\n f{0}: {4}<= {5}\n s{0}: {6}<= {7}\n", count_, whole, protein,
                             *spec.limits[0].bounds.least, fibre, *spec.limits[1].bounds.most, salt, *spec.limits[2].bounds.most);
        ++count_;
    }

    [[nodiscard]] std::string text() const { return "Minimize\n cost: " + cost_ + "\nSubject To\n" + rows_ + "Bounds\n" + bounds_ + "End\n"; }

private:
    int count_ = 0;
    std::string cost_, rows_, bounds_;
};

}  // namespace

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
                BlendSpec spec = spec_of(all, {on(P::protein, pick(random, 5, 45)), on(P::fibre, {}, pick(random, 3, 15)), on(P::salt, {}, pick(random, 1, 6))});
                spec.candidates[0].share.most = pick(random, 10, 60) / 100.0;
                spec.candidates[1].share.least = pick(random, 0, 20) / 100.0;
                ClpSolver solver;
                const MadeShelf shelf(all);
                const LinearSolution solution = solver.solve(programme_of(resolve_blend(spec, shelf, usual_batch)).programme);
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
