// Refusals of a C3D file: most are unreadable_file, and all name a place in it.
#pragma once

#include "values/refusal.h"

#include <cstdint>

namespace amentum {

inline Refusal refuse_c3d(std::string field, std::string sentence, std::string given, std::string allowed,
                          RefusalCode code = RefusalCode::unreadable_file) {
    return {code, std::move(sentence), std::move(field), std::move(given), std::move(allowed)};
}

inline std::string byte_place(std::uint64_t from_zero) {
    return "byte " + std::to_string(from_zero + 1);
}

} // namespace amentum
