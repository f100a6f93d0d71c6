// Pain, clearances and answered stops: what was said, by whom and when.
#include "records/inside/read_line.h"

namespace amentum {
namespace {

std::string read_sign(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.tidy("sign");
    std::vector<std::string> known;
    for (const auto& each : before.context.tables.stop_signs) {
        if (each.key == given)
            return given;
        known.push_back(each.key);
    }
    if (!given.empty())
        reader.refuse(refuse_unknown("sign", given, known));
    return given;
}

const PainEntry* held_pain(const LinesBefore& before, const AthleteId& athlete, int number) {
    for (const auto& held : before.context.held.pains)
        if (held.athlete == athlete && held.number == number)
            return &held;
    return nullptr;
}

// Of a pain entry that is held, not before it was felt and not after it was entered.
void check_clearance(LineReader& reader, const LinesBefore& before, const PainClearance& c) {
    const PainEntry* pain = held_pain(before, c.athlete, c.number);
    if (!pain)
        reader.refuse(
            {RefusalCode::unknown_name,
             before.names.athlete(c.athlete) + " has no pain entry " + std::to_string(c.number) + ".",
             "number", std::to_string(c.number), "the number of a pain entry that is held"});
    else if (c.date < pain->date || c.date > c.recorded)
        reader.refuse({RefusalCode::impossible_date,
                       "Pain of " + pain->date.text() + ", cleared on " + c.date.text() + " and entered on " +
                           c.recorded.text() + ": these days do not follow each other.",
                       "date", c.date.text(), pain->date.text() + " to " + c.recorded.text()});
}

} // namespace

RecordOnLine read_pain(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    return PainEntry{athlete,
                     read_running_number(reader, before, athlete.text, "entry"),
                     read_day_lived(reader, before, athlete),
                     reader.needed_choice<PainRegion>("region"),
                     read_sign(reader, before),
                     reader.text("words"),
                     reader.needed("noted_by")};
}

RecordOnLine read_clearance(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    PainClearance clearance{athlete,
                            reader.needed_whole("number", limits::running_number),
                            reader.needed_date("date"),
                            reader.needed("cleared_by"),
                            reader.needed("recorded_by"),
                            read_day_recorded(reader, before, "recorded"),
                            reader.text("words")};
    if (!reader.refusal())
        check_clearance(reader, before, clearance);
    return clearance;
}

RecordOnLine read_stop_answered(LineReader& reader, LinesBefore& before) {
    const AthleteId athlete = read_athlete_name(reader, before);
    return StopAnswered{athlete,
                        reader.needed("code"),
                        reader.needed_date("date"),
                        read_reason(reader),
                        reader.needed("coach"),
                        read_day_recorded(reader, before, "recorded")};
}

} // namespace amentum
