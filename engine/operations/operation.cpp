#include "operations/operation.h"

#include "operations/described_json.h"
#include "operations/registrations.h"
#include "operations/shown.h"
#include "values/shortest_decimal.h"

namespace amentum {
namespace {

std::vector<std::string> names_of(const std::vector<RequestField>& fields) {
    std::vector<std::string> names;
    for (const auto& field : fields)
        names.push_back(field.name);
    return names;
}

boost::json::array split_at_commas(const std::string& text) {
    boost::json::array parts;
    std::size_t from = 0;
    while (from <= text.size()) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        if (to > from)
            parts.emplace_back(text.substr(from, to - from));
        from = to + 1;
    }
    return parts;
}

Result<boost::json::value> typed(const RequestField& field, const std::string& text) {
    if (field.type == "string")
        return boost::json::value(text);
    if (field.type == "boolean") {
        if (text == "true" || text == "yes")
            return boost::json::value(true);
        if (text == "false" || text == "no")
            return boost::json::value(false);
        return refuse_type(field.name, boost::json::value(text), "yes or no");
    }
    if (field.type == "array" && !text.starts_with("["))
        return boost::json::value(split_at_commas(text));
    if (field.type == "array" || field.type == "object") {
        boost::json::error_code error;
        auto parsed = boost::json::parse(text, error);
        if (error)
            return refuse_type(field.name, boost::json::value(text), "JSON text");
        return parsed;
    }
    const auto number = parse_number(text);
    if (!number)
        return refuse_type(field.name, boost::json::value(text), "a number");
    return boost::json::value(*number);
}

boost::json::object described_parameter(const RequestField& field, const boost::json::object& properties) {
    return {{"name", field.name},
            {"in", "query"},
            {"required", field.needed},
            {"description", field.meaning},
            {"schema", properties.at(field.name)}};
}

boost::json::object responses_of(const Operation& operation) {
    const boost::json::object refused{
        {"description", "A refusal: the input is wrong, or the records cannot answer."},
        {"content",
         {{"application/json",
           {{"schema",
             {{"type", "object"},
              {"properties", {{"refusal", schema_of<ShownRefusal>()}}},
              {"required", boost::json::array{"refusal"}}}}}}}}};
    return {{"200",
             {{"description", operation.summary},
              {"content", {{"application/json", {{"schema", operation.answer_schema}}}}}}},
            {"422", refused}};
}

} // namespace

const std::vector<Operation>& operations() {
    static const std::vector<Operation> all = registered_operations();
    return all;
}

const Operation* find_operation(const std::string& name) {
    for (const auto& operation : operations())
        if (operation.name == name)
            return &operation;
    return nullptr;
}

Result<boost::json::value> request_from_texts(const Operation& operation,
                                              const std::map<std::string, std::string>& texts) {
    boost::json::object request;
    for (const auto& [name, text] : texts) {
        const RequestField* field = nullptr;
        for (const auto& each : operation.fields)
            if (each.name == name)
                field = &each;
        if (!field)
            return refuse_field("", name, names_of(operation.fields));
        auto value = typed(*field, text);
        if (!value)
            return value.refusal();
        request[name] = *std::move(value);
    }
    return boost::json::value(std::move(request));
}

boost::json::value refusal_document(const Refusal& refusal) {
    const auto& kind = refusal_kind(refusal.code);
    return {{"refusal", written(ShownRefusal{static_cast<int>(refusal.code), kind.name, refusal.sentence,
                                             refusal.field, refusal.given, refusal.allowed})}};
}

boost::json::value openapi_document() {
    boost::json::object paths;
    for (const auto& operation : operations()) {
        boost::json::object verb{{"operationId", operation.name},
                                 {"summary", operation.summary},
                                 {"responses", responses_of(operation)}};
        if (operation.effect == Effect::reads) {
            boost::json::array parameters;
            const auto& properties = operation.request_schema.at("properties").get_object();
            for (const auto& field : operation.fields)
                parameters.push_back(described_parameter(field, properties));
            verb["parameters"] = parameters;
        } else {
            verb["requestBody"] = {
                {"required", true},
                {"content", {{"application/json", {{"schema", operation.request_schema}}}}}};
        }
        paths["/api/" + operation.name] = {{operation.effect == Effect::reads ? "get" : "post", verb}};
    }
    return {{"openapi", "3.1.0"}, {"info", {{"title", "Amentum"}, {"version", "1"}}}, {"paths", paths}};
}

} // namespace amentum
