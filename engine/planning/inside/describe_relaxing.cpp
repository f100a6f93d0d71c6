#include "planning/inside/describe_relaxing.h"

#include "planning/inside/linear_writer.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// To the next tenth above: an amount said must be enough.
std::string enough(double amount) {
    return format_shortest(std::ceil(10 * amount - 1e-6) / 10);
}

std::string plain(std::string key) {
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

std::string counted(double amount, const std::string& one, const std::string& more) {
    return enough(amount) + " " + (amount > 1 + 1e-6 ? more : one);
}

std::string regions_moved(const BlockProblem& problem, const std::map<int, double>& moved) {
    std::string words;
    for (const auto& [region, by] : moved)
        if (by > 1e-6)
            words += (words.empty() ? "" : ", ") + plain(std::string(word(static_cast<Region>(region)))) +
                     " " + enough(problem.limits.regions[static_cast<std::size_t>(region)].most + by) +
                     " instead of " + enough(problem.limits.regions[static_cast<std::size_t>(region)].most);
    return words;
}

std::string doses_moved(const BlockProblem& problem, const std::map<int, double>& moved) {
    std::string words;
    for (const auto& [number, by] : moved) {
        const auto& wish = problem.least[static_cast<std::size_t>(number)];
        const double left = std::floor(10 * (wish.weekly_sets - by) + 1e-6) / 10;
        if (by > 1e-6)
            words += (words.empty() ? "" : ", ") +
                     plain(problem.qualities[static_cast<std::size_t>(wish.quality)]) + " " +
                     format_shortest(std::max(0.0, left)) + " instead of " +
                     format_shortest(wish.weekly_sets);
    }
    return words;
}

std::string lines_given_up(const BlockProblem& problem, const std::map<int, double>& moved) {
    const auto name = [&](int choice) { return problem.choices[static_cast<std::size_t>(choice)].name; };
    std::string words;
    for (const auto& [number, by] : moved) {
        if (by < 0.5)
            continue;
        const auto n = static_cast<std::size_t>(number), pins = problem.pinned.size();
        words += words.empty() ? "" : ", ";
        words += n < pins ? "no longer holding " + name(problem.pinned[n].choice) + " in session " +
                                std::to_string(problem.pinned[n].session + 1)
                          : "allowing " + name(problem.barred[n - pins].choice) + " again";
    }
    return words;
}

} // namespace

std::string describe_relaxing(const BlockProblem& problem, LimitGroup group,
                              const std::map<int, double>& moved) {
    double by = 0;
    for (const auto& [number, each] : moved)
        by += each;
    const auto& limits = problem.limits;
    switch (group) {
    case LimitGroup::minutes:
        return counted(by, "minute", "minutes") +
               " more in each session would do: " + enough(limits.minutes + by) + " instead of " +
               enough(limits.minutes);
    case LimitGroup::region_sets:
        return "More weekly hard sets would do: " + regions_moved(problem, moved);
    case LimitGroup::arm_sets:
        return "Weekly sets hard on the arm would have to rise to " + enough(limits.most_arm_sets + by) +
               " from " + enough(limits.most_arm_sets) + "; spare the arm and relax another limit first";
    case LimitGroup::ramp:
        return counted(by, "hard set", "hard sets") +
               " more than the rise from one part of the block to the next allows would do";
    case LimitGroup::main_lift:
        return counted(by, "session", "sessions") + " without a main lift, or with one more, would do";
    case LimitGroup::lines:
        return counted(by, "exercise", "exercises") +
               " more in each session would do: " + enough(limits.most_lines + by) + " instead of " +
               std::to_string(limits.most_lines);
    case LimitGroup::once:
        return "A second exercise of a pattern in a session, or a further day of one exercise, would do, " +
               counted(by, "time", "times");
    case LimitGroup::day_structure:
        return "One more exercise heavy for the legs in a session, or on the day after, would do, " +
               counted(by, "time", "times");
    case LimitGroup::own_lines:
        return "It would do to change what you hold or leave out: " + lines_given_up(problem, moved);
    case LimitGroup::least_dose:
        return "Asking for fewer weekly sets would do: " + doses_moved(problem, moved);
    case LimitGroup::sets_of_line:
        return counted(by, "set", "sets") + " beyond the fewest and most of an exercise would do";
    }
    return "";
}

std::string describe_not_enough(LimitGroup group) {
    return "To relax " + std::string(limit_words(group)) + " alone is not enough";
}

} // namespace amentum
