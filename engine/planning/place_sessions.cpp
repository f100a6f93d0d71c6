#include "planning/place_sessions.h"

#include "planning/calendar_days.h"

#include <algorithm>
#include <array>
#include <limits>
#include <numeric>

namespace amentum {
namespace {

// Costs of a week's arrangement; proposals of this project, no source. Only their order of size matters.
constexpr double last_resort_day = 1000, legs_before_start = 200, arm_after_start = 60;
constexpr double next_to_each_other = 6, heavy_legs_two_days_running = 12, legs_soon_after_start = -3;
constexpr double not_usual_day = 4, out_of_order = 2, weekend = 2.5, uneven_gap = 1;
constexpr double impossible = std::numeric_limits<double>::infinity();

constexpr std::array<const char*, 7> weekday_names{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                   "Friday", "Saturday", "Sunday"};
std::string weekday_of(Date date) {
    return weekday_names[static_cast<std::size_t>(date.iso_weekday() - 1)];
}

constexpr int no_usual_day = -1;
using Offsets =
    std::vector<int>; // of each session, in the order of the templates, days from the week's first

struct Week {
    const BlockRequest& request;
    const CalendarDays& calendar;
    const std::vector<SessionNeeds>& sessions;
    const Offsets* usual; // null while the usual days are sought
    Date first;
    std::optional<Date> last_before; // the last session of the week before
    bool last_was_heavy;
    bool days_apart;
};

double cost_of_day(const Week& week, std::size_t session, int offset) {
    const Date date = week.first + offset;
    const SessionNeeds& what = week.sessions[session];
    const DayUse use = week.calendar.use_of(date);
    if (use == DayUse::never)
        return impossible;
    double cost = use == DayUse::last_resort ? last_resort_day : 0;
    if (what.heavy_legs && week.calendar.start_within_48_h(date))
        cost += legs_before_start;
    if (what.heavy_legs && week.calendar.soon_after_start(date))
        cost += legs_soon_after_start;
    if (what.hard_on_arm && week.calendar.start_just_before(date))
        cost += arm_after_start;
    if (week.request.weekdays.empty() && date.iso_weekday() >= 6)
        cost += weekend;
    if (week.usual && (*week.usual)[session] != offset)
        cost += not_usual_day;
    return cost;
}

double cost_of_pair(const Week& week, bool heavy_both, int days_between) {
    if (days_between != 1)
        return 0;
    if (week.days_apart)
        return impossible;
    return next_to_each_other + (heavy_both ? heavy_legs_two_days_running : 0);
}

double cost_of_spacing(const Week& week, const Offsets& offsets) {
    std::vector<std::pair<int, std::size_t>> by_day;
    for (std::size_t i = 0; i < offsets.size(); ++i)
        by_day.emplace_back(offsets[i], i);
    std::sort(by_day.begin(), by_day.end());
    double cost = 0;
    const double even = 7.0 / static_cast<double>(offsets.size());
    for (std::size_t i = 0; i < by_day.size(); ++i) {
        const bool last = i + 1 == by_day.size();
        const int gap = last ? by_day[0].first + 7 - by_day[i].first : by_day[i + 1].first - by_day[i].first;
        if (!week.usual)
            cost += uneven_gap * (gap - even) * (gap - even);
        if (last && week.usual)
            break;
        const auto next = by_day[last ? 0 : i + 1].second;
        const bool heavy_both = week.sessions[by_day[i].second].heavy_legs && week.sessions[next].heavy_legs;
        if (by_day.size() > 1)
            cost += cost_of_pair(week, heavy_both, gap);
        if (!last && by_day[i].second > next)
            cost += out_of_order;
    }
    if (week.last_before) {
        const bool heavy_both = week.last_was_heavy && week.sessions[by_day[0].second].heavy_legs;
        cost += cost_of_pair(week, heavy_both, week.first + by_day[0].first - *week.last_before);
    }
    return cost;
}

using DayCosts = std::vector<std::array<double, 7>>;

// All ways to give the first `count` sessions different days, the first of the cheapest kept.
struct Search {
    const Week& week;
    const DayCosts& day_costs;
    std::size_t count;
    Offsets trial = {};
    Offsets best = {};
    double least = impossible;

