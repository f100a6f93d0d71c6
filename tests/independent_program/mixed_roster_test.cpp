// Mixed models of 200 simulated athletes with 12 days and 6 qualities, of which lme4 1.1-31 (nloptwrap, derivatives not
// checked) and a prototype of separate code gave the restricted criterion: a level each, uncorrelated slopes, a full 7 x 7
// covariance, sessions crossed. Needs ../shared/open_data; skips loudly without.
//
// A criterion is a minimum, so lower is better. With uncorrelated slopes lme4 stopped where the sixth quality's slope does
// not vary (SD 0.0004) at 7796.5328; the minimum has an SD of 0.084 there, at 7796.5142. So ours may lie below, by little,
// and never above.
#include "inference/mixed_model.h"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>

using namespace amentum;

namespace {

constexpr std::size_t qualities = 6;

struct Day {
    int id, session;
    std::vector<double> values; // velocity, then the qualities
};

std::optional<std::vector<Day>> simulated_days() {
    std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/../shared/open_data/roster_small.csv");
    std::string line;
    if (!std::getline(file, line))
        return std::nullopt;
    std::vector<Day> days;
    while (std::getline(file, line)) {
        std::vector<double> cells; // id, session, day, v, x1 ... x6, mask
        std::stringstream row(line);
        for (std::string cell; std::getline(row, cell, ',');)
            cells.push_back(std::stod(cell));
        days.push_back({static_cast<int>(cells[0]) - 1,
                        static_cast<int>(cells[1]),
                        {cells.begin() + 3, cells.begin() + 4 + qualities}});
    }
    return days;
}

// Velocity on the six parts within athletes and the six means; random: the level, and the parts within when asked.
MixedRows rows_of(const std::vector<Day>& days, bool slopes, bool sessions) {
    std::map<int, std::vector<double>> sum;
    std::map<int, double> count;
    for (const Day& day : days) {
        sum[day.id].resize(qualities + 1);
        for (std::size_t k = 0; k <= qualities; ++k)
            sum[day.id][k] += day.values[k];
        count[day.id] += 1;
    }
    MixedRows rows{1 + 2 * static_cast<int>(qualities),
                   slopes ? 1 + static_cast<int>(qualities) : 1,
                   {},
                   {},
                   {},
                   {},
                   std::vector<std::vector<int>>(sessions ? 1 : 0)};
    for (const Day& day : days) {
        rows.y.push_back(day.values[0]);
        rows.X.push_back(1);
        rows.Z.push_back(1);
        for (std::size_t k = 1; k <= qualities; ++k) {
            const double within = day.values[k] - sum[day.id][k] / count[day.id];
            rows.X.push_back(within);
            if (slopes)
                rows.Z.push_back(within);
        }
        for (std::size_t k = 1; k <= qualities; ++k)
            rows.X.push_back(sum[day.id][k] / count[day.id]);
        rows.group.push_back(day.id);
        if (sessions)
            rows.crossed[0].push_back(day.session);
    }
    return rows;
}

} // namespace

TEST_CASE(
    "200 athletes, five mixed models: not above lme4's criterion, and below by no more than its stopping") {
    const auto days = simulated_days();
    if (!days) {
        MESSAGE("SKIPPED: ../shared/open_data/roster_small.csv is absent");
        return;
    }
    const struct {
        const char* model;
        bool slopes;
        RandomShape shape;
        bool sessions;
        double criterion, above, below;
    } models[] = {
        {"level", false, RandomShape::diagonal, false, 7810.06517802, 1e-3, 1e-3},
        {"level, sessions", false, RandomShape::diagonal, true, 7377.28089316, 1e-3, 1e-3},
        {"slopes", true, RandomShape::diagonal, false, 7796.532833, 1e-3, 0.02},
        {"slopes, sessions", true, RandomShape::diagonal, true, 7362.136036, 1e-3, 1e-3},
        {"slopes together", true, RandomShape::full, false, 7773.8670, 5e-3, 5e-3},
    };
    for (const auto& row : models) {
        CAPTURE(row.model);
        const auto fit =
            fit_mixed_model(rows_of(*days, row.slopes, row.sessions), row.shape, Likelihood::restricted);
        REQUIRE(fit);
        CAPTURE(fit->criterion);
        CHECK(fit->criterion <= row.criterion + row.above);
        CHECK(fit->criterion >= row.criterion - row.below);
    }
}
