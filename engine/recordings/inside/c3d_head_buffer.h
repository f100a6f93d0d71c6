// Holds a C3D file's beginning until its header and parameter section are whole: at most 509 blocks, 261 kB.
#pragma once

#include "recordings/c3d_parameters.h"

namespace amentum {

class C3dHeadBuffer {
public:
    // Takes what is needed from the front of `piece`; true once the head is whole.
    Result<bool> take(std::string_view& piece);
    const std::string& bytes() const { return bytes_; }
    Refusal refuse_unfinished() const; // the file ended first
    void forget() { std::string().swap(bytes_); }

private:
    std::string bytes_;
    std::size_t needed_ = 0;
};

} // namespace amentum
