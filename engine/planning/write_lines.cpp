#include "planning/write_lines.h"

#include "planning/exercise_classes.h"
#include "planning/plan_sets.h"
#include "planning/reasons.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

// A line as it is done on its day: the one chosen, or what stands in for it near a start.
struct DayLine {
    const AllowedExercise* what;
    const AllowedExercise* stands_in_for;
    std::string why;
    int sets;
};

bool earlier(const DayLine& a, const DayLine& b) {
    const auto place = [](const DayLine& line) {
        return std::pair(line.what->exercise->part, heavy_for_legs(*line.what->exercise) ? 0 : 1);
    };
    return place(a) < place(b);
}

class Writing {
public:
    Writing(const BlockRequest& request, const AllowedExercises& allowed, const QualityWorth& worth,
            const KitLoads& loads, const StatedProblem& stated, const PlanSets& plan)
        : request_(request), allowed_(allowed), worth_(worth), loads_(loads), stated_(stated), plan_(plan),
          loading_(loading_of(request.athlete, request.start)) {}

    void add_session(const PlacedSession& place, const WeekOfWave& week, int number) {
        auto lines = lines_of_day(place, week);
        std::stable_sort(lines.begin(), lines.end(), earlier);
        std::vector<int> sets;
        for (const auto& line : lines)
            sets.push_back(line.sets);
        if (week.reduced)
            sets = reduced_sets(sets);
        for (std::size_t i = 0; i < lines.size(); ++i)
            written_.lines.push_back(
                written(place, week, number, static_cast<int>(i) + 1, lines[i], sets[i]));
    }
    WrittenLines take() { return std::move(written_); }

private:
    std::vector<DayLine> lines_of_day(const PlacedSession& place, const WeekOfWave& week) {
        const auto& sets = plan_[static_cast<std::size_t>(week.meso)][place.of_week];
        std::set<const AllowedExercise*> here;
        for (std::size_t c = 0; c < sets.size(); ++c)
            if (sets[c] > 0)
                here.insert(&allowed_.list[c]);
        std::vector<DayLine> lines;
        for (std::size_t c = 0; c < sets.size(); ++c) {
            if (sets[c] == 0)
                continue;
            const AllowedExercise& chosen = allowed_.list[c];
            const bool legs = !place.spare_legs.empty() && heavy_for_legs(*chosen.exercise);
            const bool arm = !place.spare_arm.empty() && hard_on_tired_arm(*chosen.exercise);
            if (!legs && !arm) {
                lines.push_back({&chosen, nullptr, "", sets[c]});
                continue;
            }
            if (const auto* other = stand_in_for(*chosen.exercise, here)) {
                here.insert(other);
                lines.push_back({other, &chosen, legs ? place.spare_legs : place.spare_arm,
                                 std::min(sets[c], most_sets(other->exercise->part, loading_))});
            } else if (auto& spared = written_.spared;
                       std::find(spared.begin(), spared.end(), chosen.exercise->name) == spared.end())
                spared.push_back(chosen.exercise->name);
        }
        return lines;
    }

    const AllowedExercise* stand_in_for(const Exercise& e,
                                        const std::set<const AllowedExercise*>& here) const {
        const AllowedExercise* best = nullptr;
        for (std::size_t c = 0; c < allowed_.list.size(); ++c) {
            const AllowedExercise& each = allowed_.list[c];
            const Exercise& other = *each.exercise;
            const bool alike = (other.part == Part::speed) == (e.part == Part::speed) &&
                               other.part != Part::main_lift && other.part != Part::mobility;
            const bool longer = other.set_minutes > e.set_minutes || other.setup_minutes > e.setup_minutes;
            if (!alike || longer || here.contains(&each) || heavy_for_legs(other) ||
                hard_on_tired_arm(other) || left_out(static_cast<int>(c)))
                continue;
            if (!best || each.worth > best->worth)
                best = &each;
        }
        return best;
    }
    bool left_out(int choice) const {
        const auto& barred = stated_.problem.barred;
        return std::any_of(barred.begin(), barred.end(),
                           [choice](const Barred& bar) { return bar.choice == choice; });
    }

    BlockLine written(const PlacedSession& place, const WeekOfWave& week, int number, int order,
                      const DayLine& line, int sets) const {
        const Exercise& exercise = *line.what->exercise;
        const LoadedSets loaded = plan_sets(request_, loads_, exercise, week);
        const Meso& meso = stated_.problem.mesos[static_cast<std::size_t>(week.meso)];
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
    const AllowedExercises& allowed_;
    const QualityWorth& worth_;
    const KitLoads& loads_;
    const StatedProblem& stated_;
    const PlanSets& plan_;
    Loading loading_;
    WrittenLines written_;
};

} // namespace

WrittenLines write_lines(const BlockRequest& request, const AllowedExercises& allowed,
                         const QualityWorth& worth, const KitLoads& loads, const StatedProblem& stated,
                         const PlanSets& plan) {
    Writing writing(request, allowed, worth, loads, stated, plan);
    for (std::size_t w = 0; w < stated.placed.size(); ++w)
        for (const auto& place : stated.placed[w].sessions)
            writing.add_session(place, stated.wave[w], static_cast<int>(place.of_week) + 1);
    return writing.take();
}

} // namespace amentum
