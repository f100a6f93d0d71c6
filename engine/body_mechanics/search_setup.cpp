#include "body_mechanics/search_setup.h"

#include "body_mechanics/lift_settings.h"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr int steps = 60;
constexpr double none = std::numeric_limits<double>::quiet_NaN();

Setup with(const Setup& from, Varied varied, double value) {
    Setup setup = from;
    const auto setting = setting_varied(varied);
    if (!setting) {
        setup.load = Mass::kilograms(value);
        return setup;
    }
    if (varied == Varied::trunk_lean) // the other lean, which balance now finds
        setup.shin_lean.reset();
    if (varied == Varied::shin_lean) {
        setup.trunk_lean.reset();
        if (from.lift == Lift::hex_bar_deadlift || from.lift == Lift::straight_bar_deadlift)
            setup.knee.reset();
    }
    put_setting(setup, *setting, value);
    return setup;
}

double asked_from(const Setup& from, Varied varied) {
    const auto setting = setting_varied(varied);
    return setting ? setting_value(from, *setting).value_or(none) : from.load.kilograms();
}

std::optional<double> value_of(const Pose& pose, Target target) {
    switch (target) {
    case Target::knee_angle:
        return pose.knee() / degree;
    case Target::hip_angle:
        return pose.hip() / degree;
    case Target::shin_angle:
        return pose.shin / degree;
    case Target::trunk_angle:
        return pose.trunk / degree;
    case Target::hip_share:
        return pose.hip_share();
    case Target::knee_moment:
        return pose.lead->knee / pose.legs;
    case Target::hip_moment:
        return pose.lead->hip / pose.legs;
    }
    return std::nullopt;
}

double close_enough(Varied varied) {
    return varied == Varied::load                                        ? 0.01
           : varied == Varied::trunk_lean || varied == Varied::shin_lean ? 0.01
                                                                         : 1e-4;
}

class Search {
public:
    Search(const Body& body, const Setup& from, const MotionLimits& limits, const Wanted& wanted)
        : body_(body), from_(from), limits_(limits), wanted_(wanted) {}

    Result<Found> run() {
        walk();
        if (std::isnan(nearest_at_))
            return Refusal{RefusalCode::no_such_posture,
                           "No posture stands anywhere in this range. " + why_not(wanted_.low),
                           std::string(word(wanted_.varied)), "", "a range this body can stand in"};
        const bool reached = !crossings_.empty();
        const double at = reached ? chosen() : nearest_at_;
        const Setup setup = with(from_, wanted_.varied, at);
        auto pose = solve_pose(body_, setup);
        if (!pose)
            return pose.refusal();
        const double value = *value_of(*pose, wanted_.target);
        return Found{reached, at, value, setup, *std::move(pose), reached ? "" : stopped_by()};
    }

private:
    double miss(double x) const {
        const auto pose = solve_pose(body_, with(from_, wanted_.varied, x));
        if (!pose || !beyond_motion(*pose, limits_).empty())
            return none;
        const auto value = value_of(*pose, wanted_.target);
        return value ? *value - wanted_.value : none;
    }

    double noted(double x) {
        const double value = miss(x);
        if (!std::isnan(value) && !(std::abs(value) >= nearest_miss_)) {
            nearest_miss_ = std::abs(value);
            nearest_at_ = x;
        }
        return value;
    }

    void walk() {
        double before = noted(wanted_.low), x_before = wanted_.low;
        double earlier = none, x_earlier = none;
        for (int i = 1; i <= steps; ++i) {
            const double x = wanted_.low + (wanted_.high - wanted_.low) * i / steps, now = noted(x);
            if (!std::isnan(before) && !std::isnan(now))
                close_in(x_before, x, before, now);
            else if (!std::isnan(before))
                to_edge(x_before, x, before);
            else if (!std::isnan(now))
                to_edge(x, x_before, now);
            if (std::abs(before) < std::abs(earlier) && std::abs(before) < std::abs(now))
                to_turn(x_earlier, x, earlier, now);
            earlier = before;
            x_earlier = x_before;
            before = now;
            x_before = x;
        }
    }

    // The value came near and turned away again: the nearest lies between, or two crossings in one step.
    void to_turn(double a, double b, double f_a, double f_b) {
        if (!(f_a * f_b > 0))
            return;
        const double side = f_a > 0 ? 1 : -1;
        std::uintmax_t most = 40;
        const auto [x, least] = boost::math::tools::brent_find_minima(
            [&](double at) {
                const double value = miss(at);
                return std::isnan(value) ? std::numeric_limits<double>::max() : side * value;
            },
            a, b, 20, most);
        const double value = noted(x);
        if (least >= 0 || std::isnan(value))
            return;
        close_in(a, x, f_a, value);
        close_in(x, b, value, f_b);
    }

