#include "planning/search_plan.h"

#include "planning/inside/running_plan.h"
#include "planning/inside/seeded_stream.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

// Points at the start and the end of the cooling, and of a unit broken; found on the random problems of the tests.
constexpr double hottest = 1.5, coldest = 0.004;
constexpr double lightest_breach = 2, heaviest_breach = 60;
constexpr double cooled_start = 0.15; // of a start that is already a plan
constexpr int steps_of_cooling = 200;

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

// ln(1 / u) for u in the middle of 1,024 equal parts of (0, 1), by the series of the inverse hyperbolic tangent in plain
// arithmetic, so that no library's logarithm decides what is accepted.
class Thresholds {
public:
    Thresholds() {
        for (std::size_t i = 0; i < table_.size(); ++i) {
            double u = (static_cast<double>(i) + 0.5) / static_cast<double>(table_.size());
            double log = 0;
            constexpr double ln_2 = 0.6931471805599453;
            while (u < 0.5) {
                u *= 2;
                log += ln_2;
            }
            const double z = (1 - u) / (1 + u);
            double term = z, sum = 0;
            for (int k = 1; k < 60; k += 2, term *= z * z)
                sum += term / k;
            table_[i] = log + 2 * sum;
        }
    }
    double drawn(SeededStream& stream) const { return table_[at(stream.below(1024))]; }

private:
    std::array<double, 1024> table_;
};

const Thresholds& thresholds() {
    static const Thresholds table;
    return table;
}

class Annealing {
public:
    Annealing(const BlockProblem& problem, const PlanSets& from, std::uint64_t seed)
        : problem_(problem), plan_(problem, from), stream_(seed) {}

    // False: asked to stop.
    bool run(std::int64_t moves, double start, const std::function<bool(double)>& going, double done,
             double of) {
        double temperature = hottest * start;
        const double cooling = root_of(coldest / temperature);
        const double heavier = root_of(heaviest_breach / lightest_breach);
        breach_ = lightest_breach;
        double value = plan_.points() - breach_ * plan_.broken();
        keep_if_best();
        for (int step = 0; step < steps_of_cooling; ++step) {
            if (going && !going(done + of * step / steps_of_cooling))
                return false;
            value = plan_.points() - breach_ * plan_.broken();
            for (std::int64_t i = 0; i < moves / steps_of_cooling; ++i) {
                undo_.clear();
                for (int more = depth(); more > 0; --more)
                    move();
                if (undo_.empty())
                    continue;
                const double broken = plan_.broken();
                const double next = plan_.points() - breach_ * broken;
                if (value - next > temperature * thresholds().drawn(stream_)) {
                    take_back();
                    continue;
                }
                value = next;
                if (broken <= 0)
                    keep_if_best();
            }
            temperature *= cooling;
            breach_ *= heavier;
        }
        return true;
    }

    const std::optional<PlanSets>& best() const { return best_; }
    double best_points() const { return best_points_; }

private:
    struct Was {
        int meso, session, choice, sets;
    };

    // The factor that, taken once a step, leads over the whole cooling; by halving, again without a library.
    static double root_of(double ratio) {
        double low = 0, high = std::max(1.0, ratio);
        for (int i = 0; i < 200; ++i) {
            const double middle = (low + high) / 2;
            double power = 1;
            for (int k = 0; k < steps_of_cooling; ++k)
                power *= middle;
            (power < ratio ? low : high) = middle;
        }
        return (low + high) / 2;
    }

    int depth() {
        const int dice = stream_.below(10);
        return dice < 6 ? 1 : dice < 9 ? 2 : 3;
    }

    void put(int m, int d, int c, int sets) {
        const int pinned = plan_.pinned(m, d, c);
        if (pinned >= 0 && (sets == 0 || (pinned > 0 && sets != pinned)))
            return;
        undo_.push_back({m, d, c, plan_.sets(m, d, c)});
        plan_.set(m, d, c, sets);
    }
    void take_back() {
        for (auto was = undo_.rbegin(); was != undo_.rend(); ++was)
            plan_.set(was->meso, was->session, was->choice, was->sets);
    }
    void keep_if_best() {
        const double points = plan_.points();
        if (plan_.broken() > 0 || (best_ && points <= best_points_ + 1e-12))
            return;
        best_ = plan_.sets();
        best_points_ = points;
    }

    int drawn_line(int m, int d) {
        const auto& lines = plan_.lines(m, d);
        return lines.empty() ? -1 : lines[at(stream_.below(static_cast<int>(lines.size())))];
    }
    int drawn_candidate(int m, int d) {
        const auto& all = plan_.candidates(m, d);
        return all.empty() ? -1 : all[at(stream_.below(static_cast<int>(all.size())))];
    }
    int drawn_sets(const Choice& what) {
        return what.fewest_sets + stream_.below(what.most_sets - what.fewest_sets + 1);
    }

