#include "equipment/ramp_programme.h"

#include "equipment/ramp_bound.h"

#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace amentum {
namespace {

constexpr std::size_t most_states = 400'000;

struct State {
    std::size_t from, to;
    PlateCounts held;
    friend bool operator==(const State&, const State&) = default;
};
struct HashOfState {
    std::size_t operator()(const State& s) const { return HashOfCounts{}(s.held) * 31 + s.from * 37 + s.to; }
};

// What was best in a state: a choice of the one set, a split after a set, or a further plate.
enum class Step { choice, split, plate, given_up };
struct Best {
    RampCost cost; // given up: the intervals are the limit that was not enough
    Step step;
    std::size_t which;
};

class Programme {
public:
    Programme(const ChoicesOfSets& choices, const std::vector<ExactMass>& each)
        : choices_(choices), each_(each), put_on_(least_put_on(choices)) {
        for (const auto& set : choices) {
            RampCost least{0, set.front().count, set.front().mass};
            for (const auto& choice : set) {
                least.intervals = std::min(least.intervals, choice.count);
                least.moved = std::min(least.moved, choice.mass);
            }
            least_.push_back(least);
        }
    }

    ProgrammeAnswer solve(int limit) {
        const Best whole = best(0, choices_.size() - 1, {}, 0, limit);
        if (whole.step == Step::given_up || ran_out())
            return {{}, !ran_out()};
        RampStacks stacks{whole.cost, std::vector<std::vector<std::size_t>>(choices_.size()), {}, false};
        std::vector<std::size_t> held;
        build(0, choices_.size() - 1, {}, whole.cost.intervals, held, stacks);
        return {std::move(stacks), true};
    }

private:
    bool ran_out() const { return best_.size() > most_states; }

    // Each set alone, and all of them in any order on the sleeve, need this much more than is held.
    RampCost at_least(std::size_t from, std::size_t to, int held, ExactMass held_mass) const {
        RampCost least{0, std::max(0, put_on_[from][to] - held), 0};
        for (std::size_t i = from; i <= to; ++i) {
            least.intervals = std::max(least.intervals, least_[i].intervals - held);
            least.moved = std::max(least.moved, least_[i].moved - held_mass);
        }
        return least;
    }

    struct Room {
        PlateCounts most; // of each kind what some choice of every set holds together with what is on already
        PlateCounts
            sure;   // of each kind what every choice of every set has: best put on now, once for all of them
        int fewest; // plates on in the sets from..to at least, whatever the order, what is held among them
    };
    Room room(std::size_t from, std::size_t to, const PlateCounts& held) const {
        Room found{{}, {}, 0};
        found.most.of.fill(PlateCounts::most_of_a_kind);
        found.sure.of.fill(PlateCounts::most_of_a_kind);
        std::vector<const RampChoice*> before, open;
        std::vector<int> needs, next;
        for (std::size_t i = from; i <= to; ++i) {
            open.clear();
            next.clear();
            PlateCounts of_set;
            for (const auto& choice : choices_[i]) {
                if (!held.within(choice.plates))
                    continue;
                of_set = of_set.joined_with(choice.plates);
                found.sure = found.sure.met_with(choice.plates);
                open.push_back(&choice);
                int need = i == from ? choice.count : no_limit;
                for (std::size_t a = 0; a < before.size(); ++a)
                    if (needs[a] < need)
                        need = std::min(need, needs[a] + choice.plates.without(before[a]->plates));
                next.push_back(need);
            }
            found.most = found.most.met_with(of_set);
            std::swap(before, open);
            std::swap(needs, next);
        }
        found.fewest = *std::min_element(needs.begin(), needs.end());
        return found;
    }

    std::optional<std::size_t> first_sure(const PlateCounts& sure, const PlateCounts& held) const {
        for (std::size_t kind = 0; kind < each_.size(); ++kind)
            if (sure.of[kind] > held.of[kind])
                return kind;
        return std::nullopt;
    }

    Best choose(std::size_t set, const PlateCounts& held, ExactMass held_mass, int limit) const {
        Best best{{0, limit, 0}, Step::given_up, 0};
        const int count = held.plates();
        for (std::size_t c = 0; c < choices_[set].size(); ++c) {
            const auto& choice = choices_[set][c];
            if (choice.count - count > limit || !held.within(choice.plates))
                continue;
            const RampCost cost{choice.lacking, choice.count - count, choice.mass - held_mass};
            if (best.step == Step::given_up || cost < best.cost)
                best = {cost, Step::choice, c};
        }
        return best;
    }

