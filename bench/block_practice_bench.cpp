// Our block against three written blocks of common practice, for 200 throwers of invented halls, in the same minutes.
//
// Each written block is a list of lines in the order a coach would write them, made with the first exercise of the
// catalogue the gym can equip and the thrower may do, kept only while no limit is broken (planning/price_plan.h), week
// after week the same. Rules (common practice, no source):
//   whole body   every day: a jump, one main lift of the legs, a pull, a press, a ball throw, shoulder, trunk, mobility
//   split        leg days: main lift of the legs 5 sets, assistance, a jump; other days: two pulls, a press, shoulder
//   throws       every day: two ball throws, a jump, one main lift 3 sets, shoulder, mobility
// then, while minutes are left, a set more on each line in turn.
// The list of limiters is drawn at random for each thrower, so that no written block suits it by luck or by design.
// Points are those of the objective our search maximises, so winning is no proof of training: it shows that nothing
// simple was overlooked within the same account. The account's weaknesses: docs/methods/block_planning.md.
// Run it by `./dev bench`, or: ninja block_practice_bench && ./bench/block_practice_bench
#include "demo_facility/demo_facility.h"
#include "planning/search_plan.h"
#include "planning/state_problem.h"
#include "records/reference_tables.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <map>
#include <random>
#include <sstream>

using namespace amentum;

namespace {

struct Wanted {
    Part part;
    std::optional<Region> region;
    std::optional<LoadMeans> means;
    int sets;
};
using Day = std::vector<Wanted>;

struct Written {
    const char* name;
    Day on_leg_days;
    Day on_other_days;
};

const Wanted jump{Part::speed, Region::legs, LoadMeans::body, 3};
const Wanted leg_lift{Part::main_lift, Region::legs, {}, 4};
const Wanted pull{Part::main_lift, Region::upper_pull, {}, 3};
const Wanted other_pull{Part::assistance, Region::upper_pull, {}, 3};
const Wanted press{Part::main_lift, Region::upper_push, {}, 3};
const Wanted ball{Part::speed, Region::whole_body, LoadMeans::ball, 4};
const Wanted leg_help{Part::assistance, Region::legs, {}, 3};
const Wanted shoulder{Part::shoulder, {}, {}, 3};
const Wanted trunk{Part::trunk, {}, {}, 3};
const Wanted mobility{Part::mobility, {}, {}, 2};

const std::vector<Written> written{
    {"whole body",
     {jump, leg_lift, pull, press, ball, shoulder, trunk, mobility},
     {jump, pull, press, ball, other_pull, shoulder, trunk, mobility}},
    {"split",
     {jump, {Part::main_lift, Region::legs, {}, 5}, leg_help, trunk, mobility},
     {pull, other_pull, press, shoulder, ball, mobility}},
    {"throws",
     {ball, ball, jump, {Part::main_lift, Region::legs, {}, 3}, shoulder, mobility},
     {ball, ball, jump, {Part::main_lift, Region::upper_pull, {}, 3}, shoulder, mobility}}};

bool suits(const Choice& choice, const Exercise& exercise, const Wanted& wanted) {
    return choice.part == wanted.part && (!wanted.region || choice.region == *wanted.region) &&
           (!wanted.means || exercise.means == *wanted.means);
}

PlanSets plan_as_written(const StatedProblem& stated, const AllowedExercises& allowed, const Written& block) {
    const BlockProblem& problem = stated.problem;
    PlanSets plan = empty_plan(problem);
    const auto fails_only_for_want =
        [&](const PlanSets& tried) { // a session still without its main lift is no fault yet
            const auto found = breaches(problem, tried);
            return std::all_of(found.begin(), found.end(), [](const Breach& breach) {
                return breach.group == LimitGroup::main_lift && breach.words.ends_with("no main lift");
            });
        };
    for (std::size_t m = 0; m < problem.mesos.size(); ++m)
        for (int d = 0; d < problem.sessions; ++d) {
            const bool legs =
                std::any_of(problem.choices.begin(), problem.choices.end(), [&](const Choice& c) {
                    return c.heavy_legs && c.main_lift && c.sessions[static_cast<std::size_t>(d)];
                });
            auto& session = plan[m][static_cast<std::size_t>(d)];
            for (const auto& wanted : legs ? block.on_leg_days : block.on_other_days)
                for (std::size_t c = 0; c < problem.choices.size(); ++c) {
                    const Choice& choice = problem.choices[c];
                    if (session[c] > 0 || !suits(choice, *allowed.list[c].exercise, wanted))
                        continue;
                    session[c] = std::clamp(wanted.sets, choice.fewest_sets, choice.most_sets);
                    if (fails_only_for_want(plan))
                        break;
                    session[c] = 0;
                }
            for (bool more = true; more;) {
                more = false;
                for (auto& sets : session) {
                    if (sets == 0)
                        continue;
                    ++sets;
                    const bool fits = fails_only_for_want(plan);
                    sets -= !fits;
                    more |= fits;
                }
            }
        }
    return plan;
}

ReferenceTables tables_on_disk() {
    std::map<std::string, std::string> texts;
    for (const auto& name : reference_file_names()) {
        std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/" + name);
        std::ostringstream text;
        text << file.rdbuf();
        texts[name] = text.str();
    }
    return parse_reference_tables(texts).value();
}

struct Tally {
    int won = 0, complete = 0;
    double least = 1e9, sum = 0;
};

} // namespace

