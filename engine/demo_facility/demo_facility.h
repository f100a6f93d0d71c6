// What does an invented gym look like, whose truth is known? "Saltgrass Throwing Hall", made by a seeded simulation.
//
// 36 throwers of ages 12 to 31 (baseball pitchers and fielders, softball pitchers, two javelin throwers), 20 months of
// test days, throws and seasons up to `last_day`. Everything is invented. The effects the simulation used are in
// `truth` (JSON), so that a test can ask whether the engine recovers them and a reader can see where it cannot.
//
//   quality:   x_k(t) = z_k + random walk + blocks that emphasised k      SDs between throwers of a kind
//   test:      usual value of age, sex and size x exp(s_k x_k) x day noise x trial noise
//   velocity:  usual of sport, sex and age + sigma_v (sum g_k z_k + sum b_k (x_k(t) - z_k)) + own residual + day noise
// g_k between-thrower and b_k within-thrower coefficients differ on purpose. Youth grow: 1.5 mph a year and 1.2 mph
// an inch of stature [Sgroi2015]. Lifts are sets to failure at loads the hall can make, by Epley's line backwards.
// Same seed and day, same bytes: own random numbers, every reading rounded as its device shows it.
// Units: SI inside, entered in lb and mph as a coach would. docs/guide/demo.md explains the truth.
// What it cannot tell: anything about real throwers; it is a model with our own assumptions in it.
#pragma once

#include "recordings/kept_trace.h"
#include "values/record_set.h"

#include <cstdint>
#include <string>

namespace amentum {

struct DemoFacility {
    RecordSet records;
    std::vector<KeptTrace> traces; // jumps on the hall's force plates (jump_traces.h)
    std::string truth;             // JSON text
};

DemoFacility make_demo_facility(std::uint64_t seed, Date last_day);

} // namespace amentum
