#include "throwing_workload/throw_ramp.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace amentum {
namespace {

constexpr int most_in_a_session = 400;
constexpr int most_weeks = 52;

Result<Done> check_wanted(const ThrowRampWanted& wanted) {
    if (wanted.target_throws < 10 || wanted.target_throws > 1000)
        return refuse_range("target_throws", wanted.target_throws, 10, 1000, "throws a week");
    if (!(wanted.rise >= 0.10 && wanted.rise <= 0.20))
        return refuse_range("rise", wanted.rise, 0.10, 0.20, "",
                            "Each week rises by this share of the target.");
    if (wanted.start_throws < 0 || wanted.start_throws > wanted.target_throws)
        return refuse_range("start_throws", wanted.start_throws, 0, wanted.target_throws, "throws a week",
                            "The ramp starts at the target or below it.");
    if (wanted.days_between < 0 || wanted.days_between > 6)
        return refuse_range("days_between", wanted.days_between, 0, 6, "d");
    const int most = std::min(6, 7 / (wanted.days_between + 1));
    if (wanted.sessions_a_week < 1 || wanted.sessions_a_week > most)
        return refuse_range("sessions_a_week", wanted.sessions_a_week, 1, most, "",
                            "That many fit into a week with " + std::to_string(wanted.days_between) +
                                " days without throwing between them.");
    const int least = (wanted.target_throws + most_in_a_session - 1) / most_in_a_session;
    if (wanted.sessions_a_week < least)
        return refuse_range("sessions_a_week", wanted.sessions_a_week, least, most, "",
                            "A session has at most 400 throws.");
    return Done{};
}

Refusal refuse_no_room(const ThrowRampWanted& wanted, int reached) {
    const Date last = wanted.last_date.value_or(wanted.start + 7 * most_weeks - 1);
    return {RefusalCode::no_block_fits,
            "From " + wanted.start.text() + " to " + last.text() + " there is room up to " +
                std::to_string(reached) + " throws a week, not " + std::to_string(wanted.target_throws) + ".",
            wanted.last_date ? "last_date" : "days_off", last.text(),
            "a later last date, fewer days left out, a larger rise or a lower target"};
}

int weekly_rise(const ThrowRampWanted& wanted) {
    return std::max(1, static_cast<int>(std::floor(wanted.rise * wanted.target_throws + 1e-9)));
}

int early_sessions(const ThrowRampWanted& wanted) {
    return std::min(wanted.sessions_a_week, 7 / (std::max(1, wanted.days_between) + 1));
}

// Of a session over the one before.
double session_rise(const ThrowRampWanted& wanted) {
    return std::max(1.0, wanted.rise * wanted.target_throws / early_sessions(wanted)) + 1e-9;
}

class DaysOfRamp {
public:
    explicit DaysOfRamp(const ThrowRampWanted& wanted)
        : last_date_(wanted.last_date), off_(wanted.days_off.begin(), wanted.days_off.end()) {}

    // At most n days of the week from `first`, each at least `between` days clear of the one before and of `before`: spread
    // over the week where that loses none, else as early as they fit.
    std::vector<Date> days_in(Date first, int n, int between, std::optional<Date> before) const {
        auto spread = place(first, n, between, before, 7.0 / n);
        auto early = place(first, n, between, before, 0);
        return spread.size() < early.size() ? early : spread;
    }

private:
    std::vector<Date> place(Date first, int n, int between, std::optional<Date> last, double apart) const {
        std::vector<Date> days;
        for (int i = 0; i < n; ++i) {
            Date day = first + static_cast<int>(std::floor(i * apart));
            if (last)
                day = std::max(day, *last + between + 1);
            while (off_.contains(day))
                day = day + 1;
            if (day > first + 6 || (last_date_ && day > *last_date_))
                break;
            days.push_back(day);
            last = day;
        }
        return days;
    }

