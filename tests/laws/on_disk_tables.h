// The reference tables of data/, read from the source tree, for tests that need the real ones.
#pragma once

#include "records/reference_tables.h"

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>

namespace amentum {

inline const ReferenceTables& tables_on_disk() {
    static const ReferenceTables tables = [] {
        std::map<std::string, std::string> texts;
        for (const auto& name : reference_file_names()) {
            std::ifstream file(std::string(AMENTUM_SOURCE_DIR) + "/data/" + name);
            std::stringstream text;
            text << file.rdbuf();
            texts[name] = text.str();
        }
        auto parsed = parse_reference_tables(texts);
        if (!parsed)
            FAIL(parsed.refusal().field << ": " << parsed.refusal().sentence);
        return *std::move(parsed);
    }();
    return tables;
}

inline const SegmentTables& segments_on_disk() {
    return tables_on_disk().segments;
}

} // namespace amentum
