// The same verbs over HTTP: every operation at /api/<operation>, the pages at /, and the sessions of a thrower or a block
// as a calendar others can follow at /calendar/<thrower or block>.ics (text/calendar [Rfc5545, section 8.1]).
//
// GET for operations that read (the request in the query), POST with a JSON body for those that write. Answers are
// JSON; a refusal is 422 with {"refusal": ...}. HTTP/1.1 by Boost.Beast [Rfc9112]; bodies up to 8 MiB.
// Binds to 127.0.0.1 unless told otherwise: there is no log-in yet, so another address is for a trusted network only.
// `workers` threads answer requests; a write answers after its transaction is durable.
// What it cannot do yet: TLS (put a proxy in front), several facilities.
#pragma once

#include "operations/workplace.h"
#include "values/refusal.h"

#include <cstdint>
#include <functional>
#include <string>

namespace amentum {

struct Serving {
    std::string address = "127.0.0.1";
    std::uint16_t port = 8765; // 0: any free port
    std::string pages_folder;  // built pages; empty: none are served
    int workers = 2;
    std::function<void(const std::string& url)> when_ready = {};
    std::function<void(const std::string& line)> log = {}; // one line a request
};

// Serves until the process is told to stop (SIGINT, SIGTERM). Refuses an address or port that cannot be had.
Result<Done> serve(Workplace&, const Serving&);

} // namespace amentum
