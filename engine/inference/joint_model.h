// One joint model of a roster: every quality and velocity of every athlete at once, errors in all of them allowed for.
//
// Athlete i has latent qualities theta(t), quality 0 the outcome (velocity), 1 ... p the predictors:
//
//     y = theta_k(t) + s + e,        e ~ N(0, r_k share)                 a reading; share = 1 / trials
//     s ~ N(0, v_k)                                                     of its session: one radar, mound and day
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
// Exact likelihood by a Kalman filter, sessions crossed with athletes by a Schur complement, its exact gradient by Fisher's
// identity from the smoother's moments [DurbinKoopman2012; KoopmanShephard1992]; mode by a trust region; standard errors by
// Laplace from the gradient's differences, means and covariates apart, which carry no information about the slopes in
// expectation. That athletes differ in beta (individual_slopes.h) changes no second moment but q, so beta stays right.
// No random numbers, and sums in one order: the same records give the same answer, on any number of threads.
// Units: any; days are whole; variances a 30 days. Values are brought to unit spread inside and back.
// Priors: normal on beta and gamma; on the rest weak ones (inside/joint_priors).
// Refusals: too_few_data (fewer than 3 athletes, a quality with fewer than 3 readings, a quality that never varies, no athlete
// with two days), when no mode was found: gradient not small, or curvature not positive; stopped by the caller.
// What it cannot tell: causes; anything that goes with both (growth, a new radar) and is not in the model.
#pragma once

#include "values/interval.h"
#include "values/refusal.h"

#include <functional>
#include <vector>

namespace amentum {

struct RosterReading {
    int quality; // 0: the outcome
    double value;
    double share = 1; // of the quality's error variance
    int session = -1; // number in RosterData::sessions; -1: none
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
    int growths = 0;                // numbers in every athlete's growth
    std::vector<int> sessions = {}; // the quality each session shifts
};

struct RosterPriors { // one for each predictor, in the readings' units
    std::vector<Estimate> within;
    std::vector<Estimate> between;
    // Of each quality, the outcome first: a reading's error as known; believed give or take a fifth. Empty: not known.
    std::vector<double> error_sd = {};
    // What growth brings the outcome in 30 days for each unit of c'. Empty: weak.
    std::vector<Estimate> outcome_growth = {};
};

// The fit's numbers as they are kept: for the states of athletes, a refit that starts here, or a night's store.
struct RosterMode {
    int qualities = 0, covariates = 0, growths = 0;
    std::vector<double> centre, unit; // shown = centre + unit x inside, of each quality
    std::vector<double> phi;          // the free numbers (inside/joint_parameters)
    std::vector<double> model;        // the search's last model of the curvature, row by row
    std::vector<double> curvature;    // of the log posterior from growth on, row by row
    std::vector<int> session_quality; // as in RosterData::sessions
    std::vector<Estimate> session;    // what each session shifts, in the readings' units
    std::vector<double>
        session_spread; // SD of sessions of each quality, in the readings' units; 0: none known
};

// Calls part(0) ... part(parts - 1), in any order, perhaps at once.
using PartRunner = std::function<void(std::size_t parts, const std::function<void(std::size_t)>& part)>;

struct FitControl {
    PartRunner run = {}; // empty: one part after another
    std::function<bool(double share)> going =
        {};                           // told how far it is, 0 to 1, as a guess; false stops the fit
    const RosterMode* from = nullptr; // start here, when the shape is the same
};

struct RosterFit {
    std::vector<Estimate> within;          // beta
    std::vector<Estimate> between;         // gamma
    std::vector<double> within_covariance; // of beta, row by row: what is not known of them together
    std::vector<double> error_sd;          // of one reading of each quality
    std::vector<double> drift_sd;          // of each quality in 30 days
    std::vector<double> between_sd;        // of each quality among athletes
    std::vector<double> within_learned;    // 1 - posterior variance / prior variance, of each beta
    std::vector<double> between_learned;
    std::vector<Estimate> growth; // D, quality by quality: a 30 days and unit of each c'
    double log_likelihood;
    int readings;
    double gradient;           // largest, a reading
    double smallest_curvature; // of the log posterior, in whitened units: above 0
    int evaluations;
    RosterMode mode;
};

Result<RosterFit> fit_joint_model(const RosterData& data, const RosterPriors& priors,
                                  const FitControl& control = {});

} // namespace amentum
