// Throws of a day; and steps back to throwing.
#include "records/check_throws.h"
#include "records/inside/read_line.h"

namespace amentum {
namespace {

const ThrowSteps* held_steps(const LinesBefore& before, const ThrowSteps& s) {
    for (const auto& held : before.context.held.throw_steps)
        if (held.athlete == s.athlete && held.number == s.number)
            return &held;
    return nullptr;
}

std::optional<ThrowStep> read_step_itself(LineReader& reader, bool given) {
    const auto distance = reader.length("distance", limits::distance_m);
    const auto effort = reader.number("effort", limits::effort);
    std::string words = reader.text("words");
    if (given)
        return ThrowStep{reader.needed_whole("throws", limits::throws), distance, effort, std::move(words)};
    if (reader.whole("throws", limits::throws) || distance || effort || !trimmed(words).empty())
        reader.needed("step");
    return std::nullopt;
}

// Steps come in order, and a set that is held has all of its steps.
void check_place_of_step(LineReader& reader, LinesBefore& before, const StepOfThrows& on) {
    const ThrowSteps& s = on.steps;
    const int row = check_head(reader, before,
                               {s.athlete.text + "\n" + std::to_string(s.number),
                                "set " + std::to_string(s.number),
                                {word(s.origin), s.author, s.start.text(), std::to_string(s.days_between),
                                 s.note, s.recorded_by, s.recorded.text()},
                                on.step.has_value()});
    if (on.step && on.place != row)
        reader.refuse({RefusalCode::missing_field,
                       "Step " + std::to_string(on.place) + " stands where step " + std::to_string(row) +
                           " should: steps come in order, none left out.",
                       "step", std::to_string(on.place), std::to_string(row)});
    const ThrowSteps* held = held_steps(before, s);
    if (held &&
        (on.place > static_cast<int>(held->steps.size()) || held->steps.empty() == on.step.has_value()))
        reader.refuse({RefusalCode::already_held,
                       "Set " + std::to_string(s.number) + " is held with " +
                           std::to_string(held->steps.size()) + " steps, and is never changed.",
                       "step", on.step ? std::to_string(on.place) : "", "a set of the next number"});
}

} // namespace

RecordOnLine read_throws(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    const Date date = read_day_lived(reader, before, athlete);
    const auto setting = reader.needed_choice<ThrowSetting>("setting");
    const bool may_be_empty = setting == ThrowSetting::none;
    const Limits any{0, limits::throws.high};
    ThrowEntry entry{athlete,
                     date,
                     setting,
                     may_be_empty ? reader.whole("count", any).value_or(0)
                                  : reader.needed_whole("count", any),
                     reader.number("effort", limits::effort),
                     reader.speed("speed", limits::speed_ms),
                     reader.length("distance", limits::distance_m),
                     reader.mass("ball_mass", limits::ball_mass_kg),
                     reader.number("soreness_before", limits::soreness),
                     reader.number("soreness_after", limits::soreness),
                     reader.number("soreness_next_day", limits::soreness),
                     reader.text("note"),
                     reader.whole("occasion", limits::occasion).value_or(1),
                     reader.one_line("team"),
                     reader.one_line("game"),
                     reader.whole("outs", limits::outs),
                     reader.whole("before_last_batter", any),
                     reader.whole("outs_caught", limits::outs),
                     reader.text("accuracy"),
                     reader.tidy("device")};
    if (reader.refusal())
        return entry;
    auto& of_day = before.throws[athlete.text + "\n" + date.text()];
    if (const auto entry_checked = check_throw_entry(entry); !entry_checked)
        reader.refuse(entry_checked.refusal());
    else if (const auto day_checked = check_day_of_throws(entry, of_day); !day_checked)
        reader.refuse(day_checked.refusal());
    else
        of_day.push_back(entry);
    return entry;
}

RecordOnLine read_throw_step(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    const auto place = reader.whole("step", limits::step);
    StepOfThrows on{{athlete,
                     read_running_number(reader, before, athlete.text, "set"),
                     reader.needed_choice<StepsOrigin>("origin"),
                     reader.needed("author"),
                     reader.needed_date("start"),
                     reader.needed_whole("days_between", limits::days_between_steps),
                     {},
                     reader.text("note"),
                     reader.needed("recorded_by"),
                     read_day_recorded(reader, before, "recorded")},
                    place.value_or(0),
                    read_step_itself(reader, place.has_value())};
    if (!reader.refusal())
        check_place_of_step(reader, before, on);
    return on;
}

} // namespace amentum
