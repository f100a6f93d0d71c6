// Cells as numbers: the float nearest to the decimal written, as the C++ standard library's std::from_chars reads it.
#include "recordings/inside/text_number.h"

#include <doctest/doctest.h>

#include <charconv>
#include <cmath>
#include <random>
#include <string>

using namespace amentum;

namespace {

std::optional<float> by_the_library(std::string cell) {
    if (!cell.empty() && cell.front() == '+')
        cell.erase(0, 1);
    float value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

bool same_bits(float a, float b) {
    return std::bit_cast<std::uint32_t>(a) == std::bit_cast<std::uint32_t>(b);
}

std::string random_cell(std::mt19937_64& random) {
    std::string cell;
    if (random() % 4 == 0)
        cell += '-';
    const auto digits = [&](std::size_t count) {
        for (std::size_t i = 0; i < count; ++i)
            cell += static_cast<char>('0' + random() % 10);
    };
    const std::size_t before = random() % (random() % 8 == 0 ? 20 : 6),
                      after = random() % (random() % 8 == 0 ? 25 : 7);
    digits(before);
    if (after > 0 || random() % 6 == 0) {
        cell += '.';
        digits(after);
    }
    if (before + after == 0)
        cell += '7';
    if (random() % 12 == 0) {
        cell += random() % 2 ? 'e' : 'E';
        if (random() % 2)
            cell += random() % 2 ? '-' : '+';
        cell += std::to_string(random() % 12);
    }
    return cell;
}

} // namespace

TEST_CASE("a million random decimals are read as the standard library reads them, to the bit") {
    std::mt19937_64 random(1);
    const std::string space(32, ' ');
    for (int i = 0; i < 1'000'000; ++i) {
        const std::string cell = random_cell(random);
        const auto expected = by_the_library(cell);
        const auto read = parse_sample(cell, '.');
        REQUIRE_MESSAGE(read.has_value() == expected.has_value(), cell);
        if (!expected)
            continue;
        if (!same_bits(*read, *expected))
            FAIL(cell);
        const std::string placed = space + cell; // 16 readable bytes before the end
        float fast = 0;
        REQUIRE(read_sample(placed.data() + space.size(), placed.data() + placed.size(), '.', fast));
        if (!same_bits(fast, *expected))
            FAIL(cell);
    }
}

TEST_CASE("decimals half way between two floats, and next to half way") {
    // 16777217 = 2^24 + 1 lies half way between two floats: the even one is nearest by the rule of IEEE 754.
    CHECK(parse_sample("16777217", '.') == 16777216.0f);
    CHECK(parse_sample("16777219", '.') == 16777220.0f);
    CHECK(parse_sample("16777217.0000000001", '.') == 16777218.0f);
    CHECK(parse_sample("16777216.9999999999", '.') == 16777216.0f);
}

TEST_CASE("signs, marks and zeros") {
    CHECK(same_bits(parse_sample("-0", '.').value(), -0.0f));
    CHECK(parse_sample("+7.5", '.') == 7.5f);
    CHECK(parse_sample("7,5", ',') == 7.5f);
    CHECK(parse_sample(".5", '.') == 0.5f);
    CHECK(parse_sample("5.", '.') == 5.0f);
    CHECK(parse_sample("0000000000000000000000012.5", '.') == 12.5f);
    CHECK(parse_time("0.001", '.') == 0.001);
    CHECK(parse_time("12345.678901", '.') == 12345.678901);
}

TEST_CASE("what is no finite number is none") {
    for (const char* cell : {"", "-", "+", ".", "1.2.3", "1,2", "abc", "nan", "inf", "1e", "1e400", "0x10",
                             "1 2", "--1", "1-", "12345678a", "a2345678", "1234567/", "1234567:"})
        CHECK_MESSAGE(!parse_sample(cell, '.'), cell);
}
