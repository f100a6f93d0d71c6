// How far will an extreme first test move back by itself on a second one?
//
//   reliability = s_b^2 / (s_b^2 + s_e^2)
//   E[second - first | first = y] = (1 - reliability) (mean - y)
//   of all athletes whose first test is below c: (1 - reliability) s_y phi(a) / Phi(a),
//     a = (c - mean) / s_y, s_y^2 = s_b^2 + s_e^2   (mean of a normal variable cut off above)
// [Barnett2005]. s_b: SD between athletes of the true level; s_e: SD of the error of one test.
// Units: any one unit throughout.
// Range: both SDs above 0.
// What it cannot tell: an effect of training; it is the change to subtract before one speaks of an effect.
//
// Example: mean 80, s_b 4, s_e 1.2, first 74: reliability 0.917431, expected change +0.495413.
#pragma once

namespace amentum {

struct TestedGroup {
    double mean;
    double between_sd; // of the true level
    double error_sd;   // of one test
};

double reliability_of(const TestedGroup& group);
double expected_return(const TestedGroup& group, double first_test);
double expected_return_of_those_below(const TestedGroup& group, double cut);

} // namespace amentum
