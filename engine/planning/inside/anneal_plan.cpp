#include "planning/inside/anneal_plan.h"

#include "planning/inside/cooling.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double coldest = 0.004; // points

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

Annealing::Annealing(const BlockProblem& problem, const PlanSets& from, std::uint64_t seed,
                     const std::vector<char>& among)
    : problem_(problem), plan_(problem, from), stream_(seed) {
    for (int m = 0; m < static_cast<int>(problem.mesos.size()); ++m) {
        auto& sessions = candidates_.emplace_back();
        for (int d = 0; d < problem.sessions; ++d) {
            auto& all = sessions.emplace_back();
            for (const int c : plan_.candidates(m, d))
                if (among.empty() || among[at(c)])
                    all.push_back(c);
        }
    }
}

bool Annealing::run(std::int64_t moves, double hottest, const std::function<bool(double share)>& going) {
    if (broken() <= 0)
        keep();
    return cool(*this, stream_, moves, hottest, coldest, going);
}

bool Annealing::change() {
    undo_.clear();
    for (int more = depth(); more > 0; --more)
        move();
    return !undo_.empty();
}

void Annealing::move() {
    const int m = stream_.below(static_cast<int>(problem_.mesos.size()));
    const int d = stream_.below(problem_.sessions);
    const int dice = stream_.below(100);
    if (dice < 35)
        one_set(m, d);
    else if (dice < 52)
        add(m, d);
    else if (dice < 60)
        leave_out(m, d);
    else if (dice < 85)
        exchange(m, d);
    else if (dice < 93)
        carry_over(m, d);
    else
        copy(m, d);
}

void Annealing::one_set(int m, int d) {
    const int c = drawn_line(m, d);
    if (c < 0)
        return;
    const Choice& what = problem_.choices[at(c)];
    const int sets = plan_.sets(m, d, c) + (stream_.below(2) == 0 ? -1 : 1);
    if (sets >= what.fewest_sets && sets <= what.most_sets)
        put(m, d, c, sets);
}

void Annealing::add(int m, int d) {
    const int c = drawn_candidate(m, d);
    if (c < 0 || plan_.sets(m, d, c) > 0)
        return;
    const Choice& what = problem_.choices[at(c)];
    put(m, d, c, what.fewest_sets + stream_.below(what.most_sets - what.fewest_sets + 1));
}

void Annealing::leave_out(int m, int d) {
    if (const int c = drawn_line(m, d); c >= 0)
        put(m, d, c, 0);
}

void Annealing::exchange(int m, int d) {
    const int c = drawn_line(m, d);
    const int other = drawn_candidate(m, d);
    if (c < 0 || other < 0 || plan_.sets(m, d, other) > 0)
        return;
    const Choice& what = problem_.choices[at(other)];
    const int sets = std::clamp(plan_.sets(m, d, c), what.fewest_sets, what.most_sets);
    put(m, d, c, 0);
    put(m, d, other, sets);
}

// A line to another session of the week.
void Annealing::carry_over(int m, int d) {
    const int c = drawn_line(m, d);
    const int to = stream_.below(problem_.sessions);
    if (c < 0 || to == d || plan_.sets(m, to, c) > 0 || !may_stand(m, to, c))
        return;
    const int sets = plan_.sets(m, d, c);
    put(m, d, c, 0);
    put(m, to, c, sets);
}

// The session as another meso has it.
void Annealing::copy(int m, int d) {
    const int from = stream_.below(static_cast<int>(problem_.mesos.size()));
    if (from == m)
        return;
    const auto lines = plan_.lines(m, d);
    for (const int c : lines)
        if (plan_.sets(from, d, c) == 0)
            put(m, d, c, 0);
    const auto theirs = plan_.lines(from, d);
    for (const int c : theirs)
        if (may_stand(m, d, c))
            put(m, d, c, plan_.sets(from, d, c));
}

int Annealing::depth() {
    const int dice = stream_.below(10);
    return dice < 6 ? 1 : dice < 9 ? 2 : 3;
}

void Annealing::put(int m, int d, int c, int sets) {
    const int pinned = plan_.pinned(m, d, c);
    if (pinned >= 0 && (sets == 0 || (pinned > 0 && sets != pinned)))
        return;
    undo_.push_back({m, d, c, plan_.sets(m, d, c)});
    plan_.set(m, d, c, sets);
}

void Annealing::take_back() {
    for (auto was = undo_.rbegin(); was != undo_.rend(); ++was)
        plan_.set(was->meso, was->session, was->choice, was->sets);
}

void Annealing::keep() {
    const double points = plan_.points();
    if (best_ && points <= best_points_ + 1e-12)
        return;
    best_ = plan_.sets();
    best_points_ = points;
}

int Annealing::drawn_line(int m, int d) {
    const auto& lines = plan_.lines(m, d);
    return lines.empty() ? -1 : lines[at(stream_.below(static_cast<int>(lines.size())))];
}

int Annealing::drawn_candidate(int m, int d) {
    const auto& all = candidates_[at(m)][at(d)];
    return all.empty() ? -1 : all[at(stream_.below(static_cast<int>(all.size())))];
}

bool Annealing::may_stand(int m, int d, int c) const {
    const auto& all = plan_.candidates(m, d);
    return std::binary_search(all.begin(), all.end(), c);
}

} // namespace amentum
