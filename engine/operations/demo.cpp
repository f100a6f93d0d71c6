#include "operations/demo.h"

#include "demo_facility/demo_facility.h"
#include "operations/inside/efforts.h"
#include "operations/inside/inside.h"
#include "operations/inside/trace_answer.h"
#include "records/parse_records.h"
#include "records/write_records.h"

#include <algorithm>
#include <iterator>

namespace amentum {
namespace {

template <class Record>
void append(std::vector<Record>& to, std::vector<Record>&& more) {
    std::move(more.begin(), more.end(), std::back_inserter(to));
}

void add_records(RecordSet& to, RecordSet&& more) {
    if (more.facility)
        to.facility = more.facility;
    append(to.kits, std::move(more.kits));
    append(to.athletes, std::move(more.athletes));
    append(to.readings, std::move(more.readings));
    append(to.throws, std::move(more.throws));
    append(to.calendar, std::move(more.calendar));
    append(to.sets, std::move(more.sets));
    append(to.teams, std::move(more.teams));
    append(to.pains, std::move(more.pains));
    append(to.clearances, std::move(more.clearances));
    append(to.throw_steps, std::move(more.throw_steps));
}

} // namespace

Result<DemoAnswer> demo(Workplace& workplace, const DemoRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const int seed = request.seed.value_or(1);
    if (seed < 0 || seed > 1'000'000)
        return refuse_range("seed", seed, 0, 1'000'000, "");
    if (!inside.view()->records.athletes.empty())
        return Refusal{RefusalCode::already_held,
                       "This store already holds athletes; the demo facility needs an empty store.", "store",
                       "", "an empty store"};
    const DemoFacility made = make_demo_facility(static_cast<std::uint64_t>(seed), inside.today());
    // Through the same reading as a coach's own files, each seeing what stands before it; kept in one piece.
    RecordSet taken;
    for (const auto& file : write_records(made.records)) {
        const auto kind = from_word<RecordKind>(file.name.substr(0, file.name.rfind('.')));
        auto preview = parse_records(*kind, file.text, ImportContext{inside.tables, taken, inside.today()});
        if (!preview.file_refusals.empty())
            return preview.file_refusals.front();
        for (const auto& line : preview.lines)
            if (line.refusal)
                return *line.refusal;
        add_records(taken, std::move(preview.new_records));
    }
    inside.store.save_records(taken);
    for (const auto& trace : made.traces)
        if (const auto measured = measure_trace(trace.recording, given_of(trace)); measured)
            inside.store.save_trace(trace, readings_of_trace(trace, *measured));
        else
            return measured.refusal();
    const auto& records = made.records;
    DemoAnswer answer{
        records.facility->name,
        static_cast<int>(records.athletes.size()),
        static_cast<int>(records.readings.size()),
        static_cast<int>(std::count_if(records.throws.begin(), records.throws.end(),
                                       [](const auto& t) { return t.setting != ThrowSetting::none; })),
        static_cast<int>(records.sets.size()),
        {{"truth.json", "truth", made.truth}},
        made.truth,
        ""};
    answer.words = "Made the invented facility " + answer.facility + ": " + std::to_string(answer.athletes) +
                   " throwers, " + std::to_string(answer.readings) + " readings, " +
                   std::to_string(answer.throw_entries) + " throw entries, " + std::to_string(answer.sets) +
                   " logged sets, " + std::to_string(made.traces.size()) + " force traces.";
    return answer;
}

} // namespace amentum
