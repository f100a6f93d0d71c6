#include "throwing_workload/pitch_allowance.h"

namespace amentum {
namespace {

std::string number_of(int number, const std::string& one, const std::string& many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::string pitches(int number) {
    return number_of(number, "pitch", "pitches");
}

std::string at_ages(const PitchRule& rule) {
    return " at " + std::to_string(rule.age_low) + " to " + std::to_string(rule.age_high) + " years";
}

std::string innings(int outs) {
    const std::string thirds = outs % 3 == 0 ? "" : " " + std::to_string(outs % 3) + "/3";
    return number_of(outs, "out", "outs") + " (" + std::to_string(outs / 3) + thirds +
           (outs == 3 ? " inning)" : " innings)");
}

std::string days_to(Date first, Date last) {
    return first == last ? first.text() : first.text() + " to " + last.text();
}

std::string left(int most) {
    return most == 0 ? "none left." : std::to_string(most) + " left.";
}

// "above 35, not above 50", of a count that asks for `rest` days.
std::string band_words(const PitchRule& rule, int count, int rest) {
    const auto to = [&](int k) { return *rule.rest_to[static_cast<std::size_t>(k)]; };
    if (count > to(rest))
        return "above the last band, which ends at " + std::to_string(to(rest)) + ", so at least that many";
    const std::string not_above = "not above " + std::to_string(to(rest));
    return rest == 0 ? not_above : "above " + std::to_string(to(rest - 1)) + ", " + not_above;
}

std::string rest_words(const PitchTableOfArm& table, const LimitOfDay& limit) {
    const PitchRule& rule = *rule_on(table, *limit.because); // the row of the day pitched
    const int rest = days_of_rest_after(rule, limit.counted);
    const std::string counted = rule.last_batter == LastBatter::counts_as_reached ? " counted" : "";
    return number_of(rest, "day", "days") + " of rest after " + pitches(limit.counted) + counted + " on " +
           limit.because->text() + " (" + band_words(rule, limit.counted, rest) + at_ages(rule) +
           "): " + days_to(*limit.because + 1, *limit.because + rest) + ".";
}

std::string days_running_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    return "Pitches on " + number_of(limit.counted, "day", "days") + " running, " +
           days_to(*limit.because, day - 1) + ": at most " + std::to_string(*rule.most_days_running) +
           at_ages(rule) + ", so none on " + day.text() + ".";
}

std::string third_day_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    return "Pitches on every day from " + limit.because->text() + " to " + (day - 1).text() + ": at most " +
           pitches(*rule.third_day_max) + " on a third day running" + at_ages(rule) + "; " +
           std::to_string(limit.counted) + " thrown on " + day.text() + ", " + left(limit.most);
}

std::string second_game_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    const std::string thrown = pitches(limit.counted) + " in another game on " + day.text() + " (" +
                               std::to_string(rule.age_low) + " to " + std::to_string(rule.age_high) +
                               " years): ";
    if (rule.second_game == SecondGame::never)
        return thrown + "no pitching in two games of one day.";
    return thrown + "a second game only after a count that asks no rest, at most " +
           std::to_string(rule.rest_to[0].value_or(0)) + ".";
}

std::string caught_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    return innings(limit.counted) + " caught on " + day.text() + ": no pitching on a day of " +
           number_of(*rule.no_pitching_caught, "inning", "innings") + " caught or more" + at_ages(rule) + ".";
}

std::string innings_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    return innings(limit.counted) + " pitched in the 12 months to " + day.text() + ": at most " +
           std::to_string(*rule.yearly_innings) + " innings in 12 months" + at_ages(rule) + ".";
}

std::string daily_words(const PitchRule& rule, const LimitOfDay& limit, Date day) {
    return "At most " + pitches(rule.daily_max) + " in a day" + at_ages(rule) + "; " +
           std::to_string(limit.counted) + " thrown on " + day.text() + ", " + left(limit.most);
}

std::string game_words(const PitchRule& rule, const LimitOfDay& limit) {
    const std::string since = limit.because ? " since " + limit.because->text() : "";
    return "At most " + pitches(*rule.game_max) + " in a game" + at_ages(rule) + "; " +
           std::to_string(limit.counted) + " thrown in it" + since + ", " + left(limit.most);
}

} // namespace

std::string describe_limit(const PitchTableOfArm& table, const LimitOfDay& limit, Date day) {
    const PitchRule& rule = *rule_on(table, day);
    switch (limit.limit) {
    case PitchLimit::rest:
        return rest_words(table, limit);
    case PitchLimit::days_running:
        return days_running_words(rule, limit, day);
    case PitchLimit::third_day:
        return third_day_words(rule, limit, day);
    case PitchLimit::second_game:
        return second_game_words(rule, limit, day);
    case PitchLimit::caught:
        return caught_words(rule, limit, day);
    case PitchLimit::innings:
        return innings_words(rule, limit, day);
    case PitchLimit::daily_maximum:
        return daily_words(rule, limit, day);
    case PitchLimit::game_maximum:
        return game_words(rule, limit);
    }
    return "";
}

} // namespace amentum
