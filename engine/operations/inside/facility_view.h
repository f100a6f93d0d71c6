// The facility as the operations reason about it: records, measured results, trajectories. Rebuilt after a write.
//
// Results: every group of readings of one athlete, day, test and side, measured. The side a test kind's rule names
// feeds its trajectory; the other side is kept and shown. Speeds of the device and place used most for that athlete
// and test feed the trajectory; speeds of another radar are kept, and said to be left out. Logged sets add the best
// set of each day, less certain. Each test kind has its own trajectory: two lifts are never pooled; a quality is
// spoken for by the test kind the athlete was tested in most.
#pragma once

#include "inference/priors_in_force.h"
#include "inference/roster_variances.h"
#include "inference/trajectory.h"
#include "records/reference_tables.h"
#include "values/block_change.h"
#include "values/record_set.h"

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace amentum {

struct SeriesResult {
    TestResult result;
    bool from_logged_set;
    bool in_trajectory;
    std::string left_out; // why, when it is not in the trajectory
    int point = -1;       // index in the trajectory
};

struct Series {
    const TestKind* kind;
    std::vector<SeriesResult> results;  // by date
    std::vector<DatedValue> values;     // on the kind's scale, error variances at the roster's factor
    std::vector<Trajectory> trajectory; // none or one
};

using SeriesKey = std::pair<std::string, std::string>; // athlete id, test key

struct FacilityView {
    RecordSet records;
    std::vector<BlockChange> block_changes; // made by hand, in the order of block and number
    std::map<SeriesKey, Series> series;
    std::map<std::string, RosterVariances> variances; // by test key
    std::vector<VelocityPrior> velocity_priors; // in force: the published ones with this facility's edits
    std::vector<AttainableChange> attainable_changes;
    std::string priors_version; // "priors 1.3"

    const Athlete* athlete(const std::string& name_or_id) const;
    const Series* one_series(const std::string& athlete, const std::string& test) const;
    // The series that speaks for a quality; null when the athlete has no test of it.
    const Series* spoken_for(const std::string& athlete, const std::string& quality) const;
};

// `fitted` carries variances over from an older view: a test kind whose readings did not change is not fitted again.
struct FittedVariances {
    std::size_t readings_hash;
    RosterVariances variances;
};
std::shared_ptr<const FacilityView> build_view(RecordSet records, const ReferenceTables& tables,
                                               std::map<std::string, FittedVariances>& fitted,
                                               std::vector<BlockChange> block_changes = {});

// The series as it would be with one more result: for "what did this set move?" and "is this far from expected?".
Series series_with(const Series& series, const TestResult& result, bool from_logged_set,
                   const RosterVariances&);

Side wanted_side(const TestKind& kind, const Athlete& athlete);

} // namespace amentum
