#include "planning/linear_model.h"

#include "planning/inside/linear_writer.h"

namespace amentum {
namespace {

std::string place(int m, int d, int c) {
    return "_m" + std::to_string(m + 1) + "_d" + std::to_string(d + 1) + "_c" + std::to_string(c + 1);
}

// What a line costs by standing there and what one set of it costs; what a set is worth: linear_worth.cpp.
void write_decision(const BlockProblem& problem, LinearModel& model, LinearWriter& write, int m, int d,
                    int c) {
    const Choice& choice = problem.choices[static_cast<std::size_t>(c)];
    const auto meso = static_cast<std::size_t>(m), session = static_cast<std::size_t>(d);
    const auto which = static_cast<std::size_t>(c);
    const double part = double(problem.mesos[meso].full_weeks.size()) / problem.full_weeks();
    const bool stood = problem.previous && (*problem.previous)[meso][session][which] > 0;
    if (stood)
        model.constant -= problem.costs.change; // of leaving it; given back where it stands again
    int& used = model.used[meso][session][which];
    int& sets = model.sets[meso][session][which];
    used = sets = -1;
    if (!choice.sessions[session] || problem.open_weeks(m, d, c) == 0)
        return;
    const double change = problem.previous ? (stood ? 1 : -1) * problem.costs.change : 0;
    used = write.whole_column("used" + place(m, d, c), 1, change - part * problem.costs.line);
    sets = write.whole_column("sets" + place(m, d, c), choice.most_sets,
                              choice.hard ? -part * problem.costs.fatigue_of_a_set : 0);
}

} // namespace

LinearModel linear_model(const BlockProblem& problem) {
    LinearModel model;
    model.used = model.sets = empty_plan(problem);
    LinearWriter write(problem, model);
    const int mesos = static_cast<int>(problem.mesos.size());
    for (int m = 0; m < mesos; ++m)
        for (int d = 0; d < problem.sessions; ++d)
            for (int c = 0; c < static_cast<int>(problem.choices.size()); ++c)
                write_decision(problem, model, write, m, d, c);
    for (int m = 0; m < mesos; ++m) {
        write_worth(problem, write, m);
        write_session_limits(problem, write, m);
        write_week_limits(problem, write, m);
    }
    return model;
}

} // namespace amentum
