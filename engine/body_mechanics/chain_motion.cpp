#include "body_mechanics/chain_motion.h"

#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>

namespace amentum {

void move_chain(const MovingBase& base, std::span<const MovingLink> from_base,
                std::span<ChainLink> from_free_end) {
    assert(from_base.size() == from_free_end.size());
    auto [p_WB, a_WB] = base;
    for (std::size_t i = 0; i < from_base.size(); ++i) {
        const MovingLink& link = from_base[i];
        const Vector2 along{std::cos(link.phi), std::sin(link.phi)}, across{-along.y, along.x};
        const Vector2 each_metre = link.alpha * across - link.omega * link.omega * along;
        ChainLink& moved = from_free_end[from_base.size() - 1 - i];
        moved = {link.mass,
                 link.inertia,
                 p_WB + link.length * along,
                 p_WB,
                 p_WB + link.centre * along,
                 a_WB + link.centre * each_metre,
                 link.alpha};
        p_WB = moved.p_WD;
        a_WB = a_WB + link.length * each_metre;
    }
}

void solve_moving_chain(const MovingBase& base, std::span<const MovingLink> from_base,
                        std::span<JointLoad> from_base_up, Vector2 g) {
    constexpr std::size_t most_links = 16;
    assert(from_base.size() == from_base_up.size() && from_base.size() <= most_links);
    std::array<Vector2, most_links> along, force; // direction of each link; m (a_WC - g)
    Vector2 a_WB = base.a_WB - g;
    for (std::size_t i = 0; i < from_base.size(); ++i) {
        const MovingLink& link = from_base[i];
        const Vector2 u{std::cos(link.phi), std::sin(link.phi)};
        const double spin = link.omega * link.omega;
        const Vector2 each_metre{-link.alpha * u.y - spin * u.x, link.alpha * u.x - spin * u.y};
        along[i] = u;
        force[i] = link.mass * (a_WB + link.centre * each_metre);
        a_WB = a_WB + link.length * each_metre;
    }
    Vector2 F_T{0, 0}; // by this link on the next, at its tip
    double M_T = 0;
    for (std::size_t i = from_base.size(); i-- > 0;) {
        const MovingLink& link = from_base[i];
        M_T += link.inertia * link.alpha + cross(along[i], link.length * F_T + link.centre * force[i]);
        F_T = F_T + force[i];
        from_base_up[i] = {F_T, M_T};
    }
}

} // namespace amentum
