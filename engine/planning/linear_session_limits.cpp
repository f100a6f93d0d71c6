#include "planning/inside/linear_writer.h"

#include <map>

namespace amentum {
namespace {

class Session {
public:
    Session(const BlockProblem& problem, LinearWriter& write, int m, int d)
        : problem_(problem), write_(write), m_(m), d_(d),
          at_("_m" + std::to_string(m + 1) + "_d" + std::to_string(d + 1)) {}

    void write_all() {
        const auto& limits = problem_.limits;
        write_minutes();
        at_most(
            "lines", limits.most_lines, LimitGroup::lines, [](const Choice&) { return true; }, 0);
        at_most("heavy", limits.most_heavy_legs, LimitGroup::day_structure,
                [](const Choice& c) { return c.heavy_legs; });
        at_most("heavy_mains", limits.most_heavy_mains, LimitGroup::day_structure,
                [](const Choice& c) { return c.heavy_legs && c.main_lift; });
        write_patterns();
        write_main_lifts();
        for (int c = 0; c < static_cast<int>(problem_.choices.size()); ++c)
            write_line(c);
        for (std::size_t p = 0; p < problem_.pinned.size(); ++p)
            write_pin(problem_.pinned[p], p);
    }

private:
    const Choice& choice(int c) const { return problem_.choices[static_cast<std::size_t>(c)]; }

    template <class Is>
    std::vector<LinearEntry> lines(Is is) const {
        return write_.lines_of(m_, d_, [&](int c) { return is(choice(c)) ? 1.0 : 0.0; });
    }
    template <class Is>
    void at_most(const std::string& name, double most, LimitGroup group, Is is,
                 std::optional<int> number = {}) {
        write_.row(name + at_, -unlimited, most, lines(is), group, number);
    }

    void write_minutes() {
        auto entries = write_.lines_of(m_, d_, [&](int c) { return choice(c).setup_minutes; });
        write_.add_sets(entries, m_, d_, [&](int c) { return choice(c).set_minutes; });
        write_.row("minutes" + at_, -unlimited, problem_.limits.minutes, std::move(entries),
                   LimitGroup::minutes, 0);
    }

    void write_patterns() {
        std::map<std::string, int> places;
        for (int c = 0; c < static_cast<int>(problem_.choices.size()); ++c)
            places[choice(c).pattern] += write_.used(m_, d_, c) >= 0;
        int number = 0;
        for (const auto& [pattern, count] : places)
            if (++number; count > 1)
                at_most("pattern" + std::to_string(number), 1, LimitGroup::once,
                        [&](const Choice& c) { return c.pattern == pattern; });
    }

    void write_main_lifts() {
        const bool wanted = problem_.limits.main_lift_wanted && problem_.main_lift_possible(m_, d_);
        write_.row("mains" + at_, wanted ? 1 : -unlimited, problem_.limits.most_main_lifts,
                   lines([](const Choice& c) { return c.main_lift; }), LimitGroup::main_lift);
    }

    // fewest used <= sets <= most used; a barred line may not be used.
    void write_line(int c) {
        const int used = write_.used(m_, d_, c), sets = write_.sets(m_, d_, c);
        if (used < 0)
            return;
        const std::string line = at_ + "_c" + std::to_string(c + 1);
        write_.row("most" + line, -unlimited, 0, {{sets, 1}, {used, -double(choice(c).most_sets)}},
                   LimitGroup::sets_of_line);
        write_.row("fewest" + line, 0, unlimited, {{sets, 1}, {used, -double(choice(c).fewest_sets)}},
                   LimitGroup::sets_of_line);
        for (std::size_t b = 0; b < problem_.barred.size(); ++b)
            if (const Barred& bar = problem_.barred[b];
                bar.choice == c && (!bar.session || *bar.session == d_))
                write_.row("barred" + line + "_b" + std::to_string(b + 1), -unlimited, 0, {{used, 1}},
                           LimitGroup::own_lines, static_cast<int>(problem_.pinned.size() + b));
    }

    // A pin given up gives up its sets with it.
    void write_pin(const Pinned& pin, std::size_t p) {
        if (pin.session != d_ || problem_.open_weeks(m_, d_, pin.choice) == 0)
            return;
        const int used = write_.used(m_, d_, pin.choice), sets = write_.sets(m_, d_, pin.choice);
        const int number = static_cast<int>(p);
        const std::string name = at_ + "_p" + std::to_string(p + 1);
        std::vector<LinearEntry> line;
        if (used >= 0) // else it never stands here: a row nothing can keep
            line.push_back({used, 1});
        write_.row("pinned" + name, 1, unlimited, line, LimitGroup::own_lines, number);
        if (pin.sets && used >= 0)
            write_.row("pinned_sets" + name, *pin.sets, *pin.sets, {{sets, 1}}, LimitGroup::own_lines, number,
                       loosest_sets);
    }

    const BlockProblem& problem_;
    LinearWriter& write_;
    int m_, d_;
    std::string at_;
};

} // namespace

void write_session_limits(const BlockProblem& problem, LinearWriter& write, int m) {
    for (int d = 0; d < problem.sessions; ++d)
        Session(problem, write, m, d).write_all();
}

} // namespace amentum
