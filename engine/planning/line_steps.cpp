// The steps of next_line.h, each in the order it is taken.
#include "planning/allowed_exercises.h"
#include "planning/line_in_hand.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double a_gram = 0.001; // kg
constexpr double estimate_slack =
    0.02; // of the load: a smaller move of the estimate changes nothing (our proposal)
constexpr int most_repetitions_more = 2; // at once (proposal of this project, no source)
constexpr const char* own_proposal = "proposal of this project, no source";

std::string percent(double share) {
    return format_shortest(std::round(1000 * share) / 10) + " %";
}

std::string repetitions_said(double repetitions) {
    const double shown = std::round(10 * std::abs(repetitions)) / 10;
    return format_shortest(shown) + (shown == 1 ? " repetition" : " repetitions");
}

std::string more_or_less(const SetDifference& difference) {
    return repetitions_said(difference.repetitions) + (difference.repetitions < 0 ? " less" : " more") +
           " than written";
}

} // namespace

void LineInHand::take_level() {
    if (given_.level.week == now_.week)
        return;
    const BlockLine* earlier = nullptr;
    for (const auto& line : given_.block.lines)
        if (line.week == given_.level.week && line.exercise == now_.exercise &&
            (!earlier || line.session == now_.session))
            earlier = &line;
    const auto before = lifted(now_);
    if (earlier && earlier->load && before && *lifted(*earlier) < *before + a_gram) {
        now_.load = earlier->load;
        now_.load_words = earlier->load_words;
        now_.intensity = earlier->intensity;
        now_.reps = earlier->reps;
        now_.reps_in_reserve = earlier->reps_in_reserve;
        say(given_.level.why.sentence, given_.level.why.source);
        return;
    }
    // Not in that week: one step of the wave, 5 % of the maximum.
    if (earlier || !before || !now_.intensity || !counts_reserve())
        return;
    const double lower = std::max(0.05, *now_.intensity - 0.05);
    if (put_load(made_not_above(*before * lower / *now_.intensity))) {
        now_.intensity = lower;
        say(given_.level.why.sentence +
                " This exercise was not in that week, so it goes back one step of the wave.",
            given_.level.why.source);
    }
}

void LineInHand::take_found_load() {
    const auto& history = given_.history;
    if (now_.load || lifted(now_) || !counts_reserve() || history.last.empty() ||
        !given_.loads.table(given_.exercise))
        return;
    const double asked = now_.reps + std::min(reserve_of(now_), most_trusted_reserve);
    std::optional<double> target;
    double heaviest = 0;
    for (const SetShown& set : shown(history.last, *history.last_written)) {
        heaviest = std::max(heaviest, set.lifted);
        const double done = set.reps + std::min(set.reserve.value_or(0), most_trusted_reserve);
        const bool reached = set.reserve || set.reps < now_.reps;
        if (!reached || done > most_repetitions_of_line || asked > most_repetitions_of_line)
            continue;
        const double allowed = set.lifted * epley_factor(done) / epley_factor(asked);
        target = std::min(target.value_or(allowed), allowed);
    }
    if (heaviest <= 0)
        return;
    const double most = given_.level.after_missed ? heaviest : heaviest * (1 + most_step_up);
    const double bounded = std::min(target.value_or(heaviest), most);
    reserve_read_ = true;
    if (put_load(made_not_above(bounded)))
        say(target
                ? "The load was to be found: last time's sets allow " + said(*target) + " for " +
                      std::to_string(now_.reps) + " with " + format_shortest(reserve_of(now_)) +
                      " in reserve, by Epley's line" +
                      (*target <= bounded          ? "."
                       : given_.level.after_missed ? ", but nothing rises after missed sessions."
                                                   : ", taken at most 10 % above the load lifted.")
                : "The load was to be found: the heaviest of last time, because no set says what was left.",
            "Epley1985, Zourdos2016, ACSM2009");
}

