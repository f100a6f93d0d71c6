#include "demo_facility/body_tests.h"

#include <algorithm>
#include <array>

namespace amentum {
namespace {

constexpr const char* rater = "Halloran";

struct Taped {
    const char* name;
    std::array<double, 2> thigh_cm, shank_cm, trunk_cm;
    std::array<double, 2> ankle_deg;
    std::array<double, 3> knee_deg;
};
constexpr std::array<Taped, 3> all_taped{{
    {"Marisol Quay", {40.5, 41.0}, {43.0, 43.5}, {50.5, 50.0}, {36, 38}, {44, 49, 46}},
    {"Anders Tollefsen", {45.5, 45.0}, {47.5, 47.5}, {56.0, 56.5}, {41, 42}, {52, 49, 50}},
    {"Odalys Fenn", {42.0, 41.5}, {45.0, 44.5}, {49.0, 49.5}, {33, 34}, {38, 42, 43}},
}};

std::optional<Date> last_test_day(const RecordSet& records, const AthleteId& athlete) {
    std::optional<Date> last;
    for (const auto& r : records.readings)
        if (r.athlete == athlete && (!last || *last < r.date))
            last = r.date;
    return last;
}

} // namespace

void add_body_tests(RecordSet& records, const Athlete& athlete) {
    const auto taped = std::find_if(all_taped.begin(), all_taped.end(),
                                    [&](const Taped& each) { return athlete.name == each.name; });
    const auto day = last_test_day(records, athlete.id);
    if (taped == all_taped.end() || !day)
        return;
    const auto add = [&](const char* test, Side side, const char* device, auto values, auto put) {
        for (std::size_t i = 0; i < values.size(); ++i) {
            Reading r{athlete.id, *day, test, side, static_cast<int>(i) + 1};
            put(r, values[i]);
            r.device = device;
            r.rater = rater;
            records.readings.push_back(r);
        }
    };
    const auto length = [](Reading& r, double cm) { r.height = Length::centimetres(cm); };
    const auto angle = [](Reading& r, double degrees) { r.angle = Angle::degrees(degrees); };
    const Side lead = athlete.throwing_hand == Hand::right ? Side::left : Side::right;
    add("thigh_length", Side::none, "tape 1", taped->thigh_cm, length);
    add("shank_length", Side::none, "tape 1", taped->shank_cm, length);
    add("trunk_length", Side::none, "tape 1", taped->trunk_cm, length);
    add("ankle_dorsiflexion", lead, "inclinometer 1", taped->ankle_deg, angle);
    add("lead_knee_at_contact", lead, "camera 1", taped->knee_deg, angle);
}

} // namespace amentum
