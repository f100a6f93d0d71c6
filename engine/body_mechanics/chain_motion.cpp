#include "body_mechanics/chain_motion.h"

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

} // namespace amentum
