#include "records/record_kind.h"

namespace amentum {

std::vector<RecordKind> import_order() {
    std::vector<RecordKind> order;
    for (const auto& [kind, name] : words_of<RecordKind>)
        order.push_back(kind);
    return order; // the enumeration names what others refer to first
}

} // namespace amentum
