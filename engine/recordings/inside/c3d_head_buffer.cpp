#include "recordings/inside/c3d_head_buffer.h"

#include "recordings/inside/c3d_refusal.h"

#include <algorithm>

namespace amentum {

Result<bool> C3dHeadBuffer::take(std::string_view& piece) {
    while (true) {
        const auto needed = c3d_head_bytes(bytes_);
        if (!needed)
            return needed.refusal();
        needed_ = *needed;
        if (bytes_.size() >= needed_)
            return true;
        if (piece.empty())
            return false;
        const std::size_t part = std::min(piece.size(), needed_ - bytes_.size());
        bytes_.append(piece.substr(0, part));
        piece.remove_prefix(part);
    }
}

Refusal C3dHeadBuffer::refuse_unfinished() const {
    return refuse_c3d(byte_place(bytes_.size()),
                      "The C3D file ends after " + std::to_string(bytes_.size()) +
                          " bytes, within its header or parameter section.",
                      std::to_string(bytes_.size()) + " bytes",
                      "at least " + std::to_string(std::max(needed_, c3d_block_bytes)) + " bytes");
}

} // namespace amentum
