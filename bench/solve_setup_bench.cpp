// One set-up of a lift solved for its posture, joint moments and their band:
//   pose     solve_pose alone
//   band     solve_pose and estimate_pose_band: the posture solved anew for both sides of every assumption
//   rival    the moments of the lead leg in as many postures by KDL's ChainIdSolver_RNE (orocos-kdl of Debian), the
//            postures given: it finds no balance, has the chain built beforehand and works in space
//   sought   one posture found with KDL: bisection of the free angle over the same range to 1e-12, each step the moment
//            about the ankle of a chain of shank, thigh and all above (back squat alone; the others close a loop or hold a
//            height, which a chain cannot)
// The rivals' moments and angle are checked against ours before timing. In each of 50 repeats all run one after the other;
// the first warms up. Microseconds of processor time are medians. Run it by `./dev bench`, or:
// ninja solve_setup_bench && ./bench/solve_setup_bench
#include "body_mechanics/pose_band.h"
#include "records/reference_tables.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <functional>
#include <map>
#include <numbers>
#include <sstream>
#include <vector>

#ifdef AMENTUM_WITH_KDL
#include <kdl/chain.hpp>
#include <kdl/chainidsolver_recursive_newton_euler.hpp>
#endif

using namespace amentum;

namespace {

Body man() {
    std::map<std::string, std::string> texts;
    for (const auto& name : reference_file_names()) {
        std::ifstream file(std::string(AMENTUM_SOURCE_DIR "/data/") + name);
        std::ostringstream text;
        text << file.rdbuf();
        texts[name] = text.str();
    }
    return *scale_body(parse_reference_tables(texts)->segments,
                       {BodyTable::de_leva, Sex::male, Length::metres(1.80), Mass::kilograms(80)});
}

struct Named {
    const char* name;
    Setup setup;
};

std::vector<Named> setups() {
    Setup split{Lift::rear_foot_raised_split_squat, Hold::straight_bar, Mass::kilograms(60)};
    split.stance = Length::metres(0.80);
    split.pad_height = Length::metres(0.40);
    split.thigh = Angle::degrees(90);
    split.trunk_lean = Angle::degrees(20);
    Setup hex{Lift::hex_bar_deadlift, Hold::hex_bar, Mass::kilograms(140)};
    hex.handle_height = Length::metres(0.225);
    hex.shin_lean = Angle::degrees(20);
    Setup squat{Lift::back_squat, Hold::straight_bar, Mass::kilograms(100)};
    squat.knee = Angle::degrees(90);
    squat.shin_lean = Angle::degrees(30);
    return {{"rear-foot-raised split squat", split}, {"hex-bar deadlift", hex}, {"back squat", squat}};
}

double processor_microseconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e6 * static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e3;
}

volatile double sink; // keeps the compiler from dropping the answers

// Of each work, each time asked 20 times over.
std::vector<double> microseconds(const std::vector<std::function<double()>>& works) {
    constexpr int repeats = 50, times = 20;
    std::vector<std::vector<double>> took(works.size());
    for (int repeat = 0; repeat < repeats; ++repeat)
        for (std::size_t w = 0; w < works.size(); ++w) {
            const double start = processor_microseconds();
            for (int i = 0; i < times; ++i)
                sink = works[w]();
            if (repeat > 0) // the first warms up
                took[w].push_back((processor_microseconds() - start) / times);
        }
    std::vector<double> medians;
    for (auto& each : took) {
        std::nth_element(each.begin(), each.begin() + repeats / 2, each.end());
        medians.push_back(each[repeats / 2]);
    }
    return medians;
}

#ifdef AMENTUM_WITH_KDL
KDL::Segment hinged(double length, double mass,
                    Vector2 centre) { // centre from the near end, in the link's own axes
    return KDL::Segment(KDL::Joint(KDL::Joint::RotZ), KDL::Frame(KDL::Vector(length, 0, 0)),
                        KDL::RigidBodyInertia(mass, KDL::Vector(centre.x - length, centre.y, 0)));
}

double direction(Vector2 along) {
    return std::atan2(along.y, along.x);
}

Vector2 turned(Vector2 v, double angle) {
    return {std::cos(angle) * v.x - std::sin(angle) * v.y, std::sin(angle) * v.x + std::cos(angle) * v.y};
}

// Thigh, shank and foot, hanging from the hip, the floor's force at the foot's far end.
class KdlLeg {
public:
    KdlLeg(const Body& body, const Pose& pose) : chain_(chain(body, pose)), solver_(chain_, pull) {
        const Vector2 A = pose.at(Mark::ankle), K = pose.at(Mark::knee), H = pose.at(Mark::hip);
        const double foot = direction(pose.front.p_WP - A);
        q_(0) = direction(K - H);
        q_(1) = direction(A - K) - q_(0);
        q_(2) = foot - direction(A - K);
        const Vector2 force = turned(pose.front.force, -foot);
        pushes_[2] = KDL::Wrench(KDL::Vector(force.x, force.y, 0), KDL::Vector::Zero());
    }
    LegMoments moments() {
        solver_.CartToJnt(q_, still_, still_, pushes_, held_);
        return {-held_(2), held_(1), -held_(0)};
    }
    KdlLeg(const KdlLeg&) = delete;
    KdlLeg& operator=(const KdlLeg&) = delete;

private:
    static KDL::Chain chain(const Body& body, const Pose& pose) {
        const Vector2 AP = pose.front.p_WP - pose.at(Mark::ankle);
        KDL::Chain chain;
        chain.addSegment(hinged(body.thigh.length, pose.legs * body.thigh.mass, {body.thigh.centre, 0}));
        chain.addSegment(hinged(body.shank.length, pose.legs * body.shank.mass, {body.shank.centre, 0}));
        chain.addSegment(
            hinged(length(AP), pose.legs * body.foot_mass, turned(body.foot_centre, -direction(AP))));
        return chain;
    }
    inline static const KDL::Vector pull{0, -lift_gravity, 0};
    KDL::Chain chain_;
    KDL::ChainIdSolver_RNE solver_;
    KDL::JntArray q_{3}, still_{3}, held_{3};
    KDL::Wrenches pushes_ = KDL::Wrenches(3, KDL::Wrench::Zero());
};

