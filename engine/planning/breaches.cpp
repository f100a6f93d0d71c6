#include "planning/price_plan.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace amentum {
namespace {

constexpr double rounding = 1e-9;

std::string spoken(double number) {
    return format_shortest(std::round(10 * number) / 10);
}

const char* region_name(Region region) {
    switch (region) {
    case Region::legs:
        return "the legs";
    case Region::upper_pull:
        return "pulling";
    case Region::upper_push:
        return "pressing";
    case Region::shoulder:
        return "the shoulder";
    case Region::trunk:
        return "the trunk";
    case Region::whole_body:
        return "the whole body";
    }
    return "";
}

class Checked {
public:
    Checked(const BlockProblem& problem, const PlanSets& plan, Mood mood)
        : problem_(problem), plan_(plan), has_(mood == Mood::stands ? " has " : " would have ") {}

    std::vector<Breach> all() {
        for (m_ = 0; m_ < static_cast<int>(plan_.size()); ++m_) {
            for (d_ = 0; d_ < problem_.sessions; ++d_)
                check_session();
            check_week();
        }
        return std::move(found_);
    }

private:
    int sets(int session, int choice) const {
        return plan_[static_cast<std::size_t>(m_)][static_cast<std::size_t>(session)]
                    [static_cast<std::size_t>(choice)];
    }
    const Choice& choice(int c) const { return problem_.choices[static_cast<std::size_t>(c)]; }
    int choices() const { return static_cast<int>(problem_.choices.size()); }
    std::string session_name(int d) const { return "session " + std::to_string(d + 1); }

    template <class Is>
    int lines_of(int session, Is is) const {
        int count = 0;
        for (int c = 0; c < choices(); ++c)
            count += sets(session, c) > 0 && is(choice(c));
        return count;
    }
    template <class Of>
    double weekly(Of of) const {
        double sum = 0;
        for (int d = 0; d < problem_.sessions; ++d)
            for (int c = 0; c < choices(); ++c)
                if (sets(d, c) > 0)
                    sum += of(d, c);
        return sum;
    }

    void above(double is, double most, std::optional<LimitGroup> group, std::optional<int> session,
               const std::string& what, const std::string& unit, std::optional<int> which = {}) {
        if (is > most + rounding)
            found_.push_back({group, m_, session, which, is - most,
                              what + has_ + spoken(is) + " " + unit + ", at most " + spoken(most)});
    }

    void check_session() {
        double minutes = 0;
        for (int c = 0; c < choices(); ++c)
            if (const int n = sets(d_, c); n > 0) {
                minutes += choice(c).setup_minutes + n * choice(c).set_minutes;
                check_line(c, n);
            }
        const auto& limits = problem_.limits;
        const std::string name = session_name(d_);
        above(minutes, limits.minutes, LimitGroup::minutes, d_, name, "minutes");
        above(lines_of(d_, [](const Choice&) { return true; }), limits.most_lines, LimitGroup::lines, d_,
              name, "exercises");
        const auto heavy = [](const Choice& c) { return c.heavy_legs; };
        const auto heavy_main = [](const Choice& c) { return c.heavy_legs && c.main_lift; };
        above(lines_of(d_, heavy), limits.most_heavy_legs, LimitGroup::day_structure, d_, name,
              "exercises heavy for the legs");
        above(lines_of(d_, heavy_main), limits.most_heavy_mains, LimitGroup::day_structure, d_, name,
              "main lifts heavy for the legs");
        std::map<std::string, int> patterns;
        for (int c = 0; c < choices(); ++c)
            if (sets(d_, c) > 0)
                ++patterns[choice(c).pattern];
        for (const auto& [pattern, count] : patterns)
            above(count, 1, LimitGroup::once, d_, name, "exercises of one pattern (" + pattern + ")");
        check_main_lifts(name);
        check_pins(name);
    }

    void check_line(int c, int n) {
        const Choice& what = choice(c);
        above(n, what.most_sets, LimitGroup::sets_of_line, d_, what.name, "sets", c);
        if (n < what.fewest_sets)
            found_.push_back({LimitGroup::sets_of_line, m_, d_, c, double(what.fewest_sets - n),
                              what.name + " has fewer sets than it needs"});
        const bool own = what.sessions[static_cast<std::size_t>(d_)];
        if (own && !problem_.may_stand(d_, c))
            found_.push_back({LimitGroup::own_lines, m_, d_, c, 1, what.name + " was left out by hand"});
        if (!own || problem_.open_weeks(m_, d_, c) == 0)
            found_.push_back({{}, m_, d_, c, 1, what.name + " may not stand in " + session_name(d_)});
    }

    void check_main_lifts(const std::string& name) {
        const int held = lines_of(d_, [](const Choice& c) { return c.main_lift; });
        above(held, problem_.limits.most_main_lifts, LimitGroup::main_lift, d_, name, "main lifts");
        if (problem_.limits.main_lift_wanted && held == 0 && problem_.main_lift_possible(m_, d_))
            found_.push_back({LimitGroup::main_lift, m_, d_, {}, 1, name + " has no main lift"});
    }

