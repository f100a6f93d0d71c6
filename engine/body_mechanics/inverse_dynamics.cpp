#include "body_mechanics/inverse_dynamics.h"

#include <cassert>
#include <cstddef>

namespace amentum {

void solve_chain(std::span<const ChainLink> from_free_end, std::span<JointLoad> answer, Vector2 g) {
    assert(from_free_end.size() == answer.size());
    Vector2 F_D{0, 0};
    double M_D = 0;
    for (std::size_t i = 0; i < from_free_end.size(); ++i) {
        const ChainLink& link = from_free_end[i];
        const auto& [force, p_WE, moment] = link.external;
        const Vector2 F_P = link.mass * (link.a_WC - g) - force - F_D;
        const double M_P = link.inertia * link.alpha - moment - M_D - cross(link.p_WD - link.p_WC, F_D) -
                           cross(link.p_WP - link.p_WC, F_P) - cross(p_WE - link.p_WC, force);
        answer[i] = {F_P, M_P};
        F_D = -1 * F_P;
        M_D = -M_P;
    }
}

} // namespace amentum
