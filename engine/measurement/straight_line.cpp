#include "measurement/straight_line.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

Result<Done> check_points(const std::vector<LinePoint>& points) {
    bool two_places = false;
    for (const auto& p : points) {
        assert(p.y_error > 0 && p.x_error >= 0);
        two_places = two_places || p.x != points.front().x;
    }
    if (two_places)
        return Done{};
    return Refusal{RefusalCode::too_few_data, "A line needs points at two different places.", "",
                   std::to_string(points.size()) + " points at one place", "2 places or more"};
}

double weight(const LinePoint& p, double slope) {
    return 1 / (p.y_error * p.y_error + slope * slope * p.x_error * p.x_error);
}

struct Middle {
    double x = 0, y = 0, weights = 0;
};

Middle middle_of(const std::vector<LinePoint>& points, double slope) {
    Middle m;
    for (const auto& p : points) {
        const double w = weight(p, slope);
        m.x += w * p.x;
        m.y += w * p.y;
        m.weights += w;
    }
    m.x /= m.weights;
    m.y /= m.weights;
    return m;
}

// How far along x the line's nearest point to p lies from the middle: beta of [York2004].
double adjusted(const LinePoint& p, const Middle& m, double slope) {
    const double u = p.x - m.x, v = p.y - m.y;
    return weight(p, slope) * (u * p.y_error * p.y_error + slope * v * p.x_error * p.x_error);
}

double next_slope(const std::vector<LinePoint>& points, double slope) {
    const Middle m = middle_of(points, slope);
    double above = 0, below = 0;
    for (const auto& p : points) {
        const double share = weight(p, slope) * adjusted(p, m, slope);
        above += share * (p.y - m.y);
        below += share * (p.x - m.x);
    }
    return above / below;
}

double misfit_of(const std::vector<LinePoint>& points, double intercept, double slope) {
    double sum = 0;
    for (const auto& p : points)
        sum += weight(p, slope) * std::pow(p.y - intercept - slope * p.x, 2);
    return sum;
}

StraightLine line_of_slope(const std::vector<LinePoint>& points, double slope) {
    const Middle m = middle_of(points, slope);
    double mean = 0, spread = 0;
    for (const auto& p : points)
        mean += weight(p, slope) * (m.x + adjusted(p, m, slope)) / m.weights;
    for (const auto& p : points)
        spread += weight(p, slope) * std::pow(m.x + adjusted(p, m, slope) - mean, 2);
    const double intercept = m.y - slope * m.x;
    return {intercept,
            slope,
            1 / m.weights + mean * mean / spread,
            1 / spread,
            -mean / spread,
            misfit_of(points, intercept, slope),
            static_cast<int>(points.size()) - 2};
}

double median_of(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t n = values.size();
    return n % 2 ? values[n / 2] : 0.5 * (values[n / 2 - 1] + values[n / 2]);
}

} // namespace

Result<StraightLine> fit_errors_in_y(const std::vector<LinePoint>& points) {
    auto exact = points;
    for (auto& p : exact)
        p.x_error = 0;
    if (const auto enough = check_points(exact); !enough)
        return enough.refusal();
    return line_of_slope(exact, next_slope(exact, 0));
}

Result<StraightLine> fit_errors_in_both(const std::vector<LinePoint>& points) {
    const auto start = fit_errors_in_y(points);
    if (!start)
        return start.refusal();
    double slope = start->slope;
    for (int i = 0; i < 200; ++i) {
        const double next = next_slope(points, slope);
        const bool still = std::abs(next - slope) <= 1e-14 * std::abs(next);
        slope = next;
        if (still)
            break;
    }
    return line_of_slope(points, slope);
}

Result<StraightLine> fit_median_slope(const std::vector<LinePoint>& points) {
    auto line = fit_errors_in_both(points);
    if (!line)
        return line;
    std::vector<double> slopes, intercepts;
    for (std::size_t i = 0; i < points.size(); ++i)
        for (std::size_t j = i + 1; j < points.size(); ++j)
            if (points[i].x != points[j].x)
                slopes.push_back((points[j].y - points[i].y) / (points[j].x - points[i].x));
    line->slope = median_of(slopes);
    for (const auto& p : points)
        intercepts.push_back(p.y - line->slope * p.x);
    line->intercept = median_of(intercepts);
    line->misfit = misfit_of(points, line->intercept, line->slope);
    return line;
}

bool misfit_is_unusual(const StraightLine& line) {
    if (line.freedom < 1)
        return false;
    const double z = 2.3263478740408408; // 99th percentile of N(0, 1)
    const double f = line.freedom;
    return line.misfit > f * std::pow(1 - 2 / (9 * f) + z * std::sqrt(2 / (9 * f)), 3);
}

StraightLine widened_by_misfit(StraightLine line) {
    const double factor = line.freedom > 0 ? std::max(1.0, line.misfit / line.freedom) : 1.0;
    line.intercept_variance *= factor;
    line.slope_variance *= factor;
    line.covariance *= factor;
    return line;
}

Result<Crossing> estimate_crossing(const StraightLine& line, double y, double y_error, double z) {
    const double d = line.intercept - y, b = line.slope, zz = z * z;
    // (d + b x)^2 = z^2 (variance of d + b x), a quadratic in x
    const double square = b * b - zz * line.slope_variance;
    if (!(square > 0))
        return Refusal{RefusalCode::too_few_data, "The slope of the line is not known to differ from level.",
                       "", "", "points further apart, or more of them"};
    const double half = d * b - zz * line.covariance;
    const double rest = d * d - zz * (line.intercept_variance + y_error * y_error);
    const double x = -d / b;
    const double root = std::sqrt(std::max(0.0, half * half - square * rest));
    return Crossing{x,
                    std::sqrt(line.variance_at(x) + y_error * y_error) / std::abs(b),
                    {(-half - root) / square, (-half + root) / square}};
}

} // namespace amentum
