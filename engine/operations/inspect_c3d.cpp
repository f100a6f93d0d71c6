#include "operations/inspect_c3d.h"

#include "operations/inside/given_file.h"
#include "recordings/c3d_summary.h"

#include <algorithm>

namespace amentum {
namespace {

int whole(double x) {
    return static_cast<int>(std::clamp(x, 0.0, 2e9));
}

} // namespace

Result<InspectC3dAnswer> inspect_c3d(Workplace& workplace, const InspectC3dRequest& request) {
    C3dInspector inspector;
    const auto file = read_given_file(workplace.inside(), request.file_name, request.content,
                                      [&](std::string_view piece) { return inspector.take(piece); });
    if (!file)
        return file.refusal();
    const auto seen = inspector.finish();
    if (!seen)
        return seen.refusal();
    InspectC3dAnswer answer{file->name,
                            whole(static_cast<double>(file->bytes)),
                            seen->processor,
                            seen->storage,
                            whole(seen->frames),
                            seen->seconds,
                            seen->frames_a_second,
                            seen->analog_rate_hz,
                            seen->points_used,
                            {},
                            {},
                            {},
                            seen->problems,
                            {seen->forces}};
    for (const auto& plate : seen->plates)
        answer.plates.push_back({plate.number, plate.type, plate.channels, plate.corners, plate.lies});
    for (const auto& channel : seen->channels)
        answer.channels.push_back(
            {channel.number, channel.label, channel.unit, channel.scale, channel.offset});
    for (const auto& group : seen->groups)
        for (const auto& parameter : group.parameters)
            answer.parameters.push_back({group.name, parameter.name, parameter.type, parameter.dimensions,
                                         parameter.values, parameter.description});
    return answer;
}

} // namespace amentum
