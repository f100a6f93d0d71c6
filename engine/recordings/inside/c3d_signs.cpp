#include "recordings/inside/c3d_signs.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double somebody = 50;      // N; proposal of this project [ProjectProposal]
constexpr std::size_t looks = 65536; // samples looked at, evenly over the recording: enough for a sign

struct Standing {
    double signed_square; // sum of F |F|: what a person adds outweighs noise and offset
    double greatest;
};

Standing look_at(const std::vector<float>& vertical) {
    Standing standing{0, 0};
    const std::size_t step = 1 + vertical.size() / looks;
    for (std::size_t i = 0; i < vertical.size(); i += step) {
        const double force = static_cast<double>(vertical[i]);
        standing.signed_square += force * std::abs(force);
        standing.greatest = std::max(standing.greatest, std::abs(force));
    }
    return standing;
}

void turn(PlateForces& plate) {
    for (auto* series : {&plate.vertical, &plate.lateral})
        for (float& force : *series)
            force = 0.0F - force; // 0 stays 0
}

} // namespace

void turn_upward(ForceRecording& recording) {
    std::vector<Standing> standing;
    for (const auto& plate : recording.plates)
        standing.push_back(look_at(plate.vertical));
    const auto most = static_cast<std::size_t>(
        std::max_element(standing.begin(), standing.end(),
                         [](const Standing& a, const Standing& b) { return a.greatest < b.greatest; }) -
        standing.begin());
    if (standing[most].greatest < somebody) {
        recording.notes.push_back("No plate ever read " + format_shortest(somebody) +
                                  " N, so nothing shows which way is up; the sign is the file's.");
        return;
    }
    for (std::size_t i = 0; i < recording.plates.size(); ++i) {
        const Standing& deciding = standing[i].greatest < somebody ? standing[most] : standing[i];
        if (deciding.signed_square >= 0)
            continue;
        turn(recording.plates[i]);
        recording.notes.push_back("On " + recording.plates[i].name +
                                  " the file gives the force on the plate, downward; it was turned upward.");
    }
}

void note_empty_plates(const C3dPlan& plan, ForceRecording& recording) {
    if (!plan.empty_rows)
        return;
    const auto [first, end] = *plan.empty_rows;
    std::string readings;
    for (const auto& plate : recording.plates) {
        double sum = 0;
        for (std::uint64_t i = first; i < end; ++i)
            sum += static_cast<double>(plate.vertical[static_cast<std::size_t>(i)]);
        readings += (readings.empty() ? "" : ", ") + plate.name + " " +
                    format_fixed(sum / static_cast<double>(end - first), 2) + " N";
    }
    recording.notes.push_back("FORCE_PLATFORM:ZERO says that the plates are empty in " + plan.zero_words +
                              ". On average they read there: " + readings + ". Nothing was subtracted.");
}

} // namespace amentum
