#include "operations/demo.h"

#include "demo_facility/demo_facility.h"
#include "operations/inside/inside.h"
#include "records/parse_records.h"
#include "records/write_records.h"

namespace amentum {

Result<DemoAnswer> demo(Workplace& workplace, const DemoRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const int seed = request.seed.value_or(1);
    if (seed < 0 || seed > 1'000'000) return refuse_range("seed", seed, 0, 1'000'000, "");
    if (!inside.view()->records.athletes.empty())
        return Refusal{RefusalCode::already_held, "This store already holds athletes; the demo facility needs an empty store.", "store",
                       "", "an empty store"};
    const DemoFacility made = make_demo_facility(static_cast<std::uint64_t>(seed), inside.today());
    for (const auto& file : write_records(made.records)) {
        const auto kind = from_word<RecordKind>(file.name.substr(0, file.name.rfind('.')));
        const auto preview = parse_records(*kind, file.text, inside.tables, inside.store.load_all(), inside.today());
        if (!preview) return preview.refusal();
        for (const auto& line : preview->lines)
            if (line.refusal) return *line.refusal;
        inside.store.save_records(preview->records);
    }
    const auto& records = made.records;
    DemoAnswer answer{records.facility->name, static_cast<int>(records.athletes.size()), static_cast<int>(records.readings.size()),
                      static_cast<int>(records.throws.size()), static_cast<int>(records.sets.size()), made.truth, ""};
    answer.words = "Made the invented facility " + answer.facility + ": " + std::to_string(answer.athletes) + " throwers, " +
                   std::to_string(answer.readings) + " readings, " + std::to_string(answer.throw_entries) + " throw entries, " +
                   std::to_string(answer.sets) + " logged sets.";
    return answer;
}

}  // namespace amentum
