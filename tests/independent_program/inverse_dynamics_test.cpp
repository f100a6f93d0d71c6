// Joint moments of one chain of foot, shank, thigh and trunk with 100 kg at its end, as four programs found them separately:
// our own earlier prototype in another language, KDL, DART and Simbody. They agreed within 4e-9 N m; this test
// needs none of them. kdl_test.cpp and simbody_test.cpp ask two of them again, on a thousand random chains.
#include "body_mechanics/chain_motion.h"

#include <doctest/doctest.h>

#include <array>

using namespace amentum;

namespace {

struct
    Part { // length of a man of 1.741 m (his share of it for the foot), mass, centre and radius as shares of length
    double length, mass, centre, radius;
};
constexpr double grown = 1.8 / 1.741;
constexpr std::array<Part, 4> parts{{{0.2581 * 0.55 * grown, 2.192, 0.60, 0.257},
                                     {0.4403 * grown, 6.928, 0.5605, 0.246},
                                     {0.4222 * grown, 22.656, 0.5905, 0.329},
                                     {0.5155 * grown, 48.224, 0.626, 0.496}}};
// Angles of each joint from the link before; rates and accelerations of the same.
constexpr std::array q{2.60, -1.50, 1.35, -1.50}, rate{0.1, -0.7, 1.3, -0.9},
    acceleration{0.4, 2.0, -3.5, 5.0};

// The base first.
std::array<double, 4> moments(double moving) {
    std::array<MovingLink, 5> links;
    MovingLink before{};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto& [length, mass, centre, radius] = parts[i];
        links[i] = {length,
                    mass,
                    centre * length,
                    mass * radius * radius * length * length,
                    before.phi + q[i],
                    before.omega + moving * rate[i],
                    before.alpha + moving * acceleration[i]};
        before = links[i];
    }
    links[4] = {0, 100, 0, 0, 0}; // the load: a point
    std::array<ChainLink, 5> chain;
    move_chain({}, links, chain);
    std::array<JointLoad, 5> loads;
    solve_chain(chain, loads);
    return {loads[4].moment, loads[3].moment, loads[2].moment, loads[1].moment};
}

void check(const std::array<double, 4>& is, const std::array<double, 4>& wanted) {
    for (std::size_t i = 0; i < is.size(); ++i)
        CHECK(std::abs(is[i] - wanted[i]) < 1e-8);
}

} // namespace

TEST_CASE("a moving chain of four has the moments that four programs agree on") {
    check(moments(1), {384.923311205, 611.359782486, 72.080939661, 596.337381590});
}

TEST_CASE("the same chain at rest") {
    check(moments(0), {-4.044208753, 216.868848308, -137.016250896, 395.804948814});
}
