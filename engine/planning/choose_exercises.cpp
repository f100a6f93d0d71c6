#include "planning/choose_exercises.h"

#include "planning/exercise_classes.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <set>

namespace amentum {
namespace {

constexpr double pattern_again = 0.6, exercise_again = 0.5, maximum_known = 1.2;
constexpr double main_before = 0.95, other_before = 0.9;
constexpr double least_worth = 1e-3; // so that an exercise for no known quality can still be kept ready

using Wanted = std::function<bool(const Exercise&)>;

bool legs(const Exercise& e) {
    return e.region == Region::legs || e.region == Region::whole_body;
}

// Two sets of a first line must fit any session that may be asked for.
bool fits_shortest_session(const Exercise& e) {
    return e.setup_minutes + 2 * e.set_minutes <= shortest_session_minutes;
}

Wanted of_part(Part part) {
    return [part](const Exercise& e) { return e.part == part; };
}

// One week being filled, session after session.
class Chooser {
public:
    Chooser(const BlockRequest& request, const AllowedExercises& allowed,
            const std::vector<SessionTemplate>& before)
        : request_(request), allowed_(allowed), loading_(loading_of(request.athlete, request.start)) {
        for (const auto& session : before)
            for (const auto& line : session.lines)
                before_.insert(line.what->exercise);
    }

    void begin_session() { session_ = {}; }

    bool add(bool always, const Wanted& wanted) {
        const AllowedExercise* best = nullptr;
        double most = 0;
        for (const auto& each : allowed_.list) {
            const bool asked =
                wanted(*each.exercise) && !in_session(each) && fits_shortest_session(*each.exercise);
            const double worth = asked ? worth_now(each) : 0;
            if (worth > most) {
                most = worth;
                best = &each;
            }
        }
        if (!best)
            return false;
        const Part part = best->exercise->part;
        session_.lines.push_back({best, 2, most_sets(part, loading_), always, nullptr});
        ++patterns_[best->exercise->pattern];
        ++exercises_[best->exercise];
        return true;
    }

    bool in_session(const std::string& pattern) const {
        return std::any_of(session_.lines.begin(), session_.lines.end(),
                           [&](const auto& line) { return line.what->exercise->pattern == pattern; });
    }
    bool assistance_of_legs() const {
        return std::any_of(session_.lines.begin(), session_.lines.end(), [](const auto& line) {
            return line.what->exercise->part == Part::assistance && heavy_for_legs(*line.what->exercise);
        });
    }

    SessionTemplate end_session() {
        session_.heavy_legs = session_.hard_on_arm = false;
        std::set<const AllowedExercise*> standing;
        for (auto& line : session_.lines) {
            const bool heavy = heavy_for_legs(*line.what->exercise);
            const bool arm = hard_on_tired_arm(*line.what->exercise);
            session_.heavy_legs |= heavy;
            session_.hard_on_arm |= arm;
            if (heavy || arm)
                line.stand_in = stand_in_for(*line.what, standing);
        }
        return session_;
    }

private:
    bool in_session(const AllowedExercise& each) const {
        return std::any_of(session_.lines.begin(), session_.lines.end(),
                           [&](const auto& line) { return line.what == &each; });
    }

    double worth_now(const AllowedExercise& each) const {
        const Exercise& e = *each.exercise;
        const auto times = [](const auto& counts, const auto& key) {
            const auto found = counts.find(key);
            return found == counts.end() ? 0 : found->second;
        };
        double worth = std::max(each.worth, least_worth);
        worth *= std::pow(pattern_again, times(patterns_, e.pattern)) *
                 std::pow(exercise_again, times(exercises_, &e));
        if (e.part == Part::main_lift && lower_maximum(request_, e))
            worth *= maximum_known;
        if (before_.contains(&e))
            worth *= e.part == Part::main_lift ? main_before : other_before;
        return worth;
    }

    // Speed work is replaced by speed work; strength work by lighter strength, shoulder or trunk work.
    const AllowedExercise* stand_in_for(const AllowedExercise& line,
                                        std::set<const AllowedExercise*>& standing) const {
        const Exercise& e = *line.exercise;
        const AllowedExercise* best = nullptr;
        for (const auto& each : allowed_.list) {
            const Exercise& other = *each.exercise;
            const bool speed = other.part == Part::speed;
            const bool alike = speed == (e.part == Part::speed) && other.part != Part::main_lift &&
                               other.part != Part::mobility;
            const bool longer = other.set_minutes > e.set_minutes || other.setup_minutes > e.setup_minutes;
            const bool spoken_for = in_session(each) || standing.contains(&each);
            if (!alike || longer || spoken_for || heavy_for_legs(other) || hard_on_tired_arm(other))
                continue;
            if (!best || each.worth > best->worth)
                best = &each;
        }
        if (best)
            standing.insert(best);
        return best;
    }

