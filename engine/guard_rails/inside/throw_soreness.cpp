#include "guard_rails/inside/throw_rules.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace amentum {
namespace {

constexpr double sore = 3;             // of 10: proposal of this project, no source
constexpr int lasting_days = 3;        // 72 h
constexpr int lasting_recent_days = 7; // a lasting soreness whose last note is older is history
constexpr int rising_days = 14;
constexpr std::size_t rising_sessions = 3;
constexpr double slower_share = 0.95; // of the usual speed: proposal of this project, no source
constexpr int usual_days = 28;
constexpr int usual_entries = 3;

using Notes = std::map<Date, double>; // the worst note of a day

void note(Notes& notes, Date day, const std::optional<double>& soreness) {
    if (!soreness)
        return;
    const auto [place, fresh] = notes.try_emplace(day, *soreness);
    if (!fresh)
        place->second = std::max(place->second, *soreness);
}

Finding refer(const std::string& sign, const std::string& sentence, const std::string& rule) {
    return {Severity::stops,
            sign,
            sentence,
            rule,
            "common practice in sports medicine, from memory",
            "Stop throwing and refer to a qualified clinician. This tool records and compares numbers; it "
            "does not "
            "diagnose, clear or predict injury."};
}

const std::string not_settling =
    "Soreness that lasts longer than 72 hours, or grows from session to session, is a sign to stop.";
const std::string losing_speed = "Lost speed together with soreness is a sign to stop.";

// At rest only: soreness right after throwing is usual and says nothing about lasting.
void check_lasting(const std::vector<ThrowEntry>& entries, Date today, std::vector<Finding>& findings) {
    Notes notes;
    for (const auto& entry : entries) {
        note(notes, entry.date, entry.soreness_before);
        if (entry.date < today)
            note(notes, entry.date + 1, entry.soreness_next_day);
    }
    std::optional<Date> since, last;
    for (const auto& [day, soreness] : notes) {
        if (soreness < sore)
            since.reset();
        else if (!since || day - *last > lasting_days)
            since = day;
        last = day;
    }
    if (!since || *last - *since <= lasting_days || today - *last > lasting_recent_days)
        return;
    findings.push_back(refer("soreness_not_settling",
                             "Every note from " + since->text() + " to " + last->text() + " says sore, " +
                                 format_fixed(sore, 0) + " of 10 or more: longer than 72 hours.",
                             not_settling));
}

void check_rising(const std::vector<ThrowEntry>& entries, Date today, std::vector<Finding>& findings) {
    Notes next_day, after;
    for (const auto& entry : entries) {
        if (today - entry.date > rising_days)
            continue;
        note(next_day, entry.date, entry.soreness_next_day);
        note(after, entry.date, entry.soreness_after);
    }
    for (const Notes& notes : {next_day, after}) {
        if (notes.size() < rising_sessions)
            continue;
        const auto third = notes.rbegin(), second = std::next(third), first = std::next(second);
        if (!(first->second < second->second && second->second < third->second && third->second >= sore))
            return;
        findings.push_back(
            refer("soreness_not_settling",
                  "Soreness rose over the last three sessions: " + format_shortest(first->second) + ", " +
                      format_shortest(second->second) + ", " + format_shortest(third->second) +
                      " of 10, to " + third->first.text() + ".",
                  not_settling));
        return;
    }
}

bool comparable(const ThrowEntry& a, const ThrowEntry& b) {
    const bool same_ball = a.ball_mass.has_value() == b.ball_mass.has_value() &&
                           (!a.ball_mass || std::abs((*a.ball_mass - *b.ball_mass).grams()) <= 1);
    return a.setting == b.setting && same_ball;
}

void check_slower(const std::vector<ThrowEntry>& entries, Date today, std::vector<Finding>& findings) {
    const auto latest =
        std::find_if(entries.rbegin(), entries.rend(), [](const auto& e) { return e.speed.has_value(); });
    if (latest == entries.rend() || today - latest->date > lasting_recent_days)
        return;
    const double worst = std::max({latest->soreness_before.value_or(0), latest->soreness_after.value_or(0),
                                   latest->soreness_next_day.value_or(0)});
    if (worst < sore)
        return;
    double sum = 0;
    int count = 0;
    for (const auto& entry : entries) {
        const int before = latest->date - entry.date;
        if (!entry.speed || before <= 0 || before > usual_days || !comparable(entry, *latest))
            continue;
        sum += entry.speed->metres_per_second();
        ++count;
    }
    if (count < usual_entries || latest->speed->metres_per_second() > slower_share * sum / count)
        return;
    const double lost = 1 - latest->speed->metres_per_second() * count / sum;
    findings.push_back(refer("losing_speed_with_soreness",
                             "On " + latest->date.text() + " the throws were " + format_fixed(100 * lost, 0) +
                                 " % slower than the mean of the " + std::to_string(count) +
                                 " entries like it before, with soreness of " + format_shortest(worst) +
                                 " of 10.",
                             losing_speed));
}

} // namespace

std::vector<Finding> check_soreness(const std::vector<ThrowEntry>& entries, Date today) {
    std::vector<Finding> findings;
    check_lasting(entries, today, findings);
    check_rising(entries, today, findings);
    check_slower(entries, today, findings);
    return findings;
}

} // namespace amentum
