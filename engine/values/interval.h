// An estimate is never a bare number: a mean, its standard error, and the interval a coach is shown.
//
// The interval is central and 80 % unless said otherwise: mean +- 1.2815515655 standard errors when the estimate is
// normal [AbramowitzStegun, table 26.1]. What it cannot tell: errors that the method does not know of.
#pragma once

namespace amentum {

inline constexpr double z80 = 1.2815515655446004; // 90th percentile of N(0,1): central 80 %
inline constexpr double z90 = 1.6448536269514722; // 95th: central 90 %
inline constexpr double z95 = 1.959963984540054;  // 97.5th: central 95 %
inline constexpr double z99 = 2.5758293035489004; // 99.5th: central 99 %

struct Interval {
    double low;
    double high;
};

struct Estimate {
    double value;
    double standard_error;
    Interval central(double z = z80) const {
        return {value - z * standard_error, value + z * standard_error};
    }
};

double normal_cdf(double z); // P(N(0,1) < z), by erfc

} // namespace amentum
