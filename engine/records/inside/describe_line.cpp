// What a line would do, in the units the file speaks.
#include "records/inside/read_line.h"

#include "values/shortest_decimal.h"

namespace amentum {
namespace {

// The parts that are there, with a comma between.
std::string listed(const std::vector<std::string>& parts) {
    std::string text;
    for (const auto& part : parts)
        if (!part.empty())
            text += (text.empty() ? "" : ", ") + part;
    return text;
}

std::string spaced(std::string text) {
    for (char& c : text)
        if (c == '_')
            c = ' ';
    return text;
}

std::string worked(const LineReader& reader) {
    const std::string load = reader.said("load"), reps = reader.said("reps");
    if (reps.empty())
        return load;
    return load.empty() ? reps + " repetitions" : load + " x " + reps;
}

struct Describe {
    const LineReader& reader;
    const LinesBefore& before;

    std::string name(const AthleteId& id) const { return before.names.athlete(id); }
    std::string exercise(const std::string& key) const {
        const Exercise* known = before.context.tables.exercise(key);
        return known ? known->name : key;
    }
    std::string measured(const Reading& r) const {
        std::vector<std::string> parts{r.side == Side::none ? "" : word(r.side), worked(reader)};
        for (const char* column : {"body_mass", "speed", "distance", "flight_time", "contact_time", "height",
                                   "angle", "force", "power"})
            parts.push_back(reader.said(column));
        return listed(parts);
    }

    LineWords operator()(const Facility& f) const { return {"the facility", f.name}; }
    LineWords operator()(const ItemOfKit& k) const {
        if (!k.item)
            return {"a kit", k.kit_name};
        return {"equipment", listed({k.kit_name, std::to_string(k.item->count) + " x " + k.item->label})};
    }
    LineWords operator()(const Athlete& a) const {
        return {"an athlete",
                listed({a.name, "born " + a.birth_date.text(), word(a.sport) + " " + word(a.role),
                        "throws " + word(a.throwing_hand)})};
    }
    LineWords operator()(const Reading& r) const {
        const TestKind* kind = before.context.tables.test_kind(r.test);
        return {"a test", listed({name(r.athlete), r.date.text(), kind ? kind->name : r.test, measured(r)})};
    }
    LineWords operator()(const ThrowEntry& t) const {
        const std::string soreness = reader.said("soreness_after");
        const std::string which = t.occasion > 1 ? " " + std::to_string(t.occasion) : "";
        if (t.setting == ThrowSetting::none)
            return {"a day without throws", listed({name(t.athlete), t.date.text()})};
        return {"throws", listed({name(t.athlete), t.date.text(), spaced(word(t.setting)) + which,
                                  std::to_string(t.count) + " throws", reader.said("speed"),
                                  soreness.empty() ? "" : "soreness after " + soreness})};
    }
    LineWords operator()(const CalendarEntry& e) const {
        const std::string days =
            e.last_date == e.date ? e.date.text() : e.date.text() + " to " + e.last_date.text();
        return {"a calendar entry", listed({name(e.athlete), days, word(e.kind)})};
    }
    LineWords operator()(const Block& b) const {
        return {"a block",
                listed({name(b.athlete), "from " + b.start.text(), std::to_string(b.weeks) + " weeks",
                        std::to_string(b.sessions_per_week) + " sessions a week"})};
    }
    LineWords operator()(const LineOfBlock& on) const {
        const BlockLine& l = on.line;
        return {"a line of a block",
                listed({on.block.text, "week " + std::to_string(l.week),
                        "session " + std::to_string(l.session), exercise(l.exercise),
                        std::to_string(l.sets) + " x " + std::to_string(l.reps), reader.said("load")})};
    }
    LineWords operator()(const SetDone& s) const {
        return {"a set",
                listed({name(s.athlete), s.date.text(), exercise(s.exercise),
                        "set " + std::to_string(s.set_number), worked(reader), reader.said("speed")})};
    }
    LineWords operator()(const Override& o) const {
        return {"an overridden caution",
                listed({name(o.athlete), exercise(o.exercise), o.caution, o.coach, o.reason})};
    }
    LineWords operator()(const PriorEdit& e) const {
        const std::string now =
            e.belief ? format_shortest(e.belief->mean) + " give or take " + format_shortest(e.belief->sd)
                     : "back to the published value";
        return {"a change of a prior", listed({"edit " + std::to_string(e.number), spaced(word(e.kind)),
                                               e.quality, now, e.author, e.reason})};
    }
    LineWords operator()(const RowOfPitchTable& row) const {
        const PitchTable& t = row.table;
        const std::string what = row.rule ? "ages " + std::to_string(row.rule->age_low) + " to " +
                                                std::to_string(row.rule->age_high) + ", at most " +
                                                std::to_string(row.rule->daily_max) + " pitches a day"
                                          : "back to the table that came with the program";
        return {"a row of a pitch table", listed({"table " + std::to_string(t.number), t.organisation,
                                                  word(t.sport), what, t.author, t.reason})};
    }
    LineWords operator()(const TeamPlace& p) const {
        return {"a place in a team", listed({name(p.athlete), p.team, p.organisation, "from " + p.date.text(),
                                             p.last_date ? "to " + p.last_date->text() : ""})};
    }
    LineWords operator()(const PainEntry& p) const {
        return {"a pain entry", listed({name(p.athlete), "entry " + std::to_string(p.number), p.date.text(),
                                        spaced(word(p.region)), p.words})};
    }
    LineWords operator()(const PainClearance& c) const {
        return {"a clearance", listed({name(c.athlete), "entry " + std::to_string(c.number), c.date.text(),
                                       "by " + c.cleared_by, "recorded by " + c.recorded_by})};
    }
    LineWords operator()(const StepOfThrows& on) const {
        const std::string what =
            on.step ? "step " + std::to_string(on.place) + ": " + std::to_string(on.step->throws) + " throws"
                    : "no steps any more";
        return {"steps back to throwing",
                listed({name(on.steps.athlete), "set " + std::to_string(on.steps.number),
                        "by " + on.steps.author, what})};
    }
    LineWords operator()(const StopAnswered& s) const {
        return {"an answered stop", listed({name(s.athlete), s.date.text(), s.code, s.coach, s.reason})};
    }
};

} // namespace

LineWords describe_line(const RecordOnLine& record, const LineReader& reader, const LinesBefore& before) {
    return std::visit(Describe{reader, before}, record);
}

} // namespace amentum
