// A trace written as text is read back to the same samples, bit for bit.
#include "operations/inside/trace_files.h"
#include "recordings/read_recording.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace amentum;

TEST_CASE("samples written out are read back bit for bit, with rate, names and sides") {
    std::mt19937 random(3);
    std::uniform_real_distribution<float> force(-20, 3000);
    for (const double rate : {200.0, 450.0, 999.5, 1000.0})
        for (const bool lateral : {false, true})
            for (const std::size_t plates : {1u, 2u}) {
                KeptTrace trace{"a-trace",
                                {"ona-reyes"},
                                *parse_date("2026-06-01", "date"),
                                "lateral_bound",
                                "left",
                                1,
                                "x.txt",
                                9,
                                "00",
                                {},
                                {},
                                "",
                                "",
                                {}};
                trace.recording.rate_hz = rate;
                for (std::size_t p = 0; p < plates; ++p) {
                    PlateForces plate{
                        "", plates == 1 ? Side::none : (p == 0 ? Side::left : Side::right), {}, {}};
                    for (int i = 0; i < 500; ++i) {
                        plate.vertical.push_back(i < 5 ? 1e-7f * static_cast<float>(i) : 700 + force(random));
                        if (lateral)
                            plate.lateral.push_back(force(random));
                    }
                    trace.recording.plates.push_back(plate);
                }
                CAPTURE(rate);
                CAPTURE(lateral);
                CAPTURE(plates);
                RecordingGiven given;
                if (lateral) // whoever wants it says which column it is
                    given.lateral =
                        plates == 1 ? std::vector<std::string>{"2"} : std::vector<std::string>{"2", "4"};
                const auto read = read_recording(samples_of_trace(trace).text, given);
                REQUIRE_MESSAGE(read, read.refusal().sentence);
                CHECK(read->rate_hz == rate);
                REQUIRE(read->plates.size() == plates);
                for (std::size_t p = 0; p < plates; ++p) {
                    CHECK(read->plates[p].vertical == trace.recording.plates[p].vertical);
                    CHECK(read->plates[p].lateral == trace.recording.plates[p].lateral);
                    CHECK(read->plates[p].side == trace.recording.plates[p].side);
                }
            }
}
