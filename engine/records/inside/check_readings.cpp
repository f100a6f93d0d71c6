#include "records/inside/check_readings.h"

#include "measurement/measure_test.h"

namespace amentum {
namespace {

using Group = std::vector<const NewReading*>;

std::string group_of(const Reading& r) {
    return r.athlete.text + "\n" + r.date.text() + "\n" + r.test + "\n" + word(r.side);
}

// The measurement's refusal, in the words of the file's columns.
Refusal in_columns(Refusal refusal, const LineReader& line) {
    const std::string column = refusal.field;
    if (!find_column(RecordKind::test_results, column))
        return refusal;
    if (refusal.code == RefusalCode::missing_field)
        return refuse_missing(line.file_name_of(column), refusal.allowed);
    const std::string said = line.said(column.c_str());
    if (said.empty())
        return refusal;
    refusal.sentence = line.file_name_of(column) + " is " + said + ". " + refusal.sentence;
    refusal.given = line.tidy(column.c_str());
    return refusal;
}

// A set too long to be judged alone may stand beside the day's other sets.
bool wrong_by_itself(const Result<TestResult>& alone) {
    return !alone && alone.refusal().code != RefusalCode::method_does_not_apply;
}

void check_group(const Group& group, const TestKind& kind, std::vector<Reading> with_held) {
    bool sound = true;
    for (const auto* each : group) {
        const auto alone = measure_test(kind, {each->reading});
        if (!wrong_by_itself(alone))
            continue;
        each->line->refuse(in_columns(alone.refusal(), *each->line));
        sound = false;
    }
    if (!sound)
        return;
    for (const auto* each : group)
        with_held.push_back(each->reading);
    const auto together = measure_test(kind, with_held);
    if (together)
        return;
    for (const auto* each : group) {
        Refusal refusal = together.refusal();
        if (group.size() == 1 && with_held.size() == 1)
            refusal = in_columns(std::move(refusal), *each->line);
        each->line->refuse(std::move(refusal));
    }
}

} // namespace

void check_readings(const std::vector<NewReading>& readings, const ImportContext& context) {
    std::map<std::string, Group> groups;
    for (const auto& each : readings)
        groups[group_of(each.reading)].push_back(&each);
    std::map<std::string, std::vector<Reading>> held;
    for (const auto& each : context.held.readings) {
        const auto key = group_of(each);
        if (groups.contains(key))
            held[key].push_back(each);
    }
    for (const auto& [key, group] : groups)
        check_group(group, *context.tables.test_kind(group.front()->reading.test), held[key]);
}

} // namespace amentum
