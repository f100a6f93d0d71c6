#include "recordings/c3d_forces.h"

#include "recordings/inside/c3d_head_buffer.h"
#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_signs.h"
#include "recordings/inside/c3d_stream.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr std::size_t most_faults = 20;

std::optional<Refusal> check_rate(const C3dDataLayout& layout, const RecordingGiven& given) {
    if (layout.channels == 0)
        return refuse_c3d("ANALOG:USED", "The C3D file has no analog channels, so it holds no forces.", "0",
                          "1 or more channels");
    if (layout.samples_a_frame < 1 ||
        !(layout.rate_hz >= lowest_rate_hz && layout.rate_hz <= highest_rate_hz))
        return refuse_c3d("ANALOG:RATE",
                          "The C3D file gives " + format_shortest(layout.rate_hz) +
                              " analog samples a second and " + std::to_string(layout.samples_a_frame) +
                              " a frame.",
                          format_shortest(layout.rate_hz) + " Hz",
                          format_shortest(lowest_rate_hz) + " to " + format_shortest(highest_rate_hz) +
                              " Hz, at least one sample a frame",
                          RefusalCode::wrong_rate);
    if (given.rate_hz && !(std::abs(*given.rate_hz / layout.rate_hz - 1) < 1e-3))
        return refuse_c3d("rate_hz",
                          "The C3D file itself says " + format_shortest(layout.rate_hz) + " Hz, not " +
                              format_shortest(*given.rate_hz) + " Hz; leave rate_hz out.",
                          format_shortest(*given.rate_hz) + " Hz", format_shortest(layout.rate_hz) + " Hz",
                          RefusalCode::wrong_rate);
    return std::nullopt;
}

std::optional<Refusal> check_length(const C3dDataLayout& layout, std::uint64_t series) {
    const std::uint64_t samples = layout.frames * layout.samples_a_frame; // at most 1e9 x 65,535
    const std::uint64_t most = std::min<std::uint64_t>(most_samples, most_c3d_samples_kept / series);
    if (samples <= most)
        return std::nullopt;
    return refuse_c3d(layout.frames_told_by,
                      "By " + layout.frames_told_by + " the C3D file holds " + std::to_string(samples) +
                          " samples a channel, which is more than is read at once.",
                      std::to_string(samples), "at most " + std::to_string(most) + " samples",
                      RefusalCode::out_of_range);
}

std::vector<C3dSeries> all_series(const C3dPlan& plan) {
    std::vector<C3dSeries> series;
    for (const auto& plate : plan.plates) {
        series.push_back(plate.vertical);
        if (!plate.lateral.empty())
            series.push_back(plate.lateral);
    }
    return series;
}

ForceRecording recording_of(const C3dPlan& plan, double rate_hz, std::vector<std::vector<float>>& kept) {
    ForceRecording recording{rate_hz, {}, {}};
    std::size_t next = 0;
    for (const auto& plate : plan.plates) {
        PlateForces forces{plate.name, plate.side, std::move(kept[next++]), {}};
        if (!plate.lateral.empty())
            forces.lateral = std::move(kept[next++]);
        recording.plates.push_back(std::move(forces));
    }
    return recording;
}

// What was chosen, what was found in the forces, then what is wrong with the file.
void add_notes(const std::vector<std::string>& chosen, const std::vector<std::string>& faults,
               ForceRecording& recording) {
    auto& notes = recording.notes;
    notes.insert(notes.begin(), chosen.begin(), chosen.end());
    const std::size_t said = std::min(faults.size(), most_faults);
    notes.insert(notes.end(), faults.begin(), faults.begin() + static_cast<std::ptrdiff_t>(said));
    if (said < faults.size())
        notes.push_back("The file has " + std::to_string(faults.size() - said) +
                        " more faults of this kind.");
}

} // namespace

struct C3dForceReader::State {
    RecordingGiven given;
    C3dHeadBuffer head_bytes;
    C3dPlan plan;
    std::optional<C3dDataLayout> layout;
    std::optional<C3dStream> stream;
    std::vector<std::string> faults; // read in spite of them
    std::uint64_t skip = 0;          // bytes before the data that are still to come
    std::uint64_t taken = 0;
    std::optional<Refusal> refused;

    std::optional<Refusal> begin_data();
    std::optional<Refusal> take(std::string_view piece);
};

// The head is whole: what is kept is settled, and data that lie before the end of the parameter section are taken.
std::optional<Refusal> C3dForceReader::State::begin_data() {
    const auto head = parse_c3d_head(head_bytes.bytes());
    if (!head)
        return head.refusal();
    auto found = c3d_data_layout(*head);
    if (!found)
        return found.refusal();
    layout = std::move(found).value();
    if (auto refusal = check_rate(*layout, given))
        return refusal;
    auto planned = plan_c3d_series(*head, *layout, given);
    if (!planned)
        return planned.refusal();
    plan = std::move(planned).value();
    faults = layout->notes;
    faults.insert(faults.end(), head->problems.begin(), head->problems.end());
    auto series = all_series(plan);
    if (auto refusal = check_length(*layout, series.size()))
        return refusal;
    stream.emplace(*layout, std::move(series));
    const std::string_view buffered = head_bytes.bytes();
    std::optional<Refusal> refusal;
    if (layout->data_at < buffered.size())
        refusal = stream->take(buffered.substr(static_cast<std::size_t>(layout->data_at)));
    else
        skip = layout->data_at - buffered.size();
    head_bytes.forget();
    return refusal;
}

std::optional<Refusal> C3dForceReader::State::take(std::string_view piece) {
    taken += piece.size();
    if (!stream) {
        const auto whole = head_bytes.take(piece);
        if (!whole)
            return whole.refusal();
        if (!*whole)
            return std::nullopt;
        if (auto refusal = begin_data())
            return refusal;
    }
    const auto skipped = static_cast<std::size_t>(std::min<std::uint64_t>(skip, piece.size()));
    skip -= skipped;
    return stream->take(piece.substr(skipped));
}

C3dForceReader::C3dForceReader(RecordingGiven given) : state_(std::make_unique<State>()) {
    state_->given = std::move(given);
}
C3dForceReader::~C3dForceReader() = default;
C3dForceReader::C3dForceReader(C3dForceReader&&) noexcept = default;
C3dForceReader& C3dForceReader::operator=(C3dForceReader&&) noexcept = default;

Result<Done> C3dForceReader::take(std::string_view piece) {
    if (!state_->refused)
        state_->refused = state_->take(piece);
    if (state_->refused)
        return *state_->refused;
    return Done{};
}

Result<ForceRecording> C3dForceReader::finish() {
    State& state = *state_;
    if (!state.refused && !state.stream)
        state.refused = state.head_bytes.refuse_unfinished();
    if (!state.refused && !state.stream->complete())
        state.refused = refuse_c3d(
            byte_place(state.taken),
            "The C3D file ends in the middle of its data: it holds " +
                std::to_string(state.stream->whole_frames()) + " whole frames of the " +
                std::to_string(state.layout->frames) + " that " + state.layout->frames_told_by + " promises.",
            std::to_string(state.taken) + " bytes", std::to_string(state.layout->data_end()) + " bytes");
    if (state.refused)
        return *state.refused;
    ForceRecording recording = recording_of(state.plan, state.layout->rate_hz, state.stream->kept());
    turn_upward(recording);
    note_empty_plates(state.plan, recording);
    add_notes(state.plan.notes, state.faults, recording);
    state.refused = refuse_c3d("", "This recording has been handed out already.", "", "finish once");
    return recording;
}

} // namespace amentum
