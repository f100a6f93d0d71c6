// One joint model of a roster: every quality and velocity of every athlete at once, errors in all of them allowed for.
//
// Athlete i has latent qualities theta(t), quality 0 the outcome (velocity), 1 ... p the predictors:
//
//     y = theta_k(t) + e,            e ~ N(0, r_k share)                 a reading; share = 1 / trials
//     theta(t1) ~ N(m + B c_i, S)                                       between athletes; c covariates
//     theta(t) - theta(s) ~ N(D c'_i (t - s), Q (t - s))                within an athlete: growth and a random walk
//
// S and Q are written so that what is asked for stands in them as such:
//
//     Q_xx = L L',  Q_x0 = Q_xx beta,  Q_00 = beta' Q_xx beta + q        beta: "who improves x by 1 gains beta"
//     S the same with gamma                                             gamma: "who has 1 more of x has gamma more"
//
// This is the error-corrected form of within-between regression; observed values regressed on observed values give slopes
// too close to zero, and more data only make them more precisely wrong.
// Exact likelihood by a Kalman filter, its exact gradient by Fisher's identity from the smoother's moments
// [DurbinKoopman2012; KoopmanShephard1992]; mode by a trust region; standard errors by Laplace from the gradient's
// differences, means and covariates apart, which carry no information about the slopes in expectation. One thread; no
// random numbers: the same records give the same answer.
// Units: any; days are whole; variances a 30 days. Values are brought to unit spread inside and back.
// Priors: normal on beta and gamma; on the rest weak ones (inside/joint_priors).
// Refusals: too_few_data (fewer than 3 athletes, a quality with fewer than 3 readings, a quality that never varies, no athlete
// with two days), and when no mode was found: gradient not small, or curvature not positive.
// What it cannot tell: causes; anything that goes with both (growth, a new radar) and is not in the model.
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <vector>

namespace amentum {

struct RosterReading {
    int quality; // 0: the outcome
    double value;
    double share = 1; // of the quality's error variance
};

struct RosterDay {
    int day; // rising within an athlete
    std::vector<RosterReading> readings;
};

struct RosterAthlete {
    std::vector<double> covariates;
    std::vector<RosterDay> days;     // one or more
    std::vector<double> growth = {}; // c': such as years below 18, for what grows anyway
};

struct RosterData {
    int qualities; // 2 or more, the outcome included
    int covariates;
    std::vector<RosterAthlete> athletes;
    int growths = 0; // numbers in every athlete's growth
};

struct RosterPriors { // one for each predictor, in the readings' units
    std::vector<Estimate> within;
    std::vector<Estimate> between;
    // Of each quality, the outcome first: a reading's error as known; believed give or take a fifth. Empty: not known.
    std::vector<double> error_sd = {};
};

struct RosterFit {
    std::vector<Estimate> within;       // beta
    std::vector<Estimate> between;      // gamma
    std::vector<double> error_sd;       // of one reading of each quality
    std::vector<double> drift_sd;       // of each quality in 30 days
    std::vector<double> between_sd;     // of each quality among athletes
    std::vector<double> within_learned; // 1 - posterior variance / prior variance, of each beta
    std::vector<double> between_learned;
    std::vector<Estimate> growth; // D, quality by quality: a 30 days and unit of each c'
    double log_likelihood;
    int readings;
    double gradient;           // largest, a reading
    double smallest_curvature; // of the log posterior, in whitened units: above 0
    int evaluations;
};

Result<RosterFit> fit_joint_model(const RosterData& data, const RosterPriors& priors);

} // namespace amentum
