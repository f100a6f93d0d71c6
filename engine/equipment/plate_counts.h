// How many plates of each kind: a multiset, small enough to be a key.
//
// Kinds are numbered by whoever counts; at most 32 kinds and 255 plates of one kind.
//
// Example: counts {2, 0, 1} are within {2, 1, 1}; together, each at its largest: {2, 1, 1}
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <functional>

namespace amentum {

struct PlateCounts {
    static constexpr std::size_t most_kinds = 32;
    static constexpr int most_of_a_kind = 255;

    std::array<std::uint8_t, most_kinds> of = {};

    int plates() const {
        int sum = 0;
        for (const auto count : of)
            sum += count;
        return sum;
    }
    bool within(const PlateCounts& other) const {
        bool fits = true;
        for (std::size_t k = 0; k < most_kinds; ++k)
            fits &= of[k] <= other.of[k];
        return fits;
    }
    int without(const PlateCounts& other) const { // plates of these that are not among the others
        int sum = 0;
        for (std::size_t k = 0; k < most_kinds; ++k)
            sum += of[k] > other.of[k] ? of[k] - other.of[k] : 0;
        return sum;
    }
    PlateCounts joined_with(const PlateCounts& other) const { // each kind at its larger count
        PlateCounts joined;
        for (std::size_t k = 0; k < most_kinds; ++k)
            joined.of[k] = std::max(of[k], other.of[k]);
        return joined;
    }
    PlateCounts met_with(const PlateCounts& other) const { // each kind at its smaller count
        PlateCounts met;
        for (std::size_t k = 0; k < most_kinds; ++k)
            met.of[k] = std::min(of[k], other.of[k]);
        return met;
    }
    friend bool operator==(const PlateCounts&, const PlateCounts&) = default;
    friend auto operator<=>(const PlateCounts&, const PlateCounts&) = default;
};

struct HashOfCounts {
    std::size_t operator()(const PlateCounts& counts) const {
        std::uint64_t words[4];
        static_assert(sizeof words == PlateCounts::most_kinds);
        std::memcpy(words, counts.of.data(), sizeof words);
        std::uint64_t hash = 0;
        for (const auto word : words)
            hash = (hash ^ word) * 0x9e3779b97f4a7c15ULL ^ (hash >> 29);
        return hash ^ (hash >> 32);
    }
};

} // namespace amentum
