#include "planning/dose.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double least_worth = 0.03; // a line chosen is worth some sets, whatever its qualities

class Minutes {
public:
    explicit Minutes(double all) : left_(all) {}
    bool take(const Exercise& exercise, int before, int more) {
        const double cost = more * exercise.set_minutes + (before == 0 ? exercise.setup_minutes : 0);
        constexpr double rounding = 1e-9;
        if (cost > left_ + rounding)
            return false;
        left_ -= cost;
        return true;
    }

private:
    double left_;
};

// The line with the highest average still below its most; -1 when all are full.
int next_line(const SessionTemplate& session, const std::vector<int>& sets) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < std::ssize(session.lines); ++i) {
        const auto& line = session.lines[static_cast<std::size_t>(i)];
        const int held = sets[static_cast<std::size_t>(i)];
        if (held >= line.most_sets)
            continue;
        const double average =
            std::max(line.what->worth, least_worth) / (2 * std::max(held, line.first_sets) + 1);
        if (average > most) {
            most = average;
            best = i;
        }
    }
    return best;
}

} // namespace

std::vector<int> dose_session(const SessionTemplate& session, double minutes) {
    std::vector<int> sets(session.lines.size(), 0);
    Minutes left(minutes);
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const auto& line = session.lines[i];
        if (!line.always)
            continue;
        if (!left.take(*line.what->exercise, 0, line.first_sets))
            return sets;
        sets[i] = line.first_sets;
    }
    for (int next = next_line(session, sets); next >= 0; next = next_line(session, sets)) {
        const auto i = static_cast<std::size_t>(next);
        const int more = sets[i] == 0 ? session.lines[i].first_sets : 1;
        if (!left.take(*session.lines[i].what->exercise, sets[i], more))
            return sets;
        sets[i] += more;
    }
    return sets;
}

std::vector<int> reduced_sets(const std::vector<int>& sets) {
    std::vector<int> halved;
    int carried = 1;
    for (const int each : sets) {
        halved.push_back(std::max(1, (each + carried) / 2));
        carried = (each + carried) % 2;
    }
    return halved;
}

} // namespace amentum
