#include "records/inside/new_records.h"

#include <algorithm>
#include <cassert>
#include <tuple>

namespace amentum {
namespace {

// Items and lines of a kit or block that is held come with its own values, so that the store finds them unchanged.
struct Add {
    RecordSet& set;
    const RecordSet& held;

    void operator()(const Facility& f) const { set.facility = f; }
    void operator()(const ItemOfKit& k) const {
        auto kit =
            std::find_if(set.kits.begin(), set.kits.end(), [&](const Kit& each) { return each.id == k.kit; });
        if (kit == set.kits.end())
            kit = set.kits.insert(kit, Kit{k.kit, k.kit_name, k.unit, {}});
        if (k.item)
            kit->items.push_back(*k.item);
    }
    void operator()(const Athlete& a) const { set.athletes.push_back(a); }
    void operator()(const Reading& r) const { set.readings.push_back(r); }
    void operator()(const ThrowEntry& t) const { set.throws.push_back(t); }
    void operator()(const CalendarEntry& e) const { set.calendar.push_back(e); }
    void operator()(const Block& b) const { set.blocks.push_back(b); }
    void operator()(const LineOfBlock& on) const {
        const auto same = [&](const Block& each) { return each.id == on.block; };
        auto block = std::find_if(set.blocks.begin(), set.blocks.end(), same);
        if (block == set.blocks.end()) {
            const auto known = std::find_if(held.blocks.begin(), held.blocks.end(), same);
            assert(known != held.blocks.end());
            block = set.blocks.insert(block, *known);
            block->lines.clear();
        }
        block->lines.push_back(on.line);
    }
    void operator()(const SetDone& s) const { set.sets.push_back(s); }
    void operator()(const Override& o) const { set.overrides.push_back(o); }
    void operator()(const PriorEdit& e) const { set.prior_edits.push_back(e); }
    void operator()(const RowOfPitchTable& row) const {
        const auto same = [&](const PitchTable& each) { return each.number == row.table.number; };
        auto table = std::find_if(set.pitch_tables.begin(), set.pitch_tables.end(), same);
        if (table == set.pitch_tables.end())
            table = set.pitch_tables.insert(table, row.table);
        if (row.rule)
            table->rules.push_back(*row.rule);
    }
    void operator()(const TeamPlace& p) const { set.teams.push_back(p); }
    void operator()(const PainEntry& p) const { set.pains.push_back(p); }
    void operator()(const PainClearance& c) const { set.clearances.push_back(c); }
    void operator()(const StepOfThrows& on) const { // steps come in order
        const auto same = [&](const ThrowSteps& each) {
            return each.athlete == on.steps.athlete && each.number == on.steps.number;
        };
        auto steps = std::find_if(set.throw_steps.begin(), set.throw_steps.end(), same);
        if (steps == set.throw_steps.end())
            steps = set.throw_steps.insert(steps, on.steps);
        if (on.step)
            steps->steps.push_back(*on.step);
    }
    void operator()(const StopAnswered& s) const { set.stops_answered.push_back(s); }
};

template <class Record, class Identity>
void sort_by(std::vector<Record>& records, Identity identity) {
    std::sort(records.begin(), records.end(),
              [&](const Record& a, const Record& b) { return identity(a) < identity(b); });
}

void sort_arm_care(RecordSet& set) {
    sort_by(set.teams, [](const TeamPlace& p) { return std::tuple(p.athlete, p.team, p.date); });
    sort_by(set.pitch_tables, [](const PitchTable& t) { return t.number; });
    for (auto& table : set.pitch_tables)
        sort_by(table.rules, [](const PitchRule& r) { return r.age_low; });
    sort_by(set.pains, [](const PainEntry& p) { return std::tuple(p.athlete, p.number); });
    sort_by(set.clearances, [](const PainClearance& c) { return std::tuple(c.athlete, c.number); });
    sort_by(set.throw_steps, [](const ThrowSteps& s) { return std::tuple(s.athlete, s.number); });
    sort_by(set.stops_answered, [](const StopAnswered& s) { return std::tuple(s.athlete, s.code, s.date); });
}

} // namespace

RecordSet new_records(const std::vector<RecordOnLine>& records, const RecordSet& held) {
    RecordSet set;
    for (const auto& record : records)
        std::visit(Add{set, held}, record);
    sort_by(set.kits, [](const Kit& k) { return k.id; });
    sort_by(set.athletes, [](const Athlete& a) { return a.id; });
    sort_by(set.readings,
            [](const Reading& r) { return std::tuple(r.athlete, r.date, r.test, word(r.side), r.trial); });
    sort_by(set.throws,
            [](const ThrowEntry& t) { return std::tuple(t.athlete, t.date, word(t.setting), t.occasion); });
    sort_by(set.calendar, [](const CalendarEntry& e) { return std::tuple(e.athlete, e.date, word(e.kind)); });
    sort_by(set.blocks, [](const Block& b) { return b.id; });
    for (auto& block : set.blocks)
        sort_by(block.lines, [](const BlockLine& l) { return std::tuple(l.week, l.session, l.order); });
    sort_by(set.sets, [](const SetDone& s) { return std::tuple(s.athlete, s.date, s.key); });
    sort_by(set.overrides, [](const Override& o) {
        return std::tuple(o.athlete, o.exercise, o.caution, o.date, o.coach, o.reason);
    });
    sort_by(set.prior_edits, [](const PriorEdit& e) { return e.number; });
    sort_arm_care(set);
    return set;
}

} // namespace amentum
