// How well do repeats, raters or tools agree? Intraclass correlations, and the limits of agreement of two.
//
// n subjects in rows, k trials or raters in columns; mean squares between rows B, between columns J, residual E,
// within rows W:
//   ICC(1,1) = (B - W) / (B + (k-1) W)                        other raters for each subject
//   ICC(2,1) = (B - E) / (B + (k-1) E + k (J - E) / n)        raters a sample; their differences count
//   ICC(3,1) = (B - E) / (B + (k-1) E)                        these raters only; their differences do not
//   of the mean of k: k r / (1 + (k-1) r)                     (1,k), (2,k), (3,k)   [ShroutFleiss1979]
// Intervals central 80 %, from F as in the same paper; that of form 2 is approximate.
//   bias = mean(second - first), limits = bias -+ z SD; SE(bias) = SD / sqrt(n), SE(limit) = SD sqrt(3 / n)
//                                                             [BlandAltman1986] (first - second there)
// Valid: 2 to 10000 rows of one length, 2 to 60 columns; rows or columns that are not all alike.
// Refusals: fewer, rows of different length, nothing that differs between subjects or within them.
// What it cannot tell: agreement in other people; an ICC is high wherever the subjects differ much, and does not say
// how large the error is: read the typical error for that.
// Example: 6 subjects x 4 raters [ShroutFleiss1979, table 2]: 0.17, 0.29, 0.71
#pragma once

#include "measurement/test_error.h"

namespace amentum {

struct Agreement {
    double value;
    Interval band; // central 80 %
};
struct IntraclassCorrelations {
    Agreement single[3];  // forms 1, 2, 3
    Agreement of_mean[3]; // of the mean of the k columns
    double between_rows;  // mean squares
    double between_columns;
    double residual;
    double within_rows;
};
Result<IntraclassCorrelations> intraclass_correlations(const RepeatTable& table);

struct LimitsOfAgreement {
    Estimate bias; // second - first
    double spread; // SD of the differences
    Estimate low;
    Estimate high;
};
Result<LimitsOfAgreement> limits_of_agreement(const std::vector<double>& first,
                                              const std::vector<double>& second, double z = z95);

} // namespace amentum
