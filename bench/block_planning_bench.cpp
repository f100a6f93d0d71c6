// A block by search, bound and polish, against CBC on the whole model (linear_model.h), timed in the same run.
//   search   search_plan with 500,000 moves a start, of several mesos 300,000; bound: bound_plan; polish: polish_plan with its usual budget
//   rival    CBC 2.10 as its own driver runs it, with its presolve, cuts and heuristics, 40 s
// Seconds are of the processor, one thread, so that another program beside it does not count.
// Run it by `./dev bench`, or: ninja block_planning_bench && ./bench/block_planning_bench [--quick]
// Random problems of the tests (random_problem.h): 110 choices, loose (hours enough) and tight (sessions short, regions full).
// Bars: loose: the search has the rival's points in 2 s; every one, after the polish: at most 5 % more missing to 100 than the
// rival's; 12 weeks: search within 0.5 points of the bound in 5 s; memory of search and bound below 50 MB.
// --quick: one seed, a rival of 5 s, two rounds of polish.
#include "planning/exact_plan.h"
#include "planning/search_plan.h"
#include "planning/tests/random_problem.h"

#include <Cbc_C_Interface.h>
#include <sys/resource.h>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <ctime>

using namespace amentum;
using namespace amentum::invented;

namespace {

struct Size {
    const char* name;
    int sessions, mesos;
    bool with_rival;
};
const std::vector<Size> sizes{
    {"4 weeks x 4", 4, 1, true}, {"12 weeks x 4", 4, 3, false}, {"16 weeks x 5", 5, 4, false}};

struct Timed {
    double points;
    double seconds;
};

template <class Ask>
Timed timed(Ask ask) {
    const std::clock_t start = std::clock();
    const double points = ask();
    return {points, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC};
}

double megabytes_at_most() {
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    return static_cast<double>(used.ru_maxrss) / 1024;
}

// The columns of the model one after another, as CBC takes them; CBC minimises.
double points_of_cbc(const LinearModel& model, int seconds) {
    std::vector<std::vector<LinearEntry>> by_column(model.columns.size());
    std::vector<double> lower, upper, cost, row_lower, row_upper, factors;
    std::vector<int> starts{0}, rows;
    for (std::size_t r = 0; r < model.rows.size(); ++r) {
        for (const auto& entry : model.rows[r].entries)
            by_column[static_cast<std::size_t>(entry.column)].push_back({static_cast<int>(r), entry.factor});
        row_lower.push_back(std::max(model.rows[r].lower, -1e30));
        row_upper.push_back(std::min(model.rows[r].upper, 1e30));
    }
    for (std::size_t c = 0; c < by_column.size(); ++c) {
        for (const auto& [row, factor] : by_column[c]) {
            rows.push_back(row);
            factors.push_back(factor);
        }
        starts.push_back(static_cast<int>(rows.size()));
        lower.push_back(model.columns[c].lower);
        upper.push_back(std::min(model.columns[c].upper, 1e30));
        cost.push_back(-model.columns[c].points);
    }
    Cbc_Model* cbc = Cbc_newModel();
    Cbc_loadProblem(cbc, static_cast<int>(lower.size()), static_cast<int>(row_lower.size()), starts.data(),
                    rows.data(), factors.data(), lower.data(), upper.data(), cost.data(), row_lower.data(),
                    row_upper.data());
    for (std::size_t c = 0; c < model.columns.size(); ++c)
        if (model.columns[c].whole)
            Cbc_setInteger(cbc, static_cast<int>(c));
    Cbc_setParameter(cbc, "log", "0");
    Cbc_setParameter(cbc, "slog", "0");
    Cbc_setParameter(cbc, "timeMode", "cpu");
    Cbc_setParameter(cbc, "sec", std::to_string(seconds).c_str());
    Cbc_solve(cbc);
    const double points = Cbc_bestSolution(cbc) ? model.constant - Cbc_getObjValue(cbc) : 0;
    Cbc_deleteModel(cbc);
    return points;
}

struct Case {
    const Size* size;
    Room room;
    std::uint64_t seed;
    BlockProblem problem;
    Timed bound, search, polish;
    PlanSets plan;
};

std::vector<Case> cases(int seeds) {
    std::vector<Case> all;
    for (const Size& size : sizes)
        for (const Room room : {Room::loose, Room::tight})
            for (int seed = 1; seed <= seeds; ++seed) {
                Case one{&size, room, static_cast<std::uint64_t>(seed), {}, {}, {}, {}, {}};
                one.problem = random_problem({110, size.sessions, size.mesos, room, one.seed});
                all.push_back(std::move(one));
            }
    return all;
}

void ask_ours(Case& one) {
    one.bound = timed([&] { return bound_plan(one.problem)->points; });
    one.search = timed([&] {
        // Two seconds of moves for four weeks, below five for twelve.
        const SearchBudget budget{one.size->mesos == 1 ? 500'000 : 300'000, 6, 1};
        one.plan = search_plan(one.problem, budget).value();
        return price_plan(one.problem, one.plan).total();
    });
}

void print_line(const Case& one, const std::string& rival) {
    std::printf("%-12s %-5s %llu   %7.2f %5.2f s   %7.2f %5.2f s %6.2f   %7.2f %6.1f s %6.2f   %s\n",
                one.size->name, one.room == Room::loose ? "loose" : "tight",
                static_cast<unsigned long long>(one.seed), one.bound.points, one.bound.seconds,
                one.search.points, one.search.seconds, one.bound.points - one.search.points,
                one.polish.points, one.polish.seconds, one.bound.points - one.polish.points, rival.c_str());
    std::fflush(stdout);
}

std::string ask_rival(const Case& one, int seconds) {
    if (!one.size->with_rival)
        return "not asked";
    const Timed rival = timed([&] { return points_of_cbc(linear_model(one.problem), seconds); });
    const double share = (100 - one.polish.points) / (100 - rival.points); // of what is missing to 100
    char line[120];
    std::snprintf(line, sizeof line, "%7.2f %5.1f s; ours misses %.2f of what it misses", rival.points,
                  rival.seconds, share);
    return line;
}

} // namespace

int main(int count, char** given) {
    const bool quick = count > 1 && std::strcmp(given[1], "--quick") == 0;
    std::vector<Case> all = cases(quick ? 1 : 2);
    const double before = megabytes_at_most();
    for (Case& one : all)
        ask_ours(one);
    std::printf(
        "memory of all searches and bounds, one after another: %.1f MB above the %.1f MB of the start\n\n",
        megabytes_at_most() - before, before);
    std::printf("block        room seed   bound            search          to bound   polished         to "
                "bound   CBC, whole model\n");
    for (Case& one : all) {
        PolishBudget budget;
        budget.rounds = quick ? 2 : budget.rounds;
        one.polish = timed(
            [&] { return price_plan(one.problem, polish_plan(one.problem, one.plan, budget)).total(); });
        print_line(one, ask_rival(one, quick ? 5 : 40));
    }
}
