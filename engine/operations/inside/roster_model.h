// The joint model of the whole roster: which tests are in it, the readings as it takes them, the fit.
#pragma once

#include "inference/joint_model.h"
#include "operations/inside/facility_view.h"

namespace amentum {

struct ModelledQuality {
    const Quality* quality;
    const TestKind* kind; // the test that speaks for it
    int athletes;
    double spread;     // SD of athletes' means, on the kind's scale
    double attainable; // usual twelve-week improvement, on the kind's scale
};

struct RosterModel {
    std::vector<ModelledQuality> qualities; // predictors, in the fit's order
    std::vector<std::pair<const Quality*, std::string>> left_out;
    RosterData data;
    Result<RosterFit> fit = Refusal{};
    std::string version; // model, data, priors
};

// The view must outlive the answer.
RosterModel fit_roster_model(const FacilityView&, const ReferenceTables&);

} // namespace amentum