    std::optional<Date> last_date_;
    std::set<Date> off_;
};

std::string count(int n, const std::string& one) {
    return std::to_string(n) + " " + one + (n == 1 ? "" : "s");
}

std::string describe_week(const ThrowRampWeek& week, std::size_t number, const std::vector<int>& sizes,
                          int before, int wanted_sessions) {
    std::string words = "Week " + std::to_string(number) + ", from " + week.first.text() + ": ";
    if (sizes.empty())
        return words + "no free day, so no throws; the week after rises from the one before.";
    const auto [least, most] = std::minmax_element(sizes.begin(), sizes.end());
    words +=
        count(week.throws, "throw") + " in " + count(static_cast<int>(sizes.size()), "session") + ", " +
        (*least == *most ? std::to_string(*least) : std::to_string(*least) + " to " + std::to_string(*most)) +
        (sizes.size() == 1 ? "" : " each");
    if (week.throws >= before)
        words += "; " + std::to_string(week.throws - before) + " more than the week before.";
    else
        words += "; fewer than the " + std::to_string(before) + " of the week before.";
    if (static_cast<int>(sizes.size()) < wanted_sessions)
        words += " Days left out leave no room for " + std::to_string(wanted_sessions) + " sessions.";
    return words;
}

// Sizes of n sessions of a week of `total` throws; the remainder stands on the last ones.
std::vector<int> split(int total, int n) {
    std::vector<int> sizes;
    for (int i = 0; i < n; ++i)
        sizes.push_back(total / n + (n - i <= total % n));
    return sizes;
}

int sessions_for(const ThrowRampWanted& wanted, int total, int between) {
    return std::min({wanted.sessions_a_week, 7 / (between + 1), total});
}

void add_week(ThrowRamp& ramp, const ThrowRampWanted& wanted, const DaysOfRamp& days, int& level) {
    const std::size_t number = ramp.weeks.size() + 1;
    int total = std::min(wanted.target_throws, level + weekly_rise(wanted));
    const bool early = 2 * total < wanted.target_throws;
    const int between = early ? std::max(1, wanted.days_between) : wanted.days_between;
    const int sessions = sessions_for(wanted, total, between);
    if (!ramp.steps
             .empty()) { // fewer sessions than the week before, after a short one: none grows by more for it
        const int most = ramp.steps.back().throws + static_cast<int>(session_rise(wanted));
        total = std::min(total, sessions * most + sessions - 1);
    }
    auto sizes = split(total, sessions);
    ThrowRampWeek week{wanted.start + 7 * static_cast<int>(number - 1), 0, {}, ""};
    week.sessions = days.days_in(week.first, sessions, between,
                                 ramp.dates.empty() ? std::nullopt : std::optional(ramp.dates.back()));
    sizes.resize(week.sessions.size());
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        week.throws += sizes[i];
        ramp.steps.push_back(
            {sizes[i], {}, {}, "week " + std::to_string(number) + ", session " + std::to_string(i + 1)});
        ramp.dates.push_back(week.sessions[i]);
    }
    week.words = describe_week(week, number, sizes, level, sessions);
    if (!sizes.empty())
        level = week.throws;
    ramp.weeks.push_back(std::move(week));
}

} // namespace

Result<ThrowRamp> plan_throw_ramp(const ThrowRampWanted& wanted) {
    if (const auto checked = check_wanted(wanted); !checked)
        return checked.refusal();
    const DaysOfRamp days(wanted);
    ThrowRamp ramp;
    int level = wanted.start_throws, reached = 0;
    while (reached < wanted.target_throws) {
        const Date first = wanted.start + 7 * static_cast<int>(ramp.weeks.size());
        if (ramp.weeks.size() == most_weeks || (wanted.last_date && first > *wanted.last_date))
            return refuse_no_room(wanted, reached);
        add_week(ramp, wanted, days, level);
        reached = std::max(reached, ramp.weeks.back().throws);
    }
    return ramp;
}

int days_between_after(const ThrowSteps& steps, std::size_t step) {
    if (steps.origin == StepsOrigin::clinician || steps.steps.empty())
        return steps.days_between;
    const auto fewer = [](const ThrowStep& a, const ThrowStep& b) { return a.throws < b.throws; };
    const int most = std::max_element(steps.steps.begin(), steps.steps.end(), fewer)->throws;
    return 2 * steps.steps.at(step).throws < most ? std::max(1, steps.days_between) : steps.days_between;
}

Result<std::vector<ThrowStepNote>> check_throw_steps(const ThrowRampWanted& wanted,
                                                     std::span<const ThrowStep> steps) {
    if (const auto checked = check_wanted(wanted); !checked)
        return checked.refusal();
    if (steps.empty())
        return refuse_missing("steps", "the steps of the ramp");
    const int sessions = early_sessions(wanted);
    const double allowed = session_rise(wanted);
    std::vector<ThrowStepNote> notes;
    int before = (wanted.start_throws + sessions - 1) / sessions;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const int throws = steps[i].throws;
        if (throws < 1 || throws > most_in_a_session)
            return refuse_range("steps[" + std::to_string(i) + "].throws", throws, 1, most_in_a_session, "");
        if (throws - before > allowed)
            notes.push_back({i, count(throws, "throw") + ", " + std::to_string(throws - before) +
                                    " more than " +
                                    (i == 0 ? "a session of the start week" : "the step before") + "; " +
                                    format_fixed(100 * wanted.rise, 0) + " % of the target's session are " +
                                    format_fixed(allowed, 1) + "."});
        before = throws;
    }
    return notes;
}

} // namespace amentum
