#include "records/inside/cells.h"

#include "records/record_columns.h"
#include "values/shortest_decimal.h"

#include <cassert>

namespace amentum {
namespace {

using Cells = std::vector<std::string>;

std::string cell(double x) {
    return format_shortest(x);
}
std::string cell(int x) {
    return std::to_string(x);
}
std::string cell(const std::optional<double>& x) {
    return x ? cell(*x) : "";
}
std::string cell(const std::optional<int>& x) {
    return x ? cell(*x) : "";
}
std::string cell(const std::optional<Mass>& x) {
    return x ? cell(x->kilograms()) : "";
}
std::string cell(const std::optional<Length>& x) {
    return x ? cell(x->metres()) : "";
}
std::string cell(const std::optional<Speed>& x) {
    return x ? cell(x->metres_per_second()) : "";
}
std::string cell(const std::optional<Duration>& x) {
    return x ? cell(x->seconds()) : "";
}
std::string cell(const std::optional<Angle>& x) {
    return x ? cell(x->degrees()) : "";
}
std::string cell(const std::optional<Force>& x) {
    return x ? cell(x->newtons()) : "";
}

std::string cell(const std::optional<Power>& x) {
    return x ? cell(x->watts()) : "";
}

std::string joined(const std::vector<std::string>& items, const char* between) {
    std::string text;
    for (const auto& item : items)
        text += (text.empty() ? "" : between) + item;
    return text;
}

struct CellsOf {
    const NamesOf& names;

