// What was read last of the records, and which tables have changed since: only those are read again.
//
// SQLite tells this connection's own changes table by table (update hook); another's move data_version, and then all is read.
// A change that is rolled back only makes a table be read once more. The hook is silent for a DELETE without WHERE and for tables
// WITHOUT ROWID: the schema has none of these, the code no such statement.
// Used under the store's lock, inside one transaction.
#pragma once

#include "values/record_set.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <set>
#include <string>

namespace amentum {

class FreshRecords {
public:
    explicit FreshRecords(SQLite::Database& database);
    FreshRecords(const FreshRecords&) = delete;
    FreshRecords& operator=(const FreshRecords&) = delete;

    const RecordSet& as_of_now(SQLite::Database& database);

private:
    template <class List>
    void read_again(SQLite::Database&, List& list, List (*load)(SQLite::Database&),
                    std::initializer_list<const char*> tables);

    RecordSet records_;
    std::int64_t others_ = -1; // data_version when read; -1: never
    std::set<std::string> changed_;
};

} // namespace amentum
