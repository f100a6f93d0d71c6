// change_prior: believe something else than what was published of one quality, for a reason that is kept with who and when.
//
// Nothing is overwritten: each change is one more edit, numbered through the facility, and going back to the published value
// (published = yes, without mean and sd) is an edit too. The joint model and the limiters take what is in force from then on,
// and every answer of theirs says the version it was given under.
// Refuses an unknown quality or kind, a mean or sd outside inference/priors_in_force.h, an empty author, a reason under 10
// characters, both numbers and published = yes, neither, and a change that changes nothing.
// What it cannot tell: whether the new belief is better than the one it replaces.
#pragma once

#include "operations/priors.h"

namespace amentum {

struct ChangePriorRequest {
    std::string quality;
    std::string kind;           // slope, attainable_change
    std::optional<double> mean; // slope: -1 to 1; attainable_change: 0 to 2
    std::optional<double> sd;   // 0.01 to 1
    std::optional<bool> published;
    std::string author;
    std::string reason;
};
BOOST_DESCRIBE_STRUCT(ChangePriorRequest, (), (quality, kind, mean, sd, published, author, reason))

struct ChangePriorAnswer {
    std::string version; // from now on
    ShownPriorEdit edit;
    std::string words;
};
BOOST_DESCRIBE_STRUCT(ChangePriorAnswer, (), (version, edit, words))

Result<ChangePriorAnswer> change_prior(Workplace&, const ChangePriorRequest&);

} // namespace amentum
