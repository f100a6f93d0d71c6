#include "recordings/c3d_parameters.h"

#include "recordings/inside/c3d_records.h"
#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"

namespace amentum {
namespace {

std::size_t bytes_of_each(C3dType type) {
    return type == C3dType::text ? 1 : static_cast<std::size_t>(type);
}

double number_at(const C3dParameter& parameter, std::size_t place, C3dProcessor processor, C3dWhole whole) {
    const char* at = parameter.bytes.data() + place * bytes_of_each(parameter.type);
    const bool counted = whole == C3dWhole::counted;
    switch (parameter.type) {
    case C3dType::byte:
        return counted ? static_cast<unsigned char>(*at) : static_cast<signed char>(*at);
    case C3dType::integer:
        return counted ? c3d_unsigned(at, processor) : c3d_signed(at, processor);
    case C3dType::real:
        return static_cast<double>(c3d_real(at, processor));
    case C3dType::text:
        break;
    }
    return 0;
}

// Appends NAME, NAME2, NAME3, ... for as long as they are there.
template <class Values, class Read>
Values joined(std::string_view name, Read read) {
    Values all = read(std::string(name));
    for (int part = 2; !all.empty(); ++part) {
        const Values more = read(std::string(name) + std::to_string(part));
        if (more.empty())
            break;
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

C3dHeader read_header(std::string_view bytes, C3dProcessor processor) {
    const auto word = [&](std::size_t number) { return bytes.data() + 2 * (number - 1); };
    const auto whole = [&](std::size_t number) { return int{c3d_unsigned(word(number), processor)}; };
    return {whole(2),
            whole(3),
            whole(4),
            whole(5),
            c3d_real(word(7), processor),
            whole(9),
            whole(10),
            c3d_real(word(11), processor)};
}

std::size_t section_start(std::string_view bytes) {
    return (c3d_byte(bytes.data()) - 1) * c3d_block_bytes;
}

} // namespace

const C3dParameter* C3dHead::find(std::string_view group, std::string_view name) const {
    const auto place = places.find(std::string(group) + ":" + std::string(name));
    return place == places.end() ? nullptr : &parameters[place->second];
}

std::vector<double> numbers_of(const C3dParameter& parameter, C3dProcessor processor, C3dWhole whole) {
    std::vector<double> values;
    if (parameter.type == C3dType::text)
        return values;
    const std::size_t count = parameter.bytes.size() / bytes_of_each(parameter.type);
    values.reserve(count);
    for (std::size_t i = 0; i < count; ++i)
        values.push_back(number_at(parameter, i, processor, whole));
    return values;
}

std::vector<std::string> texts_of(const C3dParameter& parameter) {
    std::vector<std::string> values;
    if (parameter.type != C3dType::text || parameter.bytes.empty())
        return values;
    const std::size_t length =
        parameter.dimensions.empty() ? 1 : static_cast<std::size_t>(parameter.dimensions.front());
    const std::string_view all = parameter.bytes;
    for (std::size_t at = 0; at + length <= all.size(); at += length)
        values.push_back(readable_text(all.substr(at, length)));
    return values;
}

std::vector<double> C3dHead::numbers(std::string_view group, std::string_view name, C3dWhole whole) const {
    const C3dParameter* parameter = find(group, name);
    return parameter ? numbers_of(*parameter, processor, whole) : std::vector<double>{};
}

std::vector<std::string> C3dHead::texts(std::string_view group, std::string_view name) const {
    const C3dParameter* parameter = find(group, name);
    return parameter ? texts_of(*parameter) : std::vector<std::string>{};
}

std::vector<double> C3dHead::joined_numbers(std::string_view group, std::string_view name,
                                            C3dWhole whole) const {
    return joined<std::vector<double>>(name,
                                       [&](const std::string& part) { return numbers(group, part, whole); });
}

std::vector<std::string> C3dHead::joined_texts(std::string_view group, std::string_view name) const {
    return joined<std::vector<std::string>>(name,
                                            [&](const std::string& part) { return texts(group, part); });
}

std::optional<double> C3dHead::number(std::string_view group, std::string_view name) const {
    const auto all = numbers(group, name);
    return all.empty() ? std::nullopt : std::optional(all.front());
}

Result<std::size_t> c3d_head_bytes(std::string_view beginning) {
    if (beginning.size() < c3d_block_bytes)
        return c3d_block_bytes;
    if (c3d_byte(beginning.data() + 1) != 80)
        return refuse_c3d("byte 2",
                          "This is not a C3D file: its second byte is " +
                              std::to_string(c3d_byte(beginning.data() + 1)) +
                              ", but a C3D file has 80 there.",
                          std::to_string(c3d_byte(beginning.data() + 1)), "80");
    if (c3d_byte(beginning.data()) < 2)
        return refuse_c3d("byte 1",
                          "The header says that the parameter section begins at block " +
                              std::to_string(c3d_byte(beginning.data())) +
                              ", but block 1 is the header itself.",
                          std::to_string(c3d_byte(beginning.data())), "block 2 to 255");
    const std::size_t start = section_start(beginning);
    if (beginning.size() < start + c3d_block_bytes)
        return start + c3d_block_bytes;
    const std::size_t blocks = c3d_byte(beginning.data() + start + 2);
    if (blocks == 0)
        return refuse_c3d(byte_place(start + 2),
                          "The parameter section says in its third byte that it has 0 blocks.", "0",
                          "1 to 255 blocks");
    return start + blocks * c3d_block_bytes;
}

Result<C3dHead> parse_c3d_head(std::string_view beginning) {
    const auto needed = c3d_head_bytes(beginning);
    if (!needed)
        return needed.refusal();
    if (beginning.size() < *needed)
        return refuse_c3d(byte_place(beginning.size()), "The file ends before its parameter section does.",
                          std::to_string(beginning.size()) + " bytes",
                          "at least " + std::to_string(*needed) + " bytes");
    const std::size_t start = section_start(beginning);
    const unsigned mark = c3d_byte(beginning.data() + start + 3);
    const auto processor = c3d_processor_of_mark(static_cast<unsigned char>(mark));
    if (!processor)
        return refuse_c3d(byte_place(start + 3),
                          "The fourth byte of the parameter section is " + std::to_string(mark) +
                              ", but it must name the processor: 84 Intel, 85 DEC or 86 SGI/MIPS.",
                          std::to_string(mark), "84, 85 or 86");
    C3dHead head{*processor,
                 read_header(beginning, *processor),
                 static_cast<int>(start / c3d_block_bytes + 1),
                 static_cast<int>((*needed - start) / c3d_block_bytes),
                 start + 4,
                 {},
                 {},
                 {},
                 {}};
    if (auto refusal = read_records(beginning.substr(0, *needed), head))
        return *refusal;
    index_parameters(head);
    return head;
}

} // namespace amentum
