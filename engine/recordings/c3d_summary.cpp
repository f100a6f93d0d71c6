#include "recordings/c3d_summary.h"

#include "recordings/inside/c3d_channels.h"
#include "recordings/inside/c3d_head_buffer.h"
#include "recordings/inside/c3d_plan.h"
#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t values_shown = 8;

double finite(double value, const std::string& what, C3dSummary& summary) {
    if (std::isfinite(value))
        return value;
    summary.problems.push_back(what + " is not a finite number.");
    return 0;
}

std::string values_of(const C3dHead& head, const C3dParameter& parameter) {
    std::vector<std::string> words;
    for (const auto& text : texts_of(parameter))
        words.push_back("\"" + text + "\"");
    for (const double number : numbers_of(parameter, head.processor, C3dWhole::with_sign))
        words.push_back(std::isfinite(number) ? format_shortest(number) : "no number");
    return listed(words, values_shown);
}

void add_groups(const C3dHead& head, C3dSummary& summary) {
    std::map<int, std::size_t> places;
    for (const auto& group : head.groups)
        if (places.emplace(group.number, summary.groups.size()).second)
            summary.groups.push_back({group.name, group.description, {}});
    for (const auto& parameter : head.parameters) {
        const auto place = places.find(parameter.group);
        if (place != places.end()) // else a problem says so
            summary.groups[place->second].parameters.push_back({parameter.name, word(parameter.type),
                                                                parameter.dimensions, parameter.description,
                                                                values_of(head, parameter)});
    }
}

void add_channels(const C3dHead& head, const C3dDataLayout& layout, C3dSummary& summary) {
    const auto channels = c3d_channels(head, layout);
    if (!channels) {
        summary.problems.push_back(channels.refusal().sentence);
        return;
    }
    summary.general_scale = channels->general_scale;
    const auto text_at = [](const std::vector<std::string>& all, std::size_t i) {
        return i < all.size() ? all[i] : std::string();
    };
    const auto number_at = [](const std::vector<double>& all, std::size_t i) {
        return i < all.size() ? all[i] : 0;
    };
    for (std::size_t i = 0; i < channels->used; ++i)
        summary.channels.push_back(
            {static_cast<int>(i + 1), text_at(channels->labels, i), text_at(channels->units, i),
             finite(number_at(channels->scales, i), "ANALOG:SCALE of " + channels->name(i), summary),
             finite(number_at(channels->offsets, i), "ANALOG:OFFSET of " + channels->name(i), summary)});
    if (channels->scales.size() < channels->used)
        summary.problems.push_back("ANALOG:SCALE has " + std::to_string(channels->scales.size()) +
                                   " values for " + std::to_string(channels->used) +
                                   " channels; 0 is shown for the rest.");
}

std::string how_it_lies(const C3dPlate& plate, C3dSummary& summary) {
    const auto axes = c3d_plate_axes(plate);
    if (!axes) {
        summary.problems.push_back(axes.refusal().sentence);
        return "not known";
    }
    if (!axes->upright)
        return "not known";
    return (axes->tilt_degrees < 0.01 ? "level"
                                      : "leaning by " + format_fixed(axes->tilt_degrees, 2) + " degrees") +
           ", " + std::string(1, "xyz"[*axes->upright]) + " is the vertical";
}

void add_plates(const C3dHead& head, C3dSummary& summary) {
    const auto plates = c3d_plates(head);
    if (!plates) {
        summary.problems.push_back(plates.refusal().sentence);
        return;
    }
    for (const auto& plate : *plates) {
        C3dPlateSummary shown{plate.number, plate.type, plate.channels, {}, how_it_lies(plate, summary)};
        for (const auto& corner : plate.corners)
            for (const double x : corner)
                shown.corners.push_back(
                    finite(x, "A corner of plate " + std::to_string(plate.number), summary));
        summary.plates.push_back(std::move(shown));
    }
}

std::string what_forces(const C3dHead& head, const C3dDataLayout& layout) {
    const auto plan = plan_c3d_series(head, layout, {});
    if (!plan)
        return plan.refusal().sentence;
    std::vector<std::string> names;
    for (const auto& plate : plan->plates)
        names.push_back(plate.name);
    return "Vertical forces can be read from " + listed(names) + ".";
}

C3dSummary summary_of(const C3dHead& head, std::uint64_t bytes) {
    C3dSummary summary{word(head.processor),
                       "",
                       static_cast<double>(bytes),
                       0,
                       0,
                       0,
                       head.header.points,
                       0,
                       0,
                       0,
                       {},
                       {},
                       {},
                       "",
                       head.problems};
    add_groups(head, summary);
    add_plates(head, summary);
    const auto layout = c3d_data_layout(head);
    if (!layout) {
        summary.problems.push_back(layout.refusal().sentence);
        summary.forces = layout.refusal().sentence;
        return summary;
    }
    summary.problems.insert(summary.problems.end(), layout->notes.begin(), layout->notes.end());
    summary.storage = word(layout->storage);
    summary.frames = static_cast<double>(layout->frames);
    summary.frames_a_second = layout->frames_a_second;
    summary.seconds = layout->frames_a_second > 0 ? summary.frames / layout->frames_a_second
                      : layout->rate_hz > 0
                          ? summary.frames * static_cast<double>(layout->samples_a_frame) / layout->rate_hz
                          : 0;
    summary.points_used = static_cast<int>(layout->points);
    summary.analog_samples_a_frame = static_cast<int>(layout->samples_a_frame);
    summary.analog_rate_hz = layout->rate_hz;
    add_channels(head, *layout, summary);
    summary.forces = what_forces(head, *layout);
    if (bytes < layout->data_end())
        summary.problems.push_back("The file has " + std::to_string(bytes) + " bytes, but " +
                                   layout->frames_told_by + " promises data up to byte " +
                                   std::to_string(layout->data_end()) + ".");
    return summary;
}

} // namespace

struct C3dInspector::State {
    C3dHeadBuffer head_bytes;
    bool whole = false;
    std::uint64_t taken = 0;
    std::optional<Refusal> refused;
};

C3dInspector::C3dInspector() : state_(std::make_unique<State>()) {}
C3dInspector::~C3dInspector() = default;
C3dInspector::C3dInspector(C3dInspector&&) noexcept = default;
C3dInspector& C3dInspector::operator=(C3dInspector&&) noexcept = default;

Result<Done> C3dInspector::take(std::string_view piece) {
    state_->taken += piece.size();
    if (!state_->refused && !state_->whole) {
        const auto whole = state_->head_bytes.take(piece);
        if (whole)
            state_->whole = *whole;
        else
            state_->refused = whole.refusal();
    }
    if (state_->refused)
        return *state_->refused;
    return Done{};
}

Result<C3dSummary> C3dInspector::finish() {
    if (state_->refused)
        return *state_->refused;
    if (!state_->whole)
        return state_->head_bytes.refuse_unfinished();
    const auto head = parse_c3d_head(state_->head_bytes.bytes());
    if (!head)
        return head.refusal();
    return summary_of(*head, state_->taken);
}

} // namespace amentum
