#include "operations/find_limiters.h"

#include "operations/inside/inside.h"
#include "operations/inside/limiter_answer.h"

namespace amentum {

Result<FindLimitersAnswer> find_limiters(Workplace& workplace, const FindLimitersRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    return limiter_answer(inside, *view, *inside.roster_model(), **athlete);
}

} // namespace amentum
