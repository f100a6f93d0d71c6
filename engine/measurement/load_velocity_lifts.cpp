#include "measurement/load_velocity_lifts.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace amentum {
namespace {

struct GeneralEquation {
    double square, slope, constant, error; // per cent of the maximum
};

std::optional<GeneralEquation> general_equation(SpeedLift lift) {
    switch (lift) {
    case SpeedLift::bench_press:
        return GeneralEquation{8.4326, -73.501, 112.33, 3.56};
    case SpeedLift::back_squat:
        return GeneralEquation{-5.961, -50.71, 117.0, 4.02};
    case SpeedLift::bench_pull:
        return GeneralEquation{18.5797, -104.182, 147.94, 4};
    case SpeedLift::hex_bar_deadlift:
    case SpeedLift::deadlift:
    case SpeedLift::pull_up:
        return std::nullopt;
    }
    assert(!"every lift is looked at");
    return std::nullopt;
}

MinimalVelocity of(SpeedLift lift, double speed, double between, std::vector<std::string> sources,
                   bool memory) {
    return {lift, Speed::metres_per_second(speed), between, std::move(sources), memory};
}

} // namespace

const MinimalVelocity& minimal_velocity(SpeedLift lift) {
    static const std::vector<MinimalVelocity> table{
        of(SpeedLift::back_squat, 0.32, 0.03, {"SanchezMedina2017"}, false),
        of(SpeedLift::bench_press, 0.17, 0.04, {"GeneralThreshold2021", "GonzalezBadillo2010"}, false),
        of(SpeedLift::hex_bar_deadlift, 0.25, 0.05, {"Janicijevic2024", "Helms2017"}, false),
        of(SpeedLift::deadlift, 0.24, 0.03, {"BenavidesUbric2020"}, true),
        of(SpeedLift::pull_up, 0.20, 0.05, {"SanchezMoreno2017"}, true),
        of(SpeedLift::bench_pull, 0.52, 0.05, {"SanchezMedina2014"}, true),
    };
    return *std::find_if(table.begin(), table.end(), [&](const auto& row) { return row.lift == lift; });
}

std::string describe_minimal_velocity(const MinimalVelocity& row) {
    std::string sources;
    for (const auto& source : row.sources)
        sources += (sources.empty() ? "" : ", ") + source;
    return "A last repetition goes up at about " + format_fixed(row.speed.metres_per_second(), 2) +
           " m/s, give or take " + format_fixed(row.between_people, 2) + " between people (" + sources +
           (row.from_memory ? ", from memory" : "") + "); strong lifters grind slower, and then lift more.";
}

Result<Estimate> percent_of_max(SpeedLift lift, Speed speed) {
    const auto equation = general_equation(lift);
    if (!equation)
        return Refusal{RefusalCode::method_does_not_apply,
                       "There is no general equation here for this lift; lay a line of the lifter's own.",
                       "lift", word(lift), "one of bench_press, back_squat, bench_pull"};
    const auto& e = *equation;
    const double v = speed.metres_per_second();
    const double lowest =
        minimal_velocity(lift).speed.metres_per_second() - 2 * minimal_velocity(lift).between_people;
    // 30 %: below it no load was lifted in the studies (from memory)
    const double highest =
        (-e.slope - std::sqrt(e.slope * e.slope - 4 * e.square * (e.constant - 30))) / (2 * e.square);
    if (!(v >= lowest && v <= highest))
        return refuse_range("speed", v, std::round(lowest * 100) / 100, std::floor(highest * 100) / 100,
                            "m/s", "The equation was fitted there.");
    return Estimate{e.square * v * v + e.slope * v + e.constant, e.error};
}

Result<Estimate> pull_up_repetitions(Speed of_first) {
    const double v = of_first.metres_per_second();
    if (!(v >= 0.35 && v <= 1.2))
        return refuse_range("speed", v, 0.35, 1.2, "m/s", "The equation was fitted there.");
    return Estimate{-6.661 + 25.556 * v, 2};
}

Result<double> velocity_loss(const std::vector<Speed>& repetitions) {
    if (repetitions.size() < 2)
        return Refusal{RefusalCode::too_few_data, "A loss of speed needs two repetitions or more.", "speeds",
                       std::to_string(repetitions.size()) + " repetitions", "2 or more"};
    for (const Speed speed : repetitions)
        if (!(speed.metres_per_second() > 0 && speed.metres_per_second() <= 4))
            return refuse_range("speeds", speed.metres_per_second(), 0.01, 4, "m/s",
                                "Please check the unit.");
    const auto [slowest, fastest] = std::minmax_element(repetitions.begin(), repetitions.end());
    return 1 - *slowest / *fastest;
}

} // namespace amentum
