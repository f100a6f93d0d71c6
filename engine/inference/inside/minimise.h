// The least value of a smooth function with a gradient: a trust region around a symmetric rank-one model.
//
// Each step minimises g's + s'Bs/2 within |s| <= radius [NocedalWright2006, chapters 4 and 6];
// B is corrected by the rank-one update from the gradients seen, so it may be indefinite without harm. The caller scales f
// and x so that curvatures are near 1.
// Ends when the value is not a number at the start, when the largest gradient is below `small_gradient`, when no further decrease can be told from rounding, or after
// `most` evaluations; `gradient` then says how good the point is, and the caller judges.
#pragma once

#include <Eigen/Dense>

#include <cmath>

namespace amentum {

struct Minimum {
    Eigen::VectorXd x;
    double value;
    Eigen::VectorXd gradient;
    Eigen::MatrixXd model; // the last B
    int evaluations;
};

struct MinimumOptions {
    double small_gradient = 1e-9;
    double first_radius = 0.5;
    int most = 500;
    Eigen::MatrixXd model = {}; // B to begin with; empty: the identity
};

// The trust-region step by Cholesky factors of B + shift: Newton's iteration on the step's length, kept inside the shifts
// known to be too small and large enough [NocedalWright2006, algorithm 4.3]. Within 1 % of the radius is near enough.
inline Eigen::VectorXd trust_region_step(const Eigen::MatrixXd& B, const Eigen::VectorXd& g, double radius) {
    const Eigen::Index n = g.size();
    double shift = 0, low = 0, high = g.norm() / radius + B.cwiseAbs().rowwise().sum().maxCoeff();
    Eigen::LLT<Eigen::MatrixXd> L;
    Eigen::VectorXd step;
    for (int i = 0; i < 60; ++i) {
        L.compute(B + shift * Eigen::MatrixXd::Identity(n, n));
        if (L.info() != Eigen::Success) { // not convex yet
            low = shift;
            shift = shift == 0 ? 1e-4 * high : std::min(10 * shift, (shift + high) / 2);
            continue;
        }
        step = -L.solve(g);
        const double length = step.norm();
        if ((shift == 0 && length <= radius) || std::abs(length - radius) < 0.01 * radius ||
            high - low < 1e-12 * high)
            return step;
        (length > radius ? low : high) = shift;
        const double slope = L.matrixL().solve(step).squaredNorm();
        const double newton = shift + length * length / slope * (length - radius) / radius;
        shift = newton > low && newton < high ? newton : (low + high) / 2;
    }
    return step.norm() > radius ? (radius / step.norm()) * step : step;
}

// f(x, gradient) answers the value and fills the gradient; not finite: no such point.
template <class F>
Minimum minimise(F f, Eigen::VectorXd x, const MinimumOptions& options = {}) {
    const Eigen::Index n = x.size();
    Minimum at{x, 0, Eigen::VectorXd::Zero(n), Eigen::MatrixXd::Identity(n, n), 1};
    if (options.model.rows() == n)
        at.model = options.model;
    at.value = f(at.x, at.gradient);
    if (!std::isfinite(at.value))
        return at;
    double radius = options.first_radius;
    Eigen::VectorXd g(n);
    while (at.evaluations < options.most && at.gradient.cwiseAbs().maxCoeff() > options.small_gradient &&
           radius > 1e-13 * (1 + at.x.norm())) {
        const Eigen::VectorXd s = trust_region_step(at.model, at.gradient, radius);
        const double expected = -(at.gradient.dot(s) + 0.5 * s.dot(at.model * s));
        const double size = 1 + std::abs(at.value);
        if (!(expected > 1e-22 * size))
            break;
        const double value = f(at.x + s, g);
        ++at.evaluations;
        // Near the end values no longer differ beyond their rounding; the gradients at both ends still tell the decrease.
        const double decrease = expected > 1e-9 * size ? at.value - value : -0.5 * (at.gradient + g).dot(s);
        const double ratio = std::isfinite(value) ? decrease / expected : -1;
        if (std::isfinite(value) && g.allFinite()) {
            const Eigen::VectorXd r = g - at.gradient - at.model * s;
            const double rs = r.dot(s);
            if (std::abs(rs) > 1e-8 * r.norm() * s.norm())
                at.model += r * r.transpose() / rs;
        }
        if (ratio < 0.1)
            radius = std::min(radius, s.norm()) / 4;
        else if (ratio > 0.75 && s.norm() > 0.8 * radius)
            radius *= 2;
        if (ratio > 1e-4) {
            at.x += s;
            at.value = value;
            at.gradient = g;
        }
    }
    return at;
}

} // namespace amentum
