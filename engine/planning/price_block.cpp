#include "planning/price_block.h"

#include "planning/exact_plan.h"
#include "planning/state_problem.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace amentum {
namespace {

struct Counted {
    int meso;
    int session;
    std::size_t choice;
    int sets;
};

struct Weekly { // of an average full week of one meso
    std::vector<double> dose;
    std::vector<double> regions;
    std::vector<double> ready;
    double hard = 0, lines = 0;
};

class Pricing {
public:
    Pricing(const StatedProblem& stated, const Block& block) : problem_(stated.problem) {
        std::map<std::string, std::size_t> choice_of;
        for (std::size_t c = 0; c < problem_.choices.size(); ++c)
            choice_of[problem_.choices[c].exercise] = c;
        for (const auto& line : block.lines) {
            const auto week = static_cast<std::size_t>(line.week - 1);
            const auto choice = choice_of.find(line.exercise);
            const bool counts = line.week >= 1 && week < stated.wave.size() && !stated.wave[week].reduced &&
                                choice != choice_of.end();
            counted_.push_back(counts ? std::optional(Counted{stated.wave[week].meso, line.session,
                                                              choice->second, line.sets})
                                      : std::nullopt);
        }
    }

    // Without the lines of this exercise, session and meso, when given.
    PlanPrice price(const Counted* without = nullptr) const {
        std::vector<Weekly> weekly(problem_.mesos.size(), {std::vector<double>(problem_.qualities.size(), 0),
                                                           std::vector<double>(regions_counted, 0),
                                                           std::vector<double>(ready_groups, 0)});
        for (const auto& line : counted_)
            if (line && !(without && same_place(*line, *without)))
                add(weekly[static_cast<std::size_t>(line->meso)], *line);
        return added_up(weekly);
    }
    const std::vector<std::optional<Counted>>& counted() const { return counted_; }

private:
    static bool same_place(const Counted& a, const Counted& b) {
        return a.meso == b.meso && a.session == b.session && a.choice == b.choice;
    }

    void add(Weekly& week, const Counted& line) const {
        const Choice& what = problem_.choices[line.choice];
        const double sets =
            line.sets / double(problem_.mesos[static_cast<std::size_t>(line.meso)].full_weeks.size());
        for (std::size_t q = 0; q < week.dose.size(); ++q)
            week.dose[q] += sets * what.serves[q];
        if (what.hard) {
            week.regions[static_cast<std::size_t>(what.region)] += sets;
            week.hard += sets;
        }
        if (what.ready)
            week.ready[static_cast<std::size_t>(*what.ready)] += sets;
        week.lines += sets / line.sets;
    }

    PlanPrice added_up(const std::vector<Weekly>& weekly) const {
        const auto& costs = problem_.costs;
        PlanPrice price{std::vector<double>(problem_.qualities.size(), 0),
                        std::vector<double>(problem_.qualities.size(), 0)};
        for (std::size_t m = 0; m < weekly.size(); ++m) {
            const Weekly& week = weekly[m];
            const double part = double(problem_.mesos[m].full_weeks.size()) / problem_.full_weeks();
            for (std::size_t q = 0; q < week.dose.size(); ++q) {
                price.weekly_sets[q] += part * week.dose[q];
                price.share_of_quality[q] += part * problem_.curve.share(week.dose[q]);
            }
            price.fatigue += part * costs.fatigue_of_a_set * week.hard;
            for (std::size_t r = 0; r < week.regions.size(); ++r)
                price.fatigue += part * costs.fatigue_above *
                                 std::max(0.0, week.regions[r] - problem_.limits.regions[r].usual);
            price.lines += part * costs.line * week.lines;
            for (int g = 0; g < ready_groups; ++g)
                if (problem_.can_be_ready(g))
                    price.ready += part * costs.ready *
                                   std::max(0.0, costs.ready_sets - week.ready[static_cast<std::size_t>(g)]);
        }
        for (std::size_t q = 0; q < problem_.weights.size(); ++q)
            price.worth += 100 * problem_.weights[q] * price.share_of_quality[q];
        return price;
    }

    const BlockProblem& problem_;
    std::vector<std::optional<Counted>> counted_; // by line of the block
};

// What one more set of a line would break, or why it would not pay.
std::string held_back_by(const BlockProblem& problem, const PlanSets& plan, const Counted& line) {
    const auto m = static_cast<std::size_t>(line.meso), d = static_cast<std::size_t>(line.session - 1);
    if (d >= plan[m].size())
        return "";
    PlanSets more = plan;
    ++more[m][d][line.choice];
    const auto before = breaches(problem, plan, Mood::thought_of);
    for (const auto& breach : breaches(problem, more, Mood::thought_of))
        if (std::none_of(before.begin(), before.end(),
                         [&](const Breach& old) { return old.words == breach.words; }))
            return breach.words;
    const double gain = price_plan(problem, more).total() - price_plan(problem, plan).total();
    return gain <= 0 ? "one more set would cost more than it brings"
                     : "nothing; one more set would bring a little more";
}

} // namespace

std::optional<PricedBlock> price_block(const BlockRequest& asked, const Block& block) {
    BlockRequest request = asked;
    request.own_lines.clear();
    request.least_sets.clear();
    request.previous.reset();
    const KitLoads loads(request.kit);
    const QualityWorth worth(request);
    const AllowedExercises allowed = allowed_exercises(request, loads, worth);
    if (allowed.list.empty())
        return std::nullopt;
    const auto stated = state_problem(request, allowed, worth);
    if (!stated)
        return std::nullopt;
    const BlockProblem& problem = stated->problem;
    const Pricing pricing(*stated, block);
    PricedBlock priced{problem.qualities, problem.weights, pricing.price(), {}, {}, {}, {}};
    for (const double sets : priced.price.weekly_sets)
        priced.share_between.push_back(problem.curve.share_between(sets));
    if (const auto bound = bound_plan(problem))
        priced.bound = bound->points;
    const PlanSets plan = plan_of(*stated, block);
    priced.breaches = breaches(problem, plan);
    const double total = priced.price.total();
    std::map<std::tuple<int, int, std::size_t>, std::pair<double, std::string>> known;
    for (std::size_t i = 0; i < block.lines.size(); ++i) {
        const auto& line = pricing.counted()[i];
        const auto exercise = std::find_if(request.catalogue.begin(), request.catalogue.end(),
                                           [&](const auto& e) { return e.key == block.lines[i].exercise; });
        const double minutes = exercise == request.catalogue.end()
                                   ? 0
                                   : exercise->setup_minutes + block.lines[i].sets * exercise->set_minutes;
        if (!line) {
            priced.lines.push_back({0, minutes, ""});
            continue;
        }
        const auto [place, fresh] = known.try_emplace({line->meso, line->session, line->choice});
        if (fresh)
            place->second = {total - pricing.price(&*line).total(), held_back_by(problem, plan, *line)};
        priced.lines.push_back({place->second.first, minutes, place->second.second});
    }
    return priced;
}

} // namespace amentum
