#include "operations/inside/kept_fit.h"

#include "operations/described_json.h"

namespace amentum {

BOOST_DESCRIBE_STRUCT(Estimate, (), (value, standard_error))
BOOST_DESCRIBE_STRUCT(RosterMode, (),
                      (qualities, covariates, growths, centre, unit, phi, model, curvature, session_quality,
                       session, session_spread))
BOOST_DESCRIBE_STRUCT(RosterFit, (),
                      (within, between, within_covariance, error_sd, drift_sd, between_sd, within_learned,
                       between_learned, growth, log_likelihood, readings, gradient, smallest_curvature,
                       evaluations, mode))
BOOST_DESCRIBE_STRUCT(KeptSum, (), (count, mean))
BOOST_DESCRIBE_STRUCT(FitChecked, (),
                      (tail_shape, shape_limit, sampled, worst_r_hat, least_worth, divergences))
BOOST_DESCRIBE_STRUCT(KeptFit, (),
                      (tests, session_names, priors_version, version, sums, fit, own_slopes, own_spread,
                       own_spread_learned, checked))

std::string kept_fit_text(const KeptFit& kept) {
    KeptFit small = kept;
    small.fit.mode.model.clear(); // the next search makes its own from the curvature
    return boost::json::serialize(written(small));
}

std::optional<KeptFit> parse_kept_fit(const std::string& text) {
    boost::system::error_code error;
    const auto json = boost::json::parse(text, error);
    if (error)
        return std::nullopt;
    auto kept = read_json<KeptFit>(json, "");
    return kept ? std::optional(*std::move(kept)) : std::nullopt;
}

} // namespace amentum
