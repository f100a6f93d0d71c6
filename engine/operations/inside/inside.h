// What an open workplace holds, and the few things every operation does first.
#pragma once

#include "operations/inside/facility_view.h"
#include "operations/inside/fit_job.h"
#include "operations/inside/held_back.h"
#include "operations/inside/roster_model.h"
#include "operations/shown.h"
#include "operations/workplace.h"
#include "reports/shown_units.h"
#include "store/store.h"
#include "values/interval.h"

#include <chrono>
#include <memory>
#include <mutex>
#include <set>

namespace amentum {

class SquadJob;
struct RosterAnswer;

struct Workplace::Inside {
    Store store;
    ReferenceTables tables;
    std::optional<Date> fixed_today;

    std::chrono::sys_seconds now() const;       // noon, Greenwich, of a fixed day
    Date today() const;                         // of the facility's time zone
    std::shared_ptr<const FacilityView> view(); // as of the last committed write
    Facility facility();

    // Files a command line has put on the table: only these may be read from the disk, never one a browser names.
    std::mutex table = {};
    std::set<std::string> files_on_table = {};

    std::mutex writing = {}; // one operation writes at a time; reading goes on beside it

    mutable std::mutex zoning = {};
    std::string zone = {}; // of the facility, as of the last view; empty: the computer's own

    // The view of the last version seen, and the variances fitted so far; guarded by `viewing`.
    std::mutex viewing = {};
    std::shared_ptr<const FacilityView> latest = {};
    std::int64_t latest_version = -1;
    std::map<std::string, FittedVariances> fitted = {};

    // The joint model of the last version asked about; fitting it takes seconds, so it is kept, in the store too (fit_roster).
    std::shared_ptr<const RosterModel> roster_model();
    std::mutex modelling = {};
    std::shared_ptr<const RosterModel> modelled = {};
    std::shared_ptr<const FacilityView> modelled_view = {};

    // The roster of the last view asked about: its limiters take a third of a second.
    std::mutex listing = {};
    std::shared_ptr<const FacilityView> listed_view = {};
    std::shared_ptr<const RosterAnswer> listed = {};

    // The last test days held back, of the last model asked about.
    std::mutex holding = {};
    std::shared_ptr<const HeldBack> held = {};

    FitJob fit_job = {}; // these last: they end before what they work on
    std::shared_ptr<SquadJob> squad_job;
};

const ReferenceTables& built_in_tables();

// The field `date` of something that has been done: a day that exists and is not after today.
Result<Date> day_up_to_today(const std::string& text, const std::string& what, Date today);
Result<const Athlete*> athlete_named(const FacilityView&, const std::string& name);
Result<const TestKind*> test_named(const ReferenceTables&, const std::string& key);
Result<const Kit*> kit_named(const FacilityView&, const std::string& name);

ShownEstimate shown_estimate(double value, Interval band, const ShownUnit&);
ShownEstimate shown_state(const TestKind&, const StateOnDay&, const Facility&, double z = z80);
ShownRefusal shown_refusal(const Refusal&);
double
shown_load_in(Mass,
              const ShownUnit&); // without the last bits of a unit's conversion: 230, not 229.99999999999997

} // namespace amentum