    void check_pins(const std::string& name) {
        for (const auto& pin : problem_.pinned) {
            if (pin.session != d_ || problem_.open_weeks(m_, d_, pin.choice) == 0)
                continue;
            const int n = sets(d_, pin.choice);
            if (n == 0 || (pin.sets && n != *pin.sets))
                found_.push_back({LimitGroup::own_lines, m_, d_, pin.choice,
                                  double(std::abs(pin.sets.value_or(1) - n)),
                                  name + " does not hold " + choice(pin.choice).name + " as pinned"});
        }
    }

    void check_week() {
        const auto& limits = problem_.limits;
        for (int r = 0; r < regions_counted; ++r)
            above(weekly([&](int d, int c) {
                      return choice(c).hard && choice(c).region == static_cast<Region>(r) ? sets(d, c) : 0;
                  }),
                  limits.regions[static_cast<std::size_t>(r)].most, LimitGroup::region_sets, {}, "the week",
                  std::string("hard sets of ") + region_name(static_cast<Region>(r)));
        above(weekly([&](int d, int c) { return choice(c).hard_on_arm ? sets(d, c) : 0; }),
              limits.most_arm_sets, LimitGroup::arm_sets, {}, "the week", "sets hard on the arm");
        for (int c = 0; c < choices(); ++c)
            above(weekly([&](int, int other) { return other == c ? 1 : 0; }), limits.most_days,
                  LimitGroup::once, {}, choice(c).name, "days", c);
        check_neighbours();
        check_ramp();
        check_starts();
        for (const auto& least : problem_.least)
            check_least(least);
    }

    void check_neighbours() {
        const auto heavy_main = [](const Choice& c) { return c.heavy_legs && c.main_lift; };
        for (const auto& [a, b] : problem_.limits.neighbours)
            if (lines_of(a, heavy_main) > 0 && lines_of(b, heavy_main) > 0)
                found_.push_back({LimitGroup::day_structure,
                                  m_,
                                  b,
                                  {},
                                  1,
                                  session_name(a) + " and " + session_name(b) +
                                      " load the legs heavily on two days running"});
    }

    double hard_sets(int meso) const {
        double sum = 0;
        for (int d = 0; d < problem_.sessions; ++d)
            for (int c = 0; c < choices(); ++c)
                if (choice(c).hard)
                    sum += plan_[static_cast<std::size_t>(meso)][static_cast<std::size_t>(d)]
                                [static_cast<std::size_t>(c)];
        return sum;
    }
    void check_ramp() {
        if (m_ > 0)
            above(hard_sets(m_), problem_.limits.ramp * hard_sets(m_ - 1), LimitGroup::ramp, {},
                  "the week after", "hard sets");
    }

    void check_starts() {
        for (const auto& week : problem_.mesos[static_cast<std::size_t>(m_)].full_weeks) {
            if (!week.start_week)
                continue;
            const double legs = weekly([&](int d, int c) {
                const auto s = static_cast<std::size_t>(d);
                return choice(c).heavy_legs && week.held[s] && !week.legs_spared[s] ? sets(d, c) : 0;
            });
            above(legs, problem_.limits.most_leg_sets_before_start, {}, {},
                  "week " + std::to_string(week.week) + ", with a start,", "sets heavy for the legs");
        }
    }

    void check_least(const LeastDose& least) {
        const double weeks =
            static_cast<double>(problem_.mesos[static_cast<std::size_t>(m_)].full_weeks.size());
        const double dose = weekly([&](int d, int c) {
            return sets(d, c) * choice(c).serves[static_cast<std::size_t>(least.quality)] *
                   problem_.open_weeks(m_, d, c) / weeks;
        });
        if (dose < least.weekly_sets - rounding)
            found_.push_back({LimitGroup::least_dose,
                              m_,
                              {},
                              {},
                              least.weekly_sets - dose,
                              problem_.qualities[static_cast<std::size_t>(least.quality)] + " gets " +
                                  spoken(dose) + " weekly sets of at least " + spoken(least.weekly_sets)});
    }

    const BlockProblem& problem_;
    const PlanSets& plan_;
    const char* has_;
    int m_ = 0, d_ = 0;
    std::vector<Breach> found_;
};

} // namespace

const char* limit_words(LimitGroup group) {
    switch (group) {
    case LimitGroup::minutes:
        return "the minutes of a session";
    case LimitGroup::region_sets:
        return "the weekly hard sets of a region";
    case LimitGroup::arm_sets:
        return "the weekly sets hard on the arm";
    case LimitGroup::ramp:
        return "the rise from one part of the block to the next";
    case LimitGroup::main_lift:
        return "a main lift in every session, and no more than allowed";
    case LimitGroup::lines:
        return "the number of exercises in a session";
    case LimitGroup::once:
        return "a pattern once a session, an exercise two days a week";
    case LimitGroup::day_structure:
        return "heavy leg work in a session and on two days running";
    case LimitGroup::own_lines:
        return "the lines you hold or leave out";
    case LimitGroup::least_dose:
        return "the weekly sets you ask for at least";
    case LimitGroup::sets_of_line:
        return "the fewest and most sets of one exercise";
    }
    return "";
}

std::vector<Breach> breaches(const BlockProblem& problem, const PlanSets& plan, Mood mood) {
    return Checked(problem, plan, mood).all();
}

} // namespace amentum
