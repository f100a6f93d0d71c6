#include "inference/impulse_response.h"

#include <Eigen/Dense>

#include <cassert>
#include <cmath>

namespace amentum {
namespace {

// sum_{s < t} w_s e^-(t - s)/tau, and the same with each load weighted by its age t - s.
struct Decayed {
    double sum = 0;
    double aged = 0;
};

Decayed decayed_loads(std::span<const double> loads, double tau, int day) {
    const double kept = std::exp(-1 / tau);
    Decayed decayed;
    for (int s = 0; s < day; ++s) {
        const double load = s < static_cast<int>(loads.size()) ? loads[static_cast<std::size_t>(s)] : 0;
        decayed.sum = kept * (decayed.sum + load);
        decayed.aged = kept * decayed.aged + decayed.sum; // every load is one day older
    }
    return decayed;
}

bool valid(const ImpulseResponse& response) {
    return response.passing_days > 0 && response.lasting_days > response.passing_days;
}

double joint_days(const ImpulseResponse& r) {
    return r.lasting_days * r.passing_days / (r.lasting_days - r.passing_days);
}

std::optional<double> days_of_ratio(const ImpulseResponse& response, double ratio) {
    if (!(response.lasting_gain > 0) || !(ratio > 1))
        return std::nullopt;
    return joint_days(response) * std::log(ratio);
}

// Derivatives of the level by the five numbers, each times the number itself, so that J'J is well scaled.
Eigen::RowVectorXd scaled_derivatives(const ImpulseResponse& r, std::span<const double> loads, int day) {
    const Decayed lasting = decayed_loads(loads, r.lasting_days, day);
    const Decayed passing = decayed_loads(loads, r.passing_days, day);
    Eigen::RowVectorXd row(5);
    row << 1, r.lasting_gain * lasting.sum, -r.passing_gain * passing.sum,
        r.lasting_gain * lasting.aged / r.lasting_days, -r.passing_gain * passing.aged / r.passing_days;
    return row;
}

} // namespace

double level_on_day(const ImpulseResponse& response, std::span<const double> loads, int day) {
    assert(valid(response) && day >= 0);
    return response.start + response.lasting_gain * decayed_loads(loads, response.lasting_days, day).sum -
           response.passing_gain * decayed_loads(loads, response.passing_days, day).sum;
}

std::optional<double> days_to_recover(const ImpulseResponse& response) {
    return days_of_ratio(response, response.passing_gain / response.lasting_gain);
}

std::optional<double> days_to_best(const ImpulseResponse& response) {
    return days_of_ratio(response, response.passing_gain * response.lasting_days /
                                       (response.lasting_gain * response.passing_days));
}

Result<FitErrors> errors_of_a_fit(const ImpulseResponse& response, std::span<const double> loads,
                                  std::span<const int> test_days, double test_error) {
    assert(valid(response) && test_error > 0);
    const auto refuse = [&](std::string sentence) {
        return Refusal{RefusalCode::too_few_data, std::move(sentence), "tests",
                       std::to_string(test_days.size()), "5 or more, on days of which the loads differ"};
    };
    if (test_days.size() < 5)
        return refuse("Five numbers cannot be told from fewer than five tests.");
    Eigen::MatrixXd J(static_cast<Eigen::Index>(test_days.size()), 5);
    for (std::size_t i = 0; i < test_days.size(); ++i)
        J.row(static_cast<Eigen::Index>(i)) = scaled_derivatives(response, loads, test_days[i]);
    const Eigen::VectorXd size = J.colwise().norm();
    if (size.minCoeff() <= 0)
        return refuse("These tests say nothing of one of the five numbers.");
    const Eigen::MatrixXd unit = J * size.cwiseInverse().asDiagonal();
    const Eigen::JacobiSVD<Eigen::MatrixXd> svd(unit, Eigen::ComputeThinV);
    if (svd.singularValues()[4] < 1e-9 * svd.singularValues()[0])
        return refuse("These tests cannot tell the five numbers apart.");
    const Eigen::MatrixXd root = svd.matrixV() * svd.singularValues().cwiseInverse().asDiagonal();
    const Eigen::MatrixXd covariance = root * root.transpose();
    const double number[] = {1, response.lasting_gain, response.passing_gain, response.lasting_days,
                             response.passing_days};
    FitErrors errors{};
    for (Eigen::Index k = 0; k < 5; ++k)
        errors.standard_error[static_cast<std::size_t>(k)] =
            test_error * std::sqrt(covariance(k, k)) / size[k] * std::abs(number[k]);
    errors.correlation_of_gains = covariance(1, 2) / std::sqrt(covariance(1, 1) * covariance(2, 2));
    return errors;
}

} // namespace amentum
