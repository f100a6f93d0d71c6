// Worked inverse dynamics of others, on this engine's chain from the free end inward.
//
//   standing, swinging foot, swinging shank   [Winter2009, chapter 5, examples 5.1 to 5.3]; numbers from memory, their
//                                             arithmetic repeated. He counts with 9.8 m/s2.
//   three frames of a run                     a simulation whose joint moments are known because they drove it, at 10,000
//                                             frames a second and without noise [VanDenBogert1996], as kept in
//                                             [DuarteWatanabe]. Moments act on the segment at its inner joint, positive
//                                             counter-clockwise; the runner runs toward +x.
#include "body_mechanics/inverse_dynamics.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace amentum;

namespace {

constexpr Vector2 winter_gravity{0, -9.8};

// Ankle of the swinging foot; everything else is placed from it. The foot's centre is 1.95 cm ahead and 9.85 cm below.
constexpr Vector2 p_WA{0, 0};
ChainLink swinging_foot() {
    return {1.16, 0.0105, {0.1, -0.1}, p_WA, p_WA + Vector2{0.0195, -0.0985}, {9.07, -6.62}, 21.69};
}

// The shank's centre is 18.5 cm ahead and 16.9 cm above the ankle; the knee 14.2 cm ahead and 12.9 cm above that. (0.433
// of the way down from the knee: the share of Winter's own table.)
ChainLink swinging_shank() {
    const Vector2 p_WC = p_WA + Vector2{0.185, 0.169};
    return {3.72, 0.0642, p_WA, p_WC + Vector2{0.142, 0.129}, p_WC, {-0.03, -4.21}, 36.9};
}

struct Frame { // of the run: floor force and its place, joints, accelerations, moments known
    std::string name;
    Vector2 floor;
    double pressure_x;
    Vector2 hip, knee, ankle, toe;
    Vector2 a_thigh, a_shank, a_foot;
    double alpha_thigh, alpha_shank, alpha_foot;
    double hip_moment, knee_moment, ankle_moment;
};

const std::array run{
    Frame{"0.35 s",
          {-303.997, 955.711},
          0.219146,
          {0.0202898, 0.867101},
          {0.19786, 0.45253},
          {0.0882673, 0.0616005},
          {0.23092, -0.0150498},
          {-25.7643, -2.14113},
          {-31.2205, -11.1321},
          {-0.72, -6.77},
          -122.36,
          122.569,
          61.5175,
          -18.373,
          108.155,
          -105.126},
    Frame{"0.40 s",
          {-74.2963, 1121.46},
          0.233169,
          {0.174473, 0.854804},
          {0.304338, 0.422906},
          {0.0990804, 0.0726124},
          {0.234265, -0.0165507},
          {-10.3697, 8.22404},
          {-14.2447, 5.20946},
          {-1.81, 1.04},
          -49.8927,
          55.8108,
          0.776506,
          -37.7441,
          100.784,
          -144.963},
    Frame{"0.45 s",
          {81.62, 892.996},
          0.235298,
          {0.328891, 0.861487},
          {0.344157, 0.410746},
          {0.105039, 0.0826318},
          {0.233884, -0.0154705},
          {-8.27945, 10.031},
          {-16.635, 11.736},
          {-0.62, 0.1},
          -79.0611,
          86.0689,
          6.00011,
          -40.9184,
          51.7819,
          -122.944},
};

constexpr Vector2 between(Vector2 from, Vector2 to, double share) {
    return from + share * (to - from);
}

// Foot of 1.00 kg with its centre at the ankle, shank of 2.86 kg, thigh of 6.85 kg.
std::array<ChainLink, 3> leg_of(const Frame& frame) {
    return {ChainLink{1.00, 0.0200, frame.toe, frame.ankle, frame.ankle, frame.a_foot, frame.alpha_foot,
                      Wrench{frame.floor, {frame.pressure_x, 0}}},
            ChainLink{2.86, 0.042996389, frame.ankle, frame.knee, between(frame.knee, frame.ankle, 0.4334975),
                      frame.a_shank, frame.alpha_shank},
            ChainLink{6.85, 0.145361267, frame.knee, frame.hip, between(frame.hip, frame.knee, 0.4323725),
                      frame.a_thigh, frame.alpha_thigh}};
}

} // namespace

TEST_CASE("standing on one foot, the floor's 588 N 4 cm ahead of the ankle: 22.99 N m of plantar flexion "
          "[Winter2009, 5.1]") {
    const std::array foot{
        ChainLink{0.9, 0, {0.15, 0}, {0, 0.08}, {0.06, 0.04}, {}, 0, Wrench{{0, 588}, {0.04, 0}}}};
    std::array<JointLoad, 1> ankle;
    solve_chain(foot, ankle, winter_gravity);
    CHECK(std::abs(ankle[0].force.x) < 1e-9);
    CHECK(std::abs(ankle[0].force.y - -579.2) < 0.05);
    CHECK(std::abs(ankle[0].moment - -22.99) < 0.005);
}

