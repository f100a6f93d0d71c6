// override_caution: a coach takes an exercise a caution speaks against, for a reason that is kept for good.
//
// Refuses a reason under 10 letters, an unknown caution, and a caution that no coach may override here.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <string>

namespace amentum {

struct OverrideCautionRequest {
    std::string athlete;
    std::string exercise;
    std::string caution;
    std::string reason;
    std::string coach;
};
BOOST_DESCRIBE_STRUCT(OverrideCautionRequest, (), (athlete, exercise, caution, reason, coach))

struct OverrideCautionAnswer {
    std::string words;
};
BOOST_DESCRIBE_STRUCT(OverrideCautionAnswer, (), (words))

Result<OverrideCautionAnswer> override_caution(Workplace&, const OverrideCautionRequest&);

} // namespace amentum
