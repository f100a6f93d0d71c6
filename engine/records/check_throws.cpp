#include "records/check_throws.h"

#include "records/limits.h"

#include <array>

namespace amentum {
namespace {

Result<Done> check_within(const char* field, const std::optional<int>& given, Limits limits,
                          const char* why = "") {
    if (given && (*given < limits.low || *given > limits.high))
        return refuse_range(field, *given, limits.low, limits.high, "", why);
    return Done{};
}

struct Field {
    const char* name;
    std::string given; // empty: nothing
};

std::string said(const std::optional<int>& x) {
    return x ? std::to_string(*x) : "";
}

// What a day without throws cannot have.
std::array<Field, 11> fields_of_throws(const ThrowEntry& t) {
    return {{{"effort", t.effort ? "an effort" : ""},
             {"speed", t.speed ? "a speed" : ""},
             {"distance", t.distance ? "a distance" : ""},
             {"ball_mass", t.ball_mass ? "a ball" : ""},
             {"team", t.team},
             {"game", t.game},
             {"outs", said(t.outs)},
             {"before_last_batter", said(t.before_last_batter)},
             {"outs_caught", said(t.outs_caught)},
             {"accuracy", t.accuracy},
             {"device", t.device}}};
}

Result<Done> check_day_without(const ThrowEntry& t) {
    if (t.count != 0)
        return Refusal{RefusalCode::out_of_range, "A day without throws (none) has the count 0.", "count",
                       std::to_string(t.count), "0"};
    if (t.occasion != 1)
        return Refusal{RefusalCode::out_of_range, "A day without throws (none) has one occasion.", "occasion",
                       std::to_string(t.occasion), "1"};
    for (const auto& field : fields_of_throws(t))
        if (!field.given.empty())
            return Refusal{RefusalCode::out_of_range,
                           "A day without throws (none) has no " + std::string(field.name) +
                               ": only soreness and a note.",
                           field.name, field.given, "nothing"};
    return Done{};
}

Result<Done> check_belongs(const char* field, const std::optional<int>& given, const ThrowEntry& t,
                           ThrowSetting where) {
    if (given && t.setting != where)
        return Refusal{RefusalCode::out_of_range,
                       std::string(field) + " belongs to entries of " + word(where) + ", not of " +
                           word(t.setting) + ".",
                       field, std::to_string(*given), "nothing, or the setting " + word(where)};
    return Done{};
}

// "35 throws (bullpen)"
std::string named(const ThrowEntry& t) {
    if (t.setting == ThrowSetting::none)
        return "a day without throws (none)";
    return std::to_string(t.count) + " throws (" + word(t.setting) + ")";
}

} // namespace

Result<Done> check_throw_entry(const ThrowEntry& t) {
    if (t.setting == ThrowSetting::none)
        return check_day_without(t);
    const bool caught = t.setting == ThrowSetting::fielding && t.outs_caught;
    const Limits count{caught ? 0 : limits::throws.low, limits::throws.high};
    const Limits before{0, static_cast<double>(t.count)};
    for (auto checked :
         {check_within("count", t.count, count,
                       t.count == 0 ? "A day without throws has the setting none." : ""),
          check_within("occasion", t.occasion, limits::occasion),
          check_belongs("outs", t.outs, t, ThrowSetting::game), check_within("outs", t.outs, limits::outs),
          check_belongs("before_last_batter", t.before_last_batter, t, ThrowSetting::game),
          check_within("before_last_batter", t.before_last_batter, before, "The entry has no more pitches."),
          check_belongs("outs_caught", t.outs_caught, t, ThrowSetting::fielding),
          check_within("outs_caught", t.outs_caught, limits::outs)})
        if (!checked)
            return checked;
    return Done{};
}

Result<Done> check_day_of_throws(const ThrowEntry& entry, std::span<const ThrowEntry> others) {
    for (const auto& other : others) {
        const bool without = entry.setting == ThrowSetting::none,
                   other_without = other.setting == ThrowSetting::none;
        if (other.athlete != entry.athlete || other.date != entry.date || without == other_without)
            continue;
        return Refusal{RefusalCode::already_held,
                       named(entry) + " and " + named(other) + " cannot both stand on " + entry.date.text() +
                           ": a day without throws stands alone.",
                       "setting", word(entry.setting),
                       other_without ? "the setting none, or first take the day without throws away"
                                     : "the settings of throws, or first take the throws away"};
    }
    return Done{};
}

} // namespace amentum
