#include "operations/inside/given_throws.h"

#include "operations/inside/entry_fields.h"
#include "records/check_throws.h"

#include <algorithm>
#include <charconv>

namespace amentum {
namespace {

constexpr int most_innings = 20;
constexpr std::size_t longest_text = 500;

struct Limit {
    const char* field;
    std::optional<double> given;
    double low, high;
    const char* unit;
};

std::optional<Refusal> refuse_numbers(const RecordThrowsRequest& r, const std::string& mark) {
    for (const Limit& limit :
         {Limit{"effort_percent", r.effort_percent, 10, 100, "%"},
          Limit{"speed_mph", r.speed_mph, 5, 125, "mph"}, Limit{"speed_ms", r.speed_ms, 2, 56, "m/s"},
          Limit{"distance_ft", r.distance_ft, 1, 500, "ft"}, Limit{"distance_m", r.distance_m, 0.3, 150, "m"},
          Limit{"ball_mass_lb", r.ball_mass_lb, 0.05, 20, "lb"},
          Limit{"ball_mass_kg", r.ball_mass_kg, 0.02, 9, "kg"},
          Limit{"soreness_before", r.soreness_before, 0, 10, ""},
          Limit{"soreness_after", r.soreness_after, 0, 10, ""},
          Limit{"soreness_next_day", r.soreness_next_day, 0, 10, ""},
          Limit{"occasion", r.occasion, 1, 9, ""}})
        if (limit.given && !(*limit.given >= limit.low && *limit.given <= limit.high))
            return refuse_range(mark + limit.field, *limit.given, limit.low, limit.high, limit.unit);
    for (const auto& [field, text] :
         {std::pair("note", r.note), std::pair("team", r.team), std::pair("game", r.game),
          std::pair("accuracy", r.accuracy), std::pair("device", r.device)})
        if (text && text->size() > longest_text)
            return Refusal{RefusalCode::out_of_range, "Please keep it shorter.", mark + field,
                           std::to_string(text->size()) + " characters", "up to 500 characters"};
    return std::nullopt;
}

Result<std::optional<int>> outs_given(const std::string& field, const std::optional<std::string>& innings) {
    if (!innings || innings->empty())
        return std::optional<int>();
    const auto outs = outs_from(field, *innings);
    if (!outs)
        return outs.refusal();
    return std::optional(*outs);
}

Refusal marked(Refusal refusal, const std::string& mark) {
    refusal.field = mark + refusal.field;
    return refusal;
}

// The fields of an entry by the names a request has for them.
Refusal as_asked(Refusal refusal) {
    if (refusal.field == "outs")
        refusal.field = "innings";
    if (refusal.field == "outs_caught")
        refusal.field = "innings_caught";
    return refusal;
}

} // namespace

Result<int> outs_from(const std::string& field, const std::string& innings) {
    const Refusal not_innings{RefusalCode::wrong_type, "Innings are whole ones, a point, and 0 to 2 outs.",
                              field, innings, "0 to 20, like 4 or 4.1 (four and a third)"};
    int whole = -1, outs = 0;
    const char* end = innings.data() + innings.size();
    auto [rest, fault] = std::from_chars(innings.data(), end, whole);
    if (fault != std::errc() || whole < 0 || whole > most_innings)
        return not_innings;
    if (rest == end)
        return 3 * whole;
    if (*rest != '.' || rest + 2 != end || rest[1] < '0' || rest[1] > '2')
        return not_innings;
    outs = rest[1] - '0';
    return 3 * whole + outs;
}

Result<ThrowEntry> throw_entry_from(const RecordThrowsRequest& r, const AthleteId& athlete, Date today,
                                    const std::string& mark) {
    const auto date = day_up_to_today(r.date, "entry", today);
    if (!date)
        return marked(date.refusal(), mark);
    const auto setting = from_word<ThrowSetting>(r.setting);
    if (!setting)
        return refuse_choice(mark + "setting", r.setting, all_words<ThrowSetting>());
    if (auto refusal = refuse_numbers(r, mark))
        return *refusal;
    const auto speed = speed_given("speed", r.speed_ms, r.speed_mph, {});
    const auto ball = mass_given("ball_mass", r.ball_mass_kg, r.ball_mass_lb);
    const auto distance =
        length_given("distance", r.distance_m ? std::optional(Length::metres(*r.distance_m)) : std::nullopt,
                     r.distance_ft ? std::optional(Length::feet(*r.distance_ft)) : std::nullopt);
    for (const auto* refused : {speed ? nullptr : &speed.refusal(), ball ? nullptr : &ball.refusal(),
                                distance ? nullptr : &distance.refusal()})
        if (refused)
            return marked(*refused, mark);
    const auto outs = outs_given(mark + "innings", r.innings);
    if (!outs)
        return outs.refusal();
    const auto caught = outs_given(mark + "innings_caught", r.innings_caught);
    if (!caught)
        return caught.refusal();
    ThrowEntry entry{athlete,
                     *date,
                     *setting,
                     r.count,
                     r.effort_percent ? std::optional(*r.effort_percent / 100) : std::nullopt,
                     *speed,
                     *distance,
                     *ball,
                     r.soreness_before,
                     r.soreness_after,
                     r.soreness_next_day,
                     r.note.value_or("")};
    entry.occasion = r.occasion.value_or(1);
    entry.team = trimmed(r.team.value_or(""));
    entry.game = trimmed(r.game.value_or(""));
    entry.outs = *outs;
    entry.before_last_batter = r.before_last_batter;
    entry.outs_caught = *caught;
    entry.accuracy = trimmed(r.accuracy.value_or(""));
    entry.device = trimmed(r.device.value_or(""));
    if (const auto checked = check_throw_entry(entry); !checked)
        return marked(as_asked(checked.refusal()), mark);
    return entry;
}

std::vector<ThrowEntry> of_day(const std::vector<ThrowEntry>& all, const ThrowEntry& entry) {
    std::vector<ThrowEntry> there;
    std::copy_if(all.begin(), all.end(), std::back_inserter(there),
                 [&](const auto& each) { return each.athlete == entry.athlete && each.date == entry.date; });
    return there;
}

const ThrowEntry* held_entry(const std::vector<ThrowEntry>& all, const ThrowEntry& entry) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& held) {
        return held.athlete == entry.athlete && held.date == entry.date && held.setting == entry.setting &&
               held.occasion == entry.occasion;
    });
    return found == all.end() ? nullptr : &*found;
}

ThrowEntry with_later_soreness(ThrowEntry entry, const ThrowEntry& later) {
    for (const auto field :
         {&ThrowEntry::soreness_before, &ThrowEntry::soreness_after, &ThrowEntry::soreness_next_day})
        if (!(entry.*field))
            entry.*field = later.*field;
    return entry;
}

} // namespace amentum
