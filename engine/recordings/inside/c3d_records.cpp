#include "recordings/inside/c3d_records.h"

#include "recordings/inside/c3d_refusal.h"
#include "recordings/inside/c3d_text.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// One record: where its parts lie, all bounds already checked.
struct Record {
    std::string name;
    bool locked;
    int number;          // below 0: a group
    std::size_t content; // first byte after the distance
    std::size_t end;     // of the record: the next one's beginning, or the section's end
    bool last;
};

std::string called(const Record& record) {
    return record.number < 0
               ? "group " + record.name
               : "parameter " + record.name + " of group number " + std::to_string(record.number);
}

Refusal refuse_record(std::size_t at, const std::string& what, const std::string& allowed) {
    return refuse_c3d(byte_place(at),
                      "In the parameter section, the record at " + byte_place(at) + " " + what + ".", what,
                      allowed);
}

Result<Record> read_frame_of_record(std::string_view section, std::size_t at, C3dProcessor processor) {
    const int length = std::abs(int{static_cast<signed char>(section[at])});
    const int number = static_cast<signed char>(section[at + 1]);
    const std::size_t distance_at = at + 2 + static_cast<std::size_t>(length);
    if (number == 0)
        return refuse_record(at, "has group number 0", "-128 to -1 for a group, 1 to 127 for a parameter");
    if (distance_at + 2 > section.size())
        return refuse_record(at,
                             "has a name of " + std::to_string(length) + " letters, past the section's end",
                             "a name within the section");
    Record record{in_capitals(readable_text(section.substr(at + 2, static_cast<std::size_t>(length)))),
                  static_cast<signed char>(section[at]) < 0,
                  number,
                  distance_at + 2,
                  section.size(),
                  true};
    const std::size_t distance = c3d_unsigned(section.data() + distance_at, processor);
    if (distance == 0)
        return record;
    if (distance < 2 || distance_at + distance > section.size())
        return refuse_record(at,
                             "(" + called(record) + ") puts the next record " + std::to_string(distance) +
                                 " bytes on, which is not within the section",
                             "2 to " + std::to_string(section.size() - distance_at) + " bytes");
    record.end = distance_at + distance;
    record.last = false;
    return record;
}

// A description that is cut off or left out is no reason to refuse the file.
std::string read_description(std::string_view section, std::size_t& at, const Record& record, C3dHead& head) {
    if (at >= record.end)
        return "";
    const std::size_t length = c3d_byte(section.data() + at);
    ++at;
    if (at + length > record.end)
        head.problems.push_back("The description of " + called(record) + " is cut off.");
    const std::string text = readable_text(section.substr(at, std::min(length, record.end - at)));
    at = std::min(at + length, record.end);
    return text;
}

struct Shape {
    C3dType type;
    std::vector<int> dimensions;
    std::size_t bytes;
};

Result<Shape> read_shape(std::string_view section, std::size_t& at, const Record& record) {
    const auto refuse = [&](const std::string& what, const std::string& given, const std::string& allowed) {
        return refuse_c3d(called(record), "In the C3D file, " + called(record) + " " + what + ".", given,
                          allowed);
    };
    if (at + 2 > record.end)
        return refuse("ends before its type and dimensions", std::to_string(record.end - at) + " bytes",
                      "at least 2 bytes");
    const int type = static_cast<signed char>(section[at]);
    const std::size_t count = c3d_byte(section.data() + at + 1);
    at += 2;
    if (type != -1 && type != 1 && type != 2 && type != 4)
        return refuse("has type " + std::to_string(type), std::to_string(type),
                      "-1 text, 1 bytes, 2 whole numbers, 4 reals");
    if (count > 7 || at + count > record.end)
        return refuse("has " + std::to_string(count) + " dimensions, or they run past its end",
                      std::to_string(count), "0 to 7 dimensions within the record");
    Shape shape{static_cast<C3dType>(type), {}, type == -1 ? 1 : static_cast<std::size_t>(type)};
    for (std::size_t i = 0; i < count; ++i) { // at most 4 x 255^7 bytes, which 64 bits hold
        shape.dimensions.push_back(static_cast<int>(c3d_byte(section.data() + at + i)));
        shape.bytes *= static_cast<std::size_t>(shape.dimensions.back());
    }
    at += count;
    if (shape.bytes > record.end - at)
        return refuse("needs " + std::to_string(shape.bytes) + " bytes for its values, but its record has " +
                          std::to_string(record.end - at),
                      std::to_string(shape.bytes), "at most " + std::to_string(record.end - at) + " bytes");
    return shape;
}

std::optional<Refusal> read_content(std::string_view section, const Record& record, C3dHead& head) {
    std::size_t at = record.content;
    if (record.number < 0) {
        const std::string description = read_description(section, at, record, head);
        head.groups.push_back({-record.number, record.name, description, record.locked});
    } else {
        auto shape = read_shape(section, at, record);
        if (!shape)
            return shape.refusal();
        C3dParameter parameter{record.number,
                               record.name,
                               "",
                               record.locked,
                               shape->type,
                               shape->dimensions,
                               std::string(section.substr(at, shape->bytes)),
                               at + 1};
        at += shape->bytes;
        parameter.description = read_description(section, at, record, head);
        head.parameters.push_back(std::move(parameter));
    }
    head.records_end = at;
    return std::nullopt;
}

} // namespace

std::optional<Refusal> read_records(std::string_view section, C3dHead& head) {
    std::size_t at = head.records_end;
    while (at + 2 <= section.size() && section[at] != 0) {
        const auto record = read_frame_of_record(section, at, head.processor);
        if (!record)
            return record.refusal();
        if (auto refusal = read_content(section, *record, head))
            return refusal;
        if (record->last)
            return std::nullopt;
        at = record->end;
    }
    if (at + 2 > section.size())
        head.problems.push_back("The parameter section ends without a last record.");
    return std::nullopt;
}

void index_parameters(C3dHead& head) {
    std::map<int, std::string> names;
    for (const auto& group : head.groups)
        if (!names.emplace(group.number, group.name).second)
            head.problems.push_back("Two groups have the number " + std::to_string(group.number) + ": " +
                                    names[group.number] + " and " + group.name + "; the first is used.");
    for (std::size_t i = 0; i < head.parameters.size(); ++i) {
        const auto& parameter = head.parameters[i];
        const auto group = names.find(parameter.group);
        if (group == names.end())
            head.problems.push_back("Parameter " + parameter.name + " belongs to group number " +
                                    std::to_string(parameter.group) + ", which the file does not have.");
        else if (!head.places.emplace(group->second + ":" + parameter.name, i).second)
            head.problems.push_back(group->second + ":" + parameter.name +
                                    " stands in the file twice; the first is used.");
    }
}

} // namespace amentum
