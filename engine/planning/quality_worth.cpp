#include "planning/quality_worth.h"

#include <algorithm>
#include <cctype>

namespace amentum {
namespace {

constexpr double limiter_share = 0.85; // proposal of this project, no source
constexpr double ready_share = 1.0 - limiter_share;

// Only a first letter before a small one is turned: "Single-leg strength" -> "single-leg strength".
std::string inside_a_sentence(std::string name) {
    if (name.size() > 1 && std::islower(static_cast<unsigned char>(name[1])))
        name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
    return name;
}

} // namespace

QualityWorth::QualityWorth(const BlockRequest& request) {
    for (const auto& quality : request.qualities) {
        names_[quality.key] = inside_a_sentence(quality.name);
        if (quality.trainable)
            weight_[quality.key] = 0;
    }
    double sum = 0;
    for (const auto& priority : request.priorities) {
        if (!trainable(priority.quality) || !request.limiters_known || priority.weight <= 0)
            continue;
        sum += priority.weight;
        weight_[priority.quality] += priority.weight;
        words_[priority.quality] = priority.words;
        ranked_.push_back(priority.quality);
    }
    led_ = sum > 0;
    const double even = weight_.empty() ? 0 : 1.0 / static_cast<double>(weight_.size());
    std::stable_sort(ranked_.begin(), ranked_.end(),
                     [&](const auto& a, const auto& b) { return weight_[a] > weight_[b]; });
    for (auto& [quality, weight] : weight_)
        weight = led_ ? limiter_share * weight / sum + ready_share * even : even;
}

double QualityWorth::weight(const std::string& quality) const {
    const auto found = weight_.find(quality);
    return found == weight_.end() ? 0 : found->second;
}

double QualityWorth::worth(const Exercise& exercise) const {
    double sum = 0;
    for (const auto& [quality, share] : exercise.qualities)
        if (const auto found = weight_.find(quality); found != weight_.end())
            sum += found->second * share;
    return sum;
}

std::string QualityWorth::purpose(const Exercise& exercise) const {
    std::string best;
    double most = 0;
    for (const auto& [quality, share] : exercise.qualities) {
        const auto found = weight_.find(quality);
        if (found == weight_.end() || found->second * share <= most)
            continue;
        most = found->second * share;
        best = quality;
    }
    return best;
}

std::string QualityWorth::name(const std::string& quality) const {
    const auto found = names_.find(quality);
    return found != names_.end() ? found->second : quality;
}

std::string QualityWorth::words(const std::string& quality) const {
    const auto found = words_.find(quality);
    return found != words_.end() ? found->second : "";
}

int QualityWorth::rank(const std::string& quality) const {
    const auto found = std::find(ranked_.begin(), ranked_.end(), quality);
    return found == ranked_.end() ? 0 : static_cast<int>(found - ranked_.begin()) + 1;
}

} // namespace amentum
