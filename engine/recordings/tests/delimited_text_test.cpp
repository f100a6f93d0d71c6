// Force traces from delimited text: every usual shape is read alike, and everything else is refused by line and column.
#include "recordings/delimited_text.h"
#include "recordings/read_recording.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <fstream>

using namespace amentum;

namespace {

Result<ForceRecording> read(const std::string& text, RecordingGiven given = {}) {
    return read_recording(text, given);
}

std::string refused(const std::string& text, RefusalCode code, RecordingGiven given = {}) {
    const auto recording = read(text, std::move(given));
    REQUIRE_FALSE_MESSAGE(recording, text);
    CHECK_MESSAGE(recording.refusal().code == code, recording.refusal().sentence);
    return recording.refusal().sentence + " | " + recording.refusal().field;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

RecordingGiven at(double rate) {
    RecordingGiven given;
    given.rate_hz = rate;
    return given;
}

// Two plates at 500 Hz, six samples: left 400, 401 ..., right 350, 350.5 ...
std::string table(char separator, char mark, const std::string& end, const std::string& above, bool last_end,
                  bool quoted) {
    const auto number = [&](double x, int decimals) {
        std::string text = std::to_string(x);
        text = text.substr(0, text.find('.') + 1 + static_cast<std::size_t>(decimals));
        text[text.find('.')] = mark;
        return quoted ? '"' + text + '"' : text;
    };
    std::string text = above;
    for (int i = 0; i < 6; ++i) {
        text += number(i * 0.002, 3) + separator + number(400 + i, 2) + separator + number(350 + 0.5 * i, 1);
        if (i < 5 || last_end)
            text += end;
    }
    return text;
}

void check_table(const Result<ForceRecording>& recording) {
    REQUIRE_MESSAGE(recording, recording.refusal().sentence);
    CHECK(recording->rate_hz == doctest::Approx(500).epsilon(1e-12));
    REQUIRE(recording->plates.size() == 2);
    CHECK(recording->plates[0].vertical == std::vector<float>{400, 401, 402, 403, 404, 405});
    CHECK(recording->plates[1].vertical == std::vector<float>{350, 350.5, 351, 351.5, 352, 352.5});
    CHECK(recording->plates[0].side == Side::left);
    CHECK(recording->plates[1].side == Side::right);
}

} // namespace

TEST_CASE("separators, decimal marks, line ends, headers, quotes and byte-order marks: all read alike") {
    for (const char separator : {'\t', ';', ',', '|', ' '})
        for (const char mark : {'.', ','})
            for (const std::string end : {"\n", "\r\n", "\r"})
                for (const bool last_end : {true, false})
                    for (const bool quoted : {false, true})
                        for (int header = 0; header < 4; ++header) {
                            if (separator == mark)
                                continue; // 1,5,2,5 has no one reading
                            const std::string s(1, separator);
                            const std::string names =
                                separator == ' ' ? "time" + s + "Left" + s + "Right"
                                                 : "time [s]" + s + "Left Fz [N]" + s + "Right Fz [N]";
                            const std::string units = separator == ' ' ? end + "s" + s + "N" + s + "N" : "";
                            std::string above = names + units + end;
                            if (header == 1)
                                above = "Hall of the test" + end + end + above;
                            else if (header == 2)
                                above = "\xef\xbb\xbf" + above;
                            else if (header == 3)
                                above =
                                    "time" + s + "Left" + s + "Right" + end + "s" + s + "N" + s + "N" + end;
                            CAPTURE(above);
                            CAPTURE(mark);
                            CAPTURE(quoted);
                            check_table(read(table(separator, mark, end, above, last_end, quoted)));
                        }
}

TEST_CASE("cut anywhere, a file reads the same") {
    const std::string text = table('\t', '.', "\r\n", "time [s]\tLeft Fz [N]\tRight Fz [N]\r\n", true, false);
    for (std::size_t cut = 0; cut <= text.size(); ++cut) {
        RecordingReader reader({});
        REQUIRE(reader.take(text.substr(0, cut)));
        REQUIRE(reader.take(text.substr(cut)));
        check_table(reader.finish());
    }
    DelimitedTextReader by_bytes({});
    for (const char c : text)
        REQUIRE(by_bytes.take(std::string_view(&c, 1)));
    check_table(by_bytes.finish());
}

TEST_CASE("units: newtons, kilonewtons, kilograms, pounds and volts") {
    const auto first = [](const std::string& unit, RecordingGiven given = at(1000)) {
        const auto recording = read("Fz [" + unit + "]\n70\n71\n72\n", std::move(given));
        REQUIRE_MESSAGE(recording, recording.refusal().sentence);
        return recording->plates[0].vertical[0];
    };
    CHECK(first("N") == 70.0f);
    CHECK(first("kg") == doctest::Approx(686.4655).epsilon(1e-7)); // x 9.80665 [NistSp811, B.8]
    CHECK(first("kN") == 70000.0f);
    CHECK(first("lbf") == doctest::Approx(311.3755).epsilon(1e-6)); // x 4.4482216152605 [NistSp811, B.8]
    RecordingGiven volts = at(1000);
    volts.newtons_per_volt = 10;
    CHECK(first("V", volts) == 700.0f);
    CHECK(has(refused("Fz [V]\n7\n8\n9\n", RefusalCode::missing_field, at(1000)), "newtons_per_volt"));
    CHECK(has(refused("700\n703\n701\n", RefusalCode::missing_field, at(1000)), "unit"));
}

TEST_CASE("a preamble of hundreds of lines, numbers among them, is no table") {
    std::string text;
    for (int i = 0; i < 450; ++i)
        text += "channel " + std::to_string(i) + ";" + std::to_string(3 * i) + "\n";
    text += "time [s];Left Fz [N];Right Fz [N]\n";
    for (int i = 0; i < 300; ++i)
        text += std::to_string(i / 500.0) + ";" + std::to_string(400 + i % 7) + ";350\n";
    const auto recording = read(text);
    REQUIRE_MESSAGE(recording, recording.refusal().sentence);
    CHECK(recording->samples() == 300);
    CHECK(recording->rate_hz == doctest::Approx(500));
    CHECK(recording->plates.at(0).vertical[6] == 406);
}

TEST_CASE("the rate: from a time column in s or ms, from a header line, or from the person") {
    CHECK(read("t [ms];Fz [N]\n0;1\n2;2\n4;3\n")->rate_hz == doctest::Approx(500));
    CHECK(read("rate: 250 Hz\nFz [N]\n1\n2\n3\n")->rate_hz == 250);
    CHECK(read("Fz [N]\n1\n2\n3\n", at(333))->rate_hz == 333);
    CHECK(has(refused("Fz [N]\n1\n2\n3\n", RefusalCode::missing_field), "rate_hz"));
    CHECK(has(refused("t [s];Fz [N]\n0;1\n0.002;2\n0.004;3\n0.009;4\n0.011;5\n", RefusalCode::wrong_rate),
              "ine 5"));
    refused("t [s];Fz [N]\n0;1\n0.002;2\n0.004;3\n", RefusalCode::wrong_rate, at(1000)); // the times deny it
    refused("t [s];Fz [N]\n0;1\n0;2\n0;3\n", RefusalCode::wrong_rate);
    CHECK(has(refused("t [s];Fz [N]\n0;1\n5001;3\n", RefusalCode::wrong_rate),
              "50 to 20,000")); // found by the fuzzer
    refused("t [s];Fz [N]\n0;1\n0.00001;3\n0.00002;3\n", RefusalCode::wrong_rate);
}

TEST_CASE("columns: by name, by number, by what is left; a total is no third plate; downward is turned") {
    const std::string text =
        "t[s];a;Fz total [N];Fz right [N];Fz left [N]\n0;9;3;1;2\n0.001;9;3;1;2\n0.002;9;3;1;2\n";
    const auto guessed = read(text);
    REQUIRE_MESSAGE(guessed, guessed.refusal().sentence);
    REQUIRE(guessed->plates.size() == 2);
    CHECK(guessed->plates[0].side != guessed->plates[1].side);
    for (const auto& plate : guessed->plates)
        CHECK(plate.vertical[0] == (plate.side == Side::left ? 2 : 1));
    RecordingGiven chosen;
    chosen.vertical = {"3"};
    chosen.unit = ForceUnit::newton;
    CHECK(read(text, chosen)->plates.at(0).vertical[0] == 3);
    chosen.vertical = {"Fz total [N]"};
    CHECK(read(text, chosen)->plates.at(0).vertical[0] == 3);
    chosen.vertical = {"Fz middle"};
    CHECK(has(refused(text, RefusalCode::unknown_name, chosen), "Fz"));
    refused("t[s];a;b;c\n0;1;2;3\n0.001;1;2;3\n0.002;1;2;3\n", RefusalCode::missing_field);
    const auto down = read("t [s];Fz [N]\n0;-700\n0.001;-701\n0.002;-702\n");
    REQUIRE(down);
    CHECK(down->plates[0].vertical == std::vector<float>{700, 701, 702});
    CHECK(std::any_of(down->notes.begin(), down->notes.end(),
                      [](const auto& note) { return has(note, "turn"); }));
    RecordingGiven swapped;
    swapped.left_foot_on_second = true;
    const auto two = read("t [s];plate 1 [N];plate 2 [N]\n0;5;6\n0.001;5;6\n0.002;5;6\n", swapped);
    REQUIRE_MESSAGE(two, two.refusal().sentence);
    for (const auto& plate : two->plates)
        CHECK(plate.vertical[0] == (plate.side == Side::left ? 6 : 5));
}

TEST_CASE("what is wrong is refused by its line") {
    const std::string head = "t [s];Fz [N]\n0;700\n0.001;701\n";
    CHECK(has(refused(head + "0.002;abc\n0.003;703\n", RefusalCode::unreadable_file), "ine 4"));
    CHECK(has(refused(head + "0.002;nan\n0.003;703\n", RefusalCode::unreadable_file), "ine 4"));
    CHECK(has(refused(head + "0.002;702;9\n0.003;703\n", RefusalCode::unreadable_file), "ine 4"));
    CHECK(has(refused(head + "0.002\n0.003;703\n", RefusalCode::unreadable_file), "ine 4"));
    CHECK(has(refused(head + "t [s];Fz [N]\n0.002;702\n", RefusalCode::unreadable_file), "ine 4"));
    refused("", RefusalCode::unreadable_file);
    refused("\n\n\n", RefusalCode::unreadable_file);
    refused("only words\nand more words\n", RefusalCode::unreadable_file);
    refused(std::string("\xff\xfe"
                        "t\0;\0F\0\n\0",
                        10),
            RefusalCode::unreadable_file);
    refused(std::string(3000, '\1'), RefusalCode::unreadable_file);
    refused(std::string(200000, 'x'), RefusalCode::unreadable_file);
    const auto one = read("Fz [N]\n700\n", at(1000));
    REQUIRE_FALSE(one);
}

TEST_CASE("a last line cut off by a full disk is left out, and said so") {
    const auto recording = read("t [s];Fz [N]\n0.000;700.5\n0.001;701.5\n0.002;702.5\n0.003;70");
    REQUIRE_MESSAGE(recording, recording.refusal().sentence);
    CHECK(recording->samples() == 3);
    CHECK(std::any_of(recording->notes.begin(), recording->notes.end(),
                      [](const auto& note) { return has(note, "last line"); }));
}

TEST_CASE("more samples than a recording may have are refused, and memory stays") {
    DelimitedTextReader reader([] {
        auto given = at(20000);
        given.unit = ForceUnit::newton;
        return given;
    }());
    std::string piece;
    for (int i = 0; i < 50000; ++i)
        piece += "7\n";
    std::optional<Refusal> refusal;
    for (int i = 0; i < 100 && !refusal; ++i)
        if (const auto taken = reader.take(piece); !taken)
            refusal = taken.refusal();
    REQUIRE(refusal);
    CHECK(refusal->code == RefusalCode::out_of_range);
    CHECK(has(refusal->sentence, "4,194,304"));
}

TEST_CASE("the open trials are read as their notes say") {
    const std::string folder = AMENTUM_SOURCE_DIR "/../shared/open_data/";
    std::ifstream one(folder + "jump1.txt"), two(folder + "GRFZjump.txt");
    if (!one || !two) {
        MESSAGE("SKIPPED: the open trials are not beside the repository (../shared/open_data)");
        return;
    }
    const auto text = [](std::ifstream& file) {
        return std::string(std::istreambuf_iterator<char>(file), {});
    };
    const auto jump = read(text(one));
    REQUIRE_MESSAGE(jump, jump.refusal().sentence);
    CHECK(jump->rate_hz == doctest::Approx(450).epsilon(1e-4));
    CHECK(jump->seconds() == doctest::Approx(10).epsilon(1e-3));
    auto given = at(600);
    given.unit = ForceUnit::newton;
    const auto short_one = read(text(two), given);
    REQUIRE_MESSAGE(short_one, short_one.refusal().sentence);
    CHECK(short_one->plates.size() == 1);
}
