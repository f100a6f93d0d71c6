#include "planning/inside/search_week.h"

#include "planning/inside/cooling.h"
#include "planning/inside/running_plan.h"
#include "planning/inside/running_week.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

constexpr double coldest = 0.005; // points; found on the random problems of the tests
constexpr int carried = 4000;     // tries, while something is broken

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

class WeekSearch {
public:
    WeekSearch(const BlockProblem& problem, std::uint64_t seed, const std::vector<char>& among)
        : week_(problem, 0), stream_(seed) {
        for (const int c : week_.candidates())
            if (among.empty() || among[at(c)])
                among_.push_back(c);
    }

    const RunningWeek& run(std::int64_t moves, double hottest) {
        if (!among_.empty())
            cool(*this, stream_, moves, hottest, coldest);
        return week_;
    }

    bool change() {
        undo_.clear();
        move();
        return !undo_.empty();
    }
    void take_back() {
        for (auto was = undo_.rbegin(); was != undo_.rend(); ++was)
            week_.set(was->choice, was->sets);
    }
    void keep() {} // the coolest is good enough to begin with
    double points() const { return week_.points(); }
    double broken() const { return week_.broken(); }

private:
    struct Was {
        int choice, sets;
    };

    int drawn(const std::vector<int>& from) { return from[at(stream_.below(static_cast<int>(from.size())))]; }
    void put(int choice, int sets) {
        undo_.push_back({choice, week_.sets(choice)});
        week_.set(choice, sets);
    }
    void move() {
        const int dice = stream_.below(100);
        const int in = drawn(among_);
        const bool another = week_.sets(in) == 0;
        if (dice < 10 && another)
            put(in, week_.fewest(in) + stream_.below(week_.most(in) - week_.fewest(in) + 1));
        if (dice < 10 || week_.held().empty())
            return;
        const int held = drawn(week_.held()), sets = week_.sets(held);
        if (dice < 20) {
            put(held, 0);
        } else if (dice < 50) {
            if (const int other = sets + (stream_.below(2) == 0 ? -1 : 1); week_.allows(held, other))
                put(held, other);
        } else if (another) { // for the one held, with about as many sets
            const int about =
                std::clamp(sets + stream_.below(3) - 1, week_.fewest(in), week_.days(in) * week_.most(in));
            if (!week_.allows(in, about))
                return;
            put(held, 0);
            put(in, about);
        }
    }

    RunningWeek week_;
    std::vector<int> among_;
    SeededStream stream_;
    std::vector<Was> undo_;
};

struct Line {
    int choice, sets;
    double minutes;
    int day = -1; // none yet
};

// Lays the lines of a week on days and carries them between days, one or two at a time, for as long as nothing more is
// broken than before; what they are stays as it is.
class Days {
public:
    Days(const BlockProblem& problem, std::uint64_t seed)
        : problem_(problem), plan_(problem, empty_plan(problem)), stream_(seed) {}

    PlanSets lay(std::vector<Line> lines) {
        lines_ = std::move(lines);
        std::vector<double> minutes(at(problem_.sessions), 0);
        for (Line& line : lines_) {
            double least = 0;
            int best = -1;
            for (int d = 0; d < problem_.sessions; ++d) {
                if (!free(line, d))
                    continue;
                put(line, d);
                const double cost = plan_.broken() + minutes[at(d)] / (100 * problem_.limits.minutes);
                if (best < 0 || cost < least) {
                    best = d;
                    least = cost;
                }
            }
            put(line, best);
            if (best >= 0)
                minutes[at(best)] += line.minutes;
        }
        settle();
        return plan_.sets();
    }

private:
    bool free(const Line& line, int day) const {
        const auto& may = plan_.candidates(0, day);
        return plan_.sets(0, day, line.choice) == 0 &&
               std::binary_search(may.begin(), may.end(), line.choice);
    }
    void put(Line& line, int day) {
        if (line.day >= 0)
            plan_.set(0, line.day, line.choice, 0);
        line.day = day;
        if (day >= 0)
            plan_.set(0, day, line.choice, line.sets);
    }
    Line& drawn() { return lines_[at(stream_.below(static_cast<int>(lines_.size())))]; }

    void settle() {
        double broken = plan_.broken();
        for (int i = 0; i < carried && broken > 0 && !lines_.empty(); ++i) {
            Line &one = drawn(), &other = drawn();
            const int day = stream_.below(problem_.sessions), was = one.day, others = other.day;
            const bool both = stream_.below(2) == 0 && others >= 0;
            const int to = both ? others : day;
            if (!free(one, to) || (both && (one.choice == other.choice || was < 0 || !free(other, was))))
                continue;
            put(one, to);
            if (both)
                put(other, was);
            const double now = plan_.broken();
            if (now <= broken) {
                broken = now;
                continue;
            }
            if (both)
                put(other, others);
            put(one, was);
        }
    }

    const BlockProblem& problem_;
    RunningPlan plan_;
    SeededStream stream_;
    std::vector<Line> lines_;
};

std::vector<Line> lines_of(const BlockProblem& problem, const RunningWeek& week) {
    std::vector<Line> lines;
    for (const int c : week.candidates()) {
        const Choice& choice = problem.choices[at(c)];
        const int sets = week.sets(c), many = week.lines(c, sets);
        for (int line = 0; line < many; ++line) { // as even as can be
            const int part = sets / many + (line < sets % many);
            lines.push_back({c, part, part * choice.set_minutes + choice.setup_minutes});
        }
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.minutes > b.minutes; });
    return lines;
}

} // namespace

PlanSets week_before_days(const BlockProblem& problem, std::int64_t moves, double hottest, std::uint64_t seed,
                          const std::vector<char>& among) {
    assert(problem.mesos.size() == 1);
    WeekSearch search(problem, seed, among);
    return Days(problem, seed).lay(lines_of(problem, search.run(moves, hottest)));
}

} // namespace amentum
