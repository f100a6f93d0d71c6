// Long files whose lines change their shape all the time: every sample is the float that std::from_chars reads in the
// same cell, in whatever pieces the file comes. (The quick ways of reading only begin behind the first line, and the
// first 64 kB are kept together, so the files are longer.)
#include "recordings/delimited_text.h"

#include <doctest/doctest.h>

#include <bit>
#include <charconv>
#include <random>

using namespace amentum;

namespace {

struct Written {
    std::string text;
    std::vector<float> left, right;
};

using Random = std::mt19937;

// A cell as files have it, and the float nearest to it by the standard library.
std::string cell(Random& random, std::vector<float>& values) {
    std::string digits = std::to_string(random() % 2000);
    const auto kind = random() % 20;
    const auto more = [&](std::uint_fast32_t count) {
        for (std::uint_fast32_t i = 0; i < count; ++i)
            digits += static_cast<char>('0' + random() % 10);
    };
    if (kind > 0) {
        digits += '.';
        more(kind < 12 ? 2 : kind < 17 ? random() % 9 : 9 + random() % 12);
    }
    if (kind == 19)
        digits += random() % 2 ? "e+00" : "E-01";
    if (random() % 4 == 0)
        digits.insert(0, "-");
    float value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    values.push_back(value + 0.0f);
    return digits;
}

// Unwanted columns between the two wanted ones make the lines long.
Written long_file(char separator, char mark, const std::string& end, bool timed, unsigned unwanted,
                  bool quoted, std::size_t bytes) {
    Random random(static_cast<unsigned>(separator) + 7 * unwanted);
    Written file;
    std::string names = timed ? "time" + std::string(1, separator) : "";
    names += "Left";
    for (unsigned i = 0; i < unwanted; ++i)
        names += separator + std::string("Mx");
    file.text = names + separator + "Right" + end;
    std::vector<float> ignored;
    for (int line = 0; file.text.size() < bytes; ++line) {
        std::string text;
        if (timed)
            text = std::to_string(line / 100) + '.' + std::to_string(100 + line % 100).substr(1) + separator;
        std::string left = cell(random, file.left), right = cell(random, file.right);
        text += quoted && line % 3 == 0 ? '"' + left + '"' : left;
        for (unsigned i = 0; i < unwanted; ++i)
            text += separator + cell(random, ignored);
        text += separator + (random() % 9 == 0 && separator != ' ' ? " " + right : right);
        for (char& c : text)
            c = c == '.' ? mark : c;
        file.text += text + end;
    }
    return file;
}

void check_read(const Written& file, bool timed, std::size_t piece) {
    RecordingGiven given;
    given.unit = ForceUnit::newton;
    given.vertical = {"Left", "Right"};
    if (!timed)
        given.rate_hz = 100;
    DelimitedTextReader reader(given);
    for (std::size_t at = 0; at < file.text.size(); at += piece)
        REQUIRE(reader.take(std::string_view(file.text).substr(at, piece)));
    const auto recording = reader.finish();
    REQUIRE_MESSAGE(recording, (recording.refusal().sentence + recording.refusal().field));
    CHECK(recording->rate_hz == 100);
    const auto same = [](const std::vector<float>& a, const std::vector<float>& b) {
        REQUIRE(a.size() == b.size());
        std::size_t differ = 0;
        for (std::size_t i = 0; i < a.size(); ++i)
            differ += std::bit_cast<std::uint32_t>(a[i] + 0.0f) != std::bit_cast<std::uint32_t>(b[i]);
        CHECK(differ == 0);
    };
    same(recording->plates[0].vertical, file.left);
    same(recording->plates[1].vertical, file.right);
}

} // namespace

TEST_CASE("lines of every shape are read as the standard library reads their cells, in whatever pieces") {
    for (const char separator : {'\t', ';', ',', '|', ' '})
        for (const char mark : {'.', ','})
            for (const std::string end : {"\n", "\r\n", "\r"})
                for (const unsigned unwanted : {0u, 9u}) {
                    if (separator == mark)
                        continue;
                    const bool timed = end != "\r";
                    CAPTURE(separator);
                    CAPTURE(mark);
                    CAPTURE(unwanted);
                    const Written file = long_file(separator, mark, end, timed, unwanted,
                                                   unwanted == 0 && mark == '.', 150'000);
                    for (const std::size_t piece :
                         {file.text.size(), std::size_t{65536}, std::size_t{997}, std::size_t{61}})
                        check_read(file, timed, piece);
                }
}

TEST_CASE("one wrong character behind ninety thousand right lines is found, whatever the shape") {
    std::string text = "Force [N]\n";
    for (int i = 0; i < 100'000; ++i)
        text += std::to_string(700 + i % 250) + ".25\n";
    RecordingGiven given;
    given.rate_hz = 1000;
    for (const char wrong : {'x', '-', '.', ',', ' ', '\t', '\0', '"', 'e', '\x80'})
        for (const std::size_t at : {std::size_t{0}, std::size_t{2}, std::size_t{3}, std::size_t{5}}) {
            if (at == 3 && wrong == '.')
                continue; // as it was
            std::string spoilt = text;
            spoilt[10 + 7 * 90'000 + at] = wrong;
            DelimitedTextReader reader(given);
            const auto taken = reader.take(spoilt);
            const auto recording = reader.finish();
            CAPTURE(wrong);
            CAPTURE(at);
            const bool still_a_number = (at == 0 && (wrong == '-' || wrong == ' ' || wrong == '\t')) ||
                                        (at == 5 && (wrong == ' ' || wrong == '\t')); // -25.25 for 725.25
            REQUIRE(static_cast<bool>(recording) == still_a_number);
            if (still_a_number)
                continue;
            const bool huge = at == 3 && wrong == 'e'; // 725e25 newtons
            CHECK(recording.refusal().code ==
                  (huge ? RefusalCode::out_of_range : RefusalCode::unreadable_file));
            CHECK(recording.refusal().field == (huge ? "column 1" : "line 90002, column 1"));
        }
}
