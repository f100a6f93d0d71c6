// Random numbers as a function of (seed, counter): the same everywhere, in any order, on any number of
// threads.
//
// Bits by SplitMix64 [Steele2014]; normal deviates by the inverse of the normal distribution function.
#pragma once

#include <cstdint>
#include <string_view>

namespace amentum {

class RandomStream {
public:
    explicit RandomStream(std::uint64_t seed) : state_(seed) {}
    std::uint64_t next_bits();
    double next_uniform(); // in (0, 1), 2^52 values, never 0 or 1
    double next_normal();

private:
    std::uint64_t state_;
};

std::uint64_t seed_from(std::uint64_t seed, std::string_view name); // a stream of its own for each name

} // namespace amentum
