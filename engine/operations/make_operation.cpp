#include "operations/make_operation.h"

#include <cassert>

namespace amentum {
namespace {

std::string plain_type(const boost::json::object& schema) {
    const auto type = schema.if_contains("type");
    if (!type)
        return "object";
    return std::string(type->is_array() ? type->get_array().at(0).as_string() : type->as_string());
}

} // namespace

boost::json::object without_lists_needed(boost::json::object schema) {
    boost::json::array needed;
    for (const auto& name : schema.at("required").get_array()) {
        const auto type = plain_type(schema.at("properties").at(name.as_string()).get_object());
        if (type != "array" && type != "object")
            needed.push_back(name);
    }
    schema["required"] = needed;
    return schema;
}

std::vector<RequestField> described_fields(const boost::json::object& schema, const Meanings& meanings) {
    const auto& properties = schema.at("properties").get_object();
    assert(properties.size() == meanings.size()); // a field without a meaning, or a meaning without a field
    std::vector<RequestField> fields;
    for (const auto& property : properties) {
        const std::string name(property.key());
        const auto& required = schema.at("required").get_array();
        const auto type = plain_type(property.value().get_object());
        const bool needed =
            std::find(required.begin(), required.end(), boost::json::value(name)) != required.end();
        fields.push_back({name, type, needed, meanings.at(name)});
    }
    return fields;
}

} // namespace amentum
