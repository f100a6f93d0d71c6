#include "planning/plan_block.h"

#include "planning/block_notes.h"
#include "planning/check_request.h"
#include "planning/dose.h"
#include "planning/exercise_classes.h"
#include "planning/plan_sets.h"
#include "planning/reasons.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr int most_youth_sessions = 3; // [Faigenbaum2009] (from memory)

struct MesoPlan {
    std::vector<SessionTemplate> sessions;
    std::vector<std::vector<int>> sets; // of each session's lines
    int first_week;
    int last_week;
};

// A line as it is done on its day: the one chosen, or what stands in for it near a start.
struct DayLine {
    const AllowedExercise* what;
    const AllowedExercise* stands_in_for;
    std::string why;
    int sets;
};

std::vector<MesoPlan> plan_mesos(const BlockRequest& request, const AllowedExercises& allowed,
                                 const std::vector<WeekOfWave>& wave, int sessions) {
    std::vector<MesoPlan> mesos;
    for (const auto& week : wave) {
        if (week.meso == std::ssize(mesos)) {
            const auto before = mesos.empty() ? std::vector<SessionTemplate>{} : mesos.back().sessions;
            MesoPlan meso{choose_exercises(request, allowed, sessions, before), {}, week.week, week.week};
            for (const auto& session : meso.sessions)
                meso.sets.push_back(dose_session(session, request.minutes));
            mesos.push_back(std::move(meso));
        }
        mesos.back().last_week = week.week;
    }
    return mesos;
}

// Order within a session: by part, the legs' main lift before the others, else as wanted most.
bool earlier(const DayLine& a, const DayLine& b) {
    const auto place = [](const DayLine& line) {
        return std::pair(line.what->exercise->part, heavy_for_legs(*line.what->exercise) ? 0 : 1);
    };
    return place(a) < place(b);
}

class Assembly {
public:
    Assembly(const BlockRequest& request, const KitLoads& loads, const QualityWorth& worth)
        : request_(request), loads_(loads), worth_(worth),
          loading_(loading_of(request.athlete, request.start)) {}

    void add_session(const MesoPlan& meso, const PlacedSession& place, const WeekOfWave& week, int number) {
        auto lines = lines_of_day(meso, place);
        std::stable_sort(lines.begin(), lines.end(), earlier);
        std::vector<int> sets;
        for (const auto& line : lines)
            sets.push_back(line.sets);
        if (week.reduced)
            sets = reduced_sets(sets);
        for (std::size_t i = 0; i < lines.size(); ++i)
            lines_.push_back(written(meso, place, week, number, static_cast<int>(i) + 1, lines[i], sets[i]));
    }

    std::vector<BlockLine> lines_;
    std::vector<std::string> spared_; // left out near a start without a stand-in, each name once

private:
    std::vector<DayLine> lines_of_day(const MesoPlan& meso, const PlacedSession& place) {
        std::vector<DayLine> lines;
        const SessionTemplate& session = meso.sessions[place.of_week];
        for (std::size_t i = 0; i < session.lines.size(); ++i) {
            const TemplateLine& line = session.lines[i];
            const int sets = meso.sets[place.of_week][i];
            if (sets == 0)
                continue;
            const bool legs = !place.spare_legs.empty() && heavy_for_legs(*line.what->exercise);
            const bool arm = !place.spare_arm.empty() && hard_on_tired_arm(*line.what->exercise);
            if (!legs && !arm) {
                lines.push_back({line.what, nullptr, "", sets});
                continue;
            }
            const std::string& why = legs ? place.spare_legs : place.spare_arm;
            if (line.stand_in) {
                const int most = most_sets(line.stand_in->exercise->part, loading_);
                lines.push_back({line.stand_in, line.what, why, std::min(sets, most)});
            } else if (const auto& name = line.what->exercise->name;
                       std::find(spared_.begin(), spared_.end(), name) == spared_.end())
                spared_.push_back(name);
        }
        return lines;
    }

    BlockLine written(const MesoPlan& meso, const PlacedSession& place, const WeekOfWave& week, int number,
                      int order, const DayLine& line, int sets) const {
        const Exercise& exercise = *line.what->exercise;
        const LoadedSets loaded = plan_sets(request_, loads_, exercise, week);
        const LineStory story{*line.what,      line.stands_in_for, line.why, place, week,
                              meso.first_week, meso.last_week,     loaded,   order};
        return {week.week,
                number,
                place.date,
                order,
                exercise.key,
                exercise.part,
                sets,
                loaded.reps,
                loaded.intensity,
                loaded.reserve,
                loaded.load,
                loaded.words,
                rest_minutes(exercise, loading_),
                line.what->purpose,
                describe_reason(request_, worth_, story),
                line.what->overridden};
    }