    void close_in(double a, double b, double f_a, double f_b) {
        if (f_a * f_b > 0)
            return;
        std::uintmax_t most = 60;
        const double tolerance = close_enough(wanted_.varied) / 100;
        const auto narrow = [tolerance](double low, double high) { return std::abs(high - low) < tolerance; };
        const auto [low, high] = boost::math::tools::toms748_solve([this](double x) { return miss(x); }, a, b,
                                                                   f_a, f_b, narrow, most);
        const double at = (low + high) / 2;
        const double slope = std::abs(f_b - f_a) / std::abs(b - a);
        if (std::abs(miss(at)) <= 100 * tolerance * slope + 1e-9) // otherwise a jump, not a crossing
            crossings_.push_back(at);
    }

    void to_edge(double with_posture, double without, double f_with) {
        const double from = with_posture, f_from = f_with;
        while (std::abs(without - with_posture) > close_enough(wanted_.varied)) {
            const double middle = (with_posture + without) / 2, value = noted(middle);
            (std::isnan(value) ? without : with_posture) = middle;
            if (!std::isnan(value))
                f_with = value;
        }
        if (with_posture != from)
            close_in(std::min(from, with_posture), std::max(from, with_posture),
                     from < with_posture ? f_from : f_with, from < with_posture ? f_with : f_from);
    }

    double chosen() const {
        const double asked = asked_from(from_, wanted_.varied);
        if (std::isnan(asked))
            return crossings_.front();
        return *std::min_element(crossings_.begin(), crossings_.end(), [&](double a, double b) {
            return std::abs(a - asked) < std::abs(b - asked);
        });
    }

    std::string why_not(double x) const {
        const auto pose = solve_pose(body_, with(from_, wanted_.varied, x));
        return pose ? beyond_motion(*pose, limits_) : pose.refusal().sentence;
    }

    // A little further on either side of the nearest setting there is no posture, no range, or nothing better.
    std::string stopped_by() const {
        const double little = 2 * close_enough(wanted_.varied);
        for (const double x : {nearest_at_ - little, nearest_at_ + little}) {
            if (x < wanted_.low - little / 4 || x > wanted_.high + little / 4)
                return "The range of the search ends there.";
            if (const std::string why = why_not(std::clamp(x, wanted_.low, wanted_.high)); !why.empty())
                return why;
        }
        return "Nothing in this range comes closer.";
    }

    const Body& body_;
    const Setup& from_;
    const MotionLimits& limits_;
    const Wanted& wanted_;
    std::vector<double> crossings_;
    double nearest_at_ = none;
    double nearest_miss_ = none;
};

std::string spoken(std::string_view word) {
    std::string words(word);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

Result<Done> check_wanted(const Setup& from, const Wanted& wanted) {
    const auto allowed = settings_of(from.lift);
    const auto setting = setting_varied(wanted.varied);
    if (setting && std::find(allowed.begin(), allowed.end(), *setting) == allowed.end())
        return Refusal{RefusalCode::method_does_not_apply,
                       "A " + spoken(word(from.lift)) + " has no " + spoken(word(wanted.varied)) +
                           " to vary.",
                       "vary", std::string(word(wanted.varied)), "a setting of this lift, or load"};
    if (from.lift == Lift::pull_up)
        return Refusal{RefusalCode::method_does_not_apply, "A pull-up has no set-up to search in the plane.",
                       "lift", "pull_up", "a lift on the feet"};
    if (!(wanted.low < wanted.high))
        return refuse_range("low", wanted.low, wanted.low, wanted.high, "", "Low must be below high.");
    if (!std::isfinite(wanted.value))
        return Refusal{RefusalCode::out_of_range, "What is wanted must be a number.", "wanted", "",
                       "degrees, a share from 0 to 1, or N m"};
    return Done{};
}

} // namespace

std::string beyond_motion(const Pose& pose, const MotionLimits& limits) {
    constexpr double slack = 1e-6;
    const auto over = [](double angle, const Angle& limit) {
        return angle / degree > limit.degrees() + slack;
    };
    if (over(pose.shin, limits.ankle))
        return limits.ankle_tested
                   ? "The shin would lean further than this ankle did in its own test."
                   : "The shin would lean further than ankles usually let it with the heel down.";
    if (over(pose.knee(), limits.knee))
        return "The knee would bend further than it usually can.";
    if (over(pose.hip(), limits.hip))
        return "The hip would bend further than it usually can.";
    if (over(pose.trunk, limits.trunk))
        return "The trunk would lean further than is usual for this.";
    return "";
}

std::optional<Setting> setting_varied(Varied varied) {
    switch (varied) {
    case Varied::stance:
        return Setting::stance;
    case Varied::pad_height:
        return Setting::pad_height;
    case Varied::box_height:
        return Setting::box_height;
    case Varied::handle_height:
        return Setting::handle_height;
    case Varied::trunk_lean:
        return Setting::trunk_lean;
    case Varied::shin_lean:
        return Setting::shin_lean;
    case Varied::load:
        return std::nullopt;
    }
    return std::nullopt;
}

Result<Found> search_setup(const Body& body, const Setup& from, const MotionLimits& limits,
                           const Wanted& wanted) {
    if (const auto checked = check_wanted(from, wanted); !checked)
        return checked.refusal();
    return Search(body, from, limits, wanted).run();
}

} // namespace amentum
