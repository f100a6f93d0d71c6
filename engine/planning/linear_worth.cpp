#include "planning/inside/linear_writer.h"

namespace amentum {
namespace {

double full_weeks_of(const BlockProblem& problem, int m) {
    return static_cast<double>(problem.mesos[static_cast<std::size_t>(m)].full_weeks.size());
}

std::string in(int m) {
    return "_m" + std::to_string(m + 1);
}

// A column for each piece of the curve, as wide as the piece and worth its slope. The slopes fall, so that a solver
// fills the first pieces first; together they are no longer than the dose.
void write_dose(const BlockProblem& problem, LinearWriter& write, int m, int q) {
    const auto quality = static_cast<std::size_t>(q);
    const double weeks = full_weeks_of(problem, m);
    const double worth = 100 * problem.weights[quality] * weeks / problem.full_weeks();
    auto entries = write.sets_of_week(m, [&](int d, int c) {
        return -problem.choices[static_cast<std::size_t>(c)].serves[quality] * problem.open_weeks(m, d, c) /
               weeks;
    });
    if (entries.empty() || worth <= 0)
        return;
    const std::string which = in(m) + "_q" + std::to_string(q + 1);
    const auto& knots = problem.curve.knots;
    for (std::size_t k = 1; k < knots.size(); ++k) {
        const double width = knots[k].sets - knots[k - 1].sets;
        const double slope = (knots[k].share - knots[k - 1].share) / width;
        entries.push_back(
            {write.column("dose" + which + "_k" + std::to_string(k), 0, width, worth * slope), 1});
    }
    write.row("dose" + which, -unlimited, 0, std::move(entries));
}

// Sets above the usual number of a region: at least the sum less that number, and never wanted.
void write_fatigue(const BlockProblem& problem, LinearWriter& write, int m, int r) {
    auto entries = write.sets_of_week(m, [&](int, int c) {
        const Choice& choice = problem.choices[static_cast<std::size_t>(c)];
        return choice.hard && choice.region == static_cast<Region>(r) ? 1.0 : 0.0;
    });
    if (entries.empty())
        return;
    const std::string which = in(m) + "_r" + std::to_string(r + 1);
    const double part = full_weeks_of(problem, m) / problem.full_weeks();
    entries.push_back({write.column("above" + which, 0, unlimited, -part * problem.costs.fatigue_above), -1});
    write.row("above" + which, -unlimited, problem.limits.regions[static_cast<std::size_t>(r)].usual,
              std::move(entries));
}

void write_ready(const BlockProblem& problem, LinearWriter& write, int m, int group) {
    if (!problem.can_be_ready(group))
        return;
    const double weeks = full_weeks_of(problem, m);
    auto entries = write.sets_of_week(m, [&](int d, int c) {
        return problem.choices[static_cast<std::size_t>(c)].ready == group
                   ? problem.open_weeks(m, d, c) / weeks
                   : 0;
    });
    const std::string which = in(m) + "_g" + std::to_string(group + 1);
    const double part = weeks / problem.full_weeks();
    entries.push_back({write.column("short" + which, 0, unlimited, -part * problem.costs.ready), 1});
    write.row("short" + which, problem.costs.ready_sets, unlimited, std::move(entries));
}

} // namespace

void write_worth(const BlockProblem& problem, LinearWriter& write, int m) {
    for (int q = 0; q < static_cast<int>(problem.qualities.size()); ++q)
        write_dose(problem, write, m, q);
    for (int r = 0; r < regions_counted; ++r)
        write_fatigue(problem, write, m, r);
    for (int group = 0; group < ready_groups; ++group)
        write_ready(problem, write, m, group);
}

} // namespace amentum
