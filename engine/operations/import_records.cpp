#include "operations/import_records.h"

#include "operations/inside/inside.h"
#include "records/parse_records.h"

namespace amentum {
namespace {

std::string summary(const ImportRecordsAnswer& answer) {
    if (answer.refused > 0)
        return "Nothing was taken: " + std::to_string(answer.refused) + " line(s) are refused. Mend them and bring the whole file again.";
    const std::string counts = std::to_string(answer.new_records) + " new, " + std::to_string(answer.already_held) + " already held";
    if (answer.taken) return "Taken: " + counts + ".";
    return "It would add " + counts + "; nothing is kept yet.";
}

}  // namespace

Result<ImportRecordsAnswer> import_records(Workplace& workplace, const ImportRecordsRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto kind = from_word<RecordKind>(request.kind);
    if (!kind) return refuse_choice("kind", request.kind, all_words<RecordKind>());
    const auto held = inside.view();
    const auto preview = parse_records(*kind, request.text, inside.tables, held->records, inside.today());
    if (!preview) return preview.refusal();
    ImportRecordsAnswer answer{request.kind, false, preview->count(LineVerdict::new_record), preview->count(LineVerdict::already_held),
                               preview->count(LineVerdict::refused), "", {}};
    if (request.take.value_or(false) && answer.refused == 0) {
        if (answer.new_records > 0) inside.store.save_records(preview->records);
        answer.taken = true;
    }
    for (const auto& line : preview->lines) {
        answer.lines.push_back({line.line, word(line.verdict), line.words, {}});
        if (line.refusal) answer.lines.back().refusal = shown_refusal(*line.refusal);
    }
    answer.words = summary(answer);
    return answer;
}

}  // namespace amentum
