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
};

template <class Record, class Identity>
void sort_by(std::vector<Record>& records, Identity identity) {
    std::sort(records.begin(), records.end(),
              [&](const Record& a, const Record& b) { return identity(a) < identity(b); });
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
    sort_by(set.throws, [](const ThrowEntry& t) { return std::tuple(t.athlete, t.date, word(t.setting)); });
    sort_by(set.calendar, [](const CalendarEntry& e) { return std::tuple(e.athlete, e.date, word(e.kind)); });
    sort_by(set.blocks, [](const Block& b) { return b.id; });
    for (auto& block : set.blocks)
        sort_by(block.lines, [](const BlockLine& l) { return std::tuple(l.week, l.session, l.order); });
    sort_by(set.sets, [](const SetDone& s) { return std::tuple(s.athlete, s.date, s.key); });
    sort_by(set.overrides, [](const Override& o) {
        return std::tuple(o.athlete, o.exercise, o.caution, o.date, o.coach, o.reason);
    });
    return set;
}

} // namespace amentum
