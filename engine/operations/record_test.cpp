#include "operations/record_test.h"

#include "inference/test_scale.h"
#include "measurement/measure_test.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "reports/sentences.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

Result<Side> side_of(const RecordTestRequest& request) {
    if (!request.side)
        return Side::none;
    const auto side = from_word<Side>(*request.side);
    if (!side)
        return refuse_choice("side", *request.side, all_words<Side>());
    return *side;
}

Result<std::vector<Reading>> readings_of(const RecordTestRequest& request, const Athlete& athlete, Date date,
                                         Side side) {
    if (request.trials.empty())
        return refuse_missing("trials", "at least one trial");
    PlaceMeasured place = PlaceMeasured::unknown;
    if (request.place_measured) {
        const auto given = from_word<PlaceMeasured>(*request.place_measured);
        if (!given)
            return refuse_choice("place_measured", *request.place_measured, all_words<PlaceMeasured>());
        place = *given;
    }
    std::vector<Reading> readings;
    for (const auto& trial : request.trials) {
        Reading reading{athlete.id, date, request.test};
        reading.side = side;
        reading.trial = static_cast<int>(readings.size()) + 1;
        reading.device = trimmed(request.device.value_or(""));
        reading.rater = trimmed(request.rater.value_or(""));
        reading.note = request.note.value_or("");
        reading.place = place;
        auto filled = reading_from(trial, std::move(reading));
        if (!filled) {
            Refusal refusal = filled.refusal();
            refusal.field = "trials." + std::to_string(readings.size()) + "." + refusal.field;
            return refusal;
        }
        readings.push_back(*std::move(filled));
    }
    return readings;
}

bool same_numbers(const Reading& a, const Reading& b) {
    return a.load == b.load && a.reps == b.reps && a.reps_in_reserve == b.reps_in_reserve &&
           a.body_mass == b.body_mass && a.speed == b.speed && a.radar_angle == b.radar_angle &&
           a.distance == b.distance && a.release_height == b.release_height &&
           a.release_angle == b.release_angle && a.flight_time == b.flight_time &&
           a.contact_time == b.contact_time && a.height == b.height && a.angle == b.angle &&
           a.force == b.force && a.power == b.power;
}

// The readings held for the same athlete, day, test and side.
std::vector<Reading> held_readings(const FacilityView& view, const Reading& like) {
    std::vector<Reading> held;
    for (const auto& each : view.records.readings)
        if (each.athlete == like.athlete && each.date == like.date && each.test == like.test &&
            each.side == like.side)
            held.push_back(each);
    return held;
}

std::optional<StateOnDay> forecast_of(const Series* series, Date date, double variance) {
    if (!series || series->trajectory.empty())
        return std::nullopt;
    const auto state = series->trajectory.front().state_on(date.days_since_1970());
    return StateOnDay{state.mean, state.variance + variance};
}

} // namespace

Result<RecordTestAnswer> record_test(Workplace& workplace, const RecordTestRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kind = test_named(inside.tables, request.test);
    if (!kind)
        return kind.refusal();
    const auto date = day_up_to_today(request.date, "test", inside.today());
    if (!date)
        return date.refusal();
    const auto side = side_of(request);
    if (!side)
        return side.refusal();
    const auto readings = readings_of(request, **athlete, *date, *side);
    if (!readings)
        return readings.refusal();
    const auto result = measure_test(**kind, *readings);
    if (!result)
        return result.refusal();

    const auto facility = inside.facility();
    const auto unit = shown_unit((*kind)->unit, facility);
    RecordTestAnswer answer{false, false, "", {}, {}, result->method, result->warnings, {}};
    answer.result =
        shown_estimate(result->value, Estimate{result->value, result->standard_error}.central(), unit);
    const auto held = held_readings(*view, readings->front());
    if (!held.empty()) {
        const bool same = held.size() == readings->size() &&
                          std::equal(held.begin(), held.end(), readings->begin(), same_numbers);
        if (!same)
            return Refusal{RefusalCode::already_held,
                           "A " + (*kind)->name + " of " + (*athlete)->name + " on " + date->text() +
                               " is already held with other numbers.",
                           "date", date->text(), "another day or side"};
        answer.held_before = true;
        answer.words.push_back("The very same test is already held.");
        return answer;
    }
    const Side wanted = wanted_side(**kind, **athlete);
    const bool feeds = wanted == Side::none || *side == wanted || *side == Side::none;
    const auto value =
        on_scale((*kind)->scale, date->days_since_1970(), result->value, result->standard_error);
    const auto forecast = feeds ? forecast_of(view->one_series((*athlete)->id.text, (*kind)->key), *date,
                                              value.variance * view->variances.at((*kind)->key).error_factor)
                                : std::nullopt;
    if (forecast)
        answer.expected = shown_state(**kind, *forecast, facility, z99);
    if (forecast && std::abs(value.value - forecast->mean) > z99 * std::sqrt(forecast->variance) &&
        !request.keep.value_or(false)) {
        const auto& expected = *answer.expected;
        answer.question = "This is outside what " + (*athlete)->name +
                          "'s earlier tests foretell (99 %: " + format_fixed(expected.low, unit.decimals) +
                          " to " + format_fixed(expected.high, unit.decimals) + " " + unit.unit +
                          "). Keep it?";
        return answer;
    }
    inside.store.save_records(RecordSet{{}, {}, {}, *readings});
    answer.saved = true;
    answer.words.push_back(
        (*kind)->name + ": " +
        describe_estimate(result->value, Estimate{result->value, result->standard_error}.central(), unit) +
        ".");
    return answer;
}

} // namespace amentum
