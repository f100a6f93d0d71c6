// What a request is answered with, apart from any socket: so that it can be read, and tested, by itself.
#pragma once

#include "operations/workplace.h"

#include <string>

namespace amentum {

struct HttpRequest {
    std::string verb;   // "GET"
    std::string target; // "/api/find_limiters?athlete=ona-reyes"
    std::string body;
};

struct HttpAnswer {
    int status;
    std::string content_type;
    std::string body;
    bool may_be_kept = false; // hashed assets never change
};

HttpAnswer answer_request(Workplace&, const std::string& pages_folder, const HttpRequest&);

} // namespace amentum
