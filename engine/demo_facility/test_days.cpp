#include "demo_facility/test_days.h"

#include "demo_facility/ball_day.h"
#include "demo_facility/hall_loads.h"
#include "demo_facility/people.h"
#include "demo_facility/statures.h"
#include "inference/random_stream.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>

namespace amentum {
namespace {

struct Lift {
    const char* test;
    HallTool tool;
};
constexpr Lift lifts[] = {{"split_squat_max", HallTool::straight_bar},
                          {"hex_bar_high_max", HallTool::high_hex_bar},
                          {"press_max", HallTool::dumbbell_pair}};
constexpr const char* throws_of_balls[] = {"kneeling_overhead_throw_4lb", "kneeling_overhead_throw_6lb",
                                           "rotational_throw_6lb"};

double rounded(double x, double step) {
    return std::round(x / step) * step;
}
Side lead_side(const Athlete& a) {
    return a.throwing_hand == Hand::right ? Side::left : Side::right;
}
Side throwing_side(const Athlete& a) {
    return a.throwing_hand == Hand::right ? Side::right : Side::left;
}

struct Day {
    RecordSet& records;
    const Athlete& athlete;
    const TrueThrower& thrower;
    Date last_day;
    int day;
    RandomStream& stream;

    Reading reading(const std::string& test, Side side, int trial) const {
        Reading r{athlete.id, last_day - (demo_days - day), test};
        r.side = side;
        r.trial = trial;
        return r;
    }
    double noisy(double value, double error) { return value * std::exp(error * stream.next_normal()); }
    // What the athlete could do that day: the true value with the day's error in it.
    double form_of(const char* test) {
        return noisy(true_test_value(athlete, thrower, last_day, day, test), true_test(test).day);
    }
    double trial_of(const char* test, double form) { return noisy(form, true_test(test).trial); }
    bool young() const { return age_on(athlete, last_day, day) < 16; }
    bool in_hall() const { return athlete.kit.text == hall_kit; }
};

// A set to failure at a load that the day's maximum allows for so many repetitions, by Epley's line.
void add_lift(Day& day, const Lift& lift) {
    const double maximum = day.trial_of(lift.test, day.form_of(lift.test));
    const int reps = day.young() ? 8 : 3 + static_cast<int>(3 * day.stream.next_uniform());
    const bool sided = lift.tool == HallTool::straight_bar;
    // Youths are tested with six to ten; a pair of dumbbells may leave them four or five.
    const int fewest = !day.young() ? 1 : lift.tool == HallTool::dumbbell_pair ? 4 : 6;
    const auto set = hall_set(lift.tool, Mass::kilograms(maximum), reps, fewest);
    if (!set)
        return;
    Reading r = day.reading(lift.test, sided ? lead_side(day.athlete) : Side::none, 1);
    r.load = set->load;
    r.reps = set->reps;
    r.reps_in_reserve = 0;
    day.records.readings.push_back(r);
}

void add_pull_ups(Day& day) {
    const char* test = "pull_up_max";
    const double body = rounded(day.thrower.body_mass_kg[static_cast<std::size_t>(day.day)], 0.1);
    const double maximum = day.trial_of(test, day.form_of(test));
    const double added = rounded(Mass::kilograms(maximum / 1.1 - body).pounds(), 5); // for 3 repetitions
    Reading r = day.reading(test, Side::none, 1);
    r.body_mass = Mass::kilograms(body);
    r.load = Mass::pounds(std::max(0.0, added));
    r.reps = static_cast<int>(std::round(30 * (maximum / (body + r.load->kilograms()) - 1)));
    r.reps_in_reserve = 0;
    if (*r.reps >= 1 && *r.reps <= 10)
        day.records.readings.push_back(r); // who cannot do one is not tested this way
}

void add_jump_and_bound(Day& day) {
    const double height = day.form_of("jump_height_flight"), bound = day.form_of("lateral_bound");
    for (int trial = 1; trial <= 3; ++trial) {
        Reading jump = day.reading("jump_height_flight", Side::none, trial);
        jump.flight_time = Duration::seconds(
            rounded(std::sqrt(8 * day.trial_of("jump_height_flight", height) / 9.80665), 0.001));
        jump.device = "mat 1";
        day.records.readings.push_back(jump);
    }
    for (int trial = 1; trial <= 2; ++trial) {
        Reading leap = day.reading("lateral_bound", throwing_side(day.athlete), trial);
        leap.distance = Length::centimetres(rounded(100 * day.trial_of("lateral_bound", bound), 1));
        day.records.readings.push_back(leap);
    }
}

void add_ball_throws(Day& day, const char* test) {
    if (!day.in_hall() && std::string_view(test).ends_with("6lb"))
        return; // the garage has one ball, of 4 lb
    const double form = day.form_of(test);
    const bool sided = std::string_view(test).starts_with("rotational");
    for (int trial = 1; trial <= 3; ++trial) {
        Reading r = day.reading(test, sided ? throwing_side(day.athlete) : Side::none, trial);
        r.speed = Speed::miles_per_hour(
            rounded(Speed::metres_per_second(day.trial_of(test, form)).miles_per_hour(), 0.1));
        r.device = "radar 1";
        r.place = PlaceMeasured::out_of_hand;
        day.records.readings.push_back(r);
    }
}

void add_velocity(Day& day) {
    const TrueTest& error = true_test("throwing_velocity");
    const double level =
        day.thrower.velocity[static_cast<std::size_t>(day.day)] + error.day * day.stream.next_normal();
    const bool second_radar = day.stream.next_uniform() < second_radar_share; // lent from the next town
    for (int trial = 1; trial <= 5; ++trial) {
        Reading r = day.reading("throwing_velocity", Side::none, trial);
        const double speed =
            level + error.trial * day.stream.next_normal() + (second_radar ? second_radar_bias : 0);
        r.speed = Speed::miles_per_hour(rounded(Speed::metres_per_second(speed).miles_per_hour(), 0.1));
        r.device = second_radar ? "radar 2" : "radar 1";
        r.place = PlaceMeasured::out_of_hand;
        day.records.readings.push_back(r);
    }
}

void add_angles_and_forces(Day& day) {
    const double er = 118 + 6 * day.thrower.level[5], ir = 48 - 4 * day.thrower.level[5],
                 hip = 36 + 5 * day.thrower.level[9];
    const auto two_trials = [&](const char* test, Side side, double level) {
        const TrueTest& error = true_test(test);
        const double today = level + error.day * day.stream.next_normal();
        for (int trial = 1; trial <= 2; ++trial) {
            Reading r = day.reading(test, side, trial);
            r.angle = Angle::degrees(rounded(today + error.trial * day.stream.next_normal(), 1));
            r.rater = "Halloran";
            r.device = "inclinometer 1";
            day.records.readings.push_back(r);
        }
    };
    two_trials("shoulder_external_rotation", throwing_side(day.athlete), er);
    two_trials("shoulder_internal_rotation", throwing_side(day.athlete), ir);
    two_trials("hip_internal_rotation", lead_side(day.athlete), hip);
    for (const char* test : {"external_rotation_force", "grip_force"}) {
        const double form = day.form_of(test);
        for (int trial = 1; trial <= 2; ++trial) {
            Reading r = day.reading(test, throwing_side(day.athlete), trial);
            r.force = Force::newtons(rounded(day.trial_of(test, form), 1));
            r.device = "hand dynamometer";
            day.records.readings.push_back(r);
        }
    }
}

void add_body(Day& day) {
    Reading mass = day.reading("body_mass", Side::none, 1);
    mass.body_mass = Mass::kilograms(rounded(
        day.noisy(day.thrower.body_mass_kg[static_cast<std::size_t>(day.day)], true_test("body_mass").day),
        0.1));
    day.records.readings.push_back(mass);
    if (!day.athlete.stature)
        return;
    Reading stature = day.reading("stature", Side::none, 1);
    stature.height =
        Length::centimetres(rounded(100 * stature_taped_on(day.athlete, day.last_day, day.day), 0.5));
    day.records.readings.push_back(stature);
}

} // namespace

double usual_test_value(const Athlete& athlete, double age, double body_mass, const std::string& test) {
    const bool male = athlete.sex == Sex::male;
    const double grown = 1 - 0.05 * std::clamp(18 - age, 0.0, 6.0); // strength for mass still to come
    const std::map<std::string, double> usual{{"split_squat_max", body_mass * (male ? 1.15 : 0.80) * grown},
                                              {"hex_bar_high_max", body_mass * (male ? 2.15 : 1.65) * grown},
                                              {"pull_up_max", body_mass * (male ? 1.38 : 1.14) * grown},
                                              {"press_max", body_mass * (male ? 0.85 : 0.52) * grown},
                                              {"jump_height_flight", (male ? 0.42 : 0.32) * grown},
                                              {"lateral_bound", (male ? 2.05 : 1.75) * grown},
                                              {"kneeling_overhead_throw_4lb", (male ? 12.2 : 9.8) * grown},
                                              {"kneeling_overhead_throw_6lb", (male ? 10.8 : 8.5) * grown},
                                              {"rotational_throw_6lb", (male ? 11.6 : 9.2) * grown},
                                              {"external_rotation_force", (male ? 165.0 : 115.0) * grown},
                                              {"grip_force", (male ? 520.0 : 360.0) * grown}};
    if (const auto pounds = standing_ball(test))
        return standing_over_kneeling * usual.at("kneeling_overhead_throw_4lb") *
               std::pow(*pounds / 4, true_ball_power(athlete));
    return usual.at(test);
}

const TrueTest& true_test(std::string_view test) {
    const auto found =
        std::find_if(true_tests.begin(), true_tests.end(), [&](const auto& t) { return t.test == test; });
    assert(found != true_tests.end());
    return *found;
}

double true_test_value(const Athlete& athlete, const TrueThrower& thrower, Date last_day, int day,
                       const std::string& test) {
    const auto at = static_cast<std::size_t>(day);
    const int quality = true_test(test).quality;
    assert(quality >= 0);
    const auto k = static_cast<std::size_t>(quality);
    return usual_test_value(athlete, age_on(athlete, last_day, day), thrower.body_mass_kg[at], test) *
           std::exp(true_effects[k].log_spread * thrower.state[at][k]);
}

void add_test_days(RecordSet& records, const Athlete& athlete, const TrueThrower& thrower, Date last_day,
                   std::uint64_t seed) {
    RandomStream stream(seed_from(seed + 1, athlete.id.text));
    const int apart = thrower.findable ? 52 : 240;
    for (int at = 5 + static_cast<int>(25 * stream.next_uniform()); at < demo_days - 3;
         at += apart + static_cast<int>(20 * stream.next_uniform())) {
        Day day{records, athlete, thrower, last_day, at, stream};
        const auto done = [&](double chance) { return stream.next_uniform() < chance; };
        add_body(day);
        if (done(0.95))
            add_velocity(day);
        if (day.in_hall())
            for (const auto& lift : lifts)
                if (done(0.85))
                    add_lift(day, lift);
        if (done(0.8) && !day.young() && day.in_hall())
            add_pull_ups(day);
        if (done(0.9))
            add_jump_and_bound(day);
        for (const char* test : throws_of_balls)
            if (done(0.85))
                add_ball_throws(day, test);
        if (done(0.7))
            add_angles_and_forces(day);
    }
    add_ball_day(records, athlete, thrower, last_day, seed);
}

} // namespace amentum
