#include "recordings/c3d_layout.h"

namespace amentum {

std::optional<C3dProcessor> c3d_processor_of_mark(unsigned char mark) {
    if (mark < 84 || mark > 86)
        return std::nullopt;
    return static_cast<C3dProcessor>(mark);
}

std::uint16_t c3d_unsigned(const char* at, C3dProcessor processor) {
    return processor == C3dProcessor::mips ? c3d_unsigned_most_first(at) : c3d_unsigned_least_first(at);
}

std::int16_t c3d_signed(const char* at, C3dProcessor processor) {
    return static_cast<std::int16_t>(c3d_unsigned(at, processor));
}

float c3d_real(const char* at, C3dProcessor processor) {
    switch (processor) {
    case C3dProcessor::intel:
        return c3d_real_intel(at);
    case C3dProcessor::dec:
        return c3d_real_dec(at);
    case C3dProcessor::mips:
        return c3d_real_mips(at);
    }
    return 0;
}

} // namespace amentum