    const BlockRequest& request_;
    const KitLoads& loads_;
    const QualityWorth& worth_;
    Loading loading_;
};

struct LeftOut {
    std::vector<std::string> wanted; // always wanted lines without room, each name once
    std::string next;                // of the other lines the one of most worth
};

LeftOut left_out(const std::vector<MesoPlan>& mesos) {
    LeftOut out;
    double most = 0;
    for (const auto& meso : mesos)
        for (std::size_t s = 0; s < meso.sessions.size(); ++s)
            for (std::size_t i = 0; i < meso.sets[s].size(); ++i) {
                const TemplateLine& line = meso.sessions[s].lines[i];
                const auto& name = line.what->exercise->name;
                if (meso.sets[s][i] > 0)
                    continue;
                if (line.always && std::find(out.wanted.begin(), out.wanted.end(), name) == out.wanted.end())
                    out.wanted.push_back(name);
                if (line.always || line.what->worth <= most)
                    continue;
                most = line.what->worth;
                out.next = name;
            }
    return out;
}

Refusal refuse_no_exercise(const BlockRequest& request, const AllowedExercises& allowed) {
    const std::string restrictions = std::to_string(request.athlete.restrictions.size());
    return {RefusalCode::no_block_fits,
            "No exercise is left for any quality: of " + std::to_string(request.catalogue.size()) + ", " +
                std::to_string(allowed.missing_equipment) + " need equipment that \"" + request.kit.name +
                "\" does not have, " + std::to_string(allowed.too_young) + " are for older athletes, and " +
                restrictions + " restriction(s) stand.",
            "kit", request.kit.name, "equipment for at least one exercise the athlete may do"};
}

Refusal refuse_no_day(const BlockRequest& request) {
    return {RefusalCode::no_block_fits,
            "No day of the " + std::to_string(request.weeks) +
                " weeks is free: the training weekdays and the athlete's "
                "days off, games and starts leave none.",
            "weekdays", "", "at least one day without game, start or rest"};
}

} // namespace

TrainingStatus training_status(const Athlete& athlete) {
    const double years = athlete.training_years.value_or(0);
    return years < 1   ? TrainingStatus::novice
           : years < 4 ? TrainingStatus::intermediate
                       : TrainingStatus::advanced;
}

Result<Block> plan_block(const BlockRequest& request) {
    if (const auto refusal = check_request(request))
        return *refusal;
    const KitLoads loads(request.kit);
    const QualityWorth worth(request);
    const AllowedExercises allowed = allowed_exercises(request, loads, worth);
    const bool any_worth =
        std::any_of(allowed.list.begin(), allowed.list.end(), [](const auto& e) { return e.worth > 0; });
    if (!any_worth)
        return refuse_no_exercise(request, allowed);

    const Loading loading = loading_of(request.athlete, request.start);
    const bool youth = loading == Loading::youth;
    const int sessions =
        youth ? std::min(request.sessions_per_week, most_youth_sessions) : request.sessions_per_week;
    const auto wave = plan_wave(request.weeks, loading);
    const auto mesos = plan_mesos(request, allowed, wave, sessions);
    std::vector<std::vector<SessionTemplate>> weeks;
    for (const auto& week : wave)
        weeks.push_back(mesos[static_cast<std::size_t>(week.meso)].sessions);
    const auto placed = place_sessions(request, weeks, youth);
    if (std::all_of(placed.begin(), placed.end(), [](const auto& week) { return week.sessions.empty(); }))
        return refuse_no_day(request);

    Assembly assembly(request, loads, worth);
    for (std::size_t w = 0; w < placed.size(); ++w) {
        int number = 0;
        for (const auto& place : placed[w].sessions)
            assembly.add_session(mesos[static_cast<std::size_t>(wave[w].meso)], place, wave[w], ++number);
    }
    Block block{BlockId{request.athlete.id.text + "-" + request.start.text()},
                request.athlete.id,
                request.kit.id,
                request.start,
                request.weeks,
                sessions,
                request.minutes,
                std::move(assembly.lines_),
                {},
                request.model};
    const LeftOut out = left_out(mesos);
    block.notes = describe_notes(
        {request, allowed, worth, placed, block.lines, out.wanted, out.next, assembly.spared_, sessions});
    return block;
}

} // namespace amentum
