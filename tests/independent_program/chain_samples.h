// A thousand random chains that move in a plane, and what this engine says of each; for the comparisons with rigid-body
// libraries. Plain C++17, because one of them does not compile as C++20.
#pragma once

#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

namespace chain_samples {

struct Link {
    double length, mass, centre, inertia; // centre from the base end
    double phi, omega, alpha;             // of the inclination from the x axis, not of the joint
    bool pushed = false;                  // a force and a moment act on it:
    double force_x = 0, force_y = 0;      // from outside, along the fixed axes
    double along = 0, across = 0;         // where, from the base end, in the link's own axes
    double moment = 0;
};

struct Chain {
    std::vector<Link> links; // the base first
    double base_x, base_y, base_acceleration_x, base_acceleration_y;
    double tip_mass; // a point, at the far end of the last link
};

struct Load { // on a link, at its base end, by its neighbour
    double force_x, force_y, moment;
};

constexpr double gravity = 9.80665;
constexpr int how_many = 1000;

// Of move_chain and solve_chain, the base first; our_loads.cpp.
std::vector<Load> our_loads(const Chain& chain);

// The standard fixes what the generator makes but not what its distributions make of it.
inline double uniform(std::mt19937_64& random, double low, double high) {
    return low + (high - low) * static_cast<double>(random() >> 11) / 9007199254740992.0;
}

inline Link random_link(std::mt19937_64& random, bool pushed) {
    const auto in = [&](double low, double high) { return uniform(random, low, high); };
    Link link{in(0.05, 0.7), in(0.2, 60), 0, 0, in(-3.1, 3.1), in(-15, 15), in(-200, 200)};
    link.centre = link.length * in(-0.2, 1.2);
    link.inertia = link.mass * std::pow(link.length * in(0.1, 0.6), 2);
    if (pushed) {
        link.pushed = true;
        link.force_x = in(-1500, 1500);
        link.force_y = in(-1500, 2500);
        link.along = link.length * in(-0.5, 1.5);
        link.across = in(-0.3, 0.3);
        link.moment = in(-300, 300);
    }
    return link;
}

// Every other chain is pushed; every third carries a point at its tip; every fourth stands still.
inline std::vector<Chain> chains() {
    std::mt19937_64 random(20250);
    std::vector<Chain> all;
    for (int i = 0; i < how_many; ++i) {
        Chain chain{{},
                    uniform(random, -2, 2),
                    uniform(random, -1, 2),
                    0,
                    0,
                    i % 3 == 0 ? uniform(random, 1, 150) : 0};
        const auto links = 1 + random() % 6, surely = random() % links;
        for (std::uint64_t k = 0; k < links; ++k)
            chain.links.push_back(random_link(random, i % 2 == 0 && (k == surely || random() % 2 == 0)));
        if (i % 4 == 3)
            for (Link& link : chain.links)
                link.omega = link.alpha = 0;
        else {
            chain.base_acceleration_x = uniform(random, -30, 30);
            chain.base_acceleration_y = uniform(random, -30, 30);
        }
        all.push_back(chain);
    }
    return all;
}

// The largest difference in a moment or a force, each as a share of the largest of the chain (but at least of 1).
struct Difference {
    double moment = 0, force = 0;
};

inline Difference difference(const std::vector<Load>& ours, const std::vector<Load>& theirs) {
    Difference most;
    double moment = 1, force = 1;
    for (std::size_t i = 0; i < ours.size(); ++i) {
        const Load &a = ours[i], &b = theirs[i];
        moment = std::fmax(moment, std::abs(b.moment));
        force = std::fmax(force, std::hypot(b.force_x, b.force_y));
        most.moment = std::fmax(most.moment, std::abs(a.moment - b.moment));
        most.force = std::fmax(most.force, std::hypot(a.force_x - b.force_x, a.force_y - b.force_y));
    }
    return {most.moment / moment, most.force / force};
}

} // namespace chain_samples
