#include "operations/inside/lifted_loads.h"

#include "operations/inside/entry_fields.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace amentum {
namespace {

struct LiftOfTest {
    const char* test;
    SpeedLift lift;
};
constexpr std::array<LiftOfTest, 4> lifts_of_tests{{
    {"back_squat_max", SpeedLift::back_squat},
    {"hex_bar_high_max", SpeedLift::hex_bar_deadlift},
    {"hex_bar_low_max", SpeedLift::hex_bar_deadlift},
    {"pull_up_max", SpeedLift::pull_up},
}};

// Null for lifts without the body in them; a pull-up's body mass is given, or the last one held.
Result<std::optional<Mass>> body_of(const FacilityView& view, const Athlete& athlete, const TestKind& kind,
                                    const LoadVelocityRequest& request) {
    const auto given = mass_given("body_mass", request.body_mass_kg, request.body_mass_lb);
    if (!given || *given || kind.measure != Measure::system_mass_max)
        return given;
    const auto weighed = view.series.find({athlete.id.text, "body_mass"});
    if (weighed == view.series.end() || weighed->second.results.empty())
        return refuse_missing("body_mass_kg", "the lifter's body mass: it is part of a pull-up");
    return std::optional(Mass::kilograms(weighed->second.results.back().result.value));
}

Mass moved(Mass load, const TestKind& kind, const std::optional<Mass>& body) {
    return kind.measure == Measure::system_mass_max && body ? load + *body : load;
}

std::size_t different_loads(const std::vector<const Reading*>& readings) {
    std::set<double> loads;
    for (const Reading* r : readings)
        loads.insert(r->load->kilograms());
    return loads.size();
}

using ByDevice = std::map<std::string, std::vector<const Reading*>>;

const ByDevice::value_type& fullest(const ByDevice& devices) {
    return *std::max_element(devices.begin(), devices.end(), [](const auto& a, const auto& b) {
        return different_loads(a.second) < different_loads(b.second);
    });
}

std::map<Date, ByDevice> readings_with_both(const FacilityView& view, const Athlete& athlete,
                                            const TestKind& kind) {
    std::map<Date, ByDevice> days;
    for (const auto& r : view.records.readings)
        if (r.athlete == athlete.id && r.test == kind.key && r.load && r.speed)
            days[r.date][r.device].push_back(&r);
    return days;
}

Refusal refuse_no_speeds(const Athlete& athlete, const TestKind& kind) {
    return {RefusalCode::too_few_data,
            "No bar speeds of " + kind.name + " are held for " + athlete.name +
                ". Give loads with their speeds, or record the test with both.",
            "loads", "0 loads with a speed", "2 different loads or more, each with its mean speed"};
}

Result<Date> day_wanted(const std::map<Date, ByDevice>& days, const std::optional<std::string>& text) {
    if (!text) {
        for (auto day = days.rbegin(); day != days.rend(); ++day)
            if (different_loads(fullest(day->second).second) >= 2)
                return day->first;
        return days.rbegin()->first;
    }
    const auto date = parse_date(*text, "date");
    if (!date || days.contains(*date))
        return date;
    std::string held;
    for (const auto& [day, devices] : days)
        held += (held.empty() ? "" : ", ") + day.text();
    return Refusal{RefusalCode::unknown_name, "No bar speeds of this test are held on " + *text + ".", "date",
                   *text, held};
}

} // namespace

Result<SpeedLift> speed_lift_of(const TestKind& kind) {
    std::string known;
    for (const auto& [test, lift] : lifts_of_tests) {
        if (kind.key == test)
            return lift;
        known += (known.empty() ? "" : ", ") + std::string(test);
    }
    return Refusal{RefusalCode::method_does_not_apply,
                   "No minimal bar speed is published for " + kind.name +
                       ", so speeds do not lead to a maximum here.",
                   "test", kind.key, "one of " + known};
}

Result<LiftedLoads> loads_given(const FacilityView& view, const Athlete& athlete, const TestKind& kind,
                                const LoadVelocityRequest& request) {
    const auto body = body_of(view, athlete, kind, request);
    if (!body)
        return body.refusal();
    LiftedLoads lifted{{}, *body, "", "given by hand", {}};
    for (std::size_t i = 0; i < request.loads.size(); ++i) {
        const std::string at = "loads." + std::to_string(i) + ".";
        const auto load = mass_given(at + "load", request.loads[i].load_kg, request.loads[i].load_lb);
        if (!load)
            return load.refusal();
        if (!*load)
            return refuse_missing(at + "load_kg", "the load, or load_lb");
        lifted.repetitions.push_back(
            {moved(**load, kind, *body), Speed::metres_per_second(request.loads[i].speed_ms)});
    }
    return lifted;
}

Result<LiftedLoads> loads_held(const FacilityView& view, const Athlete& athlete, const TestKind& kind,
                               const LoadVelocityRequest& request) {
    const auto days = readings_with_both(view, athlete, kind);
    if (days.empty())
        return refuse_no_speeds(athlete, kind);
    const auto day = day_wanted(days, request.date);
    if (!day)
        return day.refusal();
    const auto& devices = days.at(*day);
    const auto& [device, readings] = fullest(devices);
    LiftedLoads lifted{
        {}, {}, day->text(), device.empty() ? "held, device not named" : "held, " + device, {}};
    for (const Reading* r : readings) {
        auto body = Result<std::optional<Mass>>(r->body_mass);
        if (!*body)
            body = body_of(view, athlete, kind, request);
        if (!body)
            return body.refusal();
        if (kind.measure == Measure::system_mass_max)
            lifted.body_mass = *body;
        lifted.repetitions.push_back({moved(*r->load, kind, *body), *r->speed});
    }
    if (devices.size() > 1)
        lifted.left_out.push_back(
            "Speeds read by another device that day are left out: two devices are not compared.");
    return lifted;
}

} // namespace amentum
