#include "inference/random_stream.h"

#include "inference/normal_quantile.h"

namespace amentum {

std::uint64_t RandomStream::next_bits() {
    state_ += 0x9E3779B97F4A7C15ull;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
    return z ^ (z >> 31);
}

double RandomStream::next_uniform() {
    return (static_cast<double>(next_bits() >> 12) + 0.5) * 0x1.0p-52;
}

double RandomStream::next_normal() {
    return normal_quantile(next_uniform());
}

std::uint64_t seed_from(std::uint64_t seed, std::string_view name) {
    std::uint64_t hash = 0xCBF29CE484222325ull ^ seed; // FNV-1a, 64 bits [FowlerNollVo]
    for (const char c : name)
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3ull;
    return RandomStream(hash).next_bits();
}

} // namespace amentum