TEST_CASE("a swinging foot and shank: forces and moments of ankle and knee [Winter2009, 5.2 and 5.3]") {
    const std::array leg{swinging_foot(), swinging_shank()};
    std::array<JointLoad, 2> loads;
    solve_chain(leg, loads, winter_gravity);
    CHECK(std::abs(loads[0].force.x - 10.52) < 0.005);
    CHECK(std::abs(loads[0].force.y - 3.69) < 0.005);
    CHECK(std::abs(loads[0].moment - 1.34) < 0.005);
    CHECK(std::abs(loads[1].force.x - 10.41) < 0.01);
    CHECK(std::abs(loads[1].force.y - 24.48) < 0.01);
    CHECK(std::abs(loads[1].moment - 2.67) < 0.005);
}

TEST_CASE("a simulated run gives back the moments that drove it, within 0.05 N m [VanDenBogert1996]") {
    for (const Frame& frame : run) {
        CAPTURE(frame.name);
        std::array<JointLoad, 3> loads;
        solve_chain(leg_of(frame), loads);
        CHECK(std::abs(loads[0].moment - frame.ankle_moment) < 0.05);
        CHECK(std::abs(loads[1].moment - frame.knee_moment) < 0.05);
        CHECK(std::abs(loads[2].moment - frame.hip_moment) < 0.05);
    }
}

namespace {

struct Rms {
    double hip = 0, knee = 0, ankle = 0;
};

template <class Frames>
Rms rms_error(const Frames& frames) {
    Rms sum;
    for (const Frame& frame : frames) {
        std::array<JointLoad, 3> loads;
        solve_chain(leg_of(frame), loads);
        sum.ankle += std::pow(loads[0].moment - frame.ankle_moment, 2);
        sum.knee += std::pow(loads[1].moment - frame.knee_moment, 2);
        sum.hip += std::pow(loads[2].moment - frame.hip_moment, 2);
    }
    const double n = static_cast<double>(std::size(frames));
    return {std::sqrt(sum.hip / n), std::sqrt(sum.knee / n), std::sqrt(sum.ankle / n)};
}

// The run every millisecond from 0.33 to 0.54 s, one row a frame: frame, floor force x y, pressure x, hip x y, knee x y, ankle
// x y, toe x y, accelerations of thigh, shank and foot x y (central differences), their turning, moments of hip, knee, ankle.
std::vector<Frame> whole_run() {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/../shared/open_data/running_1khz.csv");
    std::vector<Frame> frames;
    std::string line;
    for (std::getline(file, line); std::getline(file, line);) {
        std::vector<double> c;
        std::stringstream row(line);
        for (std::string cell; std::getline(row, cell, ',');)
            c.push_back(std::stod(cell));
        REQUIRE(c.size() == 24);
        frames.push_back({std::to_string(c[0]),
                          {c[1], c[2]},
                          c[3],
                          {c[4], c[5]},
                          {c[6], c[7]},
                          {c[8], c[9]},
                          {c[10], c[11]},
                          {c[12], c[13]},
                          {c[14], c[15]},
                          {c[16], c[17]},
                          c[18],
                          c[19],
                          c[20],
                          c[21],
                          c[22],
                          c[23]});
    }
    return frames;
}

void check_rms(const Rms& rms) { // as found with every frame of the run
    CHECK(rms.hip <= 0.15);
    CHECK(rms.knee <= 0.08);
    CHECK(rms.ankle <= 0.03);
}

} // namespace

TEST_CASE("the run's moments scatter about the true ones by no more than 0.15, 0.08 and 0.03 N m") {
    check_rms(rms_error(run));
    const auto frames = whole_run();
    if (frames.empty())
        MESSAGE("SKIPPED the whole run: ../shared/open_data/running_1khz.csv is not there; three frames "
                "stand for it");
    else
        check_rms(rms_error(frames));
}

// Left out, the accelerations are missed: at 0.35 s the hip would be read more than 10 N m wrong. The check above can fail.
TEST_CASE("the same run as if it stood still is far off") {
    auto still = leg_of(run[0]);
    for (ChainLink& link : still) {
        link.a_WC = {0, 0};
        link.alpha = 0;
    }
    std::array<JointLoad, 3> loads;
    solve_chain(still, loads);
    CHECK(std::abs(loads[2].moment - run[0].hip_moment) > 10);
}
