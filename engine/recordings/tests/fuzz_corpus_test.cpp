// What the fuzzer has found (scripts/fuzz.sh) is read again here, so that a fault once mended stays mended without clang.
#include "recordings/c3d_forces.h"
#include "recordings/c3d_summary.h"
#include "recordings/read_recording.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

using namespace amentum;

TEST_CASE("every input of the kept corpus is answered or refused") {
    int inputs = 0;
    for (const char* folder : {"recording_text", "recording_c3d"})
        for (const auto& entry : std::filesystem::directory_iterator(
                 std::string(AMENTUM_SOURCE_DIR "/tests/fuzz/corpus/") + folder)) {
            std::ifstream file(entry.path(), std::ios::binary);
            const std::string bytes(std::istreambuf_iterator<char>(file), {});
            CAPTURE(entry.path().string());
            for (const std::string_view all :
                 {std::string_view(bytes), std::string_view(bytes).substr(bytes.empty() ? 0 : 1)}) {
                const auto recording = read_recording(all, {});
                CHECK((recording ? !recording->plates.empty() : !recording.refusal().sentence.empty()));
                C3dForceReader reader({});
                if (reader.take(all))
                    (void)reader.finish();
                C3dInspector inspector;
                if (inspector.take(all))
                    (void)inspector.finish();
            }
            ++inputs;
        }
    CHECK(inputs >= 8);
}
