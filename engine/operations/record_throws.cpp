#include "operations/record_throws.h"

#include "operations/inside/entry_fields.h"
#include "operations/inside/inside.h"
#include "operations/inside/throwing_answer.h"

namespace amentum {
namespace {

struct Limit {
    const char* field;
    std::optional<double> given;
    double low, high;
    const char* unit;
};

Result<Done> check_limits(const RecordThrowsRequest& r) {
    for (const Limit& limit :
         {Limit{"count", r.count, 1, 400, "throws"}, Limit{"effort_percent", r.effort_percent, 10, 100, "%"},
          Limit{"speed_mph", r.speed_mph, 5, 125, "mph"}, Limit{"speed_ms", r.speed_ms, 2, 56, "m/s"},
          Limit{"distance_ft", r.distance_ft, 1, 500, "ft"}, Limit{"distance_m", r.distance_m, 0.3, 150, "m"},
          Limit{"ball_mass_lb", r.ball_mass_lb, 0.05, 20, "lb"},
          Limit{"ball_mass_kg", r.ball_mass_kg, 0.02, 9, "kg"},
          Limit{"soreness_before", r.soreness_before, 0, 10, ""},
          Limit{"soreness_after", r.soreness_after, 0, 10, ""},
          Limit{"soreness_next_day", r.soreness_next_day, 0, 10, ""}})
        if (limit.given && (*limit.given < limit.low || *limit.given > limit.high))
            return refuse_range(limit.field, *limit.given, limit.low, limit.high, limit.unit);
    return Done{};
}

Result<ThrowEntry> entry_from(const RecordThrowsRequest& r, const AthleteId& athlete, Date today) {
    if (const auto limits = check_limits(r); !limits)
        return limits.refusal();
    const auto date = day_up_to_today(r.date, "entry", today);
    if (!date)
        return date.refusal();
    const auto setting = from_word<ThrowSetting>(r.setting);
    if (!setting)
        return refuse_choice("setting", r.setting, all_words<ThrowSetting>());
    const auto speed = speed_given("speed", r.speed_ms, r.speed_mph, {});
    if (!speed)
        return speed.refusal();
    const auto ball = mass_given("ball_mass", r.ball_mass_kg, r.ball_mass_lb);
    if (!ball)
        return ball.refusal();
    const auto distance =
        length_given("distance", r.distance_m ? std::optional(Length::metres(*r.distance_m)) : std::nullopt,
                     r.distance_ft ? std::optional(Length::feet(*r.distance_ft)) : std::nullopt);
    if (!distance)
        return distance.refusal();
    const auto effort = r.effort_percent ? std::optional(*r.effort_percent / 100) : std::nullopt;
    return ThrowEntry{athlete,
                      *date,
                      *setting,
                      r.count,
                      effort,
                      *speed,
                      *distance,
                      *ball,
                      r.soreness_before,
                      r.soreness_after,
                      r.soreness_next_day,
                      r.note.value_or("")};
}

// `entry` with the soreness it lacks taken from `later`: the next day's is known a day later.
ThrowEntry with_later_soreness(ThrowEntry entry, const ThrowEntry& later) {
    for (const auto field :
         {&ThrowEntry::soreness_before, &ThrowEntry::soreness_after, &ThrowEntry::soreness_next_day})
        if (!(entry.*field))
            entry.*field = later.*field;
    return entry;
}

} // namespace

Result<RecordThrowsAnswer> record_throws(Workplace& workplace, const RecordThrowsRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto before = inside.view();
    const auto athlete = athlete_named(*before, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto entry = entry_from(request, (*athlete)->id, inside.today());
    if (!entry)
        return entry.refusal();
    RecordThrowsAnswer answer{false, {}, {}, stop_and_refer_words(inside.tables)};
    ThrowEntry kept = *entry;
    for (const auto& held : before->records.throws) {
        if (held.athlete != entry->athlete || held.date != entry->date || held.setting != entry->setting)
            continue;
        answer.held_before = true;
        kept = with_later_soreness(held, *entry);
        if (!(with_later_soreness(*entry, kept) == kept))
            return Refusal{RefusalCode::already_held,
                           "Throws of that day and setting are already held: " + std::to_string(held.count) +
                               " throws. Only soreness that was not known yet can be added.",
                           "date", entry->date.text(), "another day or setting, or the same numbers"};
    }
    if (answer.held_before)
        inside.store.save_throw_entry(kept);
    else
        inside.store.save_records(RecordSet{{}, {}, {}, {}, {kept}});
    const auto after = inside.view();
    const Athlete& thrower = *after->athlete(entry->athlete.text);
    answer.findings = throwing_findings(inside, *after, thrower, inside.today());
    answer.words.push_back(
        answer.held_before ? "These throws were already kept; soreness not known before is added." : "Kept.");
    answer.words.push_back(throwing_words(throws_of(*after, thrower, inside.today())));
    return answer;
}

} // namespace amentum
