#include "operations/inside/given_file.h"

#include "operations/inside/base64.h"

#include <array>
#include <fstream>
#include <vector>

namespace amentum {
namespace {

constexpr std::size_t piece_bytes = 1 << 16;

class Digest {
public:
    void take(std::string_view piece) {
        for (const char c : piece) {
            hash_ ^= static_cast<unsigned char>(c);
            hash_ *= 0x100000001b3u;
        }
        bytes_ += static_cast<std::int64_t>(piece.size());
    }
    std::int64_t bytes() const { return bytes_; }
    std::string text() const {
        std::string digits;
        for (int shift = 60; shift >= 0; shift -= 4)
            digits += "0123456789abcdef"[hash_ >> shift & 15];
        return digits;
    }

private:
    std::uint64_t hash_ = 0xcbf29ce484222325u;
    std::int64_t bytes_ = 0;
};

std::string without_folders(const std::string& name) {
    return name.substr(name.find_last_of("/\\") + 1);
}

Refusal refuse_reading(const std::string& name) {
    return {RefusalCode::unreadable_file, "The file " + name + " cannot be read.", "file_name", name,
            "a readable file"};
}

Result<Done> read_from_disk(const std::string& name,
                            const std::function<Result<Done>(std::string_view)>& take) {
    std::ifstream stream(name, std::ios::binary);
    if (!stream)
        return refuse_reading(name);
    std::vector<char> piece(piece_bytes);
    while (stream) {
        stream.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        if (stream.bad() || (stream.gcount() == 0 && !stream.eof()))
            return refuse_reading(name); // a folder opens, but cannot be read
        if (const auto taken = take({piece.data(), static_cast<std::size_t>(stream.gcount())}); !taken)
            return taken;
    }
    return Done{};
}

} // namespace

std::string digest_of(std::string_view bytes) {
    Digest digest;
    digest.take(bytes);
    return digest.text();
}

Result<GivenFile> read_given_file(Workplace::Inside& inside, const std::string& file_name,
                                  const std::optional<std::string>& content,
                                  const std::function<Result<Done>(std::string_view)>& take) {
    Digest digest;
    const auto take_piece = [&](std::string_view piece) {
        digest.take(piece);
        return take(piece);
    };
    if (content) {
        const auto bytes = from_base64(*content);
        if (!bytes)
            return Refusal{RefusalCode::wrong_type, "The content of " + file_name + " is not base64.",
                           "content", content->substr(0, 20), "the file's bytes as base64 with padding"};
        if (const auto taken = take_piece(*bytes); !taken)
            return taken.refusal();
    } else {
        {
            const std::lock_guard lock(inside.table);
            if (!inside.files_on_table.contains(file_name))
                return refuse_missing("content", "the bytes of " + file_name + ", as base64");
        }
        if (const auto taken = read_from_disk(file_name, take_piece); !taken)
            return taken.refusal();
    }
    if (digest.bytes() == 0)
        return Refusal{RefusalCode::unreadable_file, "The file " + file_name + " is empty.", "file_name",
                       file_name, "a file with a trace in it"};
    return GivenFile{without_folders(file_name), digest.bytes(), digest.text()};
}

} // namespace amentum