    Best best(std::size_t from, std::size_t to, const PlateCounts& held, ExactMass held_mass, int limit) {
        if (from == to)
            return choose(from, held, held_mass, limit);
        const auto known = best_.find({from, to, held});
        if (known != best_.end()) {
            const Best& before = known->second;
            if (before.step != Step::given_up || limit <= before.cost.intervals)
                return before.cost.intervals <= limit && before.step != Step::given_up
                           ? before
                           : Best{{0, limit, 0}, Step::given_up, 0};
        }
        const Best found =
            ran_out() ? Best{{0, limit, 0}, Step::given_up, 0} : search(from, to, held, held_mass, limit);
        best_[{from, to, held}] = found;
        return found;
    }

    Best search(std::size_t from, std::size_t to, const PlateCounts& held, ExactMass held_mass, int limit) {
        Best found{{0, limit, 0}, Step::given_up, 0};
        const int count = held.plates();
        const Room room = this->room(from, to, held);
        if (room.fewest - count > limit)
            return found;
        // `least`: what the step costs at least; a step that cannot be better is not looked into.
        const auto worth_trying = [&](const RampCost& least) {
            return least.intervals <= limit && (found.step == Step::given_up || least < found.cost);
        };
        const auto consider = [&](const RampCost& cost, Step step, std::size_t which) {
            if (found.step != Step::given_up && !(cost < found.cost))
                return;
            found = {cost, step, which};
            if (cost.lacking == 0)
                limit = cost.intervals;
        };
        const auto sure = first_sure(room.sure, held);
        for (std::size_t kind = 0; kind < each_.size(); ++kind) {
            const RampCost plate{0, 1, each_[kind]};
            const ExactMass mass = held_mass + each_[kind];
            if (sure && kind != *sure)
                continue;
            if (room.most.of[kind] <= held.of[kind] ||
                !worth_trying(at_least(from, to, count + 1, mass) + plate))
                continue;
            PlateCounts more = held;
            ++more.of[kind];
            const Best inner = best(from, to, more, mass, limit - 1);
            if (inner.step != Step::given_up)
                consider(inner.cost + plate, Step::plate, kind);
        }
        for (std::size_t m = from; m < to && !sure; ++m) {
            const RampCost later = at_least(m + 1, to, count, held_mass);
            if (!worth_trying(at_least(from, m, count, held_mass) + later))
                continue;
            const Best first = best(from, m, held, held_mass, limit - later.intervals);
            if (first.step == Step::given_up || !worth_trying(first.cost + later))
                continue;
            const Best second = best(m + 1, to, held, held_mass, limit - first.cost.intervals);
            if (second.step != Step::given_up)
                consider(first.cost + second.cost, Step::split, m);
        }
        return found;
    }

    void build(std::size_t from, std::size_t to, const PlateCounts& held, int limit,
               std::vector<std::size_t>& stack, RampStacks& stacks) {
        ExactMass held_mass = 0;
        for (const auto kind : stack)
            held_mass += each_[kind];
        const Best taken = best(from, to, held, held_mass, limit);
        switch (taken.step) {
        case Step::split:
            build(from, taken.which, held, limit, stack, stacks);
            build(taken.which + 1, to, held, limit, stack, stacks);
            break;
        case Step::plate: {
            PlateCounts more = held;
            ++more.of[taken.which];
            stack.push_back(taken.which);
            build(from, to, more, limit, stack, stacks);
            stack.pop_back();
            break;
        }
        case Step::choice: {
            const PlateCounts& plates = choices_[from][taken.which].plates;
            stacks.sets[from] = stack;
            for (std::size_t kind = 0; kind < each_.size(); ++kind)
                stacks.sets[from].insert(stacks.sets[from].end(), plates.of[kind] - held.of[kind], kind);
            stacks.used = stacks.used.joined_with(plates);
            break;
        }
        case Step::given_up:
            assert(false);
        }
    }

    const ChoicesOfSets& choices_;
    const std::vector<ExactMass>& each_;
    std::vector<std::vector<int>> put_on_; // least, of the sets from..to, whatever the order on the sleeve
    std::vector<RampCost> least_;          // of each set alone
    std::unordered_map<State, Best, HashOfState> best_;
};

} // namespace

ProgrammeAnswer solve_ramp_programme(const ChoicesOfSets& choices, const std::vector<ExactMass>& each,
                                     int most_intervals) {
    return Programme(choices, each).solve(most_intervals);
}

} // namespace amentum
