#include "throwing_workload/step_progress.h"

#include "throwing_workload/open_pains.h"
#include "throwing_workload/step_words.h"
#include "throwing_workload/throw_ramp.h"

#include <algorithm>
#include <map>

namespace amentum {
namespace {

struct WordOfDay {
    int throws = 0;
    std::optional<double> soreness_before, soreness_next_day; // the worst noted
};

void keep_worst(std::optional<double>& worst, const std::optional<double>& soreness) {
    if (soreness && (!worst || *soreness > *worst))
        worst = soreness;
}

class Walk {
public:
    Walk(const ThrowSteps& steps, const ArmWords& written, Date today)
        : steps_(steps), written_(written),
          today_(today), at_{StepGate::open, 0, steps.start, {}, {}, false, ""} {
        for (const auto& entry : written.entries) {
            if (entry.date < steps.start || entry.date > today)
                continue;
            auto& day = days_[entry.date];
            day.throws += entry.count;
            keep_worst(day.soreness_before, entry.soreness_before);
            keep_worst(day.soreness_next_day, entry.soreness_next_day);
        }
    }

    StepProgress to_today() {
        for (Date day = steps_.start; day <= today_; day = day + 1)
            pass(day);
        close_or_open();
        at_.words = describe_step_progress(steps_, at_, stops_, today_);
        return at_;
    }

private:
    bool felt_on(Date day) const {
        return std::any_of(written_.pains.begin(), written_.pains.end(),
                           [&](const auto& pain) { return pain.date == day; });
    }
    bool stopped_on(Date day) const {
        return felt_on(day) || !open_pains(written_.pains, written_.clearances, day).empty();
    }

    std::optional<Date> latest_stopping() const {
        std::optional<Date> latest;
        for (const auto& pain : open_pains(written_.pains, written_.clearances, today_))
            latest = std::max(latest, std::optional(pain.date));
        return latest ? latest : std::optional(today_); // felt and cleared today
    }

    void pass(Date day) {
        const bool stopped = stopped_on(day);
        judge_yesterday(day, stopped);
        if (stopped) {
            stops_.step_back |= felt_on(day);
            if (!stops_.since)
                stops_.since = day;
        } else if (stops_.since) {
            resume(day);
        }
        const auto here = days_.find(day);
        if (here == days_.end() || here->second.throws == 0)
            return;
        try_step(day, here->second.throws, stopped);
        last_throws_ = day;
    }

    // What the word of this day makes of a step done the day before.
    void judge_yesterday(Date day, bool stopped) {
        if (at_.tries.empty() || at_.tries.back().outcome != StepOutcome::waiting)
            return;
        auto& done = at_.tries.back();
        if (const auto before = days_.find(done.date); before != days_.end())
            keep_worst(done.soreness_next_day, before->second.soreness_next_day);
        if (const auto here = days_.find(day); here != days_.end())
            keep_worst(done.soreness_next_day, here->second.soreness_before);
        if (stopped)
            done.outcome = StepOutcome::pain;
        else if (!done.soreness_next_day)
            done.outcome = day == today_ ? StepOutcome::waiting : StepOutcome::not_written;
        else
            done.outcome = *done.soreness_next_day > 0 ? StepOutcome::sore_next_day : StepOutcome::passed;
        if (done.outcome == StepOutcome::passed) {
            at_.step = done.step + 1;
            at_.since = day;
        }
        if (done.outcome != StepOutcome::waiting)
            at_.repeated = done.outcome != StepOutcome::passed;
    }

    void resume(Date day) {
        if (stops_.step_back && at_.step > 0)
            --at_.step;
        at_.since = day;
        at_.repeated |= stops_.step_back;
        stops_ = {};
    }

    void try_step(Date day, int throws, bool stopped) {
        if (at_.step == steps_.steps.size() || 10 * throws < 9 * steps_.steps[at_.step].throws)
            return;
        StepOutcome outcome = StepOutcome::waiting;
        if (stopped)
            outcome = stops_.since == day ? StepOutcome::pain : StepOutcome::during_stop;
        else if (day < earliest())
            outcome = StepOutcome::too_early;
        at_.tries.push_back({day, at_.step, throws, outcome, {}});
        at_.repeated |= outcome == StepOutcome::pain;
    }

    Date earliest() const {
        if (!last_throws_)
            return steps_.start;
        const std::size_t done =
            at_.tries.empty() ? std::min(at_.step, steps_.steps.size() - 1) : at_.tries.back().step;
        return std::max(steps_.start, *last_throws_ + days_between_after(steps_, done) + 1);
    }

    void close_or_open() {
        const bool waiting = !at_.tries.empty() && at_.tries.back().outcome == StepOutcome::waiting;
        if (stopped_on(today_)) { // also when the steps begin later, or are all passed
            at_.gate = StepGate::pain;
            stops_.pain = latest_stopping();
            return;
        }
        if (at_.step == steps_.steps.size()) {
            at_.gate = StepGate::through;
            return;
        }
        if (waiting) {
            at_.gate = StepGate::waiting;
            return;
        }
        at_.earliest = std::max(earliest(), today_);
        at_.gate = today_ < steps_.start ? StepGate::not_begun
                   : today_ < earliest() ? StepGate::rest
                                         : StepGate::open;
    }

    const ThrowSteps& steps_;
    const ArmWords& written_;
    Date today_;
    StepProgress at_;
    StepStop stops_;
    std::map<Date, WordOfDay> days_;
    std::optional<Date> last_throws_;
};

} // namespace

StepProgress measure_steps(const ThrowSteps& steps, const ArmWords& written, Date today) {
    if (steps.steps.empty())
        return {StepGate::ended, 0, steps.start, {}, {}, false, "There are no steps in force."};
    return Walk(steps, written, today).to_today();
}

std::vector<PlannedThrowStep> plan_steps_ahead(const ThrowSteps& steps, const StepProgress& progress,
                                               Date today, std::span<const Date> days_off) {
    std::vector<PlannedThrowStep> planned;
    if (!progress.earliest)
        return planned;
    const std::size_t end = progress.repeated ? progress.step + 1 : steps.steps.size();
    Date day = std::max(*progress.earliest, today);
    for (std::size_t step = progress.step; step < end; ++step) {
        while (std::find(days_off.begin(), days_off.end(), day) != days_off.end())
            day = day + 1;
        planned.push_back({step, day});
        day = day + days_between_after(steps, step) + 1;
    }
    return planned;
}

} // namespace amentum
