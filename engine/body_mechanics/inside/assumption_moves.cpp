#include "body_mechanics/inside/assumption_moves.h"

#include "body_mechanics/holds.h"
#include "body_mechanics/rear_share.h"

#include <cassert>

namespace amentum {
namespace {

constexpr double pressure_error = 0.05; // of the foot's length (proposal)
constexpr double hold_error = 0.015;    // m (proposal)

BodyLink& link_of(Body& body, Cause cause) {
    return cause == Cause::shank ? body.shank : cause == Cause::thigh ? body.thigh : body.trunk;
}
const BodyLink& link_of(const Body& body, Cause cause) {
    return cause == Cause::shank ? body.shank : cause == Cause::thigh ? body.thigh : body.trunk;
}

} // namespace

std::vector<Cause> causes_of(const Setup& setup) {
    std::vector<Cause> causes;
    if (rear_share_of(setup.lift))
        causes.push_back(Cause::rear_share);
    causes.insert(causes.end(), {Cause::pressure, Cause::shank, Cause::thigh, Cause::trunk});
    if (hold_place(setup).arms == ArmsAt::trunk && setup.load > Mass::kilograms(0))
        causes.push_back(Cause::hold);
    return causes;
}

double error_of(Cause cause, const Body& body, const Setup& setup) {
    switch (cause) {
    case Cause::rear_share:
        return rear_share_of(setup.lift)->sd;
    case Cause::pressure:
        return pressure_error;
    case Cause::hold:
        return hold_error;
    case Cause::shank:
    case Cause::thigh:
    case Cause::trunk:
        return link_of(body, cause).length_error;
    }
    assert(!"every cause has an error");
    return 0;
}

void move_assumption(Cause cause, double amount, Body& body, Setup& setup) {
    switch (cause) {
    case Cause::rear_share:
        setup.rear_share = setup.rear_share.value_or(rear_share_of(setup.lift)->share) + amount;
        return;
    case Cause::pressure:
        setup.pressure_share += amount;
        return;
    case Cause::hold:
        setup.load_ahead = Length::metres(hold_place(setup).ahead + amount);
        return;
    case Cause::shank:
    case Cause::thigh:
    case Cause::trunk: {
        BodyLink& link = link_of(body, cause);
        link.centre *= (link.length + amount) / link.length;
        link.length += amount;
        return;
    }
    }
}

} // namespace amentum
