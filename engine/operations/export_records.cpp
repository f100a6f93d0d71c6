#include "operations/export_records.h"

#include "operations/inside/inside.h"
#include "records/write_records.h"

namespace amentum {

Result<ExportRecordsAnswer> export_records(Workplace& workplace, const ExportRecordsRequest&) {
    ExportRecordsAnswer answer;
    for (auto& file : write_records(workplace.inside().view()->records)) {
        const std::string kind = file.name.substr(0, file.name.rfind('.'));
        answer.files.push_back({std::move(file.name), kind, std::move(file.text)});
    }
    return answer;
}

} // namespace amentum
