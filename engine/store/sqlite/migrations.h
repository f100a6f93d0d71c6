// The schema's history, built in from schema/*.sql.
#pragma once

#include <string>
#include <vector>

namespace amentum {

struct Migration {
    std::string name; // "0001_first_records.sql"
    std::string sql;
};

const std::vector<Migration>& migrations();

} // namespace amentum
