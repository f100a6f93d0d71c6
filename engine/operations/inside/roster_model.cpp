#include "operations/inside/roster_model.h"

#include "inference/random_stream.h"
#include "measurement/growth.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace amentum {
namespace {

constexpr double usual_stature_m = 1.75;
// One SD of a roster's growth in velocity about the published slopes, as a share (proposal of this project, no source).
constexpr double growth_doubt = 1.0 / 3;
constexpr double usual_inches_a_year = 1.5; // of stature between 9 and 18, from memory

// What athletes differ by before any test: years below 18, sex, sport, stature.
std::vector<double> covariates_of(const Athlete& athlete, double age) {
    const double stature = athlete.stature ? athlete.stature->metres() : usual_stature_m;
    return {std::max(0.0, 18 - age) / 3, athlete.sex == Sex::male ? 1.0 : 0.0,
            athlete.sport == Sport::softball ? 1.0 : 0.0, athlete.sport == Sport::javelin ? 1.0 : 0.0,
            std::log(stature / usual_stature_m) / 0.05};
}

// Of the time between first and last test, the share below 18; of one day, whether it was.
double share_growing(const Athlete& athlete, int first, int last) {
    const double from = decimal_years(athlete.birth_date, Date::from_days(first));
    const double to = decimal_years(athlete.birth_date, Date::from_days(last));
    if (first == last)
        return from < 18 ? 1 : 0;
    return std::clamp((18 - from) / (to - from), 0.0, 1.0);
}

Estimate usual_growth() {
    const double a_year = growth_velocity(1, Length::inches(usual_inches_a_year)).metres_per_second();
    const double a_unit = a_year * 30 / 365.25;
    return {a_unit, growth_doubt * a_unit};
}

double usual_variance(const FacilityView& view, const TestKind& kind) {
    double sum = 0;
    int count = 0;
    for (const auto& athlete : view.records.athletes)
        if (const Series* series = view.one_series(athlete.id.text, kind.key))
            for (const auto& value : tested_values(*series)) {
                sum += value.variance;
                ++count;
            }
    return count > 0 ? sum / count : 1;
}

using SessionKey = std::tuple<int, std::string, PlaceMeasured>; // day, radar, place

// Sessions of velocity that two athletes or more share, numbered.
std::string name_of(const SessionKey& key) {
    const auto& [day, device, place] = key;
    return Date::from_days(day).text() + " " + device + " " + std::string(word(place));
}

std::map<SessionKey, int> shared_sessions(const FacilityView& view, const TestKind& velocity) {
    std::map<SessionKey, int> readings;
    for (const auto& [key, series] : view.series)
        if (series.kind == &velocity)
            for (const auto& each : series.results)
                if (each.in_trajectory)
                    ++readings[{each.result.date.days_since_1970(), each.result.device, each.result.place}];
    std::map<SessionKey, int> numbers;
    for (const auto& [key, count] : readings) // by day: new ones come last
        if (count > 1)
            numbers.emplace(key, static_cast<int>(numbers.size()));
    return numbers;
}

void add_readings(const Series& series, int quality, double variance,
                  const std::map<SessionKey, int>& sessions, std::map<int, RosterDay>& days) {
    for (const auto& each : series.results) {
        if (each.point < 0 || each.from_logged_set)
            continue;
        const auto& value = series.values[static_cast<std::size_t>(each.point)];
        int session = -1;
        if (quality == 0)
            if (const auto found = sessions.find({value.day, each.result.device, each.result.place});
                found != sessions.end())
                session = found->second;
        days[value.day].readings.push_back({quality, value.value, value.variance / variance, session});
    }
}

std::string version_of(const RosterModel& model) {
    std::uint64_t data = 1;
    for (const auto& athlete : model.data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings)
                data = seed_from(data, std::to_string(day.day) + std::to_string(r.quality) +
                                           std::to_string(r.value));
    return "joint model 3, data " + std::to_string(data % 1000000) + ", " + model.priors_version;
}

std::string priors_version_of(const FacilityView& view) {
    std::uint64_t priors = 1;
    for (const auto& prior : view.velocity_priors)
        priors = seed_from(priors, prior.quality + std::to_string(prior.mean) + std::to_string(prior.sd));
    return view.priors_version + " (" + std::to_string(priors % 1000000) + ")";
}

} // namespace

const RosterAthlete* RosterModel::athlete(const std::string& id) const {
    const auto found = std::find(athlete_ids.begin(), athlete_ids.end(), id);
    return found == athlete_ids.end() ? nullptr
                                      : &data.athletes[static_cast<std::size_t>(found - athlete_ids.begin())];
}

std::optional<int> RosterModel::quality_tested_by(const std::string& test) const {
    for (std::size_t k = 0; k < kinds.size(); ++k)
        if (kinds[k]->key == test)
            return static_cast<int>(k);
    return std::nullopt;
}

RosterModel gather_roster(const FacilityView& view, const ReferenceTables& tables) {
    RosterModel model;
    choose_qualities(view, tables, model);
    model.kinds.push_back(tables.test_kind("throwing_velocity"));
    for (const auto& quality : model.qualities)
        model.kinds.push_back(quality.kind);
    std::vector<double> variances;
    for (const TestKind* kind : model.kinds) {
        variances.push_back(usual_variance(view, *kind));
        model.priors.error_sd.push_back(std::sqrt(variances.back()));
    }
    model.priors.outcome_growth = {usual_growth()};
    const auto sessions = shared_sessions(view, *model.kinds.front());
    for (const auto& [key, number] : sessions)
        model.session_names.push_back(name_of(key));
    model.data = {static_cast<int>(model.kinds.size()), 5, {}, 1, std::vector<int>(sessions.size(), 0)};
    for (const auto& athlete : view.records.athletes) {
        std::map<int, RosterDay> days;
        for (std::size_t k = 0; k < model.kinds.size(); ++k)
            if (const Series* series = view.one_series(athlete.id.text, model.kinds[k]->key))
                add_readings(*series, static_cast<int>(k), variances[k], sessions, days);
        if (days.empty())
            continue;
        const int first = days.begin()->first, last = days.rbegin()->first;
        RosterAthlete one{covariates_of(athlete, decimal_years(athlete.birth_date, Date::from_days(first))),
                          {},
                          {share_growing(athlete, first, last)}};
        for (auto& [day, readings] : days) {
            readings.day = day;
            one.days.push_back(std::move(readings));
        }
        model.data.athletes.push_back(std::move(one));
        model.athlete_ids.push_back(athlete.id.text);
        model.athlete_names.push_back(athlete.name);
    }
    model.priors_version = priors_version_of(view);
    model.version = version_of(model);
    return model;
}

} // namespace amentum
