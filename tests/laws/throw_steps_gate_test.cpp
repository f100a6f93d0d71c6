// What must hold of the gate on any log: no step is passed without the published criterion [Pmc10547089], none while a pain entry is
// open, and the order in which anything was written down changes nothing. Checked on the raw log, not through the walk.
#include "throwing_workload/step_progress.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

namespace amentum {
namespace {

const Date start = *parse_date("2026-03-02", "date");

struct Case {
    ThrowSteps steps{AthleteId{"a"}, 1, StepsOrigin::clinician, "Dr. Ada Fenwick", start, 1, {}, "", "",
                     start};
    std::vector<ThrowEntry> entries;
    std::vector<PainEntry> pains;
    std::vector<PainClearance> clearances;
    Date today = start;
};

class Cases {
public:
    Case next() {
        Case made;
        made.steps.days_between = draw(0, 3);
        for (int n = draw(1, 6); n > 0; --n)
            made.steps.steps.push_back({10 * draw(1, 8), {}, {}, ""});
        made.today = start + draw(-2, 40);
        for (int d = -3; d < 45; ++d)
            for (int n = draw(0, 2) * draw(0, 1); n > 0; --n)
                made.entries.push_back(entry(d));
        for (int n = draw(0, 3) * draw(0, 1); n > 0; --n)
            add_pain(made);
        return made;
    }
    template <class T>
    void shuffle(std::vector<T>& list) {
        std::shuffle(list.begin(), list.end(), random_);
    }

private:
    int draw(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    std::optional<double> soreness() {
        return draw(0, 3) == 0 ? std::nullopt : std::optional(draw(0, 3) / 3.0);
    }
    ThrowEntry entry(int d) {
        return {AthleteId{"a"},
                start + d,
                draw(0, 9) == 0 ? ThrowSetting::none : ThrowSetting::flat_ground,
                10 * draw(0, 8),
                {},
                {},
                {},
                {},
                draw(0, 3) == 0 ? soreness() : std::nullopt,
                {},
                soreness(),
                ""};
    }
    void add_pain(Case& made) {
        const int number = static_cast<int>(made.pains.size()) + 1, felt = draw(-5, 40);
        made.pains.push_back(
            {AthleteId{"a"}, number, start + felt, PainRegion::shoulder, "", "", "Kim Osei"});
        if (draw(0, 2) > 0)
            made.clearances.push_back({AthleteId{"a"}, number, start + felt + draw(0, 9), "Dr. Ada Fenwick",
                                       "Kim Osei", start + felt, ""});
    }
    std::mt19937_64 random_{20260302};
};

StepProgress progress_of(const Case& given) {
    return measure_steps(given.steps, {given.entries, given.pains, given.clearances}, given.today);
}

int throws_on(const Case& given, Date day) {
    int throws = 0;
    for (const auto& entry : given.entries)
        throws += entry.date == day ? entry.count : 0;
    return throws;
}

// Somebody said so, and everybody who said anything said 0.
bool free_of_soreness_after(const Case& given, Date day) {
    bool said = false, sore = false;
    for (const auto& entry : given.entries) {
        const auto& word = entry.date == day       ? entry.soreness_next_day
                           : entry.date == day + 1 ? entry.soreness_before
                                                   : std::nullopt;
        said |= word.has_value();
        sore |= word && *word > 0;
    }
    return said && !sore;
}

bool in_pain(const Case& given, Date day) {
    for (const auto& pain : given.pains) {
        bool cleared = false;
        for (const auto& word : given.clearances)
            cleared |= word.number == pain.number && word.date >= pain.date && word.date <= day;
        if (pain.date == day || (pain.date < day && !cleared))
            return true;
    }
    return false;
}

void check_passed(const Case& given, const StepTry& done) {
    CHECK(10 * throws_on(given, done.date) >= 9 * given.steps.steps[done.step].throws);
    CHECK(done.date < given.today);
    CHECK(free_of_soreness_after(given, done.date));
    CHECK_FALSE(in_pain(given, done.date));
    CHECK_FALSE(in_pain(given, done.date + 1));
    for (int d = 1; d <= given.steps.days_between; ++d)
        CHECK((done.date - d < given.steps.start || throws_on(given, done.date - d) == 0));
}

} // namespace

TEST_CASE("no step is passed, and no gate open, against the criterion") {
    Cases cases;
    int passed = 0, open = 0, stopped = 0;
    for (int trial = 0; trial < 20000; ++trial) {
        auto given = cases.next();
        const auto now = progress_of(given);
        std::size_t furthest = 0;
        for (const auto& done : now.tries) {
            CHECK(done.step <= furthest); // no step before those below it
            if (done.outcome != StepOutcome::passed)
                continue;
            ++passed;
            check_passed(given, done);
            furthest = std::max(furthest, done.step + 1);
        }
        CHECK(now.step <= furthest);
        CHECK((now.gate == StepGate::pain) == in_pain(given, given.today));
        const auto ahead = plan_steps_ahead(given.steps, now, given.today, {});
        stopped += now.gate == StepGate::pain;
        if (now.gate == StepGate::pain || now.gate == StepGate::waiting)
            CHECK(ahead.empty());
        if (now.repeated)
            CHECK(ahead.size() <= 1);
        if (now.gate == StepGate::open) {
            ++open;
            for (int d = 0; d <= given.steps.days_between; ++d)
                CHECK((given.today - d < given.steps.start || throws_on(given, given.today - d) == 0));
        }
        cases.shuffle(given.entries);
        cases.shuffle(given.pains);
        cases.shuffle(given.clearances);
        CHECK(progress_of(given).words == now.words);
    }
    CHECK(passed > 1000);
    CHECK(open > 1000);
    CHECK(stopped > 1000);
}

} // namespace amentum
