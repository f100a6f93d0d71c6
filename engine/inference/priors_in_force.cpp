#include "inference/priors_in_force.h"

namespace amentum {
namespace {

const PriorEdit* last_edit(const std::vector<PriorEdit>& edits, PriorKind kind, const std::string& quality) {
    const PriorEdit* last = nullptr;
    for (const auto& edit : edits)
        if (edit.kind == kind && edit.quality == quality && (!last || edit.number > last->number))
            last = &edit;
    return last;
}

template <class Line>
void lay_over(std::vector<Line>& lines, PriorKind kind, const std::vector<PriorEdit>& edits) {
    for (auto& line : lines) {
        const PriorEdit* edit = last_edit(edits, kind, line.quality);
        if (edit && edit->belief)
            line = Line{line.quality, edit->belief->mean, edit->belief->sd, edit->reason, {}};
    }
}

} // namespace

PriorsInForce priors_in_force(std::vector<VelocityPrior> published_slopes,
                              std::vector<AttainableChange> published_changes,
                              const std::vector<PriorEdit>& edits) {
    PriorsInForce held{std::move(published_slopes), std::move(published_changes),
                       "priors " + std::to_string(published_priors_version) + "." +
                           std::to_string(edits.size())};
    lay_over(held.velocity_priors, PriorKind::slope, edits);
    lay_over(held.attainable_changes, PriorKind::attainable_change, edits);
    return held;
}

} // namespace amentum
