// A seeded stream of random numbers for a search: splitmix64 [Steele2014], the same on every machine.
#pragma once

#include <cstdint>

namespace amentum {

class SeededStream {
public:
    explicit SeededStream(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next() {
        std::uint64_t z = (state_ += 0x9E3779B97F4A7C15u);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
        return z ^ (z >> 31);
    }
    int below(int count) { // 0 ... count - 1; count above 0
        return static_cast<int>((next() >> 32) * static_cast<std::uint64_t>(count) >> 32);
    }
    double share() { return static_cast<double>(next() >> 11) * 0x1.0p-53; } // 0 <= share < 1

private:
    std::uint64_t state_;
};

} // namespace amentum
