// Joint moments and forces of a thousand random chains against Simbody 3.7 (SimTK, Debian), a rigid-body library that
// works in space with relative coordinates. Compiled as C++17, which its headers ask for.
//
// Each joint is given to Simbody as its planar joint, two slides and a hinge. The slides stand still, so that what holds
// them is the joint's force, in the axes of the link before; only the base's carry an acceleration. What holds each
// coordinate is the residual of the equations of motion for the accelerations given. The mass at the tip is a body of its
// own, welded there.
#include "chain_samples.h"

#include <Simbody.h>
#include <doctest/doctest.h>

#include <algorithm>

using namespace chain_samples;
using SimTK::Vec3;

namespace {

struct Model {
    SimTK::MultibodySystem system;
    SimTK::SimbodyMatterSubsystem matter{system};
    SimTK::GeneralForceSubsystem forces{system};
    SimTK::Force::UniformGravity pull{forces, matter, Vec3(0, -gravity, 0)};
    std::vector<SimTK::MobilizedBody> bodies;
};

void build(Model& model, const Chain& given) {
    SimTK::MobilizedBody before = model.matter.updGround();
    Vec3 joint(0, 0, 0);
    for (const Link& link : given.links) {
        const Vec3 centre(link.centre, 0, 0);
        const auto inertia =
            SimTK::Inertia(link.inertia, link.inertia, link.inertia).shiftFromMassCenter(centre, link.mass);
        const SimTK::Body::Rigid body(SimTK::MassProperties(link.mass, centre, inertia));
        before = SimTK::MobilizedBody::Planar(before, SimTK::Transform(joint), body, SimTK::Transform());
        model.bodies.push_back(before);
        joint = Vec3(link.length, 0, 0);
    }
    const SimTK::Body::Rigid point(SimTK::MassProperties(given.tip_mass, Vec3(0), SimTK::Inertia(0)));
    SimTK::MobilizedBody::Weld(before, SimTK::Transform(joint), point, SimTK::Transform());
}

void move(const Model& model, const Chain& given, SimTK::State& state, SimTK::Vector& acceleration) {
    acceleration = SimTK::Vector(state.getNU(), 0.0);
    Link before{};
    for (std::size_t i = 0; i < given.links.size(); ++i) {
        const Link& link = given.links[i];
        const auto& body = model.bodies[i];
        body.setOneQ(state, 0, link.phi - before.phi);
        body.setOneU(state, 0, link.omega - before.omega);
        body.updOneFromUPartition(state, 0, acceleration) = link.alpha - before.alpha;
        before = link;
    }
    const auto& base = model.bodies.front();
    base.setOneQ(state, 1, given.base_x);
    base.setOneQ(state, 2, given.base_y);
    base.updOneFromUPartition(state, 1, acceleration) = given.base_acceleration_x;
    base.updOneFromUPartition(state, 2, acceleration) = given.base_acceleration_y;
}

std::vector<Load> simbody_loads(const Chain& given) {
    Model model;
    build(model, given);
    SimTK::State state = model.system.realizeTopology();
    SimTK::Vector acceleration, held;
    move(model, given, state, acceleration);
    model.system.realize(state, SimTK::Stage::Dynamics);
    auto outside = model.system.getRigidBodyForces(state, SimTK::Stage::Dynamics); // the pull of gravity
    for (std::size_t i = 0; i < given.links.size(); ++i) {
        const Link& link = given.links[i];
        if (!link.pushed)
            continue;
        model.bodies[i].applyForceToBodyPoint(state, Vec3(link.along, link.across, 0),
                                              Vec3(link.force_x, link.force_y, 0), outside);
        model.bodies[i].applyBodyTorque(state, Vec3(0, 0, link.moment), outside);
    }
    model.matter.calcResidualForceIgnoringConstraints(state, SimTK::Vector(), outside, acceleration, held);
    std::vector<Load> loads;
    double phi = 0; // of the link before: the slides lie in its axes
    for (std::size_t i = 0; i < given.links.size(); ++i) {
        const auto of = [&](int coordinate) {
            return model.bodies[i].getOneFromUPartition(state, coordinate, held);
        };
        const double along = of(1), across = of(2);
        loads.push_back({std::cos(phi) * along - std::sin(phi) * across,
                         std::sin(phi) * along + std::cos(phi) * across, of(0)});
        phi = given.links[i].phi;
    }
    return loads;
}

} // namespace

TEST_CASE("a thousand random chains have Simbody's joint moments and forces") {
    Difference most;
    for (const Chain& chain : chains()) {
        const auto [moment, force] = difference(our_loads(chain), simbody_loads(chain));
        most = {std::max(most.moment, moment), std::max(most.force, force)};
        CHECK(moment < 1e-12);
        CHECK(force < 1e-12);
    }
    MESSAGE("largest difference, as a share of the chain's largest: moments " << most.moment << ", forces "
                                                                              << most.force);
}
