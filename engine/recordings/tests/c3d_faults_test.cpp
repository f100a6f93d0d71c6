// No byte of a file may crash the reader, keep it busy, or make it ask for more than 64 MB.
//
// Every byte of the header and of the parameter section is changed, one at a time, in nine ways; memory is counted by
// replacing the program's own operator new for this executable, and a file that is read must still be within its limits.
#include "c3d_writer.h"
#include "recordings/c3d_forces.h"
#include "recordings/c3d_summary.h"

#include <doctest/doctest.h>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<std::size_t> held_bytes = 0, most_held_bytes = 0, largest_request = 0;

constexpr std::size_t head = 16; // keeps the size before what is handed out

} // namespace

void* operator new(std::size_t bytes) {
    char* block = static_cast<char*>(std::malloc(bytes + head));
    if (!block)
        throw std::bad_alloc();
    *reinterpret_cast<std::size_t*>(block) = bytes;
    const std::size_t now = held_bytes += bytes;
    for (std::size_t most = most_held_bytes;
         now > most && !most_held_bytes.compare_exchange_weak(most, now);) {
    }
    for (std::size_t most = largest_request;
         bytes > most && !largest_request.compare_exchange_weak(most, bytes);) {
    }
    return block + head;
}
void operator delete(void* given) noexcept {
    if (!given)
        return;
    char* block = static_cast<char*>(given) - head;
    held_bytes -= *reinterpret_cast<std::size_t*>(block);
    std::free(block);
}
void operator delete(void* given, std::size_t) noexcept {
    operator delete(given);
}

using namespace amentum;
using namespace amentum::tests;

namespace {

constexpr std::size_t limit = 64 << 20;

WrittenFile small_file(int type, Mark mark, bool reals) {
    WrittenFile file;
    file.mark = mark;
    file.reals = reals;
    file.frames = 6;
    file.points = 1;
    const int each = type == 3 ? 8 : 6;
    WrittenPlate plate{type, {}, level_corners(0, 0), {}};
    plate.matrix[14] = 1;
    for (int i = 0; i < each; ++i) {
        file.channels.push_back({"C" + std::to_string(i + 1)});
        plate.channels.push_back(i + 1);
    }
    file.plates.push_back(plate);
    file.raw = [](int sample, int channel) { return 700 + sample + channel; };
    return file;
}

void look_at(const std::string& bytes) {
    C3dForceReader reader({});
    if (reader.take(bytes))
        if (const auto recording = reader.finish()) {
            CHECK(recording->plates.size() <= 2);
            CHECK(recording->samples() <= most_samples);
        }
    C3dInspector inspector;
    if (inspector.take(bytes))
        (void)inspector.finish();
}

} // namespace

TEST_CASE("each byte of header and parameters changed: no crash, no hang, no more than 64 MB") {
    const WrittenFile files[] = {small_file(2, Mark::intel, false), small_file(3, Mark::dec, true),
                                 small_file(4, Mark::mips, true)};
    for (const auto& file : files) {
        const std::string whole = write_c3d(file);
        const std::size_t end = 512 + 512 * static_cast<std::size_t>(static_cast<unsigned char>(whole[514]));
        REQUIRE(end < whole.size());
        std::string bytes = whole;
        const std::size_t before = held_bytes;
        most_held_bytes = before;
        largest_request = 0;
        for (std::size_t at = 0; at < end; ++at) {
            const char kept = bytes[at];
            for (const int change : {0x01, 0x02, 0x04, 0x08, 0x10, 0x20, 0x40, 0x80, 0xff}) {
                bytes[at] = static_cast<char>(kept ^ change);
                look_at(bytes);
            }
            bytes[at] = kept;
        }
        CHECK(most_held_bytes - before < limit);
        CHECK(largest_request < limit);
    }
}

TEST_CASE("a file cut off at any byte is read as far as it goes, or refused; never more") {
    const std::string whole = write_c3d(small_file(2, Mark::intel, true));
    for (std::size_t length = 0; length < whole.size(); ++length)
        look_at(whole.substr(0, length));
    C3dForceReader reader({});
    REQUIRE(reader.take(whole));
    CHECK(reader.finish()); // the whole one is sound
}

TEST_CASE("a file that promises millions of frames makes the reader ask for no memory before they come") {
    WrittenFile file = small_file(2, Mark::intel, true);
    file.long_counts_in_point = true;
    file.frames = 6;
    std::string bytes = write_c3d(file);
    const auto place = bytes.find("LONG_FRAMES");
    REQUIRE(place != std::string::npos);
    for (const double promised : {4e6, 5e6}) { // within most_samples, and beyond
        bytes.replace(place + 11 + 2 + 2, 4, write_real(promised, Mark::intel));
        const std::size_t before = held_bytes;
        most_held_bytes = before;
        C3dForceReader reader({});
        const auto taken = reader.take(bytes);
        CHECK(most_held_bytes - before < (1 << 20));
        CHECK(static_cast<bool>(taken) == (promised < 4.2e6));
        const auto recording = reader.finish();
        REQUIRE_FALSE(recording);
        CHECK(recording.refusal().code ==
              (taken ? RefusalCode::unreadable_file : RefusalCode::out_of_range)); // too short, or too long
    }
}
