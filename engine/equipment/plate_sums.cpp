#include "equipment/plate_sums.h"

#include <algorithm>
#include <cassert>

namespace amentum {
namespace {

constexpr ExactMass thinning_width = 50'000'000; // 5 g

} // namespace

PlateSums::PlateSums(std::vector<PlateKind> kinds, ExactMass most) : kinds_(std::move(kinds)) {
    std::stable_sort(kinds_.begin(), kinds_.end(),
                     [](const auto& a, const auto& b) { return a.each < b.each; });
    sums_.push_back({0, 0, -1});
    for (int kind = 0; kind < static_cast<int>(kinds_.size()); ++kind)
        add_kind(kind, most);
}

// The kind is heavier than all before it. `ways` are the sums with up to j of it, j growing by one a round.
void PlateSums::add_kind(int kind, ExactMass most) {
    const auto& [label, each, available] = kinds_[static_cast<std::size_t>(kind)];
    assert(each > 0 && available >= 0);
    std::vector<Candidate> ways;
    for (const auto& sum : sums_)
        ways.push_back({sum.mass, sum.plates, 0, sum.last});
    std::vector<Candidate> with_j;
    for (int j = 1; j <= available; ++j) {
        with_j.clear();
        for (const auto& sum : sums_)
            if (sum.mass + j * each <= most)
                with_j.push_back({sum.mass + j * each, sum.plates + j, j, sum.last});
        if (with_j.empty())
            break;
        ways = merged(ways, with_j);
        if (ways.size() > exact_limit)
            thin(ways);
    }
    sums_.clear();
    for (const auto& way : ways) {
        if (way.count > 0)
            steps_.push_back({kind, way.count, way.rest});
        sums_.push_back(
            {way.mass, way.plates, way.count > 0 ? static_cast<int>(steps_.size()) - 1 : way.rest});
    }
}

// Both ascending; of two ways to one sum the one with fewer plates stays, and between equals the one with
// more of the kind being added, which is the heaviest so far.
std::vector<PlateSums::Candidate> PlateSums::merged(const std::vector<Candidate>& fewer,
                                                    const std::vector<Candidate>& more) {
    std::vector<Candidate> all;
    all.reserve(fewer.size() + more.size());
    auto a = fewer.begin();
    auto b = more.begin();
    while (a != fewer.end() && b != more.end()) {
        if (a->mass < b->mass)
            all.push_back(*a++);
        else if (b->mass < a->mass)
            all.push_back(*b++);
        else {
            all.push_back(b->plates <= a->plates ? *b : *a);
            ++a;
            ++b;
        }
    }
    all.insert(all.end(), a, fewer.end());
    all.insert(all.end(), b, more.end());
    return all;
}

void PlateSums::thin(std::vector<Candidate>& sums) {
    std::size_t kept = 0;
    for (std::size_t i = 1; i < sums.size(); ++i) {
        if (sums[i].mass / thinning_width != sums[kept].mass / thinning_width)
            sums[++kept] = sums[i];
        else if (sums[i].plates < sums[kept].plates)
            sums[kept] = sums[i];
    }
    sums.resize(kept + 1);
}

std::vector<PlatesOnSide> PlateSums::stack(std::size_t i) const {
    std::vector<PlatesOnSide> stack;
    for (int step = sums_[i].last; step >= 0; step = steps_[static_cast<std::size_t>(step)].rest) {
        const auto& put_on = steps_[static_cast<std::size_t>(step)];
        const auto& kind = kinds_[static_cast<std::size_t>(put_on.kind)];
        stack.push_back({kind.label, mass_of(kind.each), put_on.count});
    }
    return stack;
}

} // namespace amentum
