// Bytes as text and back, as base64 with padding [Rfc4648, section 4].
//
// Example: "foobar" <-> "Zm9vYmFy"
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace amentum {

std::string to_base64(std::string_view bytes);

// None when the text is not base64: another character, a wrong length, bits left over.
std::optional<std::string> from_base64(std::string_view text);

} // namespace amentum