// A back squat's trunk lean by KDL: shank, thigh and all above as one chain on the ankle; bisection of the last angle.
class KdlSquat {
public:
    KdlSquat(const Body& body, const Pose& pose)
        : chain_(chain(body, pose)), solver_(chain_, pull), shin_(pose.shin), thigh_(pose.thigh) {
        double mass = 2 * body.leg_mass();
        for (const auto& weight : pose.above_hips)
            mass += weight.mass;
        // The floor's force balances all weights: about the ankle, chain and feet.
        wanted_ = lift_gravity * (mass * pose.setup.pressure_share * body.foot_length -
                                  2 * body.foot_mass * body.foot_centre.x);
    }
    double trunk() {
        double low = -30 * std::numbers::pi / 180, high = 85 * std::numbers::pi / 180;
        while (high - low > 1e-12) {
            const double middle = (low + high) / 2;
            (miss(middle) < 0 ? low : high) = middle;
        }
        return low;
    }
    KdlSquat(const KdlSquat&) = delete;
    KdlSquat& operator=(const KdlSquat&) = delete;

private:
    double miss(double trunk) { // more lean brings the weight forward
        constexpr double up = std::numbers::pi / 2;
        q_(0) = up - shin_;
        q_(1) = shin_ + thigh_;
        q_(2) = -thigh_ - trunk;
        solver_.CartToJnt(q_, still_, still_, pushes_, held_);
        return held_(0) - wanted_;
    }
    static KDL::Chain chain(const Body& body, const Pose& pose) {
        double mass = 0;
        Vector2 moment{0, 0};
        for (const auto& weight : pose.above_hips) {
            mass += weight.mass;
            moment = moment + weight.mass * (weight.p_WC - pose.at(Mark::hip));
        }
        const double up = direction(pose.at(Mark::shoulder) - pose.at(Mark::hip));
        KDL::Chain chain;
        chain.addSegment(
            hinged(body.shank.length, 2 * body.shank.mass, {body.shank.length - body.shank.centre, 0}));
        chain.addSegment(
            hinged(body.thigh.length, 2 * body.thigh.mass, {body.thigh.length - body.thigh.centre, 0}));
        chain.addSegment(hinged(body.trunk.length, mass, (1 / mass) * turned(moment, -up)));
        return chain;
    }
    inline static const KDL::Vector pull{0, -lift_gravity, 0};
    KDL::Chain chain_;
    KDL::ChainIdSolver_RNE solver_;
    double shin_, thigh_, wanted_;
    KDL::JntArray q_{3}, still_{3}, held_{3};
    KDL::Wrenches pushes_ = KDL::Wrenches(3, KDL::Wrench::Zero());
};

bool near(double a, double b) {
    return std::abs(a - b) < 1e-6;
}
#endif

void print_row(const char* name, std::size_t postures, const std::vector<double>& took) {
    std::printf("%-30s %9zu", name, postures);
    for (const double each : took)
        std::printf(" %9.1f", each);
    std::puts("");
}

bool bench(const Body& body, const Named& asked) {
    const Setup& setup = asked.setup;
    const auto pose = solve_pose(body, setup);
    if (!pose)
        return false;
    const PoseBand band = estimate_pose_band(body, setup, *pose);
    const std::size_t postures = 1 + 2 * (band.causes.size() + band.per_centimetre.size());
    std::vector<std::function<double()>> works{
        [&] { return solve_pose(body, setup)->lead->hip; },
        [&] { return estimate_pose_band(body, setup, *solve_pose(body, setup)).hip.standard_error; }};
#ifdef AMENTUM_WITH_KDL
    KdlLeg leg(body, *pose);
    const auto [ankle, knee, hip] = leg.moments();
    if (!near(ankle, pose->lead->ankle) || !near(knee, pose->lead->knee) || !near(hip, pose->lead->hip))
        return false;
    works.push_back([&] {
        double sum = 0;
        for (std::size_t i = 0; i < postures; ++i)
            sum += leg.moments().hip;
        return sum;
    });
    KdlSquat squat(body, *pose);
    if (setup.lift == Lift::back_squat) {
        if (!near(squat.trunk(), pose->trunk))
            return false;
        works.push_back([&] { return squat.trunk(); });
    }
#endif
    print_row(asked.name, postures, microseconds(works));
    return true;
}

} // namespace

int main() {
    std::printf("%-30s %9s %9s %9s %9s %9s   (goal with its band: 200)\n", "microseconds", "postures", "pose",
                "band", "rival", "sought");
#ifndef AMENTUM_WITH_KDL
    std::printf("SKIPPED the rivals: orocos-kdl is not installed\n");
#endif
    const Body body = man();
    for (const Named& setup : setups())
        if (!bench(body, setup)) {
            std::fprintf(stderr, "%s: no posture, or not the rival's\n", setup.name);
            return 1;
        }
}
