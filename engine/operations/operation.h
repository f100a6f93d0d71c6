// One operation as the outside sees it: a verb with a typed request and answer, the same in terminal, route and page.
//
// operations() is the whole list; the command line, the server and the OpenAPI document are made from it and from
// nothing else, so that they cannot disagree.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/json/value.hpp>

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace amentum {

// asks: keeps nothing, but the question holds a file and does not fit an address: POST, like a write.
enum class Effect { reads, asks, writes };

struct RequestField {
    std::string name;
    std::string type; // "string", "number", "integer", "boolean", "array", "object"
    bool needed;
    std::string meaning; // one line, with what is allowed
};

struct Operation {
    std::string name;    // snake_case: find_limiters
    std::string summary; // one sentence
    Effect effect;
    std::vector<RequestField> fields;
    boost::json::value request_schema;
    boost::json::value answer_schema;
    std::function<Result<boost::json::value>(Workplace&, const boost::json::value& request)> run;
    std::function<std::string(const boost::json::value& answer)> words; // the answer for a terminal
};

const std::vector<Operation>& operations();
const Operation* find_operation(const std::string& name);

// A request given as texts (a query, command line options) made typed by the field's type; lists split at commas.
// An array or object may also be given as JSON text. Refuses unknown names and texts that are not of the type.
Result<boost::json::value> request_from_texts(const Operation&,
                                              const std::map<std::string, std::string>& texts);

// {"refusal": {code, name, sentence, field, given, allowed}}, the same document everywhere.
boost::json::value refusal_document(const Refusal&);

// The OpenAPI 3.1 document of all operations.
boost::json::value openapi_document();

} // namespace amentum
