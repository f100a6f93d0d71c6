// The data section of a C3D file, as it comes by: only the sums wanted are kept, and at most one row of channels
// (262 kB) that a piece cut in two. Rows are taken in blocks: each channel wanted is gathered by strides, then the block
// is scaled in double and kept as 32-bit floats.
#pragma once

#include "recordings/inside/c3d_plan.h"

namespace amentum {

class C3dStream {
public:
    C3dStream(const C3dDataLayout& layout, std::vector<C3dSeries> series);

    // Bytes from the beginning of the data section on. Refused: a value that is no force, by its sample and series.
    std::optional<Refusal> take(std::string_view bytes);
    bool complete() const { return frame_ == layout_.frames; }
    std::uint64_t whole_frames() const { return frame_; }
    std::vector<std::vector<float>>& kept() { return kept_; }

    struct Rows { // rows of channels within frames, of which the first may have begun
        const char* from;
        std::uint64_t count;
        std::uint64_t left_in_frame;
    };

private:
    std::size_t take_row_part(std::string_view bytes);
    std::size_t take_rows(std::string_view bytes);
    void decode(Rows rows);
    template <class Load>
    void decode_rows(Rows rows);
    void move_on(std::uint64_t bytes);

    C3dDataLayout layout_;
    std::vector<C3dSeries> series_;
    std::vector<std::vector<float>> kept_;
    std::string row_;            // the beginning of a row
    std::uint64_t frame_ = 0;    // frames that are complete
    std::uint64_t in_frame_ = 0; // bytes of the frame that have come by
    std::optional<Refusal> refused_;
};

inline constexpr double greatest_force =
    1e6; // N: no plate bears it; beyond, the file's scaling or bytes are wrong

} // namespace amentum