    Cells operator()(const Facility& f) const {
        return {f.name, word(f.mass_unit), word(f.speed_unit), word(f.length_unit), f.time_zone};
    }
    Cells operator()(const ItemOfKit& k) const {
        if (!k.item)
            return {k.kit_name, word(k.unit), "", "", "", "", "", "", "", ""};
        const KitItem& i = *k.item;
        return {k.kit_name,   word(k.unit),   word(i.kind),  i.label,      cell(i.count),
                cell(i.mass), cell(i.height), cell(i.ratio), cell(i.step), cell(i.most)};
    }
    Cells operator()(const Athlete& a) const {
        return {a.name,
                a.birth_date.text(),
                word(a.sex),
                word(a.throwing_hand),
                word(a.sport),
                word(a.role),
                word(a.level),
                cell(a.stature),
                cell(a.sitting_height),
                cell(a.training_years),
                joined(a.restrictions, ";"),
                names.kit(a.kit),
                a.guardian};
    }
    Cells operator()(const Reading& r) const {
        return {names.athlete(r.athlete),
                r.date.text(),
                r.test,
                word(r.side),
                cell(r.trial),
                cell(r.load),
                cell(r.reps),
                cell(r.reps_in_reserve),
                cell(r.body_mass),
                cell(r.speed),
                cell(r.radar_angle),
                cell(r.distance),
                cell(r.release_height),
                cell(r.release_angle),
                cell(r.flight_time),
                cell(r.contact_time),
                cell(r.height),
                cell(r.angle),
                cell(r.force),
                cell(r.power),
                r.device,
                r.rater,
                word(r.place),
                r.note};
    }
    Cells operator()(const ThrowEntry& t) const {
        return {names.athlete(t.athlete),
                t.date.text(),
                word(t.setting),
                cell(t.count),
                cell(t.effort),
                cell(t.speed),
                cell(t.distance),
                cell(t.ball_mass),
                cell(t.soreness_before),
                cell(t.soreness_after),
                cell(t.soreness_next_day),
                t.note,
                cell(t.occasion),
                t.team,
                t.game,
                cell(t.outs),
                cell(t.before_last_batter),
                cell(t.outs_caught),
                t.accuracy,
                t.device};
    }
    Cells operator()(const CalendarEntry& e) const {
        return {names.athlete(e.athlete), e.date.text(), word(e.kind), e.last_date.text(), e.note};
    }
    Cells operator()(const Block& b) const {
        return {b.id.text,     names.athlete(b.athlete),  names.kit(b.kit), b.start.text(),
                cell(b.weeks), cell(b.sessions_per_week), cell(b.minutes),  joined(b.notes, "\n"),
                b.model};
    }
    Cells operator()(const LineOfBlock& on) const {
        const BlockLine& l = on.line;
        return {on.block.text,
                cell(l.week),
                cell(l.session),
                cell(l.order),
                l.date.text(),
                l.exercise,
                word(l.part),
                cell(l.sets),
                cell(l.reps),
                cell(l.intensity),
                cell(l.reps_in_reserve),
                cell(l.load),
                l.load_words,
                cell(l.rest_minutes),
                l.purpose,
                l.reason,
                joined(l.overridden, ";")};
    }
    Cells operator()(const SetDone& s) const {
        return {s.key,
                names.athlete(s.athlete),
                s.date.text(),
                s.exercise,
                cell(s.set_number),
                cell(s.load),
                cell(s.reps),
                cell(s.reps_in_reserve),
                cell(s.speed),
                s.block ? s.block->text : "",
                s.note};
    }
    Cells operator()(const Override& o) const {
        return {names.athlete(o.athlete), o.exercise, o.caution, o.date.text(), o.coach, o.reason};
    }
    Cells operator()(const PriorEdit& e) const {
        return {cell(e.number),
                word(e.kind),
                e.quality,
                e.belief ? "no" : "yes",
                e.belief ? cell(e.belief->mean) : "",
                e.belief ? cell(e.belief->sd) : "",
                e.author,
                e.date.text(),
                e.reason};
    }
    Cells operator()(const RowOfPitchTable& row) const {
        const PitchTable& t = row.table;
        Cells cells{cell(t.number), t.organisation, word(t.sport), t.author, t.date.text(), t.reason};
        if (!row.rule) {
            cells.resize(record_columns(RecordKind::pitch_rules).size());
            return cells;
        }
        const PitchRule& r = *row.rule;
        for (const int x : {r.year, r.age_low, r.age_high, r.daily_max})
            cells.push_back(cell(x));
        for (const auto& x : r.rest_to)
            cells.push_back(cell(x));
        for (const auto& x : {r.game_max, r.third_day_max, r.most_days_running, r.yearly_innings})
            cells.push_back(cell(x));
        cells.insert(cells.end(), {r.note, joined(r.sources, "\n"), cell(r.age_month), cell(r.age_day),
                                   word(r.second_game), word(r.last_batter), cell(r.no_catching_from),
                                   cell(r.no_pitching_caught), cell(r.months_off), cell(r.months_off_running),
                                   word(r.months_off_from)});
        return cells;
    }
    Cells operator()(const TeamPlace& p) const {
        return {names.athlete(p.athlete), p.team, p.organisation, p.date.text(),
                p.last_date ? p.last_date->text() : ""};
    }
    Cells operator()(const PainEntry& p) const {
        return {names.athlete(p.athlete),
                cell(p.number),
                p.date.text(),
                word(p.region),
                p.sign,
                p.words,
                p.noted_by};
    }
    Cells operator()(const PainClearance& c) const {
        return {names.athlete(c.athlete), cell(c.number), c.date.text(), c.cleared_by, c.recorded_by,
                c.recorded.text(),        c.words};
    }
    Cells operator()(const StepOfThrows& on) const {
        const ThrowSteps& s = on.steps;
        const ThrowStep none{0, {}, {}, ""};
        const ThrowStep& step = on.step ? *on.step : none;
        return {names.athlete(s.athlete),
                cell(s.number),
                on.step ? cell(on.place) : "",
                word(s.origin),
                s.author,
                s.start.text(),
                cell(s.days_between),
                on.step ? cell(step.throws) : "",
                cell(step.distance),
                cell(step.effort),
                step.words,
                s.note,
                s.recorded_by,
                s.recorded.text()};
    }
    Cells operator()(const StopAnswered& s) const {
        return {names.athlete(s.athlete), s.code, s.date.text(), s.reason, s.coach, s.recorded.text()};
    }
};

template <class Record>
void append(std::vector<RecordOnLine>& all, const std::vector<Record>& some) {
    all.insert(all.end(), some.begin(), some.end());
}

void append_items(std::vector<RecordOnLine>& all, const Kit& kit) {
    if (kit.items.empty())
        all.push_back(ItemOfKit{kit.id, kit.name, kit.unit, {}});
    for (const auto& item : kit.items)
        all.push_back(ItemOfKit{kit.id, kit.name, kit.unit, item});
}

void append_rows(std::vector<RecordOnLine>& all, PitchTable table) {
    const auto rules = std::move(table.rules);
    table.rules.clear();
    if (rules.empty())
        all.push_back(RowOfPitchTable{table, {}});
    for (const auto& rule : rules)
        all.push_back(RowOfPitchTable{table, rule});
}

void append_steps(std::vector<RecordOnLine>& all, ThrowSteps set) {
    const auto steps = std::move(set.steps);
    set.steps.clear();
    if (steps.empty())
        all.push_back(StepOfThrows{set, 0, {}});
    int place = 0;
    for (const auto& step : steps)
        all.push_back(StepOfThrows{set, ++place, step});
}

Block without_lines(Block block) {
    block.lines.clear();
    return block;
}

} // namespace

NamesOf::NamesOf(const RecordSet& records) {
    for (const auto& each : records.athletes)
        athletes[each.id.text] = each.name;
    for (const auto& each : records.kits)
        kits[each.id.text] = each.name;
}

const std::string& NamesOf::athlete(const AthleteId& id) const {
    const auto found = athletes.find(id.text);
    assert(found != athletes.end() && slug(found->second) == id.text);
    return found->second;
}

const std::string& NamesOf::kit(const KitId& id) const {
    const auto found = kits.find(id.text);
    assert(found != kits.end() && slug(found->second) == id.text);
    return found->second;
}

std::vector<std::string> cells_of(const RecordOnLine& record, const NamesOf& names) {
    return std::visit(CellsOf{names}, record);
}

std::vector<RecordOnLine> records_on_lines(RecordKind kind, const RecordSet& records) {
    std::vector<RecordOnLine> all;
    switch (kind) {
    case RecordKind::facility:
        if (records.facility)
            all.push_back(*records.facility);
        break;
    case RecordKind::kit:
        for (const auto& kit : records.kits)
            append_items(all, kit);
        break;
    case RecordKind::athletes:
        append(all, records.athletes);
        break;
    case RecordKind::test_results:
        append(all, records.readings);
        break;
    case RecordKind::throws:
        append(all, records.throws);
        break;
    case RecordKind::calendar:
        append(all, records.calendar);
        break;
    case RecordKind::blocks:
        for (const auto& block : records.blocks)
            all.push_back(without_lines(block));
        break;
    case RecordKind::block_lines:
        for (const auto& block : records.blocks)
            for (const auto& line : block.lines)
                all.push_back(LineOfBlock{block.id, line});
        break;
    case RecordKind::sets:
        append(all, records.sets);
        break;
    case RecordKind::overrides:
        append(all, records.overrides);
        break;
    case RecordKind::prior_edits:
        append(all, records.prior_edits);
        break;
    case RecordKind::pitch_rules:
        for (const auto& table : records.pitch_tables)
            append_rows(all, table);
        break;
    case RecordKind::teams:
        append(all, records.teams);
        break;
    case RecordKind::pains:
        append(all, records.pains);
        break;
    case RecordKind::clearances:
        append(all, records.clearances);
        break;
    case RecordKind::throw_steps:
        for (const auto& set : records.throw_steps)
            append_steps(all, set);
        break;
    case RecordKind::stops_answered:
        append(all, records.stops_answered);
        break;
    }
    return all;
}

std::string identity_of(RecordKind kind, const std::vector<std::string>& cells) {
    const auto& columns = record_columns(kind);
    assert(cells.size() == columns.size());
    constexpr char between = '\x1f'; // the control character that separates units of a record
    std::string text;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (columns[i].identity == Identity::none)
            continue;
        text += (columns[i].identity == Identity::by_slug ? slug(cells[i]) : cells[i]) + between;
    }
    return text;
}

} // namespace amentum
