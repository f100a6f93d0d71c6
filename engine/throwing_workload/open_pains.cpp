#include "throwing_workload/open_pains.h"

#include <algorithm>
#include <iterator>

namespace amentum {
namespace {

bool clears(const PainClearance& clearance, const PainEntry& pain, Date day) {
    return clearance.athlete == pain.athlete && clearance.number == pain.number &&
           pain.date <= clearance.date && clearance.date <= day;
}

} // namespace

std::vector<PainEntry> open_pains(std::span<const PainEntry> pains, std::span<const PainClearance> clearances,
                                  Date day) {
    std::vector<PainEntry> open;
    std::copy_if(pains.begin(), pains.end(), std::back_inserter(open), [&](const PainEntry& pain) {
        return pain.date <= day && std::none_of(clearances.begin(), clearances.end(),
                                                [&](const auto& each) { return clears(each, pain, day); });
    });
    return open;
}

} // namespace amentum
