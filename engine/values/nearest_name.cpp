#include "values/nearest_name.h"

#include <algorithm>
#include <cctype>
#include <numeric>
#include <vector>

namespace amentum {
namespace {

char folded(char c) {
    const char lower = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return lower == '_' || lower == ' ' ? '-'
                                        : lower; // find_limiters, find-limiters and "find limiters" are one
}

} // namespace

std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t replaced = diagonal + (folded(a[i]) == folded(b[j]) ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({replaced, row[j] + 1, diagonal + 1});
        }
    }
    return row.back();
}

std::optional<std::string> nearest_name(std::string_view given, std::span<const std::string> known) {
    std::optional<std::string> best;
    std::size_t best_distance = 0;
    for (const auto& name : known) {
        const std::size_t distance = edit_distance(given, name);
        if (distance * 3 > std::max(name.size(), given.size()))
            continue;
        if (!best || distance < best_distance) {
            best = name;
            best_distance = distance;
        }
    }
    return best;
}

} // namespace amentum
