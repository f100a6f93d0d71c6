#include "body_mechanics/chain_motion.h"
#include "chain_samples.h"

namespace chain_samples {

using namespace amentum;

std::vector<Load> our_loads(const Chain& given) {
    std::vector<MovingLink> links;
    for (const Link& link : given.links)
        links.push_back(
            {link.length, link.mass, link.centre, link.inertia, link.phi, link.omega, link.alpha});
    links.push_back({0, given.tip_mass, 0, 0, 0}); // the point at the tip: a link without length
    std::vector<ChainLink> chain(links.size());
    move_chain({{given.base_x, given.base_y}, {given.base_acceleration_x, given.base_acceleration_y}}, links,
               chain);
    for (std::size_t i = 0; i < given.links.size(); ++i) {
        const Link& link = given.links[i];
        ChainLink& moved = chain[given.links.size() - i];
        const Vector2 along{std::cos(link.phi), std::sin(link.phi)}, across{-along.y, along.x};
        if (link.pushed)
            moved.external = {{link.force_x, link.force_y},
                              moved.p_WP + link.along * along + link.across * across,
                              link.moment};
    }
    std::vector<JointLoad> loads(chain.size());
    solve_chain(chain, loads);
    std::vector<Load> from_base;
    for (std::size_t i = 0; i < given.links.size(); ++i) {
        const auto& [force, moment] = loads[given.links.size() - i];
        from_base.push_back({force.x, force.y, moment});
    }
    return from_base;
}

} // namespace chain_samples
