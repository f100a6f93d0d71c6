// Small published tables of repeated measurements. Values from memory; each table gives the numbers that its paper
// prints (checked in repeats_test.cpp), which no misremembered table would.
#pragma once

#include <vector>

namespace amentum {

using Columns = std::vector<std::vector<double>>;

// Peak expiratory flow, l/min, of 17 people by two meters, twice each: large 1, large 2, small 1, small 2.
// Bland & Altman, Lancet 1:307-310, 1986, table 1.
inline const Columns two_meters{{494, 490, 512, 525}, {395, 397, 430, 415}, {516, 512, 520, 508},
                                {434, 401, 428, 444}, {476, 470, 500, 500}, {557, 611, 600, 625},
                                {413, 415, 364, 460}, {442, 431, 380, 390}, {650, 638, 658, 642},
                                {433, 429, 445, 432}, {417, 420, 432, 420}, {656, 633, 626, 605},
                                {267, 275, 260, 227}, {478, 492, 477, 467}, {178, 165, 259, 268},
                                {423, 372, 350, 370}, {427, 421, 451, 443}};

// Peak expiratory flow, l/min, of 20 children, four times each. Bland & Altman, BMJ 313:744, 1996, table 1.
inline const Columns twenty_children{
    {190, 220, 200, 200}, {220, 200, 240, 230}, {260, 260, 240, 280}, {210, 300, 280, 265},
    {270, 265, 280, 270}, {280, 280, 270, 275}, {260, 280, 280, 300}, {275, 275, 275, 305},
    {280, 290, 300, 290}, {320, 290, 300, 290}, {300, 300, 310, 300}, {270, 250, 330, 370},
    {320, 330, 330, 330}, {335, 320, 335, 375}, {350, 320, 340, 365}, {360, 320, 350, 345},
    {330, 340, 380, 390}, {335, 385, 360, 370}, {400, 420, 425, 420}, {430, 460, 480, 470}};

// Six subjects judged by four raters. Shrout & Fleiss, Psychol Bull 86:420-428, 1979, table 2.
inline const Columns six_subjects{{9, 2, 5, 8}, {6, 1, 3, 2},  {8, 4, 6, 8},
                                  {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}};

inline std::vector<double> column_of(const Columns& table, std::size_t column) {
    std::vector<double> values;
    for (const auto& row : table)
        values.push_back(row[column]);
    return values;
}

} // namespace amentum
