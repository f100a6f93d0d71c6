#include "recordings/inside/c3d_plates.h"

#include "recordings/inside/c3d_refusal.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr int most_plates = 64;

Refusal refuse_count(const std::string& name, std::size_t given, std::size_t plates,
                     const std::string& each) {
    return refuse_c3d("FORCE_PLATFORM:" + name,
                      "FORCE_PLATFORM:" + name + " has " + std::to_string(given) + " values, but " +
                          std::to_string(plates) + (plates == 1 ? " plate needs " : " plates need ") + each +
                          ".",
                      std::to_string(given), each);
}

Result<std::size_t> count_of_plates(const C3dHead& head) {
    const double used = head.number("FORCE_PLATFORM", "USED").value_or(0);
    if (!(used >= 0 && used <= most_plates && used == std::floor(used)))
        return refuse_c3d("FORCE_PLATFORM:USED",
                          "FORCE_PLATFORM:USED is " + format_shortest(used) +
                              ", but must be a count of plates.",
                          format_shortest(used), "0 to " + std::to_string(most_plates));
    return static_cast<std::size_t>(used);
}

std::vector<Vector3> corners_of(const std::vector<double>& all, std::size_t plate) {
    std::vector<Vector3> corners;
    if (all.size() < 12 * (plate + 1))
        return corners;
    for (std::size_t c = 0; c < 4; ++c) {
        const auto* at = all.data() + 12 * plate + 3 * c;
        corners.push_back({at[0], at[1], at[2]});
    }
    const bool all_zero = std::all_of(corners.begin(), corners.end(), [](const Vector3& corner) {
        return corner == Vector3{0, 0, 0};
    });
    return all_zero ? std::vector<Vector3>{} : corners;
}

Vector3 sum(const Vector3& a, double times, const Vector3& b) {
    return {a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]};
}
double length(const Vector3& a) {
    return std::sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
}
Vector3 unit(const Vector3& a) {
    return sum({0, 0, 0}, 1 / length(a), a);
}
Vector3 cross(const Vector3& a, const Vector3& b) {
    return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

} // namespace

Result<std::vector<C3dPlate>> c3d_plates(const C3dHead& head) {
    const auto count = count_of_plates(head);
    if (!count)
        return count.refusal();
    std::vector<C3dPlate> plates;
    const auto types = head.numbers("FORCE_PLATFORM", "TYPE", C3dWhole::with_sign);
    const auto channels = head.numbers("FORCE_PLATFORM", "CHANNEL");
    const auto corners = head.numbers("FORCE_PLATFORM", "CORNERS");
    const auto matrices = head.numbers("FORCE_PLATFORM", "CAL_MATRIX");
    if (types.size() < *count)
        return refuse_count("TYPE", types.size(), *count, "one value a plate");
    const C3dParameter* channel = head.find("FORCE_PLATFORM", "CHANNEL");
    const std::size_t rows =
        channel && !channel->dimensions.empty() ? static_cast<std::size_t>(channel->dimensions.front()) : 0;
    if (*count > 0 && (rows == 0 || channels.size() < rows * *count))
        return refuse_count("CHANNEL", channels.size(), *count, "a column of channel numbers a plate");
    for (std::size_t i = 0; i < *count; ++i) {
        C3dPlate plate{
            static_cast<int>(i + 1), static_cast<int>(std::clamp(types[i], -32768.0, 32767.0)), {}, {}, {}};
        for (std::size_t row = 0; row < rows; ++row)
            plate.channels.push_back(static_cast<int>(std::clamp(channels[i * rows + row], 0.0, 65535.0)));
        plate.corners = corners_of(corners, i);
        if (matrices.size() >= 36 * (i + 1))
            plate.matrix.assign(matrices.begin() + static_cast<std::ptrdiff_t>(36 * i),
                                matrices.begin() + static_cast<std::ptrdiff_t>(36 * (i + 1)));
        plates.push_back(std::move(plate));
    }
    return plates;
}

Result<C3dPlateAxes> c3d_plate_axes(const C3dPlate& plate) {
    if (plate.corners.empty())
        return C3dPlateAxes{{1, 0, 0}, {0, -1, 0}, {0, 0, -1}, std::nullopt, 0};
    const auto& c = plate.corners;
    const Vector3 along_x = sum(sum(c[0], 1, c[3]), -1, sum(c[1], 1, c[2]));
    const Vector3 along_y = sum(sum(c[0], 1, c[1]), -1, sum(c[2], 1, c[3]));
    const double least_angle = length(cross(along_x, along_y)) / (length(along_x) * length(along_y));
    if (!(least_angle > 0.5)) // also when a corner is no number; the axes of a plate stand at right angles
        return refuse_c3d("FORCE_PLATFORM:CORNERS",
                          "FORCE_PLATFORM:CORNERS of plate " + std::to_string(plate.number) +
                              " do not make a rectangle, so nothing tells which way the plate lies.",
                          "", "four corners of a rectangle, or all 0 when they are not known");
    const Vector3 x = unit(along_x), z = unit(cross(along_x, along_y));
    int upright = 0;
    for (int axis = 1; axis < 3; ++axis)
        if (std::abs(z[static_cast<std::size_t>(axis)]) > std::abs(z[static_cast<std::size_t>(upright)]))
            upright = axis;
    const double cosine = std::min(1.0, std::abs(z[static_cast<std::size_t>(upright)]));
    return C3dPlateAxes{x, cross(z, x), z, upright, std::acos(cosine) * 180 / std::numbers::pi};
}

Result<std::vector<double>> c3d_channel_shares(const C3dPlate& plate, const Vector3& direction) {
    const auto [x, y, z] = direction;
    const std::string which = "plate " + std::to_string(plate.number);
    if (plate.type < 1 || plate.type > 4)
        return refuse_c3d("FORCE_PLATFORM:TYPE",
                          "FORCE_PLATFORM:TYPE of " + which + " is " + std::to_string(plate.type) +
                              "; plates of types 1 to 4 can be read.",
                          std::to_string(plate.type), "1, 2, 3 or 4");
    std::vector<double> shares;
    if (plate.type <= 2)
        shares = {x, y, z};
    else if (plate.type == 3)
        shares = {x, x, y, y, z, z, z, z};
    else if (plate.matrix.empty())
        return refuse_c3d("FORCE_PLATFORM:CAL_MATRIX",
                          "FORCE_PLATFORM:CAL_MATRIX has no 6 x 6 numbers for " + which +
                              ", which is of type 4.",
                          "", "36 numbers a plate");
    else
        for (std::size_t j = 0; j < 6; ++j)
            shares.push_back(x * plate.matrix[6 * j] + y * plate.matrix[6 * j + 1] +
                             z * plate.matrix[6 * j + 2]);
    if (plate.channels.size() < shares.size() || (plate.type <= 2 && plate.channels.size() < 6))
        return refuse_c3d("FORCE_PLATFORM:CHANNEL",
                          "FORCE_PLATFORM:CHANNEL has " + std::to_string(plate.channels.size()) +
                              " channels for " + which + ", which is of type " + std::to_string(plate.type) +
                              ".",
                          std::to_string(plate.channels.size()), plate.type == 3 ? "8" : "6");
    return shares;
}

} // namespace amentum
