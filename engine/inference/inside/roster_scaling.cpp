#include "inference/inside/roster_scaling.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <set>

namespace amentum {

using Eigen::Index;
using Eigen::VectorXd;

namespace {

int local_session(FlatAthlete& athlete, int session) {
    if (session < 0)
        return -1;
    auto& known = athlete.sessions;
    const auto found = std::find(known.begin(), known.end(), session);
    const auto at = static_cast<int>(found - known.begin());
    if (found == known.end())
        known.push_back(session);
    return at;
}

} // namespace

Result<RosterScaling> scaling_of(const RosterData& data) {
    const Index d = data.qualities;
    VectorXd n = VectorXd::Zero(d), sum = VectorXd::Zero(d), squares = VectorXd::Zero(d);
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings) {
                assert(r.quality >= 0 && r.quality < data.qualities);
                n[r.quality] += 1;
                sum[r.quality] += r.value;
            }
    for (Index k = 0; k < d; ++k)
        if (n[k] < 3)
            return Refusal{RefusalCode::too_few_data, "A quality has too few readings to be in the model.",
                           "quality " + std::to_string(k), std::to_string(static_cast<int>(n[k])),
                           "3 or more"};
    const VectorXd centre = sum.array() / n.array();
    for (const auto& athlete : data.athletes)
        for (const auto& day : athlete.days)
            for (const auto& r : day.readings)
                squares[r.quality] += std::pow(r.value - centre[r.quality], 2);
    const VectorXd unit = (squares.array() / n.array()).sqrt();
    for (Index k = 0; k < d; ++k)
        if (!(unit[k] > 1e-9 * (1 + std::abs(centre[k]))))
            return Refusal{RefusalCode::too_few_data, "A quality never varies, so nothing can go with it.",
                           "quality " + std::to_string(k), std::to_string(centre[k]), "readings that differ"};
    return RosterScaling{centre, unit};
}

JointShape shape_of(const RosterData& data) {
    const std::set<int> kinds(data.sessions.begin(), data.sessions.end());
    return {data.qualities, data.covariates, data.growths, {kinds.begin(), kinds.end()}};
}

FlatData flat_data(const RosterData& data, const RosterScaling& scaling) {
    FlatData flat{shape_of(data), {}, {}, {}};
    for (const auto& athlete : data.athletes) {
        assert(!athlete.days.empty() && static_cast<int>(athlete.covariates.size()) == data.covariates &&
               static_cast<int>(athlete.growth.size()) == data.growths);
        FlatAthlete one{flat.days.size(), athlete.days.size(),
                        Eigen::Map<const VectorXd>(athlete.covariates.data(), data.covariates),
                        Eigen::Map<const VectorXd>(athlete.growth.data(), data.growths)};
        for (std::size_t t = 0; t < athlete.days.size(); ++t) {
            const auto& day = athlete.days[t];
            const int gap = t == 0 ? 0 : day.day - athlete.days[t - 1].day;
            assert(t == 0 || gap > 0);
            flat.days.push_back({gap / days_a_unit, flat.readings.size(), day.readings.size()});
            for (const auto& r : day.readings)
                flat.readings.push_back({r.quality,
                                         (r.value - scaling.centre[r.quality]) / scaling.unit[r.quality],
                                         r.share, local_session(one, r.session)});
        }
        flat.athletes.push_back(std::move(one));
    }
    const auto& kinds = flat.shape.session_qualities;
    for (const int quality : data.sessions)
        flat.session_kind.push_back(std::find(kinds.begin(), kinds.end(), quality) - kinds.begin());
    return flat;
}

} // namespace amentum
