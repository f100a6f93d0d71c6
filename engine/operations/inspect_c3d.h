// inspect_c3d: what stands in a C3D file: header, plates, channels, parameters, and what is wrong with it.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>
#include <vector>

namespace amentum {

struct InspectC3dRequest {
    std::string file_name;
    std::optional<std::string> content; // base64
};
BOOST_DESCRIBE_STRUCT(InspectC3dRequest, (), (file_name, content))

struct C3dChannelShown {
    int number; // from 1
    std::string label;
    std::string unit;
    double scale;
    double offset;
};
BOOST_DESCRIBE_STRUCT(C3dChannelShown, (), (number, label, unit, scale, offset))

struct C3dPlateShown {
    int number;
    int type;
    std::vector<int> channels;
    std::vector<double> corners; // x, y, z of four corners, in the file's unit; empty when not known
    std::string words;
};
BOOST_DESCRIBE_STRUCT(C3dPlateShown, (), (number, type, channels, corners, words))

struct C3dParameterShown {
    std::string group;
    std::string name;
    std::string type;
    std::vector<int> dimensions;
    std::string value; // the first ones
    std::string description;
};
BOOST_DESCRIBE_STRUCT(C3dParameterShown, (), (group, name, type, dimensions, value, description))

struct InspectC3dAnswer {
    std::string file_name;
    int file_bytes;
    std::string processor; // "Intel", "DEC", "SGI/MIPS"
    std::string storage;   // "16-bit integers", "floats"
    int frames;
    double seconds;
    double frame_rate_hz;
    double analog_rate_hz;
    int points;
    std::vector<C3dPlateShown> plates;
    std::vector<C3dChannelShown> channels;
    std::vector<C3dParameterShown> parameters;
    std::vector<std::string> problems;
    std::vector<std::string> words;
};
BOOST_DESCRIBE_STRUCT(InspectC3dAnswer, (),
                      (file_name, file_bytes, processor, storage, frames, seconds, frame_rate_hz,
                       analog_rate_hz, points, plates, channels, parameters, problems, words))

Result<InspectC3dAnswer> inspect_c3d(Workplace&, const InspectC3dRequest&);

} // namespace amentum
