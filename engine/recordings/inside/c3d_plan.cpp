#include "recordings/inside/c3d_plan.h"

#include "recordings/inside/c3d_channels.h"
#include "recordings/inside/c3d_choice.h"
#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace amentum {
namespace {

constexpr double level_sine = 1.75e-4; // 0.01 degrees
constexpr double most_tilt = 35;       // degrees; further over, two lab axes are about as near
constexpr std::array<const char*, 3> axis_names{"x", "y", "z"};

struct Planning {
    const RecordingGiven& given;
    std::vector<C3dPlate> plates;
    C3dChannels channels;
    std::optional<int> upright; // of the first plate with corners
    C3dPlan plan;
};

Result<C3dSeries> sum_of_channel(Planning& planning, int channel, const std::string& field) {
    const auto newtons = newtons_of_channel(planning.channels, channel, planning.given);
    if (!newtons)
        return newtons.refusal();
    const auto term = c3d_term(planning.channels, channel, 1, *newtons, field);
    if (!term)
        return term.refusal();
    return C3dSeries{*term};
}

// The force along one lab direction, which is given in plate axes.
Result<C3dSeries> sum_of_plate(Planning& planning, const C3dPlate& plate, Vector3 direction) {
    for (double& share : direction)
        share = std::abs(share) < level_sine ? 0 : share;
    const auto shares = c3d_channel_shares(plate, direction);
    if (!shares)
        return shares.refusal();
    C3dSeries series;
    for (std::size_t i = 0; i < shares->size(); ++i) {
        if ((*shares)[i] == 0)
            continue;
        double newtons = 1; // a matrix makes newtons out of whatever the channels hold
        if (plate.type != 4) {
            const auto found = newtons_of_channel(planning.channels, plate.channels[i], planning.given);
            if (!found)
                return found.refusal();
            newtons = *found;
        }
        const auto term = c3d_term(planning.channels, plate.channels[i], (*shares)[i], newtons,
                                   plate.type == 4 ? "FORCE_PLATFORM:CAL_MATRIX" : "FORCE_PLATFORM:CHANNEL");
        if (!term)
            return term.refusal();
        series.push_back(*term);
    }
    if (series.empty())
        return refuse_c3d("FORCE_PLATFORM:CAL_MATRIX",
                          "By FORCE_PLATFORM:CAL_MATRIX no channel of plate " + std::to_string(plate.number) +
                              " has a share in the force asked for.",
                          "all 0", "numbers that are not all 0");
    return series;
}

Vector3 lab_axis_in_plate(const C3dPlateAxes& axes, int axis) {
    const auto i = static_cast<std::size_t>(axis);
    return {axes.x[i], axes.y[i], axes.z[i]};
}

// All plates stand on one floor, and it must be clear which lab axis is up.
std::optional<Refusal> check_upright(Planning& planning, const C3dPlate& plate, const C3dPlateAxes& axes) {
    const std::string which = "plate " + std::to_string(plate.number);
    if (!axes.upright) {
        planning.plan.notes.push_back("FORCE_PLATFORM:CORNERS does not say how " + which +
                                      " lies; it is taken as level, with Fz along the vertical.");
        return std::nullopt;
    }
    if (axes.tilt_degrees > most_tilt || planning.upright.value_or(*axes.upright) != *axes.upright)
        return refuse_c3d(
            "FORCE_PLATFORM:CORNERS",
            "By FORCE_PLATFORM:CORNERS, " + which + " leans by " + format_fixed(axes.tilt_degrees, 1) +
                " degrees from lab axis " + axis_names[static_cast<std::size_t>(*axes.upright)] +
                ", so it is not clear which axis of the lab is up.",
            format_fixed(axes.tilt_degrees, 1) + " degrees",
            "plates on one floor, leaning by at most " + format_shortest(most_tilt) + " degrees");
    if (!planning.upright && *axes.upright != 2)
        planning.plan.notes.push_back("By FORCE_PLATFORM:CORNERS the lab axis " +
                                      std::string(axis_names[static_cast<std::size_t>(*axes.upright)]) +
                                      " is the vertical.");
    if (std::abs(std::sin(axes.tilt_degrees / 57.29577951308232)) >= level_sine)
        planning.plan.notes.push_back("By FORCE_PLATFORM:CORNERS " + which + " leans by " +
                                      format_fixed(axes.tilt_degrees, 2) +
                                      " degrees; the vertical is taken from all its forces.");
    planning.upright = axes.upright;
    return std::nullopt;
}

// The lab axis asked for; none when none is.
Result<std::optional<int>> find_lateral_axis(const Planning& planning, const C3dPlate& plate) {
    const auto& asked = planning.given.lateral;
    if (asked.empty())
        return std::optional<int>{};
    std::optional<int> axis;
    for (int i = 0; i < 3; ++i)
        if (in_small_letters(asked.front()) == axis_names[static_cast<std::size_t>(i)])
            axis = i;
    const bool same = std::all_of(asked.begin(), asked.end(), [&](const std::string& each) {
        return in_small_letters(each) == in_small_letters(asked.front());
    });
    if (!axis || !same || axis == planning.upright)
        return refuse_c3d("lateral",
                          "For force plates of a C3D file, lateral is one level axis of the lab, not \"" +
                              listed(asked) + "\".",
                          listed(asked),
                          planning.upright == 1   ? "x or z"
                          : planning.upright == 0 ? "y or z"
                                                  : "x or y",
                          RefusalCode::unknown_choice);
    if (plate.corners.empty())
        return refuse_c3d("lateral",
                          "Plate " + std::to_string(plate.number) +
                              " has no FORCE_PLATFORM:CORNERS, so nothing tells where lab axis " +
                              asked.front() + " lies on it.",
                          asked.front(), "no lateral force for this file");
    return axis;
}

Result<C3dPlanned> plan_plate(Planning& planning, const C3dPlate& plate) {
    const auto axes = c3d_plate_axes(plate);
    if (!axes)
        return axes.refusal();
    if (auto refusal = check_upright(planning, plate, *axes))
        return *refusal;
    const auto lateral_axis = find_lateral_axis(planning, plate);
    if (!lateral_axis)
        return lateral_axis.refusal();
    C3dPlanned planned{"plate " + std::to_string(plate.number), Side::none, {}, {}};
    // Without corners z points down, so up is its other way.
    const auto vertical = sum_of_plate(
        planning, plate, axes->upright ? lab_axis_in_plate(*axes, *axes->upright) : Vector3{0, 0, -1});
    if (!vertical)
        return vertical.refusal();
    planned.vertical = *vertical;
    if (*lateral_axis) {
        const auto lateral = sum_of_plate(planning, plate, lab_axis_in_plate(*axes, **lateral_axis));
        if (!lateral)
            return lateral.refusal();
        planned.lateral = *lateral;
    }
    return planned;
}

Result<C3dPlanned> plan_channel(Planning& planning, int channel, std::size_t place, std::size_t count) {
    const auto vertical = sum_of_channel(planning, channel, "vertical");
    if (!vertical)
        return vertical.refusal();
    const auto& label = planning.channels.labels;
    const auto at = static_cast<std::size_t>(channel - 1);
    C3dPlanned planned{at < label.size() && !label[at].empty() ? label[at] : planning.channels.name(at),
                       Side::none,
                       *vertical,
                       {}};
    const auto& asked = planning.given.lateral;
    if (asked.empty())
        return planned;
    if (asked.size() != count)
        return refuse_c3d("lateral", "Each channel of vertical force needs one channel of lateral force.",
                          listed(asked), std::to_string(count) + " channels", RefusalCode::out_of_range);
    const auto choice = find_c3d_choice(planning.plates, planning.channels, asked[place]);
    if (!choice)
        return choice.refusal();
    const auto lateral = sum_of_channel(planning, choice->channel, "lateral");
    if (!lateral)
        return lateral.refusal();
    planned.lateral = *lateral;
    return planned;
}

// "left" or "right" in the labels of the channels, when only one of them stands there.
Side side_by_words(const Planning& planning, const C3dPlanned& planned) {
    bool left = false, right = false;
    for (const auto& term : planned.vertical) {
        const std::string label =
            term.channel < planning.channels.labels.size() ? planning.channels.labels[term.channel] : "";
        left = left || in_small_letters(label).find("left") != std::string::npos;
        right = right || in_small_letters(label).find("right") != std::string::npos;
    }
    return left == right ? Side::none : left ? Side::left : Side::right;
}

std::optional<Refusal> find_sides(Planning& planning) {
    auto& plates = planning.plan.plates;
    auto& notes = planning.plan.notes;
    const bool swapped = planning.given.left_foot_on_second;
    if (plates.size() < 2)
        return std::nullopt;
    const Side first = side_by_words(planning, plates[0]), second = side_by_words(planning, plates[1]);
    const bool by_words = first != Side::none && second != Side::none && first != second;
    std::string why = "in the order of the file; say left_foot_on_second if it was the other way round";
    plates[0].side = swapped ? Side::right : Side::left;
    if (!planning.given.vertical.empty()) {
        if (swapped)
            return refuse_c3d(
                "left_foot_on_second",
                "The plates are named by `vertical`, left foot first, so left_foot_on_second would say "
                "it twice, and otherwise.",
                "true", "either of the two");
        why = "as they were named";
    } else if (swapped) {
        why = "as was said";
    } else if (by_words) {
        plates[0].side = first;
        why = "by the labels of their channels";
    }
    plates[1].side = plates[0].side == Side::left ? Side::right : Side::left;
    notes.push_back("The " + word(plates[0].side) + " foot is taken to be on " + plates[0].name + ", the " +
                    word(plates[1].side) + " on " + plates[1].name + ", " + why + ".");
    return std::nullopt;
}

void note_choices(Planning& planning) {
    auto& notes = planning.plan.notes;
    const auto& given = planning.given;
    const bool matrix = std::any_of(planning.plates.begin(), planning.plates.end(),
                                    [](const C3dPlate& plate) { return plate.type == 4; });
    if (given.unit && *given.unit != ForceUnit::newton && matrix)
        notes.push_back(
            "For plates of type 4 the unit given is not used: FORCE_PLATFORM:CAL_MATRIX makes newtons.");
    if (given.left_foot_on_second && planning.plan.plates.size() < 2)
        notes.push_back("Only one plate is read, so left_foot_on_second is not used.");
    if (given.lateral.empty())
        notes.push_back(
            "The file does not say which way the athlete faced, so no lateral force is read; name a level "
            "axis of the lab as `lateral` if it is wanted.");
    notes.insert(notes.end(), planning.channels.notes.begin(), planning.channels.notes.end());
}

// FORCE_PLATFORM:ZERO counts frames from 1, the first one of the file.
void find_zero(const C3dHead& head, const C3dDataLayout& layout, C3dPlan& plan) {
    const auto zero = head.numbers("FORCE_PLATFORM", "ZERO");
    if (zero.size() < 2 || (zero[0] == 0 && zero[1] == 0))
        return;
    plan.zero_words = "frames " + format_shortest(zero[0]) + " to " + format_shortest(zero[1]);
    if (!(zero[0] >= 1 && zero[1] >= zero[0] && zero[1] <= static_cast<double>(layout.frames))) {
        plan.notes.push_back("FORCE_PLATFORM:ZERO says that the plates are empty in " + plan.zero_words +
                             ", which the file does not have.");
        return;
    }
    plan.empty_rows = {(static_cast<std::uint64_t>(zero[0]) - 1) * layout.samples_a_frame,
                       static_cast<std::uint64_t>(zero[1]) * layout.samples_a_frame};
}

} // namespace

Result<C3dPlan> plan_c3d_series(const C3dHead& head, const C3dDataLayout& layout,
                                const RecordingGiven& given) {
    auto channels = c3d_channels(head, layout);
    if (!channels)
        return channels.refusal();
    auto plates = c3d_plates(head);
    if (!plates)
        return plates.refusal();
    Planning planning{given, std::move(plates).value(), std::move(channels).value(), std::nullopt, {}};
    const auto choices = choose_c3d_plates(planning.given, planning.plates, planning.channels);
    if (!choices)
        return choices.refusal();
    for (std::size_t i = 0; i < choices->size(); ++i) {
        const C3dChoice& choice = (*choices)[i];
        auto planned = choice.plate > 0
                           ? plan_plate(planning, planning.plates[static_cast<std::size_t>(choice.plate - 1)])
                           : plan_channel(planning, choice.channel, i, choices->size());
        if (!planned)
            return planned.refusal();
        planning.plan.plates.push_back(std::move(planned).value());
    }
    if (auto refusal = find_sides(planning))
        return *refusal;
    note_choices(planning);
    find_zero(head, layout, planning.plan);
    return std::move(planning.plan);
}

} // namespace amentum
