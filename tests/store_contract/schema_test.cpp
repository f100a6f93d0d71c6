// The schema as it is, in one file: a changed table shows in a review. Shipped migrations never change: the snapshot of a
// store made by all of them changes only by a new migration. To take a new snapshot: AMENTUM_NEW_SNAPSHOT=1 (then look).
#include "store/store.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>

using namespace amentum;

TEST_CASE("the schema is the one looked at") {
    const std::string snapshot = AMENTUM_SOURCE_DIR "/tests/store_contract/schema_snapshot.sql";
    const std::string schema = Store(":memory:").schema();
    if (std::getenv("AMENTUM_NEW_SNAPSHOT"))
        std::ofstream(snapshot) << schema;
    std::ifstream file(snapshot);
    CHECK(schema == std::string(std::istreambuf_iterator<char>(file), {}));
    CHECK(schema.find("STRICT") != std::string::npos);
}
