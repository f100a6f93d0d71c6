// Any bytes, in two pieces, as a recording of text: the reader must answer or refuse. Run by ./test --fuzz.
#include "recordings/read_recording.h"

#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
    using namespace amentum;
    if (size < 2)
        return 0;
    // The first byte says where the pieces part and what a person has said of the file.
    RecordingGiven given;
    if (data[0] & 1)
        given.rate_hz = 500;
    if (data[0] & 2)
        given.unit = ForceUnit::newton;
    if (data[0] & 4)
        given.vertical = {"1"};
    const std::string_view bytes(reinterpret_cast<const char*>(data) + 1, size - 1);
    const std::size_t cut = bytes.size() * (data[0] >> 3) / 32;
    RecordingReader reader(given);
    const bool taken = reader.take(bytes.substr(0, cut)) && reader.take(bytes.substr(cut));
    const auto recording = reader.finish();
    const auto whole = read_recording(bytes, given);
    if (static_cast<bool>(recording) != static_cast<bool>(whole) || (recording && !taken))
        std::abort(); // pieces must not matter
    if (recording && (recording->plates.empty() || recording->plates.size() > 2 ||
                      !(recording->rate_hz >= lowest_rate_hz) ||
                      recording->plates[0].vertical != whole->plates[0].vertical))
        std::abort();
    return 0;
}
