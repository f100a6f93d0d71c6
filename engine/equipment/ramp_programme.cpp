#include "equipment/ramp_programme.h"

#include "equipment/ramp_room.h"

#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace amentum {
namespace {

constexpr std::size_t most_states = 400'000, usual_states = 2'000;

struct State {
    std::size_t from, to;
    PlateCounts held;
    friend bool operator==(const State&, const State&) = default;
};
struct HashOfState {
    std::size_t operator()(const State& s) const { return HashOfCounts{}(s.held) * 31 + s.from * 37 + s.to; }
};

// What was best in a state: a choice of the one set, a choice of each of two, a split after a set, or a further plate.
enum class Step { choice, pair, split, plate, given_up };
struct Best {
    RampCost cost; // given up: the intervals are the limit that was not enough
    Step step;
    std::size_t which;
};

class Programme {
public:
    Programme(const ChoicesOfSets& choices, const std::vector<ExactMass>& each)
        : choices_(choices), each_(each), rooms_(choices) {
        best_.reserve(usual_states);
        alone_.resize(choices.size(), std::vector<RampCost>(choices.size()));
        for (std::size_t from = 0; from < choices.size(); ++from) {
            RampCost most{};
            for (std::size_t to = from; to < choices.size(); ++to) {
                const RampCost least = least_of(choices[to]);
                most = {0, std::max(most.intervals, least.intervals), std::max(most.moved, least.moved)};
                alone_[from][to] = most;
            }
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
    static RampCost least_of(const std::vector<RampChoice>& set) {
        RampCost least{0, set.front().count, set.front().mass};
        for (const auto& choice : set) {
            least.intervals = std::min(least.intervals, choice.count);
            least.moved = std::min(least.moved, choice.mass);
        }
        return least;
    }
    bool ran_out() const { return best_.size() > most_states; }

    // Each set alone, and all of them in any order on the sleeve, need this much more than is held.
    RampCost at_least(std::size_t from, std::size_t to, int held, ExactMass held_mass) const {
        return {0, std::max({0, rooms_.least(from, to) - held, alone_[from][to].intervals - held}),
                std::max<ExactMass>(0, alone_[from][to].moved - held_mass)};
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

    // Two sets need no search: what both choices have goes on once, under the rest.
    Best choose_two(std::size_t set, const PlateCounts& held, ExactMass held_mass, int limit) {
        Best best{{0, limit, 0}, Step::given_up, 0};
        const int count = held.plates();
        const auto &first = choices_[set], &second = choices_[set + 1];
        if (rooms_.least(set, set + 1) - count > limit)
            return best;
        seconds_.clear();
        for (const auto& choice : second)
            if (choice.count - count <= limit && held.within(choice.plates))
                seconds_.push_back(&choice);
        for (std::size_t a = 0; a < first.size(); ++a) {
            if (first[a].count - count + rooms_.least_in_next(set, a) > limit ||
                !held.within(first[a].plates))
                continue;
            for (const RampChoice* then : seconds_) {
                const PlateCounts& plates = then->plates;
                const int intervals = first[a].count - count + plates.without(first[a].plates);
                if (intervals > limit)
                    continue;
                if (best.step != Step::given_up && best.cost.lacking == 0 && intervals > best.cost.intervals)
                    continue; // cannot be better, whatever its mass
                const PlateCounts both = plates.met_with(first[a].plates);
                const RampCost cost{first[a].lacking + then->lacking, intervals,
                                    first[a].mass + then->mass - mass_of(both) - held_mass};
                if (best.step == Step::given_up || cost < best.cost)
                    best = {cost, Step::pair,
                            a * second.size() + static_cast<std::size_t>(then - second.data())};
            }
        }
        return best;
    }

    ExactMass mass_of(const PlateCounts& plates) const {
        ExactMass mass = 0;
        for (std::size_t kind = 0; kind < each_.size(); ++kind)
            mass += plates.of[kind] * each_[kind];
        return mass;
    }

    Best best(std::size_t from, std::size_t to, const PlateCounts& held, ExactMass held_mass, int limit,
              const OpenSets* among = nullptr) {
        if (from == to)
            return choose(from, held, held_mass, limit);
        // A reference into an unordered map outlives what is put in beside it. A new state is one given up below 0.
        Best& known = best_.try_emplace({from, to, held}, Best{{0, -1, 0}, Step::given_up, 0}).first->second;
        if (known.step != Step::given_up || limit <= known.cost.intervals)
            return known.cost.intervals <= limit && known.step != Step::given_up
                       ? known
                       : Best{{0, limit, 0}, Step::given_up, 0};
        if (!ran_out())
            known = search(from, to, held, held_mass, limit, among);
        return known;
    }

    Best search(std::size_t from, std::size_t to, const PlateCounts& held, ExactMass held_mass, int limit,
                const OpenSets* among) {
        if (to == from + 1)
            return choose_two(from, held, held_mass, limit);
        const std::size_t mark = rooms_.mark();
        const Best found = search_more(from, to, held, held_mass, limit, among);
        rooms_.forget_after(mark);
        return found;
    }

    Best search_more(std::size_t from, std::size_t to, const PlateCounts& held, ExactMass held_mass,
                     int limit, const OpenSets* among) {
        Best found{{0, limit, 0}, Step::given_up, 0};
        const int count = held.plates();
        OpenSets open;
        const RampRoom room = rooms_.look(from, to, held, limit + count, among, open);
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
            const Best inner = best(from, to, more, mass, limit - 1, &open);
            if (inner.step != Step::given_up)
                consider(inner.cost + plate, Step::plate, kind);
        }
        for (std::size_t m = from; m < to && !sure; ++m) {
            const RampCost later = at_least(m + 1, to, count, held_mass);
            if (room.up_to[m] - count + std::max(later.intervals, room.starting[m + 1] - count) > limit)
                continue;
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
        case Step::choice:
            put_on(from, choices_[from][taken.which].plates, held, stack, stacks);
            break;
        case Step::pair: {
            const PlateCounts& first = choices_[from][taken.which / choices_[to].size()].plates;
            const PlateCounts& second = choices_[to][taken.which % choices_[to].size()].plates;
            const PlateCounts both = first.met_with(second);
            std::vector<std::size_t> shared = stack;
            for (std::size_t kind = 0; kind < each_.size(); ++kind)
                shared.insert(shared.end(), both.of[kind] - held.of[kind], kind);
            put_on(from, first, both, shared, stacks);
            put_on(to, second, both, shared, stacks);
            break;
        }
        case Step::given_up:
            assert(false);
        }
    }

    // The set's plates: those held, in their order, and the rest outside them, heaviest first.
    void put_on(std::size_t set, const PlateCounts& plates, const PlateCounts& held,
                const std::vector<std::size_t>& stack, RampStacks& stacks) const {
        auto& of_set = stacks.sets[set];
        of_set = stack;
        for (std::size_t kind = 0; kind < each_.size(); ++kind)
            of_set.insert(of_set.end(), plates.of[kind] - held.of[kind], kind);
        stacks.used = stacks.used.joined_with(plates);
    }

    const ChoicesOfSets& choices_;
    const std::vector<ExactMass>& each_;
    RampRooms rooms_;
    std::vector<std::vector<RampCost>> alone_; // [from][to]: the most that one of these sets needs by itself
    std::unordered_map<State, Best, HashOfState> best_;
    std::vector<const RampChoice*> seconds_; // of choose_two()
};

} // namespace

ProgrammeAnswer solve_ramp_programme(const ChoicesOfSets& choices, const std::vector<ExactMass>& each,
                                     int most_intervals) {
    return Programme(choices, each).solve(most_intervals);
}

} // namespace amentum
