// Joint moments and forces of a thousand random chains against KDL 1.5 (orocos-kdl, Debian), a rigid-body library that
// works in space with Featherstone's recursion of twists and wrenches.
//
// Each joint is given to KDL as two slides and a hinge. The slides stand still, so that what holds them is the joint's
// force, in the axes of the link before; only those of the base carry the base's acceleration. The mass at the tip is
// a body of its own, fixed there.
#include "chain_samples.h"

#include <doctest/doctest.h>
#include <kdl/chain.hpp>
#include <kdl/chainidsolver_recursive_newton_euler.hpp>

#include <algorithm>

using namespace chain_samples;

namespace {

KDL::Chain kdl_chain(const Chain& given) {
    KDL::Chain chain;
    for (const Link& link : given.links) {
        chain.addSegment(KDL::Segment(KDL::Joint(KDL::Joint::TransX)));
        chain.addSegment(KDL::Segment(KDL::Joint(KDL::Joint::TransY)));
        // KDL counts centre and forces from the segment's far end.
        const KDL::RigidBodyInertia body(link.mass, KDL::Vector(link.centre - link.length, 0, 0),
                                         KDL::RotationalInertia(link.inertia, link.inertia, link.inertia));
        chain.addSegment(
            KDL::Segment(KDL::Joint(KDL::Joint::RotZ), KDL::Frame(KDL::Vector(link.length, 0, 0)), body));
    }
    chain.addSegment(KDL::Segment(KDL::Joint(KDL::Joint::Fixed), KDL::Frame::Identity(),
                                  KDL::RigidBodyInertia(given.tip_mass)));
    return chain;
}

KDL::Wrenches pushes_of(const Chain& given) {
    KDL::Wrenches pushes;
    for (const Link& link : given.links) {
        pushes.push_back(KDL::Wrench::Zero());
        pushes.push_back(KDL::Wrench::Zero());
        const double cosine = std::cos(link.phi), sine = std::sin(link.phi);
        const KDL::Vector force(cosine * link.force_x + sine * link.force_y,
                                cosine * link.force_y - sine * link.force_x, 0);
        const KDL::Vector at(link.along - link.length, link.across, 0);
        pushes.push_back(link.pushed ? KDL::Wrench(force, at * force + KDL::Vector(0, 0, link.moment))
                                     : KDL::Wrench::Zero());
    }
    pushes.push_back(KDL::Wrench::Zero());
    return pushes;
}

std::vector<Load> kdl_loads(const Chain& given) {
    const KDL::Chain chain = kdl_chain(given);
    const auto joints = static_cast<unsigned>(3 * given.links.size());
    KDL::JntArray q(joints), rate(joints), acceleration(joints), held(joints);
    q(0) = given.base_x;
    q(1) = given.base_y;
    acceleration(0) = given.base_acceleration_x;
    acceleration(1) = given.base_acceleration_y;
    Link before{};
    for (unsigned i = 0; i < given.links.size(); ++i) {
        const Link& link = given.links[i];
        q(3 * i + 2) = link.phi - before.phi;
        rate(3 * i + 2) = link.omega - before.omega;
        acceleration(3 * i + 2) = link.alpha - before.alpha;
        before = link;
    }
    KDL::ChainIdSolver_RNE solver(chain, KDL::Vector(0, -gravity, 0));
    REQUIRE(solver.CartToJnt(q, rate, acceleration, pushes_of(given), held) >= 0);
    std::vector<Load> loads;
    double phi = 0; // of the link before: the slides lie in its axes
    for (unsigned i = 0; i < given.links.size(); ++i) {
        const double along = held(3 * i), across = held(3 * i + 1);
        loads.push_back({std::cos(phi) * along - std::sin(phi) * across,
                         std::sin(phi) * along + std::cos(phi) * across, held(3 * i + 2)});
        phi = given.links[i].phi;
    }
    return loads;
}

} // namespace

TEST_CASE("a thousand random chains have KDL's joint moments and forces") {
    Difference most;
    int pushed = 0, tipped = 0;
    for (const Chain& chain : chains()) {
        const auto [moment, force] = difference(our_loads(chain), kdl_loads(chain));
        most = {std::max(most.moment, moment), std::max(most.force, force)};
        CHECK(moment < 1e-12);
        CHECK(force < 1e-12);
        pushed +=
            std::any_of(chain.links.begin(), chain.links.end(), [](const Link& link) { return link.pushed; });
        tipped += chain.tip_mass > 0;
    }
    CHECK(pushed == 500);
    CHECK(tipped == 334);
    MESSAGE("largest difference, as a share of the chain's largest: moments " << most.moment << ", forces "
                                                                              << most.force);
}
