#include "planning/line_in_hand.h"

#include "equipment/load_words.h"
#include "planning/allowed_exercises.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double a_gram = 0.001; // kg

} // namespace

LineInHand::LineInHand(const LineCase& given)
    : given_(given), loading_(loading_of(given.today.athlete, given.block.start)), now_(given.written) {}

// ---- what the line is

bool LineInHand::counts_reserve() const {
    const auto& exercise = given_.exercise;
    return exercise.part != Part::speed && exercise.part != Part::mobility &&
           exercise.means != LoadMeans::ball && exercise.pattern != "carry";
}

bool LineInHand::legs() const {
    return given_.exercise.region == Region::legs || given_.exercise.region == Region::whole_body;
}

double LineInHand::body() const {
    return moves_body_mass(given_.exercise) && given_.today.body_mass ? given_.today.body_mass->value : 0;
}

double LineInHand::reserve_of(const BlockLine& line) const {
    return line.reps_in_reserve.value_or(reserve_wanted(given_.exercise.part, loading_));
}

std::optional<double> LineInHand::lifted(const BlockLine& line) const {
    if (line.load)
        return line.load->kilograms() + body();
    const bool body_alone = body() > 0 && line.load_words.starts_with("body mass");
    return body_alone ? std::optional(body()) : std::nullopt;
}

std::vector<SetShown> LineInHand::shown(const std::vector<const SetDone*>& sets,
                                        const BlockLine& as_written) const {
    std::vector<SetShown> shown;
    for (const SetDone* set : sets) {
        const auto load = set->load ? std::optional(set->load->kilograms() + body()) : lifted(as_written);
        if (set->reps && load)
            shown.push_back({*load, *set->reps, set->reps_in_reserve});
    }
    return shown;
}

std::optional<SetDifference> LineInHand::difference(const std::vector<const SetDone*>& sets,
                                                    const BlockLine& as_written) const {
    const auto load = lifted(as_written);
    if (!load || !counts_reserve())
        return std::nullopt;
    return measure_difference({*load, as_written.reps, reserve_of(as_written)}, shown(sets, as_written));
}

// Without a load, or above the reach of Epley's line: repetitions done and left against those written.
std::optional<double> LineInHand::repetitions_beside(const std::vector<const SetDone*>& sets,
                                                     const BlockLine& as_written) const {
    std::vector<double> beside;
    const double asked = as_written.reps + std::min(reserve_of(as_written), most_trusted_reserve);
    for (const SetDone* set : sets) {
        const bool same_load =
            !set->load || !as_written.load || std::abs((*set->load - *as_written.load).kilograms()) < a_gram;
        const bool short_of = set->reps && *set->reps < as_written.reps;
        if (set->reps && same_load && (set->reps_in_reserve || short_of))
            beside.push_back(*set->reps + std::min(set->reps_in_reserve.value_or(0), most_trusted_reserve) -
                             asked);
    }
    if (beside.empty())
        return std::nullopt;
    std::sort(beside.begin(), beside.end());
    return beside[(beside.size() - 1) / 2];
}

std::optional<double> LineInHand::ceiling() const {
    const auto& test = given_.exercise.load_test;
    const auto maximum = test ? given_.today.maxima.find(*test) : given_.today.maxima.end();
    if (!now_.intensity || maximum == given_.today.maxima.end())
        return std::nullopt;
    return maximum->second.value * given_.exercise.load_share * *now_.intensity;
}

// ---- what can be put in its place

std::optional<MadeLoad> LineInHand::made_not_above(double lifted_kg) const {
    const LoadTable* table = given_.loads.table(given_.exercise);
    double target = lifted_kg - body();
    if (given_.exercise.heaviest)
        target = std::min(target, given_.exercise.heaviest->kilograms());
    if (!table || target <= 0)
        return std::nullopt;
    const auto made = table->choose(Mass::kilograms(target + 1e-9)).not_above;
    return made && KitLoads::suits(given_.exercise, made->total) ? made : std::nullopt;
}

bool LineInHand::put_load(const std::optional<MadeLoad>& made) {
    if (!made || (now_.load && std::abs((made->total - *now_.load).kilograms()) < a_gram))
        return false;
    now_.load = made->total;
    now_.load_words = made->words;
    return true;
}

bool LineInHand::put_reps(int reps) {
    const auto [fewest, most] = repetition_range(given_.exercise.part, loading_);
    const int bounded = reps > now_.reps ? std::max(now_.reps, std::min(reps, most))
                                         : std::min(now_.reps, std::max(reps, fewest));
    if (bounded == now_.reps)
        return false;
    now_.reps = bounded;
    return true;
}

std::string LineInHand::said(double lifted_kg) const {
    return describe_mass(Mass::kilograms(std::round(10 * (lifted_kg - body())) / 10), given_.today.kit.unit);
}

void LineInHand::say(std::string sentence, std::string source) {
    why_.push_back({std::move(sentence), std::move(source)});
}

NextLine LineInHand::finished() && {
    const auto& history = given_.history;
    const int done = static_cast<int>(history.today.size());
    const int left = stopped_ ? 0 : std::max(0, now_.sets - done);
    const BlockLine& was = given_.written;
    const bool changed = stopped_ || now_.reps != was.reps || now_.load != was.load ||
                         now_.load_words != was.load_words || now_.reps_in_reserve != was.reps_in_reserve;
    if (why_.empty()) {
        const bool silent = !history.last.empty() && counts_reserve() && !reserve_read_;
        say(silent                 ? "As written: no set of last time says what was left in reserve."
            : history.last.empty() ? "As written: no set of it is logged in this block yet."
                                   : "As written.",
            "");
    }
    return {was, now_, history.last, history.today, std::move(why_), changed, left};
}

} // namespace amentum
