#include "operations/inside/facility_view.h"

#include "inference/random_stream.h"
#include "inference/test_scale.h"
#include "measurement/measure_test.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

using DayKey = std::tuple<std::string, std::string, int, Side>; // athlete, test, day, side

std::map<DayKey, std::vector<Reading>> grouped(const std::vector<Reading>& readings) {
    std::map<DayKey, std::vector<Reading>> groups;
    for (const auto& reading : readings)
        groups[{reading.athlete.text, reading.test, reading.date.days_since_1970(), reading.side}].push_back(
            reading);
    return groups;
}

bool by_device(Measure measure) {
    return measure == Measure::ball_speed || measure == Measure::session_velocity;
}

// The (device, place) that most of the results were read with.
std::pair<std::string, PlaceMeasured> usual_device(const std::vector<SeriesResult>& results) {
    std::map<std::pair<std::string, PlaceMeasured>, int> counts;
    for (const auto& each : results)
        if (!each.from_logged_set)
            ++counts[{each.result.device, each.result.place}];
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == counts.end() ? std::pair<std::string, PlaceMeasured>{} : most->first;
}

void choose_for_trajectory(Series& series, Side wanted) {
    const auto usual = usual_device(series.results);
    for (auto& each : series.results) {
        each.left_out.clear();
        if (wanted != Side::none && each.result.side != Side::none && each.result.side != wanted)
            each.left_out = "the other side; shown, not mixed in";
        else if (by_device(series.kind->measure) && !each.from_logged_set &&
                 std::pair(each.result.device, each.result.place) != usual)
            each.left_out =
                "read by another device or place than usual for this athlete; shown, not mixed in";
        each.in_trajectory = each.left_out.empty();
    }
}

void fill_values(Series& series, double error_factor) {
    series.values.clear();
    for (auto& each : series.results) {
        each.point = -1;
        if (!each.in_trajectory)
            continue;
        each.point = static_cast<int>(series.values.size());
        auto value = on_scale(series.kind->scale, each.result.date.days_since_1970(), each.result.value,
                              each.result.standard_error);
        value.variance *= error_factor;
        series.values.push_back(value);
    }
}

void fit_trajectory(Series& series, const RosterVariances& variances) {
    fill_values(series, variances.error_factor);
    series.trajectory.clear();
    if (!series.values.empty())
        series.trajectory.push_back(estimate_trajectory(series.values, variances.drift));
}

void add_logged_sets(std::map<SeriesKey, Series>& all, const RecordSet& records,
                     const ReferenceTables& tables) {
    std::map<std::tuple<std::string, std::string, int>, TestResult> best; // of athlete, test, day
    for (const auto& set : records.sets) {
        const Exercise* exercise = tables.exercise(set.exercise);
        const TestKind* kind =
            exercise && exercise->load_test ? tables.test_kind(*exercise->load_test) : nullptr;
        if (!kind)
            continue;
        std::optional<Mass> body_mass;
        const auto weighed = all.find({set.athlete.text, "body_mass"});
        if (weighed != all.end() && !weighed->second.results.empty())
            body_mass = Mass::kilograms(weighed->second.results.back().result.value);
        const auto result = measure_logged_set(*kind, *exercise, set, body_mass);
        if (!result)
            continue; // a set that shows nothing about the test is still a set that was done
        const std::tuple key(set.athlete.text, kind->key, set.date.days_since_1970());
        const auto held = best.find(key);
        if (held == best.end())
            best.emplace(key, *result);
        else if (result->value > held->second.value)
            held->second = *result;
    }
    for (const auto& [key, result] : best) {
        const TestKind* kind = tables.test_kind(std::get<1>(key));
        auto& series = all.try_emplace({std::get<0>(key), kind->key}, Series{kind, {}, {}, {}}).first->second;
        series.results.push_back({result, true, true, "", -1});
    }
}

std::map<SeriesKey, Series> measured_series(const RecordSet& records, const ReferenceTables& tables) {
    std::map<SeriesKey, Series> all;
    for (const auto& [key, readings] : grouped(records.readings)) {
        const TestKind* kind = tables.test_kind(std::get<1>(key));
        if (!kind)
            continue;
        auto& series = all.try_emplace({std::get<0>(key), kind->key}, Series{kind, {}, {}, {}}).first->second;
        const auto result = measure_test(*kind, readings);
        if (result)
            series.results.push_back({*result, false, true, "", -1});
    }
    add_logged_sets(all, records, tables);
    for (auto& [key, series] : all)
        std::stable_sort(series.results.begin(), series.results.end(),
                         [](const auto& a, const auto& b) { return a.result.date < b.result.date; });
    return all;
}