void LineInHand::take_reserve() {
    const auto& history = given_.history;
    if (reserve_read_ || history.last.empty() || !counts_reserve())
        return;
    const auto seen = difference(history.last, *history.last_written);
    if (!seen) {
        if (const auto beside = repetitions_beside(history.last, *history.last_written)) {
            reserve_read_ = true;
            change_repetitions_only(*beside, "Last time");
        }
        return;
    }
    reserve_read_ = true;
    if (!lifted(now_))
        return;
    switch (direction_of(*seen)) {
    case Direction::up:
        return raise(*seen, "Last time");
    case Direction::down:
        return lower(*seen, "Last time");
    case Direction::as_written:
        return say("As written: last time was within one repetition of what was written.", "Halperin2022");
    }
}

void LineInHand::raise(const SetDifference& seen, const std::string& when) {
    const std::string showed = when + " showed " + more_or_less(seen);
    if (given_.level.after_missed)
        return say("Not raised: nothing rises in the first session after missed ones, though " +
                       std::string("the last sets left more."),
                   own_proposal);
    const double here = *lifted(now_);
    double target = here * next_factor(seen, legs());
    const auto most = ceiling();
    if (most && *most < here * (1 + least_step_up))
        return say("As written: " + showed +
                       ", but today's estimate does not carry more at this share of it.",
                   own_proposal);
    target = std::min({target, most.value_or(target), std::max(here, seen.lifted * (1 + most_step_up))});
    const auto made = made_not_above(target);
    const auto next =
        given_.loads.table(given_.exercise)
            ? given_.loads.table(given_.exercise)->choose(Mass::kilograms(here - body() + a_gram)).above
            : std::nullopt;
    if (made && made->total.kilograms() > here - body() + a_gram) {
        put_load(made);
        return say(showed + ": Epley's line gives " + said(target) + ", made not above.",
                   "ACSM2009, Epley1985, Zourdos2016");
    }
    const int more = std::min(most_repetitions_more, static_cast<int>(std::floor(seen.repetitions + 1e-9)));
    const std::string coarse =
        next ? "the next load here is " + percent((next->total.kilograms() + body()) / here - 1) + " heavier"
             : "there is no heavier load here";
    if (put_reps(now_.reps + more))
        return say(showed + ": repetitions before load, because " + coarse + ".", "ACSM2009");
    say("As written: " + showed + ", but " + coarse + " and these are the most repetitions of such a line.",
        "ACSM2009");
}

void LineInHand::lower(const SetDifference& seen, const std::string& when) {
    const double here = *lifted(now_);
    const double target = here * next_factor(seen, legs());
    const std::string showed = seen.failed ? when + " a set failed" : when + " showed " + more_or_less(seen);
    const std::string source = seen.failed ? own_proposal : "Epley1985, Zourdos2016";
    const auto made = made_not_above(target);
    const bool coarse = !made || made->total.kilograms() + body() < here * (1 - most_step_up);
    const int fewer = std::max(1, static_cast<int>(std::ceil(-seen.repetitions - 1e-9)));
    const auto fewest = repetition_range(given_.exercise.part, loading_).fewest;
    if (coarse && now_.reps - fewer >= fewest && put_reps(now_.reps - fewer))
        return say(showed + ": fewer repetitions, because the next lighter load here is far below " +
                       said(target) + ".",
                   source);
    if (put_load(made))
        return say(showed + ": " + said(target) + " by Epley's line, made not above.", source);
    if (put_reps(now_.reps - fewer))
        return say(showed + ", and there is no lighter load here: fewer repetitions.", source);
    say("As written: " + showed +
            ", but this kit has no lighter load and a line no fewer repetitions. "
            "Take an easier exercise.",
        source);
}

