// Annual flow of the Nile at Aswan, 1871 to 1970, 10^8 m^3 [DurbinKoopman2012, chapter 2; R's data set Nile].
// The day stands for the year: 1 to 100.
#pragma once

#include "inference/trajectory.h"

#include <array>
#include <vector>

inline constexpr std::array<double, 100> nile_flow{
    1120, 1160, 963,  1210, 1160, 1160, 813,  1230, 1370, 1140, 995,  935,  1110, 994, 1020, 960,  1180,
    799,  958,  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774,  840,  874, 694,  940,  833,
    701,  916,  692,  1020, 1050, 969,  831,  726,  456,  824,  702,  1120, 1100, 832, 764,  821,  768,
    845,  864,  862,  698,  845,  744,  796,  1040, 759,  781,  865,  845,  944,  984, 897,  822,  1010,
    771,  676,  649,  846,  812,  742,  801,  1040, 860,  874,  848,  890,  744,  749, 838,  1050, 918,
    986,  797,  923,  975,  815,  1020, 906,  901,  1170, 912,  746,  919,  718,  714, 740};

inline constexpr double nile_error = 15099,
                        nile_drift = 1469.1; // as printed in [DurbinKoopman2012, section 2.2]

inline std::vector<amentum::DatedValue> nile_in(const std::vector<int>& years) {
    std::vector<amentum::DatedValue> values;
    for (const int year : years)
        values.push_back({year, nile_flow[static_cast<std::size_t>(year - 1)], nile_error});
    return values;
}

inline std::vector<int> all_nile_years() {
    std::vector<int> years;
    for (int year = 1; year <= 100; ++year)
        years.push_back(year);
    return years;
}

// Without 21 to 40 and 61 to 80, the gaps of [DurbinKoopman2012, section 2.7].
inline std::vector<int> nile_years_with_gaps() {
    std::vector<int> years;
    for (int year = 1; year <= 100; ++year)
        if (!(year >= 21 && year <= 40) && !(year >= 61 && year <= 80))
            years.push_back(year);
    return years;
}
