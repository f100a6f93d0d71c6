// demo: fill an empty store with the invented facility "Saltgrass Throwing Hall", whose truth is written down.
//
// Refuses a store that already holds athletes. The records go through the same import as a coach's own files.
#pragma once

#include "operations/export_records.h"
#include "operations/workplace.h"
#include "values/refusal.h"

#include <boost/describe/class.hpp>

#include <optional>
#include <string>

namespace amentum {

struct DemoRequest {
    std::optional<int> seed; // left out: 1
};
BOOST_DESCRIBE_STRUCT(DemoRequest, (), (seed))

struct DemoAnswer {
    std::string facility;
    int athletes;
    int readings;
    int throw_entries;
    int sets;
    std::vector<ExportedFile> files; // truth.json: the same text as a file (--folder writes it)
    std::string truth;               // the simulation's true effects, as JSON text
    std::string words;
};
BOOST_DESCRIBE_STRUCT(DemoAnswer, (),
                      (facility, athletes, readings, throw_entries, sets, files, truth, words))

Result<DemoAnswer> demo(Workplace&, const DemoRequest&);

} // namespace amentum
