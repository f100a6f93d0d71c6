#include "recordings/read_recording.h"

#include "recordings/c3d_forces.h"
#include "recordings/delimited_text.h"

#include <variant>

namespace amentum {
namespace {

constexpr std::size_t header_bytes = 512;
constexpr char c3d_mark = 80;

bool is_c3d(std::string_view beginning) {
    return beginning.size() >= 2 && beginning[1] == c3d_mark &&
           beginning.substr(0, header_bytes).find('\0') != std::string_view::npos;
}

} // namespace

struct RecordingReader::State {
    RecordingGiven given;
    std::string beginning = {}; // until the kind is known
    std::variant<std::monostate, DelimitedTextReader, C3dForceReader> reader = {};

    Result<Done> pass_on(std::string_view piece) {
        if (auto* text = std::get_if<DelimitedTextReader>(&reader))
            return text->take(piece);
        return std::get<C3dForceReader>(reader).take(piece);
    }
    Result<Done> choose() {
        if (is_c3d(beginning))
            reader.emplace<C3dForceReader>(given);
        else
            reader.emplace<DelimitedTextReader>(given);
        return pass_on(std::exchange(beginning, {}));
    }
    bool chosen() const { return !std::holds_alternative<std::monostate>(reader); }
};

RecordingReader::RecordingReader(RecordingGiven given) : state_(new State{std::move(given)}) {}
RecordingReader::~RecordingReader() = default;
RecordingReader::RecordingReader(RecordingReader&&) noexcept = default;
RecordingReader& RecordingReader::operator=(RecordingReader&&) noexcept = default;

Result<Done> RecordingReader::take(std::string_view piece) {
    if (state_->chosen())
        return state_->pass_on(piece);
    state_->beginning += piece.substr(0, header_bytes);
    piece.remove_prefix(std::min(piece.size(), header_bytes));
    if (state_->beginning.size() < header_bytes)
        return Done{};
    if (const auto taken = state_->choose(); !taken)
        return taken;
    return piece.empty() ? Result<Done>(Done{}) : state_->pass_on(piece);
}

Result<ForceRecording> RecordingReader::finish() {
    if (!state_->chosen())
        if (const auto taken = state_->choose(); !taken)
            return taken.refusal();
    if (auto* text = std::get_if<DelimitedTextReader>(&state_->reader))
        return text->finish();
    return std::get<C3dForceReader>(state_->reader).finish();
}

Result<ForceRecording> read_recording(std::string_view whole, const RecordingGiven& given) {
    RecordingReader reader(given);
    if (const auto taken = reader.take(whole); !taken)
        return taken.refusal();
    return reader.finish();
}

} // namespace amentum
