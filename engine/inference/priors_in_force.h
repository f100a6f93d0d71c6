// Which priors hold now? The published tables, with the last edit of each prior laid over them.
//
// An edited prior's `why` is the editor's reason and its `sources` are empty: nobody published it. An edit that goes back
// gives the published line again, whatever the table says by then. Edits come in order of their numbers; an edit of a prior
// that the tables do not have is passed over, so that a store from another table is still read.
// version: "priors 1.3" is table 1 with three edits. It moves with every edit, also one that goes back: an answer given
// between the two is told from one given after.
// What it cannot tell: whether an edit is wiser than what it replaces.
//
// Example: priors_in_force(slopes, changes, {}).version == "priors 1.0"
#pragma once

#include "inference/priors.h"
#include "values/prior_edit.h"

namespace amentum {

// Of data/velocity_priors.csv and data/attainable_changes.csv together; raised when a mean or sd in them changes.
inline constexpr int published_priors_version = 1;

// What an edit may say (proposal of this project, no source): wide enough for any belief that can be defended.
inline constexpr double lowest_slope = -1, highest_slope = 1;
inline constexpr double lowest_attainable_change = 0, highest_attainable_change = 2;
inline constexpr double least_prior_sd = 0.01, most_prior_sd = 1;

struct PriorsInForce {
    std::vector<VelocityPrior> velocity_priors;
    std::vector<AttainableChange> attainable_changes;
    std::string version;
};

PriorsInForce priors_in_force(std::vector<VelocityPrior> published_slopes,
                              std::vector<AttainableChange> published_changes,
                              const std::vector<PriorEdit>& edits);

} // namespace amentum
