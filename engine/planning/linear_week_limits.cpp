#include "planning/inside/linear_writer.h"

namespace amentum {
namespace {

class Week {
public:
    Week(const BlockProblem& problem, LinearWriter& write, int m)
        : problem_(problem), write_(write), m_(m), at_("_m" + std::to_string(m + 1)) {}

    void write_all() {
        for (int r = 0; r < regions_counted; ++r)
            write_.row("region" + at_ + "_r" + std::to_string(r + 1), -unlimited,
                       problem_.limits.regions[static_cast<std::size_t>(r)].most,
                       write_.sets_of_week(m_,
                                           [&](int, int c) {
                                               return choice(c).hard &&
                                                              choice(c).region == static_cast<Region>(r)
                                                          ? 1.0
                                                          : 0.0;
                                           }),
                       LimitGroup::region_sets, r);
        write_.row("arm" + at_, -unlimited, problem_.limits.most_arm_sets,
                   write_.sets_of_week(m_, [&](int, int c) { return choice(c).hard_on_arm ? 1.0 : 0.0; }),
                   LimitGroup::arm_sets, 0);
        for (int c = 0; c < static_cast<int>(problem_.choices.size()); ++c)
            write_days(c);
        for (std::size_t pair = 0; pair < problem_.limits.neighbours.size(); ++pair)
            write_neighbours(pair);
        write_ramp();
        write_starts();
        for (std::size_t wish = 0; wish < problem_.least.size(); ++wish)
            write_least(wish);
    }

private:
    const Choice& choice(int c) const { return problem_.choices[static_cast<std::size_t>(c)]; }

    void write_days(int c) {
        std::vector<LinearEntry> days;
        for (int d = 0; d < problem_.sessions; ++d)
            if (const int used = write_.used(m_, d, c); used >= 0)
                days.push_back({used, 1});
        if (static_cast<int>(days.size()) > problem_.limits.most_days)
            write_.row("days" + at_ + "_c" + std::to_string(c + 1), -unlimited, problem_.limits.most_days,
                       std::move(days), LimitGroup::once);
    }

    // Of the two sessions one holds no main lift heavy for the legs. Where a session holds one at most, the count of both
    // says it; else a column of its own says whether there is any, and each line is below that.
    void write_neighbours(std::size_t number) {
        const auto [a, b] = problem_.limits.neighbours[number];
        const auto heavy_main = [&](int c) {
            return choice(c).heavy_legs && choice(c).main_lift ? 1.0 : 0.0;
        };
        const std::string name = "neighbours" + at_ + "_n" + std::to_string(number + 1);
        std::vector<LinearEntry> both;
        for (const int d : {a, b}) {
            if (problem_.limits.most_heavy_mains <= 1) {
                write_.add_lines(both, m_, d, heavy_main);
                continue;
            }
            const int any = write_.column("heavy" + name + "_d" + std::to_string(d + 1), 0, 1, 0);
            for (const auto& line : write_.lines_of(m_, d, heavy_main))
                write_.row(name + "_d" + std::to_string(d + 1) + "_i" + std::to_string(line.column),
                           -unlimited, 0, {line, {any, -1}});
            both.push_back({any, 1});
        }
        write_.row(name, -unlimited, 1, std::move(both), LimitGroup::day_structure);
    }

    void write_ramp() {
        if (m_ == 0)
            return;
        auto entries = write_.sets_of_week(m_, [&](int, int c) { return choice(c).hard ? 1.0 : 0.0; });
        for (const auto& before : write_.sets_of_week(
                 m_ - 1, [&](int, int c) { return choice(c).hard ? -problem_.limits.ramp : 0.0; }))
            entries.push_back(before);
        write_.row("ramp" + at_, -unlimited, 0, std::move(entries), LimitGroup::ramp);
    }

    void write_starts() {
        for (const auto& week : problem_.mesos[static_cast<std::size_t>(m_)].full_weeks) {
            if (!week.start_week)
                continue;
            auto legs = write_.sets_of_week(m_, [&](int d, int c) {
                const auto s = static_cast<std::size_t>(d);
                return choice(c).heavy_legs && week.held[s] && !week.legs_spared[s] ? 1.0 : 0.0;
            });
            write_.row("start" + at_ + "_w" + std::to_string(week.week), -unlimited,
                       problem_.limits.most_leg_sets_before_start, std::move(legs));
        }
    }

    void write_least(std::size_t number) {
        const auto& wish = problem_.least[number];
        const double weeks =
            static_cast<double>(problem_.mesos[static_cast<std::size_t>(m_)].full_weeks.size());
        auto dose = write_.sets_of_week(m_, [&](int d, int c) {
            return choice(c).serves[static_cast<std::size_t>(wish.quality)] * problem_.open_weeks(m_, d, c) /
                   weeks;
        });
        write_.row("least" + at_ + "_l" + std::to_string(number + 1), wish.weekly_sets, unlimited,
                   std::move(dose), LimitGroup::least_dose, static_cast<int>(number));
    }

    const BlockProblem& problem_;
    LinearWriter& write_;
    int m_;
    std::string at_;
};

} // namespace

void write_week_limits(const BlockProblem& problem, LinearWriter& write, int m) {
    Week(problem, write, m).write_all();
}

} // namespace amentum
