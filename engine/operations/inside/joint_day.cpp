#include "operations/inside/joint_day.h"

#include "measurement/joint_range.h"
#include "measurement/joint_trials.h"
#include "measurement/side_comparison.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <functional>

namespace amentum {
namespace {

constexpr ShownUnit degrees{"deg", 1, 1};
constexpr double published_cut_off = 5; // degrees, of total rotation and of flexion [Wilk2011; Wilk2014]

ShownEstimate shown(const Estimate& e) {
    return shown_estimate(e.value, e.central(), degrees);
}

const SidesOfDay* on_day(const AngleDays* angle, Date date) {
    if (angle)
        for (const auto& day : angle->days)
            if (day.date == date)
                return &day;
    return nullptr;
}

const AngleDays* angle_named(const std::vector<AngleDays>& angles, const std::string& key) {
    for (const auto& each : angles)
        if (each.kind->key == key)
            return &each;
    return nullptr;
}

void add_angle(JointDay& shown_day, const TestKind& kind, const std::string& side,
               const MeasuredSide& measured) {
    const auto trials = measure_angle_trials(measured.trials, kind.trial_error, kind.day_error);
    if (!trials)
        return;
    std::string words;
    if (measured.trials.size() == 1)
        words = "One reading cannot show a misreading: take a second.";
    else if (trials->one_more)
        words = "The readings lie " + format_fixed(trials->spread, 1) + " degrees apart, more than the " +
                format_fixed(trials->spread_allowed, 1) + " that their error allows: take one more.";
    shown_day.angles.push_back(
        {kind.key, kind.name, side + ", " + word(measured.result.side), measured.trials,
         shown({measured.result.value, measured.result.standard_error}), trials->spread,
         trials->spread_allowed, trials->one_more, measured.result.device, measured.result.rater, words});
}

// The deficit (other less main) on a day, or why there is none.
using DeficitOn = std::function<Result<Estimate>(Date)>;

Refusal not_measured() {
    return {RefusalCode::too_few_data, "not measured on both sides that day.", "", "", "both sides"};
}

Result<Estimate> deficit_of_angle(const AngleDays& angle, Date date) {
    const auto* day = on_day(&angle, date);
    if (!day || !day->main || !day->other)
        return not_measured();
    const auto difference = measure_side_difference(day->main->result, day->other->result);
    if (!difference)
        return difference.refusal();
    return Estimate{-difference->value, difference->standard_error};
}

Result<Estimate> deficit_of_total(const AngleDays* outward, const AngleDays* inward, Date date) {
    const auto *o = on_day(outward, date), *i = on_day(inward, date);
    if (!o || !i || !o->main || !o->other || !i->main || !i->other)
        return not_measured();
    return measure_rotation_deficit({o->main->result, i->main->result}, {o->other->result, i->other->result});
}

std::string found_words(RangeFinding finding, const std::string& size, const std::string& cut_off) {
    switch (finding) {
    case RangeFinding::show_clinician:
        return size + ": worth showing to a clinician. It is no sign of injury by itself.";
    case RangeFinding::measure_again:
        return size + ": worth measuring again on another day; the published line of " + cut_off +
               " degrees lies inside the error of one difference.";
    case RangeFinding::none_seen:
        return size + ": no deficit above the published line of " + cut_off + " degrees was seen.";
    }
    return {};
}

std::string error_words(SideVerdict verdict, const std::string& size) {
    if (verdict == SideVerdict::larger_than_error)
        return size +
               ": larger than the error of measuring it. Throwers turn further outward and less inward "
               "because they throw.";
    if (verdict == SideVerdict::cannot_tell)
        return size + ": cannot tell from the error of measuring it; measure again.";
    return size + ": within the error of measuring it.";
}

// `days` are all days up to this one, for how often the deficit was seen.
RangeDifference difference_of(const std::string& what, const Estimate& deficit, bool with_cut_off,
                              const DeficitOn& deficit_on, const std::vector<Date>& days) {
    const Estimate difference{-deficit.value, deficit.standard_error};
    const std::string size =
        what + " " + describe_difference(difference.value, difference.central(), degrees);
    RangeDifference line{what, shown(difference), {}, "", 0, ""};
    if (!with_cut_off) {
        const auto verdict = judge_difference(difference);
        line.finding = word(verdict);
        line.words = error_words(verdict, size);
        return line;
    }
    for (const Date day : days)
        if (const auto then = deficit_on(day); then && then->value > published_cut_off)
            ++line.days_found;
    const auto finding = *judge_range_deficit(deficit, published_cut_off, line.days_found);
    line.cut_off = published_cut_off;
    line.finding = word(finding);
    line.words = found_words(finding, size, format_fixed(published_cut_off, 0));
    if (finding == RangeFinding::none_seen &&
        deficit.value + z90 * deficit.standard_error > published_cut_off)
        line.words += " Its error does not exclude one either.";
    return line;
}

void add_difference(JointDay& shown_day, const std::string& what, bool with_cut_off,
                    const DeficitOn& deficit_on, Date date, const std::vector<Date>& days) {
    const auto deficit = deficit_on(date);
    if (deficit)
        shown_day.differences.push_back(difference_of(what, *deficit, with_cut_off, deficit_on, days));
    else
        shown_day.missing.push_back(what + ": " + deficit.refusal().sentence);
}

void add_total(JointDay& shown_day, const std::string& joint, const std::vector<AngleDays>& angles, Date date,
               const std::vector<Date>& days) {
    const auto* outward = angle_named(angles, joint + "_external_rotation");
    const auto* inward = angle_named(angles, joint + "_internal_rotation");
    const auto *o = on_day(outward, date), *i = on_day(inward, date);
    if (!o && !i)
        return;
    const auto side = [&](const std::optional<MeasuredSide> SidesOfDay::*which, const std::string& words) {
        if (!o || !i || !(o->*which) || !(i->*which))
            return;
        const auto total = measure_total_rotation({(o->*which)->result, (i->*which)->result});
        if (total)
            shown_day.totals.push_back({joint, words + ", " + word((o->*which)->result.side), shown(*total)});
    };
    const TestKind& kind = *(o ? outward : inward)->kind;
    side(&SidesOfDay::main, main_side_words(kind));
    side(&SidesOfDay::other, other_side_words(kind));
    const std::string what = "Total rotation, " + joint;
    add_difference(
        shown_day, what, joint == "shoulder",
        [&](Date day) { return deficit_of_total(outward, inward, day); }, date, days);
}

std::vector<Date> days_up_to(const std::vector<AngleDays>& angles, Date date) {
    std::map<Date, bool> days;
    for (const auto& angle : angles)
        for (const auto& day : angle.days)
            if (day.date <= date)
                days[day.date] = true;
    std::vector<Date> all;
    for (const auto& [day, held] : days)
        all.push_back(day);
    return all;
}

} // namespace

std::vector<AngleDays> angles_of(const Workplace::Inside& inside, const FacilityView& view,
                                 const Athlete& athlete) {
    std::vector<AngleDays> angles;
    for (const auto& kind : inside.tables.test_kinds)
        if (kind.measure == Measure::joint_angle && !kind.quality.empty())
            angles.push_back({&kind, sides_by_day(view, kind, athlete)});
    return angles;
}

JointDay joint_day(const std::vector<AngleDays>& angles, Date date) {
    JointDay shown_day{date.text(), {}, {}, {}, {}};
    const auto days = days_up_to(angles, date);
    for (const auto& angle : angles) {
        const auto* day = on_day(&angle, date);
        if (!day)
            continue;
        if (day->main)
            add_angle(shown_day, *angle.kind, main_side_words(*angle.kind), *day->main);
        if (day->other)
            add_angle(shown_day, *angle.kind, other_side_words(*angle.kind), *day->other);
        shown_day.missing.insert(shown_day.missing.end(), day->refusals.begin(), day->refusals.end());
        add_difference(
            shown_day, angle.kind->name, angle.kind->key == "shoulder_flexion",
            [&angle](Date on) { return deficit_of_angle(angle, on); }, date, days);
    }
    for (const std::string joint : {"shoulder", "hip"})
        add_total(shown_day, joint, angles, date, days);
    return shown_day;
}

} // namespace amentum
