// How many plates of each kind: a multiset, small enough to be a key.
//
// Kinds are numbered by whoever counts; at most 32 kinds and 127 plates of one kind. Below 128 a byte's highest bit is
// free, and eight counts are compared at once: in (a | 128) - b that bit stands where a >= b, and no byte borrows from
// the next.
//
// Example: counts {2, 0, 1} are within {2, 1, 1}; together, each at its largest: {2, 1, 1}
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <functional>

namespace amentum {

struct PlateCounts {
    static constexpr std::size_t most_kinds = 32;
    static constexpr int most_of_a_kind = 127;

    using Counts = std::array<std::uint8_t, most_kinds>;
    Counts of = {};

    int plates() const {
        int sum = 0;
        for (const auto count : of)
            sum += count;
        return sum;
    }
    bool within(const PlateCounts& other) const {
        const Words mine = words(), others = other.words();
        std::uint64_t fits = high_bits;
        for (std::size_t w = 0; w < mine.size(); ++w)
            fits &= (others[w] | high_bits) - mine[w];
        return fits == high_bits;
    }
    int without(const PlateCounts& other) const { // plates of these that are not among the others
        const Words mine = words(), others = other.words();
        std::uint64_t sums = 0; // of pairs of bytes, four of them
        for (std::size_t w = 0; w < mine.size(); ++w) {
            const std::uint64_t more = beyond(mine[w], others[w]);
            sums += (more & even_bytes) + (more >> 8 & even_bytes);
        }
        return static_cast<int>(sums * 0x0001000100010001u >> 48);
    }
    PlateCounts joined_with(const PlateCounts& other) const { // each kind at its larger count
        const Words mine = words();
        Words joined = other.words();
        for (std::size_t w = 0; w < joined.size(); ++w)
            joined[w] += beyond(mine[w], joined[w]);
        return {std::bit_cast<Counts>(joined)};
    }
    PlateCounts met_with(const PlateCounts& other) const { // each kind at its smaller count
        const Words others = other.words();
        Words met = words();
        for (std::size_t w = 0; w < met.size(); ++w)
            met[w] -= beyond(met[w], others[w]);
        return {std::bit_cast<Counts>(met)};
    }
    friend bool operator==(const PlateCounts&, const PlateCounts&) = default;
    friend auto operator<=>(const PlateCounts&, const PlateCounts&) = default;

    using Words = std::array<std::uint64_t, most_kinds / 8>;
    Words words() const { return std::bit_cast<Words>(of); }

private:
    // Of each byte of a what it has above that of b.
    static std::uint64_t beyond(std::uint64_t a, std::uint64_t b) {
        const std::uint64_t difference = (a | high_bits) - b;
        const std::uint64_t at_least = difference & high_bits;
        return difference & (at_least - (at_least >> 7));
    }
    static constexpr std::uint64_t high_bits = 0x8080808080808080u, even_bytes = 0x00ff00ff00ff00ffu;
};

struct HashOfCounts {
    std::size_t operator()(const PlateCounts& counts) const {
        std::uint64_t hash = 0;
        for (const auto word : counts.words())
            hash = (hash ^ word) * 0x9e3779b97f4a7c15ULL ^ (hash >> 29);
        return hash ^ (hash >> 32);
    }
};

} // namespace amentum
