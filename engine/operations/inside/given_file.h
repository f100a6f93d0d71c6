// The bytes of a file an operation was given: from the request's text, or, for a command line, from the disk.
//
// A file on the disk is read in pieces of 64 kB, so that memory does not grow with it; a request's text is decoded
// whole. Digest: 64-bit FNV-1a of the bytes [FowlerNollVo], 16 hexadecimal digits; it tells files apart, and guards nothing.
// Refusals: no content and not on the table; content that is not base64; a file that cannot be read; an empty one;
// what `take` refuses.
#pragma once

#include "operations/inside/inside.h"

#include <functional>
#include <string_view>

namespace amentum {

struct GivenFile {
    std::string name; // without folders
    std::int64_t bytes;
    std::string digest;
};

std::string digest_of(std::string_view bytes);

Result<GivenFile> read_given_file(Workplace::Inside&, const std::string& file_name,
                                  const std::optional<std::string>& content,
                                  const std::function<Result<Done>(std::string_view piece)>& take);

} // namespace amentum
