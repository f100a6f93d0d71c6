// Repeated trials of one thing: each becomes a value, their mean becomes the day's value.
#include "measurement/day_value.h"

#include "measurement/one_trial.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

std::string words_or_direct(Way way) {
    return way == Way::direct ? "read directly" : words_of_way(way);
}

Result<std::vector<Trial>> measure_each(const TestKind& kind, const std::vector<Reading>& readings) {
    std::vector<Trial> trials;
    for (const auto& reading : readings) {
        auto trial = measure_trial(kind, reading);
        if (!trial)
            return trial.refusal();
        if (const auto sound = check_plausible(kind, trial->value, trial->field); !sound)
            return sound.refusal();
        if (!trials.empty() && trials.front().way != trial->way) {
            const std::string one = words_or_direct(trials.front().way), two = words_or_direct(trial->way);
            return Refusal{RefusalCode::method_does_not_apply,
                           kind.name + ": one trial is \"" + one + "\", another \"" + two +
                               "\". The two differ by themselves, so they do not make one result.",
                           trial->field, one + ", " + two, "one way of measuring in a result"};
        }
        trials.push_back(*std::move(trial));
    }
    return trials;
}

std::string name_of_trials(Measure measure, std::size_t n) {
    const bool thrown = measure == Measure::ball_speed || measure == Measure::session_velocity;
    const bool jumped = measure == Measure::jump_height || measure == Measure::bound_distance ||
                        measure == Measure::jump_power || measure == Measure::reactive_ratio ||
                        measure == Measure::take_off_speed;
    const std::string one = thrown ? "throw" : (jumped ? "jump" : "reading");
    return n == 1 ? "one " + one : "mean of " + std::to_string(n) + " " + one + "s";
}

std::string describe_method(const TestKind& kind, const Reading& first, Way way, std::size_t n) {
    std::string text = name_of_trials(kind.measure, n);
    if (way != Way::direct)
        text += ", " + words_of_way(way);
    if (!first.device.empty())
        text += ", " + first.device;
    if (first.place != PlaceMeasured::unknown)
        text += ", " + word(first.place);
    if (!first.rater.empty())
        text += ", rater " + first.rater;
    return text;
}

double mean_of(const std::vector<Trial>& trials, double Trial::*member) {
    double sum = 0;
    for (const auto& trial : trials)
        sum += trial.*member;
    return sum / static_cast<double>(trials.size());
}

// Is the spread beyond the 99.9th percentile of what the kind's trial error gives? Chi-squared by the
// cube-root normal approximation [WilsonHilferty1931].
bool spread_is_unusual(const TestKind& kind, const std::vector<Trial>& trials, double mean) {
    const double usual = in_test_unit(kind, kind.trial_error, mean);
    if (trials.size() < 2 || usual <= 0)
        return false;
    double squares = 0;
    for (const auto& trial : trials)
        squares += std::pow(trial.value - mean, 2);
    const double freedom = static_cast<double>(trials.size()) - 1;
    const double z = 3.090232306167813; // 99.9th percentile of N(0, 1)
    const double limit = freedom * std::pow(1 - 2 / (9 * freedom) + z * std::sqrt(2 / (9 * freedom)), 3);
    return squares / (usual * usual) > limit;
}

std::vector<std::string> warnings_about(const TestKind& kind, const std::vector<Trial>& trials,
                                        const Reading& first) {
    std::vector<std::string> warnings;
    if (spread_is_unusual(kind, trials, mean_of(trials, &Trial::value)))
        warnings.push_back("The trials lie further apart than is usual for this test: was one misread?");
    if (trials.front().way == Way::least_speed)
        warnings.push_back(
            "The angle of release is not known: this is the least speed that reaches the distance.");
    if (kind.measure == Measure::session_velocity && first.place == PlaceMeasured::unknown)
        warnings.push_back(
            "Where the speed was read (out of the hand, at the plate) is not known; a ball loses about a "
            "tenth of its speed between the two.");
    if (kind.measure == Measure::session_velocity && first.device.empty())
        warnings.push_back("The radar is not named: two radars are not compared.");
    if (kind.measure == Measure::joint_angle && (first.rater.empty() || first.device.empty()))
        warnings.push_back("Rater or tool is not named: angles by two raters or tools are not compared.");
    for (const auto& trial : trials)
        for (const auto& warning : trial.warnings)
            if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end())
                warnings.push_back(warning);
    return warnings;
}

std::vector<std::string> sources_of(Way way, Measure measure) {
    if (measure == Measure::session_velocity)
        return {"Weir2005"};
    if (way == Way::flight_time || way == Way::take_off_velocity)
        return {"Baumgart2017"};
    if (way == Way::distance || way == Way::least_speed)
        return {"Taylor2005"};
    return {};
}

} // namespace

Result<DayValue> measure_mean_of_trials(const TestKind& kind, const std::vector<Reading>& readings) {
    const auto trials = measure_each(kind, readings);
    if (!trials)
        return trials.refusal();
    const Reading& first = readings.front();
    const Way way = trials->front().way;
    const int n = static_cast<int>(trials->size());
    return DayValue{mean_of(*trials, &Trial::value),
                    mean_of(*trials, &Trial::method_error),
                    n,
                    n,
                    describe_method(kind, first, way, trials->size()),
                    warnings_about(kind, *trials, first),
                    sources_of(way, kind.measure)};
}

} // namespace amentum
