#include "http_api/router.h"

#include "http_api/pages.h"
#include "operations/json_text.h"
#include "operations/operation.h"

#include <boost/json.hpp>

#include <map>
#include <optional>

namespace amentum {
namespace {

constexpr const char* json_type = "application/json; charset=utf-8";

HttpAnswer json_answer(int status, const boost::json::value& document) {
    return {status, json_type, json_text(document)};
}

HttpAnswer refused(int status, const Refusal& refusal) {
    return json_answer(status, refusal_document(refusal));
}

// application/x-www-form-urlencoded [WhatwgUrl, section 5.1]
std::optional<std::string> percent_decoded(std::string_view text) {
    std::string plain;
    const auto digit = [](char c) {
        return c >= '0' && c <= '9'   ? c - '0'
               : c >= 'a' && c <= 'f' ? c - 'a' + 10
               : c >= 'A' && c <= 'F' ? c - 'A' + 10
                                      : -1;
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '+')
            plain += ' ';
        else if (text[i] != '%')
            plain += text[i];
        else {
            if (i + 2 >= text.size() || digit(text[i + 1]) < 0 || digit(text[i + 2]) < 0)
                return std::nullopt;
            plain += static_cast<char>(digit(text[i + 1]) * 16 + digit(text[i + 2]));
            i += 2;
        }
    }
    return plain;
}

std::optional<std::map<std::string, std::string>> query_fields(std::string_view query) {
    std::map<std::string, std::string> fields;
    while (!query.empty()) {
        const auto part = query.substr(0, query.find('&'));
        query.remove_prefix(std::min(query.size(), part.size() + 1));
        const auto equals = part.find('=');
        const auto name = percent_decoded(part.substr(0, equals));
        const auto value = percent_decoded(equals == std::string_view::npos ? "" : part.substr(equals + 1));
        if (!name || !value || fields.contains(*name))
            return std::nullopt;
        if (!part.empty())
            fields[*name] = *value;
    }
    return fields;
}

Result<boost::json::value> request_of(const Operation& operation, const HttpRequest& request,
                                      std::string_view query) {
    if (operation.effect == Effect::reads) {
        const auto fields = query_fields(query);
        if (!fields)
            return Refusal{RefusalCode::wrong_type,
                           "The query after '?' cannot be read: each field once, percent-encoded.", "",
                           std::string(query), "name=value&name=value"};
        return request_from_texts(operation, *fields);
    }
    boost::json::error_code error;
    auto body = boost::json::parse(request.body, error);
    if (error)
        return Refusal{RefusalCode::wrong_type, "The body is not JSON: " + error.message() + ".", "",
                       request.body.substr(0, 60), "a JSON object"};
    return body;
}

HttpAnswer answer_operation(Workplace& workplace, const HttpRequest& request, const std::string& name,
                            std::string_view query) {
    const Operation* operation = find_operation(name);
    if (!operation) {
        std::vector<std::string> names;
        for (const auto& each : operations())
            names.push_back(each.name);
        return refused(404, refuse_unknown("operation", name, names));
    }
    const std::string verb = operation->effect == Effect::reads ? "GET" : "POST";
    if (request.verb != verb)
        return refused(405, {RefusalCode::unknown_choice, "/api/" + name + " is asked with " + verb + ".",
                             "verb", request.verb, verb});
    const auto typed = request_of(*operation, request, query);
    if (!typed)
        return refused(422, typed.refusal());
    const auto answer = operation->run(workplace, *typed);
    if (!answer)
        return refused(answer.refusal().code == RefusalCode::unknown_name ? 404 : 422, answer.refusal());
    return json_answer(200, *answer);
}

// /calendar/ona-reyes.ics, /calendar/ona-reyes-2026-06-08.ics: what calendar_feed answers, as a calendar asks for it.
HttpAnswer answer_calendar(Workplace& workplace, const HttpRequest& request, std::string_view file) {
    if (request.verb != "GET" && request.verb != "HEAD")
        return refused(
            405, {RefusalCode::unknown_choice, "A calendar is asked with GET.", "verb", request.verb, "GET"});
    constexpr std::string_view ending = ".ics";
    const auto name =
        file.ends_with(ending) ? percent_decoded(file.substr(0, file.size() - ending.size())) : std::nullopt;
    if (!name)
        return refused(404, {RefusalCode::unknown_name, "A calendar's address ends in .ics.", "address",
                             std::string(file), "/calendar/<thrower or block>.ics"});
    const Operation& feed = *find_operation("calendar_feed");
    auto answer = feed.run(workplace, boost::json::object{{"athlete", *name}});
    if (!answer)
        answer = feed.run(workplace, boost::json::object{{"block", *name}});
    if (!answer)
        return refused(404, answer.refusal());
    return {200, "text/calendar; charset=utf-8", std::string(answer->at("text").as_string())};
}

} // namespace

HttpAnswer answer_request(Workplace& workplace, const std::string& pages_folder, const HttpRequest& request) {
    const std::string path = request.target.substr(0, request.target.find('?'));
    const std::string query =
        path.size() < request.target.size() ? request.target.substr(path.size() + 1) : "";
    if (path == "/api/openapi.json")
        return json_answer(200, openapi_document());
    if (path.starts_with("/calendar/"))
        return answer_calendar(workplace, request, path.substr(10));
    if (path.starts_with("/api/"))
        return answer_operation(workplace, request, path.substr(5), query);
    if (request.verb != "GET" && request.verb != "HEAD")
        return refused(
            405, {RefusalCode::unknown_choice, "Pages are asked with GET.", "verb", request.verb, "GET"});
    return page_answer(pages_folder, path);
}

} // namespace amentum