void LineInHand::change_repetitions_only(double repetitions, const std::string& when) {
    if (std::abs(repetitions) < 1)
        return say("As written: last time was within one repetition of what was written.", "Halperin2022");
    const SetDifference seen{1, repetitions, false, 0};
    if (repetitions > 0 && given_.level.after_missed)
        return say("Not raised: nothing rises in the first session after missed ones.", own_proposal);
    const int step = static_cast<int>(std::clamp(repetitions, -3.0, double{most_repetitions_more}));
    if (put_reps(now_.reps + step))
        return say(when + " showed " + more_or_less(seen) + ": repetitions follow, since no load does.",
                   "ACSM2009");
    say("As written: " + when + " showed " + more_or_less(seen) + ", but such a line has no " +
            (repetitions > 0 ? "more" : "fewer") +
            " repetitions. A harder or easier variation is the coach's to choose.",
        own_proposal);
}

void LineInHand::take_estimate() {
    const auto maximum = lower_maximum(given_.today, given_.exercise);
    const auto here = lifted(now_);
    if (reserve_read_ || !maximum || !now_.intensity || !here || given_.exercise.means == LoadMeans::ball)
        return;
    const double target = maximum->kilograms() * *now_.intensity;
    const std::string now_gives =
        "Today's estimate, its lower side, gives " + said(target) + " at " + percent(*now_.intensity);
    if (target < *here * (1 - estimate_slack)) {
        if (put_load(made_not_above(target)))
            say(now_gives + ", less than when the block was written.", "Epley1985");
        return;
    }
    if (given_.level.after_missed)
        return;
    const auto made = made_not_above(std::min(target, *here * (1 + most_step_up)));
    if (made && made->total.kilograms() + body() > *here + a_gram && put_load(made))
        say(now_gives + ", more than when the block was written" +
                (target > *here * (1 + most_step_up) ? "; 10 % at once at most." : "."),
            "ACSM2009");
}

bool LineInHand::put_lighter_ball() {
    std::optional<MadeLoad> lighter;
    for (const auto& ball : given_.loads.balls_for(given_.exercise)) // lightest first
        if (now_.load && ball.total.kilograms() < now_.load->kilograms() - a_gram)
            lighter = ball;
    return put_load(lighter);
}

bool LineInHand::take_ball_of_today() {
    const auto& today = given_.history.today;
    if (today.empty() || !today.back()->load || !now_.load)
        return false;
    const double thrown = today.back()->load->kilograms();
    if (thrown > now_.load->kilograms() - a_gram)
        return false;
    for (const auto& ball : given_.loads.balls_for(given_.exercise))
        if (std::abs(ball.total.kilograms() - thrown) < a_gram)
            return put_load(ball);
    return false;
}

void LineInHand::take_ball() {
    const std::string source = own_proposal + std::string(", near HernandezBelmonte2022");
    const auto& history = given_.history;
    if (given_.exercise.means != LoadMeans::ball)
        return;
    if (take_ball_of_today())
        say("The last set today was thrown with a lighter ball: it stays for the rest.", source);
    if (const auto fall = fall_within(history.today); fall && step_of(fall->share) != BallStep::as_written) {
        const std::string seen =
            "The ball was " + percent(fall->share) + " slower than the fastest set today";
        if (step_of(fall->share) == BallStep::lighter && put_lighter_ball())
            return say(seen + ": a lighter ball for the rest.", source);
        stopped_ = true;
        return say(seen + (step_of(fall->share) == BallStep::stop
                               ? ": this throw ends for today."
                               : ", and there is no lighter ball: this throw ends for today."),
                   source);
    }
    const auto fall = fall_between(history.before, history.last);
    if (!history.today.empty() || !fall || step_of(fall->share) == BallStep::as_written)
        return;
    const std::string seen = "The ball was " + percent(fall->share) + " slower last time than before";
    say(seen + (put_lighter_ball() ? ": a lighter ball."
                                   : ", and there is no lighter ball: end it when it stays slow."),
        source);
}

void LineInHand::take_sets_of_today() {
    if (given_.history.today.empty() || !counts_reserve())
        return;
    const auto seen = difference(given_.history.today, now_);
    if (seen && lifted(now_) && direction_of(*seen) == Direction::down)
        lower(*seen, "Today");
}

} // namespace amentum
