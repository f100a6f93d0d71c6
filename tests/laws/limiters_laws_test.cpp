// What must hold for every ranking of limiters, whatever the levels: 40 random athletes of a fixed seed, with
// the project's own tables of slopes and attainable changes replaced by random ones.
#include "inference/limiters.h"
#include "inference/random_stream.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace amentum;

namespace {

constexpr int cases = 40;

struct Drawn {
    LimiterQuestion question;
    std::vector<VelocityPrior> slopes;
    std::vector<AttainableChange> changes;
};

Drawn drawn_athlete(RandomStream& stream) {
    Drawn out{
        {{}, 1 + 2 * stream.next_uniform(), 0.4, stream.next_uniform() < 0.3, stream.next_bits()}, {}, {}};
    const int n = 2 + static_cast<int>(9 * stream.next_uniform());
    for (int k = 0; k < n; ++k) {
        const std::string name = "quality " + std::to_string(k);
        out.question.qualities.push_back({name, {stream.next_normal(), stream.next_uniform()}, true});
        out.slopes.push_back(
            {name, 0.05 + 0.4 * stream.next_uniform(), 0.05 + 0.2 * stream.next_uniform(), "", {}});
        out.changes.push_back(
            {name, 0.2 + 0.3 * stream.next_uniform(), 0.1 + 0.15 * stream.next_uniform(), "", {}});
    }
    return out;
}

LimiterAnswer answer_to(const Drawn& drawn) {
    return estimate_limiters(drawn.question, drawn.slopes, drawn.changes);
}

double expected_of(const LimiterAnswer& answer, const std::string& quality) {
    return std::find_if(answer.gains.begin(), answer.gains.end(),
                        [&](const auto& g) { return g.quality == quality; })
        ->expected;
}

bool same(const LimiterAnswer& a, const LimiterAnswer& b) {
    bool equal = a.gains.size() == b.gains.size() && a.value_of_knowing == b.value_of_knowing;
    for (std::size_t k = 0; equal && k < a.gains.size(); ++k)
        equal = a.gains[k].quality == b.gains[k].quality && a.gains[k].expected == b.gains[k].expected &&
                a.gains[k].chance_best == b.gains[k].chance_best &&
                a.gains[k].central_80.low == b.gains[k].central_80.low;
    return equal;
}

} // namespace

TEST_CASE("chances to be best sum to one, and no regret is below the value of knowing") {
    RandomStream stream(1);
    for (int i = 0; i < cases; ++i) {
        const auto answer = answer_to(drawn_athlete(stream));
        double sum = 0;
        for (const auto& gain : answer.gains) {
            sum += gain.chance_best;
            CHECK(gain.regret >= answer.value_of_knowing - 1e-12);
        }
        CHECK(std::abs(sum - 1) < 1e-9);
        CHECK(answer.value_of_knowing >= 0);
    }
}

TEST_CASE("the same question has the same answer, in whatever order the qualities come") {
    RandomStream stream(2);
    for (int i = 0; i < cases; ++i) {
        auto drawn = drawn_athlete(stream);
        const auto first = answer_to(drawn);
        CHECK(same(first, answer_to(drawn)));
        std::reverse(drawn.question.qualities.begin(), drawn.question.qualities.end());
        std::rotate(drawn.slopes.begin(), drawn.slopes.begin() + 1, drawn.slopes.end());
        CHECK(same(first, answer_to(drawn)));
    }
}

TEST_CASE("a lower level raises the expected gain of that quality and moves no other") {
    RandomStream stream(3);
    for (int i = 0; i < cases; ++i) {
        auto drawn = drawn_athlete(stream);
        const auto before = answer_to(drawn);
        auto& lowered = drawn.question.qualities.front();
        lowered.z.mean -= 0.5;
        const auto after = answer_to(drawn);
        for (const auto& gain : after.gains) {
            if (gain.quality == lowered.quality)
                CHECK(gain.expected > expected_of(before, gain.quality));
            else
                CHECK(gain.expected == expected_of(before, gain.quality));
        }
    }
}

TEST_CASE("velocity in another spread scales every gain") {
    RandomStream stream(4);
    for (int i = 0; i < cases; ++i) {
        auto drawn = drawn_athlete(stream);
        const auto before = answer_to(drawn);
        drawn.question.velocity_spread *= 2;
        const auto after = answer_to(drawn);
        for (const auto& gain : after.gains)
            CHECK(std::abs(gain.expected - 2 * expected_of(before, gain.quality)) < 1e-12);
    }
}
