// Numbers of the three processors, against their definitions.
#include "recordings/c3d_layout.h"

#include "c3d_writer.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace amentum {

TEST_CASE("A DEC real: 80 40 00 00 is 1, and other numbers by the definition of the F format") {
    // 1 is the example of the C3D guide; the rest follows from +-0.1f (binary) x 2^(exponent - 128), by hand:
    // 3.5 = 0.875 x 2^2: exponent 130, f = 0.11 -> words 0x4160 0x0000; -0.1875 = -0.75 x 2^-2: 0xBF40 0x0000.
    CHECK(c3d_real(std::string("\x80\x40\x00\x00", 4).data(), C3dProcessor::dec) == 1.0F);
    CHECK(c3d_real(std::string("\x60\x41\x00\x00", 4).data(), C3dProcessor::dec) == 3.5F);
    CHECK(c3d_real(std::string("\x40\xBF\x00\x00", 4).data(), C3dProcessor::dec) == -0.1875F);
    CHECK(c3d_real(std::string("\x00\x00\x00\x00", 4).data(), C3dProcessor::dec) == 0.0F);
    // The smallest and the largest exponent: 0.5 x 2^-127 and 0.5 x 2^127, which IEEE 754 holds as well.
    CHECK(c3d_real(std::string("\x80\x00\x00\x00", 4).data(), C3dProcessor::dec) == std::ldexp(1.0F, -128));
    CHECK(c3d_real(std::string("\x80\x7F\x00\x00", 4).data(), C3dProcessor::dec) == std::ldexp(1.0F, 126));
}

TEST_CASE("IEEE reals and whole numbers in both orders of bytes") {
    // 1.0 is 3F 80 00 00 in IEEE 754, most byte first.
    CHECK(c3d_real(std::string("\x00\x00\x80\x3F", 4).data(), C3dProcessor::intel) == 1.0F);
    CHECK(c3d_real(std::string("\x3F\x80\x00\x00", 4).data(), C3dProcessor::mips) == 1.0F);
    CHECK(c3d_signed("\xFE\xFF", C3dProcessor::intel) == -2);
    CHECK(c3d_signed("\xFE\xFF", C3dProcessor::dec) == -2);
    CHECK(c3d_signed("\xFF\xFE", C3dProcessor::mips) == -2);
    CHECK(c3d_unsigned("\xFF\xFE", C3dProcessor::mips) == 65534);
    CHECK(c3d_processor_of_mark(85) == C3dProcessor::dec);
    CHECK_FALSE(c3d_processor_of_mark(83));
    CHECK_FALSE(c3d_processor_of_mark(87));
}

TEST_CASE("What the tests' writer writes is read back, bit for bit, on all three processors") {
    for (const double value : {0.0, 1.0, -1.0, 0.1, -123.456, 3.0e30, 1.2e-30, 16777215.0})
        for (const auto mark : {tests::Mark::intel, tests::Mark::dec, tests::Mark::mips})
            CHECK(c3d_real(tests::write_real(static_cast<double>(static_cast<float>(value)), mark).data(),
                           static_cast<C3dProcessor>(mark)) == static_cast<float>(value));
}

} // namespace amentum
