// The joint model of the whole roster: which tests are in it, the readings as it takes them, the fit.
//
// A quality is in it when one of its tests was done by at least 8 athletes, 5 of them on two days or more (proposal of this
// project); the test most athletes did speaks for it. Velocity is quality 0. Velocity readings of one day, radar and place are
// a session when two athletes or more share it. Below 18 there is growth: the share of an athlete's tested time below 18.
#pragma once

#include "inference/individual_slopes.h"
#include "operations/inside/facility_view.h"
#include "operations/inside/kept_fit.h"

#include <functional>

namespace amentum {

// Literature slopes lie between athletes: the model takes them twice as doubtful (proposal of this project, no source).
inline constexpr double prior_doubt = 2;

struct ModelledQuality {
    const Quality* quality;
    const TestKind* kind; // the test that speaks for it
    int athletes;
    double spread;     // SD of athletes' means, on the kind's scale
    double attainable; // usual twelve-week improvement, on the kind's scale
};

struct RosterModel {
    std::vector<ModelledQuality> qualities; // predictors, in the fit's order
    std::vector<std::pair<const Quality*, std::string>> left_out;
    std::vector<const TestKind*> kinds;   // of each quality of the model, velocity first
    std::vector<std::string> athlete_ids; // of data.athletes, in order
    std::vector<std::string> athlete_names;
    RosterData data;
    RosterPriors priors;
    std::vector<std::string> session_names; // of data.sessions, in order
    std::string priors_version;
    std::string version; // of records, model and priors
    Result<RosterFit> fit = Refusal{};
    std::shared_ptr<const KeptFit>
        kept; // where the fit stands: what goes with it; its version may be a few readings old

    const RosterAthlete* athlete(const std::string& id) const; // null: without any test in the model
    const std::vector<Estimate>&
    slopes_of(const std::string& id) const; // the roster's, for an athlete new since the fit
    std::optional<int> quality_tested_by(const std::string& test) const; // number in the fit; none: not in it
};

// Everything but the fit. The view must outlive the answer.
RosterModel gather_roster(const FacilityView&, const ReferenceTables&);
// Results of tests, on the kind's scale: logged sets are left out. The best set of a day reads a little high, and a day's loads
// on hand return week after week, so that steps between tests and sets would pass for gains.
std::vector<DatedValue> tested_values(const Series&);
void choose_qualities(const FacilityView&, const ReferenceTables&, RosterModel&);
// What no fit may be made of: no quality tested enough, hardly any velocity, one person entered twice.
inline constexpr int fewest_with_velocity = 5; // (proposal of this project, no source)
std::optional<Refusal> roster_fault(const RosterModel&);
// The model's "quality 3" by its test's name.
Refusal named_by_test(Refusal, const RosterModel&);

// thorough: errors checked, and sampled where the normal will not do.
void fit_roster_model(RosterModel&, const FitControl&, bool thorough = false);

// Takes over an earlier fit when it still holds: the same tests, sessions and priors, and no more than 2 % of the readings
// new (proposal of this project). Athletes then stand by their new readings, the roster's numbers by the earlier ones.
bool take_over_fit(RosterModel& now, const std::shared_ptr<const KeptFit>& earlier);

// Parts on as many threads as the machine has; waits for all of them.
void run_on_threads(std::size_t parts, const std::function<void(std::size_t)>& part);

} // namespace amentum
