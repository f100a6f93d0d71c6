#include "operations/described_json.h"

#include "operations/json_text.h"

namespace amentum {

Refusal refuse_type(const std::string& path, const boost::json::value& given, const char* wanted) {
    const std::string shown = json_text(given);
    const std::string name = path.empty() ? "the request" : path;
    return {RefusalCode::wrong_type, name + " is " + shown + ", but must be " + wanted + ".", path, shown,
            wanted};
}

Refusal refuse_field(const std::string& path, const std::string& name,
                     const std::vector<std::string>& known) {
    Refusal refusal = refuse_unknown("field", name, known);
    refusal.code = RefusalCode::unknown_field;
    refusal.field = joined_path(path, name);
    return refusal;
}

} // namespace amentum
