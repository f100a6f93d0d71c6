// Every pose that is solved stands: over bodies, loads and set-ups, by equilibrium and by virtual work; every one that is
// not says why.
#include "body_mechanics/check_pose.h"
#include "body_mechanics/holds.h"
#include "body_mechanics/lift_settings.h"

#include "on_disk_tables.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <map>

using namespace amentum;

namespace {

constexpr double most = 1e-6; // N, N m, m

std::vector<Body> bodies() {
    std::vector<Body> all;
    for (const BodyTable table : {BodyTable::de_leva, BodyTable::winter})
        for (const Sex sex : {Sex::female, Sex::male})
            for (const double stature : {1.45, 1.65, 1.85, 2.05})
                for (const double stoutness : {18.0, 29.0}) // kg for each square metre of stature
                    all.push_back(
                        *scale_body(segments_on_disk(), {table, sex, Length::metres(stature),
                                                         Mass::kilograms(stoutness * stature * stature)}));
    return all;
}

// Values of each setting from one end of its range to the other.
std::vector<double> grid_of(Setting setting) {
    switch (setting) {
    case Setting::stance:
        return {0.1, 0.45, 0.65, 0.85, 1.05, 2.0};
    case Setting::pad_height:
    case Setting::box_height:
        return {0.05, 0.4, 0.8};
    case Setting::handle_height:
        return {0.1, 0.225, 0.325, 0.5, 1.0};
    case Setting::trunk_lean:
        return {-20, 5, 20, 45, 85};
    case Setting::shin_lean:
        return {-20, 0, 15, 30, 60};
    case Setting::thigh:
        return {5, 60, 90, 125};
    case Setting::knee:
        return {5, 70, 100, 160};
    case Setting::elbow:
        return {0, 20, 60, 90, 150};
    case Setting::clearance:
        return {0.03, 0.12, 0.6};
    }
    return {};
}

// Every combination of the settings the lift takes, one lean and one depth at a time.
std::vector<Setup> setups_of(Lift lift, Hold hold, double load) {
    std::vector<std::vector<Setting>> choices;
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
        choices = {{Setting::stance, Setting::pad_height, Setting::trunk_lean, Setting::thigh},
                   {Setting::stance, Setting::pad_height, Setting::shin_lean, Setting::clearance}};
        break;
    case Lift::split_squat:
    case Lift::lunge:
        choices = {{Setting::stance, Setting::trunk_lean, Setting::thigh},
                   {Setting::stance, Setting::trunk_lean, Setting::clearance}};
        break;
    case Lift::step_up:
        choices = {{Setting::stance, Setting::box_height, Setting::trunk_lean, Setting::thigh}};
        break;
    case Lift::back_squat:
    case Lift::front_squat:
        choices = {{Setting::trunk_lean, Setting::thigh},
                   {Setting::trunk_lean, Setting::knee},
                   {Setting::shin_lean, Setting::knee}};
        break;
    case Lift::hex_bar_deadlift:
    case Lift::straight_bar_deadlift:
        choices = {{Setting::handle_height, Setting::shin_lean}, {Setting::handle_height, Setting::knee}};
        break;
    case Lift::pull_up:
        choices = {{Setting::elbow}};
        break;
    }
    std::vector<Setup> all;
    for (const auto& settings : choices) {
        std::vector<Setup> some{{lift, hold, Mass::kilograms(load)}};
        for (const Setting setting : settings) {
            std::vector<Setup> more;
            for (const auto& setup : some)
                for (const double value : grid_of(setting)) {
                    more.push_back(setup);
                    put_setting(more.back(), setting, value);
                }
            some = std::move(more);
        }
        all.insert(all.end(), some.begin(), some.end());
    }
    return all;
}

struct Count {
    int solved = 0, refused = 0, wrong = 0;
    double worst = 0;
};