std::size_t hash_of(const std::vector<std::vector<DatedValue>>& roster) {
    std::uint64_t hash = 1;
    for (const auto& one : roster)
        for (const auto& v : one)
            hash =
                seed_from(hash, std::string_view(reinterpret_cast<const char*>(&v.value), sizeof v.value)) +
                v.day;
    return hash;
}

// Fitted on tests alone: logged sets follow the error and drift the tests show.
std::vector<std::vector<DatedValue>> tests_of_roster(const std::map<SeriesKey, Series>& all,
                                                     const std::string& test) {
    std::vector<std::vector<DatedValue>> roster;
    for (const auto& [key, series] : all) {
        if (key.second != test)
            continue;
        std::vector<DatedValue> values;
        for (const auto& each : series.results)
            if (each.in_trajectory && !each.from_logged_set)
                values.push_back(on_scale(series.kind->scale, each.result.date.days_since_1970(),
                                          each.result.value, each.result.standard_error));
        if (!values.empty())
            roster.push_back(std::move(values));
    }
    return roster;
}

} // namespace

Side wanted_side(const TestKind& kind, const Athlete& athlete) {
    const bool right_handed = athlete.throwing_hand == Hand::right;
    switch (kind.side_rule) {
    case SideRule::none:
        return Side::none;
    case SideRule::lead_leg:
        return right_handed ? Side::left : Side::right;
    case SideRule::throwing_arm:
        return right_handed ? Side::right : Side::left;
    }
    return Side::none;
}

const Athlete* FacilityView::athlete(const std::string& name_or_id) const {
    const std::string id = slug(name_or_id);
    for (const auto& each : records.athletes)
        if (each.id.text == id)
            return &each;
    return nullptr;
}

const Series* FacilityView::one_series(const std::string& athlete_id, const std::string& test) const {
    const auto found = series.find({athlete_id, test});
    return found == series.end() || found->second.trajectory.empty() ? nullptr : &found->second;
}

const Series* FacilityView::spoken_for(const std::string& athlete_id, const std::string& quality) const {
    const Series* best = nullptr;
    for (const auto& [key, each] : series) {
        if (key.first != athlete_id || each.kind->quality != quality || each.trajectory.empty())
            continue;
        if (!best || each.values.size() > best->values.size())
            best = &each;
    }
    return best;
}

Series series_with(const Series& series, const TestResult& result, bool from_logged_set,
                   const RosterVariances& variances) {
    Series more = series;
    more.results.push_back({result, from_logged_set, true, "", -1});
    std::stable_sort(more.results.begin(), more.results.end(),
                     [](const auto& a, const auto& b) { return a.result.date < b.result.date; });
    fit_trajectory(more, variances);
    return more;
}

std::shared_ptr<const FacilityView> build_view(RecordSet records, const ReferenceTables& tables,
                                               std::map<std::string, FittedVariances>& fitted,
                                               std::vector<BlockChange> block_changes) {
    auto view = std::make_shared<FacilityView>();
    view->records = std::move(records);
    view->block_changes = std::move(block_changes);
    auto priors =
        priors_in_force(tables.velocity_priors, tables.attainable_changes, view->records.prior_edits);
    view->velocity_priors = std::move(priors.velocity_priors);
    view->attainable_changes = std::move(priors.attainable_changes);
    view->priors_version = std::move(priors.version);
    view->series = measured_series(view->records, tables);
    for (auto& [key, series] : view->series)
        if (const Athlete* athlete = view->athlete(key.first))
            choose_for_trajectory(series, wanted_side(*series.kind, *athlete));
    for (const auto& kind : tables.test_kinds) {
        const auto roster = tests_of_roster(view->series, kind.key);
        const std::size_t hash = hash_of(roster);
        const auto held = fitted.find(kind.key);
        if (held == fitted.end() || held->second.readings_hash != hash)
            fitted[kind.key] = {hash, estimate_roster_variances(roster)};
        view->variances[kind.key] = fitted[kind.key].variances;
    }
    for (auto& [key, series] : view->series)
        fit_trajectory(series, view->variances.at(key.second));
    return view;
}

} // namespace amentum
