// What is in a C3D file, for a person who wants to see it before trusting it?
//
// Header, layout of the data, analog channels, force plates and every parameter with the first of its values, as the
// file has them [GuideC3D]. Numbers that are not finite are shown as 0 and named in `problems`.
// Units: those of the file. Valid: any file whose header and parameter section can be found.
// Refusals: unreadable_file, as c3d_parameters.h. All that is wrong beyond that is a sentence in `problems`.
// What it cannot tell: whether the values are true. Samples are counted, not looked at.
// Example: C3dInspector inspector; inspector.take(bytes); inspector.finish()->plates
#pragma once

#include "recordings/force_recording.h"

#include <memory>
#include <string_view>

namespace amentum {

struct C3dChannelSummary {
    int number; // from 1
    std::string label;
    std::string unit;
    double scale;
    double offset;
};

struct C3dPlateSummary {
    int number; // from 1
    int type;
    std::vector<int> channels;   // analog channels, from 1
    std::vector<double> corners; // x, y, z of four corners in POINT:UNITS; empty when not known
    std::string lies;            // "level, z is the vertical"
};

struct C3dParameterSummary {
    std::string name;
    std::string type;
    std::vector<int> dimensions; // the first runs fastest; none: one value
    std::string description;
    std::string values; // the first ones
};

struct C3dGroupSummary {
    std::string name;
    std::string description;
    std::vector<C3dParameterSummary> parameters;
};

struct C3dSummary {
    std::string processor; // word of C3dProcessor
    std::string storage;   // "whole numbers of 16 bits", "reals of 32 bits"
    double bytes;          // of the file
    double frames;
    double frames_a_second;
    double seconds;
    int points_used;
    int analog_samples_a_frame;
    double analog_rate_hz;
    double general_scale;
    std::vector<C3dChannelSummary> channels;
    std::vector<C3dPlateSummary> plates;
    std::vector<C3dGroupSummary> groups;
    std::string forces; // a sentence: what C3dForceReader would say when nothing more is given
    std::vector<std::string> problems;
};

class C3dInspector {
public:
    C3dInspector();
    ~C3dInspector();
    C3dInspector(C3dInspector&&) noexcept;
    C3dInspector& operator=(C3dInspector&&) noexcept;

    Result<Done> take(std::string_view piece);
    Result<C3dSummary> finish();

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace amentum
