#include "recordings/inside/c3d_signs.h"

#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double somebody = 50;      // N; proposal of this project [ProjectProposal]
constexpr std::size_t looks = 16384; // samples looked at, evenly over the recording: enough for a sign

struct Standing {
    double signed_square; // sum of F |F|: what a person adds outweighs noise and offset
    double greatest;
};

// In four lanes, which need not wait for each other.
Standing look_at(const std::vector<float>& vertical) {
    constexpr std::size_t lanes = 4;
    double sums[lanes] = {}, most[lanes] = {};
    const std::size_t step = 1 + vertical.size() / looks, round = lanes * step;
    const auto look = [&](std::size_t at, std::size_t lane) {
        const double force = static_cast<double>(vertical[at]);
        sums[lane] += force * std::abs(force);
        most[lane] = std::max(most[lane], std::abs(force));
    };
    std::size_t at = 0;
    for (; at + round <= vertical.size(); at += round)
        for (std::size_t lane = 0; lane < lanes; ++lane)
            look(at + lane * step, lane);
    for (; at < vertical.size(); at += step)
        look(at, 0);
    return {sums[0] + sums[1] + sums[2] + sums[3], *std::max_element(most, most + lanes)};
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
        recording.notes.push_back("Nobody seems to stand on a plate: none reads " +
                                  format_shortest(somebody) +
                                  " N, so nothing shows which way is up, and the sign is the file's.");
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