    void move() {
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

    void one_set(int m, int d) {
        const int c = drawn_line(m, d);
        if (c < 0)
            return;
        const Choice& what = problem_.choices[at(c)];
        const int sets = plan_.sets(m, d, c) + (stream_.below(2) == 0 ? -1 : 1);
        if (sets >= what.fewest_sets && sets <= what.most_sets)
            put(m, d, c, sets);
    }
    void add(int m, int d) {
        const int c = drawn_candidate(m, d);
        if (c >= 0 && plan_.sets(m, d, c) == 0)
            put(m, d, c, drawn_sets(problem_.choices[at(c)]));
    }
    void leave_out(int m, int d) {
        if (const int c = drawn_line(m, d); c >= 0)
            put(m, d, c, 0);
    }
    void exchange(int m, int d) {
        const int c = drawn_line(m, d);
        const int other = drawn_candidate(m, d);
        if (c < 0 || other < 0 || plan_.sets(m, d, other) > 0)
            return;
        const Choice& what = problem_.choices[at(other)];
        const int sets = std::clamp(plan_.sets(m, d, c), what.fewest_sets, what.most_sets);
        put(m, d, c, 0);
        put(m, d, other, sets);
    }
    // A line to another session of the week, or the same line as another meso has it.
    void carry_over(int m, int d) {
        const int c = drawn_line(m, d);
        const int to = stream_.below(problem_.sessions);
        if (c < 0 || to == d || plan_.sets(m, to, c) > 0)
            return;
        const auto& may = plan_.candidates(m, to);
        if (!std::binary_search(may.begin(), may.end(), c))
            return;
        const int sets = plan_.sets(m, d, c);
        put(m, d, c, 0);
        put(m, to, c, sets);
    }
    void copy(int m, int d) {
        const int from = stream_.below(static_cast<int>(problem_.mesos.size()));
        if (from == m)
            return;
        const auto lines = plan_.lines(m, d);
        for (const int c : lines)
            if (plan_.sets(from, d, c) == 0)
                put(m, d, c, 0);
        const auto& may = plan_.candidates(m, d);
        const auto theirs = plan_.lines(from, d);
        for (const int c : theirs)
            if (std::binary_search(may.begin(), may.end(), c))
                put(m, d, c, plan_.sets(from, d, c));
    }

    const BlockProblem& problem_;
    RunningPlan plan_;
    SeededStream stream_;
    double breach_ = lightest_breach;
    std::vector<Was> undo_;
    std::optional<PlanSets> best_;
    double best_points_ = 0;
};

// Pinned lines stand from the start, because no move takes them away.
PlanSets with_pins(const BlockProblem& problem, PlanSets plan) {
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (const auto& pin : problem.pinned) {
            if (problem.open_weeks(static_cast<int>(m), pin.session, pin.choice) == 0)
                continue;
            int& sets = plan[m][at(pin.session)][at(pin.choice)];
            if (pin.sets || sets == 0)
                sets = pin.sets.value_or(problem.choices[at(pin.choice)].fewest_sets);
        }
    return plan;
}

// Only what may stand, with numbers the choice allows.
PlanSets standing(const BlockProblem& problem, PlanSets plan) {
    for (std::size_t m = 0; m < plan.size(); ++m)
        for (int d = 0; d < problem.sessions; ++d)
            for (std::size_t c = 0; c < problem.choices.size(); ++c) {
                int& sets = plan[m][at(d)][c];
                const int choice = static_cast<int>(c);
                const Choice& what = problem.choices[c];
                if (!problem.may_stand(d, choice) || problem.open_weeks(static_cast<int>(m), d, choice) == 0)
                    sets = 0;
                if (sets > 0)
                    sets = std::clamp(sets, what.fewest_sets, what.most_sets);
            }
    return plan;
}

BlockProblem first_meso_of(const BlockProblem& problem) {
    BlockProblem one = problem;
    one.mesos.resize(1);
    if (one.previous)
        one.previous->resize(1);
    return one;
}

} // namespace

std::optional<PlanSets> search_plan(const BlockProblem& problem, const SearchBudget& budget,
                                    const PlanSets* from, const std::function<bool(double share)>& going) {
    std::optional<PlanSets> best;
    double most = 0;
    const auto mesos = static_cast<std::int64_t>(problem.mesos.size());
    for (int start = 0; start < budget.starts; ++start) {
        const std::uint64_t seed = budget.seed * 1000 + static_cast<std::uint64_t>(start);
        const double done = static_cast<double>(start) / budget.starts, of = 1.0 / budget.starts;
        const bool given = from && start == 0;
        PlanSets begin = given ? standing(problem, *from) : empty_plan(problem);
        double heat = given ? cooled_start : 1;
        if (!given && mesos > 1) { // the mesos are much alike: one alone first, then all from copies of it
            const BlockProblem one = first_meso_of(problem);
            Annealing alone(one, with_pins(one, empty_plan(one)), seed + 500);
            const bool went = alone.run(budget.moves_of_a_meso, 1, going, done, of / 2);
            if (alone.best()) {
                begin = standing(problem, PlanSets(problem.mesos.size(), alone.best()->front()));
                heat = cooled_start;
            }
            if (!went)
                return best;
        }
        Annealing annealing(problem, with_pins(problem, begin), seed);
        const bool went = annealing.run(budget.moves_of_a_meso * mesos, heat, going, done + of / 2, of / 2);
        if (annealing.best() && (!best || annealing.best_points() > most)) {
            best = annealing.best();
            most = annealing.best_points();
        }
        if (!went)
            break;
    }
    return best;
}

} // namespace amentum