int main() {
    const ReferenceTables tables = tables_on_disk();
    std::mt19937_64 dice(6);
    const auto share = [&] { return -std::log((double(dice() >> 11) + 0.5) * 0x1.0p-53); };
    const Date last_day = Date::from(std::chrono::year(2026) / 6 / 1);
    std::vector<Tally> tally(written.size());
    int throwers = 0;
    double ours_sum = 0, seconds = 0;
    for (std::uint64_t hall = 1; throwers < 200; ++hall) {
        const auto demo = make_demo_facility(hall, last_day);
        for (const auto& athlete : demo.records.athletes) {
            if (throwers == 200)
                break;
            const auto kit = std::find_if(demo.records.kits.begin(), demo.records.kits.end(),
                                          [&](const Kit& each) { return each.id == athlete.kit; });
            BlockRequest request{
                athlete,          *kit,           last_day + 7, 4, 3, 60, {}, tables.qualities,
                tables.exercises, tables.cautions};
            for (const auto& quality : tables.qualities)
                if (quality.trainable)
                    request.priorities.push_back({quality.key, share(), ""});
            for (const auto& entry : demo.records.calendar)
                if (entry.athlete == athlete.id)
                    request.calendar.push_back(entry);
            const KitLoads loads(request.kit);
            const QualityWorth worth(request);
            const auto allowed = allowed_exercises(request, loads, worth);
            const auto stated = state_problem(request, allowed, worth);
            if (!stated)
                continue;
            const auto begun = std::chrono::steady_clock::now();
            const auto plan = search_plan(stated->problem);
            seconds += std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
            if (!plan)
                continue;
            ++throwers;
            const double ours = price_plan(stated->problem, *plan).total();
            ours_sum += ours;
            for (std::size_t w = 0; w < written.size(); ++w) {
                const auto theirs = plan_as_written(*stated, allowed, written[w]);
                const double ahead = ours - price_plan(stated->problem, theirs).total();
                tally[w].won += ahead > 0;
                tally[w].complete += breaches(stated->problem, theirs).empty();
                tally[w].least = std::min(tally[w].least, ahead);
                tally[w].sum += ahead;
            }
        }
    }
    std::printf("%d throwers, 4 weeks x 3 sessions x 60 minutes; our block: %.1f points on average, searched "
                "in %.2f s\n",
                throwers, ours_sum / throwers, seconds / throwers);
    std::printf(
        "  written block   ours has more points   ahead on average   least ahead   keeps every limit\n");
    for (std::size_t w = 0; w < written.size(); ++w)
        std::printf("  %-13s   %3d of %3d             %6.1f             %6.1f        %3d\n", written[w].name,
                    tally[w].won, throwers, tally[w].sum / throwers, tally[w].least, tally[w].complete);
    const bool met =
        std::all_of(tally.begin(), tally.end(), [&](const Tally& t) { return t.won == throwers; });
    std::printf("Bar: more points than each, for every thrower: %s\n", met ? "met" : "NOT MET");
    return met ? 0 : 1;
}
