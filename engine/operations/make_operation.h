// make_operation: from a typed function to an Operation that speaks JSON. Used by the registrations only.
#pragma once

#include "operations/described_json.h"
#include "operations/operation.h"

#include <map>

namespace amentum {

using Meanings = std::map<std::string, std::string>;

// The fields of a request in their order; every field must have a meaning and every meaning a field.
std::vector<RequestField> described_fields(const boost::json::object& schema, const Meanings& meanings);

// In a request a list or named values may be left out; in an answer they are always there.
boost::json::object without_lists_needed(boost::json::object schema);

template <class Request, class Answer>
Operation make_operation(std::string name, std::string summary, Effect effect, const Meanings& meanings,
                         Result<Answer> (*function)(Workplace&, const Request&),
                         std::string (*words)(const boost::json::value&)) {
    const auto request_schema = without_lists_needed(schema_of<Request>());
    return {std::move(name),
            std::move(summary),
            effect,
            described_fields(request_schema, meanings),
            request_schema,
            schema_of<Answer>(),
            [function](Workplace& workplace, const boost::json::value& given) -> Result<boost::json::value> {
                const auto request = read_json<Request>(given, "");
                if (!request)
                    return request.refusal();
                const auto answer = function(workplace, *request);
                if (!answer)
                    return answer.refusal();
                return written(*answer);
            },
            words};
}

} // namespace amentum