    void extend(double cost) {
        if (trial.size() == count) {
            const double whole = cost + cost_of_spacing(week, trial);
            if (whole < least) {
                least = whole;
                best = trial;
            }
            return;
        }
        for (int offset = 0; offset < 7; ++offset) {
            const double more = day_costs[trial.size()][static_cast<std::size_t>(offset)];
            if (more == impossible || std::find(trial.begin(), trial.end(), offset) != trial.end())
                continue;
            trial.push_back(offset);
            extend(cost + more);
            trial.pop_back();
        }
    }
};

DayCosts costs_of_days(const Week& week) {
    DayCosts costs(week.sessions.size());
    for (std::size_t session = 0; session < costs.size(); ++session)
        for (int offset = 0; offset < 7; ++offset)
            costs[session][static_cast<std::size_t>(offset)] = cost_of_day(week, session, offset);
    return costs;
}

// As many sessions as find a day, from the first template on.
Offsets cheapest(const Week& week) {
    const DayCosts day_costs = costs_of_days(week);
    for (std::size_t count = week.sessions.size(); count > 0; --count) {
        Search search{week, day_costs, count};
        search.extend(0);
        if (search.least < impossible)
            return search.best;
    }
    return {};
}

std::string describe_move(const Week& week, std::size_t session, int offset) {
    if ((*week.usual)[session] == no_usual_day)
        return "";
    const Date usual = week.first + (*week.usual)[session];
    const Date date = week.first + offset;
    if (usual == date)
        return "";
    std::string why;
    if (const auto start = week.calendar.start_within_48_h(usual); start && week.sessions[session].heavy_legs)
        why = ", more than 48 h clear of the start on " + start->text();
    else if (week.calendar.use_of(usual) != DayUse::free)
        why = ", because that day is taken";
    else
        why = ", to make room in this week";
    return "on " + weekday_of(date) + " instead of " + weekday_of(usual) + why;
}

PlacedSession placed(const Week& week, std::size_t session, int offset) {
    const Date date = week.first + offset;
    PlacedSession place{session, date, "", "", describe_move(week, session, offset), ""};
    if (const auto start = week.calendar.start_just_before(date))
        place.spare_arm = "the athlete starts as pitcher on " + start->text();
    if (const auto start = week.calendar.start_within_48_h(date))
        place.spare_legs = "the start on " + start->text() + " is less than 48 h away";
    if (week.calendar.use_of(date) == DayUse::last_resort)
        place.last_resort = "no other day of this week is free";
    return place;
}

// The weekdays the sessions fall on when nothing else is on.
Offsets usual_days(const BlockRequest& request, const std::vector<SessionNeeds>& sessions, bool days_apart) {
    BlockRequest quiet = request;
    quiet.calendar.clear();
    const CalendarDays nothing(quiet);
    return cheapest({request, nothing, sessions, nullptr, request.start, std::nullopt, false, days_apart});
}

} // namespace

std::vector<PlacedWeek> place_sessions(const BlockRequest& request,
                                       const std::vector<std::vector<SessionNeeds>>& needs_of_weeks,
                                       bool days_apart) {
    const CalendarDays calendar(request);
    std::vector<PlacedWeek> weeks;
    std::optional<Date> last_before;
    bool last_was_heavy = false;
    for (std::size_t w = 0; w < needs_of_weeks.size(); ++w) {
        const auto& sessions = needs_of_weeks[w];
        Offsets usual = usual_days(request, sessions, days_apart);
        usual.resize(sessions.size(), no_usual_day);
        const Week week{
            request,     calendar,       sessions,  &usual, request.start + 7 * static_cast<int>(w),
            last_before, last_was_heavy, days_apart};
        const Offsets offsets = cheapest(week);
        PlacedWeek result{{}, static_cast<int>(sessions.size() - offsets.size())};
        for (std::size_t i = 0; i < offsets.size(); ++i)
            result.sessions.push_back(placed(week, i, offsets[i]));
        std::sort(result.sessions.begin(), result.sessions.end(),
                  [](const auto& a, const auto& b) { return a.date < b.date; });
        if (!result.sessions.empty()) {
            last_before = result.sessions.back().date;
            last_was_heavy = sessions[result.sessions.back().of_week].heavy_legs;
        }
        weeks.push_back(std::move(result));
    }
    return weeks;
}

} // namespace amentum
