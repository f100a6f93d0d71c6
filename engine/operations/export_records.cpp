#include "operations/export_records.h"

#include "operations/inside/inside.h"
#include "operations/inside/trace_files.h"
#include "records/write_records.h"

namespace amentum {

Result<ExportRecordsAnswer> export_records(Workplace& workplace, const ExportRecordsRequest& request) {
    ExportRecordsAnswer answer{};
    for (auto& file : write_records(workplace.inside().view()->records)) {
        const std::string kind = file.name.substr(0, file.name.rfind('.'));
        answer.files.push_back({std::move(file.name), kind, std::move(file.text)});
    }
    if (request.traces.value_or(false)) {
        auto& store = workplace.inside().store;
        const auto traces = store.list_traces({});
        answer.files.push_back(index_of_traces(traces));
        for (const auto& each : traces)
            if (const auto trace = store.load_trace(each.id))
                answer.files.push_back(samples_of_trace(*trace));
    }
    return answer;
}

} // namespace amentum