void check_one(const Body& body, const Setup& setup, Count& count) {
    const auto pose = solve_pose(body, setup);
    if (!pose) {
        ++count.refused;
        const Refusal& why = pose.refusal();
        const bool told =
            why.code == RefusalCode::no_such_posture && why.sentence.ends_with(".") && !why.field.empty();
        count.wrong += told ? 0 : 1;
        return;
    }
    ++count.solved;
    const PoseResiduals left = check_pose(body, *pose);
    const double worst = left.worst();
    if (!(worst <= count.worst)) // nor when it is no number
        count.worst = worst;
    const double asked = setup.pressure_share * body.foot_length;
    const bool where_asked = setup.lift == Lift::pull_up || std::abs(pose->front.p_WP.x - asked) < 1e-8;
    if (!(worst < most) || !left.pressure_inside_foot || !left.rear_foot_pushes || !where_asked)
        ++count.wrong;
}

} // namespace

TEST_CASE(
    "every solved pose is in equilibrium, obeys virtual work and keeps its feet; every other one says why") {
    std::map<Lift, Count> counts;
    for (const Body& body : bodies())
        for (const auto& [lift, name] : words_of<Lift>)
            for (const Hold hold : holds_of(lift))
                for (const double load : {0.0, 20.0, 100.0, 300.0}) {
                    if (hold == Hold::body && load > 0)
                        continue;
                    for (const Setup& setup : setups_of(lift, hold, load))
                        check_one(body, setup, counts[lift]);
                }
    for (const auto& [lift, count] : counts) {
        INFO(word(lift) << ": " << count.solved << " solved, " << count.refused
                        << " refused, largest residual " << count.worst);
        CHECK(count.wrong == 0);
        CHECK(count.worst < most);
        CHECK(count.solved > 100); // the grid is not all extremes
    }
}

namespace {

// What a coach would ask of each lift (common practice, no source), to the body's own measure.
Setup ordinary(const Body& body, Lift lift, double step, double lean) { // each -1, 0 or 1
    const Length stature = body.given.stature;
    Setup setup{lift, holds_of(lift).front(), 0.6 * body.given.mass};
    const auto trunk = [&](double middle) { setup.trunk_lean = Angle::degrees(middle + 5 * lean); };
    switch (lift) {
    case Lift::rear_foot_raised_split_squat:
        setup.pad_height = 0.22 * stature;
        setup.stance = (0.48 + 0.06 * step) * stature;
        setup.thigh = Angle::degrees(80);
        trunk(20);
        break;
    case Lift::split_squat:
    case Lift::lunge:
        setup.stance = (0.40 + 0.04 * step) * stature;
        setup.thigh = Angle::degrees(80);
        trunk(15);
        break;
    case Lift::step_up:
        setup.box_height = (0.20 + 0.03 * step) * stature;
        setup.stance = 0.20 * stature;
        setup.thigh = Angle::degrees(80);
        trunk(35);
        break;
    case Lift::back_squat:
    case Lift::front_squat:
        setup.knee = Angle::degrees(100 + 10 * step);
        trunk(lift == Lift::back_squat ? 35 : 20);
        break;
    case Lift::hex_bar_deadlift:
        setup.handle_height = Length::metres(0.30 + 0.03 * step);
        setup.shin_lean = Angle::degrees(20 + 5 * lean);
        break;
    case Lift::straight_bar_deadlift: // discs of 0.45 m on the floor, or raised by 3 or 6 cm
        setup.handle_height = Length::metres(0.255 + 0.03 * step);
        setup.shin_lean = Angle::degrees(10 + 5 * lean);
        break;
    case Lift::pull_up:
        setup.load = Mass::kilograms(0);
        setup.elbow = Angle::degrees(60 + 30 * step + 10 * lean);
        break;
    }
    return setup;
}

} // namespace