    const BlockRequest& request_;
    const AllowedExercises& allowed_;
    Loading loading_;
    std::set<const Exercise*> before_;
    std::map<std::string, int> patterns_;
    std::map<const Exercise*, int> exercises_;
    SessionTemplate session_;
};

enum class Focus { legs, upper };

void add_first_main(Chooser& choose, Focus focus) {
    const auto main_where = [](auto where) {
        return [where](const Exercise& e) { return e.part == Part::main_lift && where(e); };
    };
    const bool added =
        focus == Focus::legs
            ? choose.add(true, main_where([](const Exercise& e) { return legs(e); }))
            : choose.add(true, main_where([](const Exercise& e) { return e.region == Region::upper_pull; }));
    if (added || choose.add(true, main_where([](const Exercise& e) { return !legs(e); })))
        return;
    choose.add(true, [focus](const Exercise& e) {
        return e.part == Part::assistance && (focus == Focus::legs || !heavy_for_legs(e));
    });
}

void add_second_main(Chooser& choose) {
    choose.add(true, [&](const Exercise& e) {
        return e.part == Part::main_lift && !legs(e) && !choose.in_session(e.pattern);
    });
}

using Ready = std::vector<Wanted>;

Ready kept_ready(int session) {
    const Wanted shoulder = [](const Exercise& e) {
        return e.part == Part::shoulder && e.region == Region::shoulder && e.pattern != "carry";
    };
    const Wanted trunk = of_part(Part::trunk);
    const Wanted hips = [](const Exercise& e) {
        return e.part == Part::mobility && legs(e) && e.pattern != "ankle";
    };
    const Wanted length = [](const Exercise& e) { return e.part == Part::mobility && !legs(e); };
    return session % 2 == 0 ? Ready{shoulder, hips, trunk, length} : Ready{trunk, length, shoulder, hips};
}

void add_optional(Chooser& choose, Focus focus) {
    const auto fresh = [&](Part part) {
        return [&choose, part, focus](const Exercise& e) {
            const bool legs_full = focus == Focus::upper || choose.assistance_of_legs();
            return e.part == part && !choose.in_session(e.pattern) && !(legs_full && heavy_for_legs(e));
        };
    };
    const Wanted pull = [&](const Exercise& e) {
        return fresh(Part::assistance)(e) && e.region == Region::upper_pull;
    };
    choose.add(false, pull);
    for (int more = 0; more < 3; ++more)
        choose.add(false, fresh(Part::assistance));
    choose.add(false, fresh(Part::speed));
    choose.add(false, fresh(Part::shoulder));
    choose.add(false, fresh(Part::trunk));
}

} // namespace

// 1 to 3 sets under the youth rules [Faigenbaum2009] (from memory); the rest are proposals of this project,
// kept in the region where more sets a week still bring a little more strength [Ralston2017].
int most_sets(Part part, Loading loading) {
    if (part == Part::mobility)
        return 2;
    if (loading == Loading::youth || part == Part::shoulder || part == Part::trunk)
        return 3;
    if (loading == Loading::novice || part != Part::main_lift)
        return 4;
    return 5;
}

std::vector<SessionTemplate> choose_exercises(const BlockRequest& request, const AllowedExercises& allowed,
                                              int sessions, const std::vector<SessionTemplate>& meso_before) {
    Chooser choose(request, allowed, meso_before);
    std::vector<SessionTemplate> week;
    for (int session = 0; session < sessions; ++session) {
        const Focus focus = session % 2 == 0 || sessions == 2 ? Focus::legs : Focus::upper;
        const Ready ready = kept_ready(session);
        choose.begin_session();
        add_first_main(choose, focus);
        choose.add(true, ready[0]);
        choose.add(true, ready[1]);
        choose.add(true, of_part(Part::speed));
        add_second_main(choose);
        choose.add(true, ready[2]);
        choose.add(true, ready[3]);
        add_optional(choose, focus);
        week.push_back(choose.end_session());
    }
    return week;
}

} // namespace amentum
