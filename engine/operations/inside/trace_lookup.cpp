#include "operations/inside/trace_lookup.h"

namespace amentum {

Result<HeldTrace> trace_named(Workplace::Inside& inside, const std::string& id) {
    auto trace = inside.store.load_trace(id);
    if (!trace) {
        std::vector<std::string> ids;
        for (const auto& each : inside.store.list_traces({}))
            ids.push_back(each.id);
        return refuse_unknown("trace", id, ids);
    }
    for (auto& athlete : inside.store.list_athletes())
        if (athlete.id == trace->athlete)
            return HeldTrace{*std::move(trace), std::move(athlete)};
    throw StoreFailure("the trace " + id + " belongs to nobody"); // a foreign key forbids it
}

} // namespace amentum
