#include "operations/log_set.h"

#include "guard_rails/check_logged_sets.h"
#include "inference/test_scale.h"
#include "measurement/measure_test.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/inside.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace amentum {
namespace {

constexpr double heaviest_kg = 600, fastest_ms = 60; // no set of any lift here is heavier, no ball faster

Result<SetDone> set_from(const LogSetRequest& request, const Workplace::Inside& inside,
                         const Athlete& athlete) {
    const bool fit = request.key.size() >= 8 && request.key.size() <= 64 &&
                     std::all_of(request.key.begin(), request.key.end(), [](char c) {
                         return std::isalnum(static_cast<unsigned char>(c)) || c == '-';
                     });
    if (!fit)
        return Refusal{RefusalCode::wrong_type,
                       "key must be 8 to 64 letters, digits or '-', made on the device.", "key", request.key,
                       "8 to 64 letters, digits or '-'"};
    if (!inside.tables.exercise(request.exercise)) {
        std::vector<std::string> keys;
        for (const auto& each : inside.tables.exercises)
            keys.push_back(each.key);
        return refuse_unknown("exercise", request.exercise, keys);
    }
    const auto date = day_up_to_today(request.date, "set", inside.today());
    if (!date)
        return date.refusal();
    if (request.set_number < 1 || request.set_number > 40)
        return refuse_range("set_number", request.set_number, 1, 40, "");
    const auto load = mass_given("load", request.load_kg, request.load_lb);
    if (!load)
        return load.refusal();
    if (*load && ((*load)->kilograms() < -100 || (*load)->kilograms() > heaviest_kg))
        return refuse_range("load_kg", (*load)->kilograms(), -100, heaviest_kg, "kg",
                            "Assistance is a negative load.");
    if (request.reps && (*request.reps < 1 || *request.reps > 100))
        return refuse_range("reps", *request.reps, 1, 100, "");
    if (request.reps_in_reserve && (*request.reps_in_reserve < 0 || *request.reps_in_reserve > 20))
        return refuse_range("reps_in_reserve", *request.reps_in_reserve, 0, 20, "");
    const auto speed = speed_given("speed", request.speed_ms, request.speed_mph, {});
    if (!speed)
        return speed.refusal();
    if (*speed && ((*speed)->metres_per_second() < 0.5 || (*speed)->metres_per_second() > fastest_ms))
        return refuse_range("speed_ms", (*speed)->metres_per_second(), 0.5, fastest_ms, "m/s");
    SetDone set{request.key,
                athlete.id,
                *date,
                request.exercise,
                request.set_number,
                *load,
                request.reps,
                request.reps_in_reserve,
                *speed,
                {},
                request.note.value_or("")};
    if (request.block)
        set.block = BlockId{*request.block};
    return set;
}

const TestKind* kind_of(const Workplace::Inside& inside, const SetDone& set) {
    const Exercise& exercise = *inside.tables.exercise(set.exercise);
    return exercise.load_test ? inside.tables.test_kind(*exercise.load_test) : nullptr;
}

// The set as a result of the test its exercise is a share of; refused when it can show nothing about it.
Result<TestResult> shown_by(const Workplace::Inside& inside, const FacilityView& view, const SetDone& set,
                            const TestKind& kind) {
    std::optional<Mass> body_mass;
    const auto weighed = view.series.find({set.athlete.text, "body_mass"});
    if (weighed != view.series.end() && !weighed->second.results.empty())
        body_mass = Mass::kilograms(weighed->second.results.back().result.value);
    return measure_logged_set(kind, *inside.tables.exercise(set.exercise), set, body_mass);
}

// A set that no person of any kind could do is not kept; one that shows nothing about a maximum still was done.
std::optional<Refusal> impossible(const Workplace::Inside& inside, const FacilityView& view,
                                  const SetDone& set) {
    const TestKind* kind = kind_of(inside, set);
    if (!kind)
        return std::nullopt;
    const auto result = shown_by(inside, view, set, *kind);
    if (result || result.refusal().code != RefusalCode::out_of_range)
        return std::nullopt;
    return result.refusal();
}

// How far the set lies from what the earlier tests foretell, when that is far (99 %).
std::string far_words(const FacilityView& before, const SetDone& set, const TestKind& kind,
                      const TestResult& result) {
    const Series* series = before.one_series(set.athlete.text, kind.key);
    if (!series || series->trajectory.front().points.back().day > set.date.days_since_1970())
        return "";
    const auto value = on_scale(kind.scale, set.date.days_since_1970(), result.value, result.standard_error);
    const auto& trajectory = series->trajectory.front();
    const double factor = before.variances.at(kind.key).error_factor;
    const double spread = std::sqrt(trajectory.forecast_variance(value.day, value.variance * factor));
    if (std::abs(value.value - trajectory.state_on(value.day).mean) <= z99 * spread)
        return "";
    return " This set is far from what the earlier tests foretell: look at load and repetitions again.";
}

// What the set shows about the test its exercise is a share of, before and after.
void fill_movement(LogSetAnswer& answer, Workplace::Inside& inside, const FacilityView& before,
                   const Athlete& athlete, const SetDone& set) {
    const TestKind* kind = kind_of(inside, set);
    answer.words = "Kept.";
    if (!kind)
        return;
    const auto shown = shown_by(inside, before, set, *kind);
    if (!shown) {
        answer.words = "Kept. It does not move the estimate of this lift: " + shown.refusal().sentence;
        return;
    }
    const auto after = inside.view();
    const auto facility = inside.facility();
    const int today = inside.today().days_since_1970();
    const Series* old_series = before.one_series(athlete.id.text, kind->key);
    const Series* new_series = after->one_series(athlete.id.text, kind->key);
    if (old_series)
        answer.before = shown_state(*kind, old_series->trajectory.front().state_on(today), facility);
    if (!new_series)
        return;
    answer.after = shown_state(*kind, new_series->trajectory.front().state_on(today), facility);
    const auto said = [&](const ShownEstimate& e) {
        return format_fixed(e.value, e.decimals) + " " + e.unit +
               " (80 %: " + format_fixed(e.low, e.decimals) + " to " + format_fixed(e.high, e.decimals) + ")";
    };
    answer.words = "Kept. " + kind->name + ": " + (answer.before ? said(*answer.before) + ", now " : "") +
                   said(*answer.after) + "." + far_words(before, set, *kind, *shown);
}

} // namespace

Result<LogSetAnswer> log_set(Workplace& workplace, const LogSetRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto set = set_from(request, inside, **athlete);
    if (!set)
        return set.refusal();
    for (const auto& held : before->records.sets)
        if (held.key == set->key && !(held == *set))
            return Refusal{RefusalCode::already_held,
                           "Another set is already kept under this key; make a new key for a new set.", "key",
                           set->key, "a key never used before"};
    if (const auto refusal = impossible(inside, *before, *set))
        return *refusal;
    LogSetAnswer answer{set->key, false, {}, {}, "", {}};
    answer.held_before = inside.store.save_set(*set) == Saved::held_before;
    fill_movement(answer, inside, *before, **athlete, *set);
    if (answer.held_before)
        answer.words = "This set was already kept.";
    answer.findings = shown_findings(check_logged_sets({&*set, 1}, **athlete, inside.tables.exercises,
                                                       care_record(inside.tables, *before), inside.today()));
    for (const auto& finding : answer.findings)
        answer.words += " " + finding.sentence + " " + finding.what_to_do;
    return answer;
}

} // namespace amentum