TEST_CASE("a level push of the back foot, forward or backward, with a share of its own: they stand too") {
    Count count;
    for (const Body& body : bodies())
        for (const Lift lift : {Lift::rear_foot_raised_split_squat, Lift::split_squat, Lift::step_up})
            for (const auto& [push, share] : {std::pair{-60.0, 0.30}, {45.0, 0.08}})
                for (Setup setup : setups_of(lift, Hold::safety_bar, 60)) {
                    setup.rear_force_x = Force::newtons(push);
                    setup.rear_share = share;
                    check_one(body, setup, count);
                }
    CHECK(count.wrong == 0);
    CHECK(count.worst < most);
    CHECK(count.solved > 1000);
}

TEST_CASE("ordinary set-ups have a posture, nine times in ten or more in each lift") {
    for (const auto& [lift, name] : words_of<Lift>) {
        int solved = 0, all = 0;
        std::string why;
        for (const Body& body : bodies())
            for (const double step : {-1.0, 0.0, 1.0})
                for (const double lean : {-1.0, 0.0, 1.0}) {
                    const auto pose = solve_pose(body, ordinary(body, lift, step, lean));
                    solved += pose ? 1 : 0;
                    ++all;
                    if (!pose)
                        why = pose.refusal().sentence;
                }
        INFO(name << ": " << solved << " of " << all << "; " << why);
        CHECK(solved >= 0.9 * all);
    }
}

TEST_CASE(
    "the check notices: a moment, a point, a weight and a force moved by a little, and what is no number") {
    const Body body = bodies().front();
    Setup setup{Lift::split_squat, Hold::dumbbells, Mass::kilograms(40)};
    setup.stance = 0.45 * body.given.stature;
    setup.thigh = Angle::degrees(80);
    setup.trunk_lean = Angle::degrees(10);
    const auto good = solve_pose(body, setup);
    REQUIRE(good);
    CHECK(check_pose(body, *good).worst() < most);
    const auto with = [&](const auto& change) {
        Pose pose = *good;
        change(pose);
        return check_pose(body, pose);
    };
    CHECK(with([](Pose& p) { p.lead->hip += 1e-3; }).hips > most);
    CHECK(with([](Pose& p) { p.lead->hip += 1e-3; }).thigh_work > most);
    CHECK(with([](Pose& p) { p.lead->ankle += 1e-3; }).shin_work > most);
    CHECK(with([](Pose& p) { p.rear_leg->ankle += 1e-3; }).rear_work > most);
    CHECK(with([](Pose& p) { p.rear_leg->knee += 1e-3; }).rear_work > most);
    CHECK(with([](Pose& p) { p.rear_leg->hip += 1e-3; }).rear_work > most);
    CHECK(with([](Pose& p) { p.front.force.y += 1e-3; }).force > most);
    CHECK(with([](Pose& p) { p.front.p_WP.x += 1e-5; }).balance > most);
    CHECK(with([](Pose& p) { p.at(Mark::rear_knee).x += 1e-4; }).reach > most);
    CHECK(with([](Pose& p) { p.above_hips[0].p_WC.y += 1e-4; }).weights > most);
    CHECK(with([](Pose& p) { p.above_hips[4].mass += 1e-4; }).weights > most);
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    CHECK(std::isnan(with([](Pose& p) { p.lead->knee = none; }).worst()));
    CHECK(std::isnan(with([](Pose& p) { p.at(Mark::knee).x = none; }).worst()));
}

TEST_CASE(
    "the check notices in a pull-up too: elbow, shoulder, and a body that does not hang under its hands") {
    const Body body = bodies().back();
    Setup setup{Lift::pull_up, Hold::belt, Mass::kilograms(20)};
    setup.elbow = Angle::degrees(60);
    const auto good = solve_pose(body, setup);
    REQUIRE(good);
    Pose pose = *good;
    pose.elbow += 1e-3;
    CHECK(check_pose(body, pose).thigh_work > most);
    pose = *good;
    pose.shoulder += 1e-3;
    CHECK(check_pose(body, pose).hips > most);
    pose = *good;
    for (Vector2& point : pose.points)
        point.x += 1e-5;
    CHECK(check_pose(body, pose).balance > most);
}
