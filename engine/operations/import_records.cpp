#include "operations/import_records.h"

#include "operations/inside/inside.h"
#include "operations/inside/local_day.h"
#include "records/parse_records.h"

namespace amentum {
namespace {

std::string summary(const ImportRecordsAnswer& answer) {
    if (answer.refused > 0)
        return "Nothing was taken: " + std::to_string(answer.refused) +
               " line(s) are refused. Mend them and bring the whole file again.";
    const std::string counts =
        std::to_string(answer.new_records) + " new, " + std::to_string(answer.already_held) + " already held";
    if (answer.taken)
        return "Taken: " + counts + ".";
    return "It would add " + counts + "; nothing is kept yet.";
}

} // namespace

Result<ImportRecordsAnswer> import_records(Workplace& workplace, const ImportRecordsRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto kind = from_word<RecordKind>(request.kind);
    if (!kind)
        return refuse_choice("kind", request.kind, all_words<RecordKind>());
    const auto held = inside.view();
    const auto preview =
        parse_records(*kind, request.text, ImportContext{inside.tables, held->records, inside.today()});
    if (!preview.file_refusals.empty())
        return preview.file_refusals.front();
    if (const auto& facility = preview.new_records.facility; facility && !facility->time_zone.empty())
        if (const auto day = local_day(facility->time_zone, inside.now()); !day)
            return day.refusal();
    ImportRecordsAnswer answer{request.kind,
                               false,
                               preview.count(Verdict::added),
                               preview.count(Verdict::already_held),
                               preview.count(Verdict::refused),
                               "",
                               {}};
    if (request.take.value_or(false) && preview.can_be_taken()) {
        if (answer.new_records > 0)
            inside.store.save_records(preview.new_records);
        answer.taken = true;
    }
    for (const auto& line : preview.lines) {
        answer.lines.push_back({line.line, word(line.verdict), line.words, {}});
        if (line.refusal)
            answer.lines.back().refusal = shown_refusal(*line.refusal);
    }
    answer.words = summary(answer);
    return answer;
}

} // namespace amentum
