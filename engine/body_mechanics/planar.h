// The plane of a lift or a landing: x forward (the way the athlete faces), y up, moments positive from x to y.
//
// Notation, as in the multibody literature: p_WK is the position of point K from the origin of frame W, in metres; a_WC
// the acceleration of the mass centre C in W; F_L_K the force on link L at K. W is the floor under the lead ankle.
// docs/methods/body_mechanics_notation.md has the whole list.
#pragma once

#include <cmath>

namespace amentum {

struct Vector2 {
    double x;
    double y;
    friend constexpr Vector2 operator+(Vector2 a, Vector2 b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Vector2 operator-(Vector2 a, Vector2 b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Vector2 operator*(double k, Vector2 a) { return {k * a.x, k * a.y}; }
    friend bool operator==(const Vector2&, const Vector2&) = default;
};

constexpr double dot(Vector2 a, Vector2 b) {
    return a.x * b.x + a.y * b.y;
}
constexpr double cross(Vector2 a, Vector2 b) {
    return a.x * b.y - a.y * b.x;
} // the z component
inline double length(Vector2 a) {
    return std::hypot(a.x, a.y);
}

inline constexpr double lift_gravity = 9.80665; // m/s2, standard gravity, exact [NistSp811, B.8]

} // namespace amentum
