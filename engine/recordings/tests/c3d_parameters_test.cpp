// What the header and the parameter section say, on a section put together by hand, and how each fault is named.
#include "c3d_writer.h"
#include "recordings/c3d_parameters.h"

#include <doctest/doctest.h>

namespace amentum {
namespace {

using namespace std::string_literals;

// Intel. Group 5 "LAB" (locked), then its parameters; numbers of bytes are counted by hand beside each record.
const std::string group_record = "\xFD\xFBLAB\x08\0\x05tests"s; // -3, -5, name; 2 + 1 + 5 = 8 to the next
const std::string grid_record =
    "\x04\x05GRID\x0E\0\x02\x02\x02\x02\x01\0\x02\0\xFF\xFF\x04\0"s; // 2x2 words: 2 + 4 + 8
const std::string name_record = "\x04\x05NAME\x0C\0\xFF\x02\x03\x02"
                                "ab c\xE9 "s; // two texts of three letters: 2 + 4 + 6

std::string file_of(const std::string& records) {
    std::string file("\x02\x50", 2);
    file.resize(512, '\0');
    file += "\x01\x50\x01\x54"s + records;
    file.resize(1024, '\0');
    return file;
}

std::string field_of(const std::string& file) {
    const auto head = parse_c3d_head(file);
    REQUIRE_FALSE(head);
    CHECK(head.refusal().code == RefusalCode::unreadable_file);
    return head.refusal().field;
}

} // namespace

TEST_CASE("Groups, parameters, dimensions and texts of a section written by hand") {
    for (const bool group_first : {true, false}) {
        const std::string parameters = grid_record + name_record;
        const auto head =
            parse_c3d_head(file_of(group_first ? group_record + parameters : parameters + group_record));
        REQUIRE_MESSAGE(head, (head ? "" : head.refusal().sentence));
        REQUIRE(head->groups.size() == 1);
        CHECK(head->groups[0].name == "LAB");
        CHECK(head->groups[0].number == 5);
        CHECK(head->groups[0].locked);
        CHECK(head->groups[0].description == "tests");
        REQUIRE(head->find("LAB", "GRID"));
        CHECK_FALSE(head->find("LAB", "GRID")->locked);
        CHECK(head->find("LAB", "GRID")->dimensions == std::vector<int>{2, 2});
        CHECK(head->numbers("LAB", "GRID", C3dWhole::with_sign) == std::vector<double>{1, 2, -1, 4});
        CHECK(head->numbers("LAB", "GRID") == std::vector<double>{1, 2, 65535, 4});
        CHECK(head->texts("LAB", "NAME") ==
              std::vector<std::string>{"ab", "c\xC3\xA9"}); // Latin-1 became UTF-8
        CHECK(head->numbers("LAB", "NAME").empty());
        CHECK(head->texts("LAB", "GRID").empty());
        CHECK_FALSE(head->number("LAB", "RATE"));
        CHECK(head->problems.empty());
    }
}

TEST_CASE("A fault is named by byte, or by group and parameter") {
    CHECK(parse_c3d_head(file_of(group_record)));
    CHECK(field_of("\x02\x51"s + std::string(1022, '\0')) == "byte 2");
    CHECK(field_of("\x01\x50"s + std::string(1022, '\0')) == "byte 1");
    std::string file = file_of(group_record);
    file[515] = 87; // no such processor
    CHECK(field_of(file) == "byte 516");
    file = file_of(group_record);
    file[514] = 0;
    CHECK(field_of(file) == "byte 515");
    file[514] = 2; // a second block that is not there
    CHECK(field_of(file) == "byte 1025");

    std::string record = group_record;
    record[1] = 0;
    CHECK(field_of(file_of(record)) == "byte 517"); // records begin behind the section's first four bytes
    record = group_record;
    record[6] = 2; // the next record 2 x 256 + 8 bytes on, beyond the section
    CHECK(field_of(file_of(record)) == "byte 517");
    record = group_record;
    record[5] = 1; // the next record within this one's distance
    CHECK(field_of(file_of(record)) == "byte 517");
    record = grid_record;
    record[8] = 3;
    CHECK(field_of(file_of(record)) == "parameter GRID of group number 5"); // no type 3
    record = grid_record;
    record[9] = 8;
    CHECK(field_of(file_of(record)) == "parameter GRID of group number 5"); // at most 7 dimensions
    record = grid_record;
    record[10] = 9;
    CHECK(field_of(file_of(record)) == "parameter GRID of group number 5"); // 9 x 2 words do not fit
}

TEST_CASE("What can be read in spite of a fault is read, and the fault is said") {
    const auto twice = parse_c3d_head(file_of(group_record + grid_record + grid_record));
    REQUIRE(twice);
    REQUIRE(twice->problems.size() == 1);
    CHECK(twice->problems[0] == "LAB:GRID stands in the file twice; the first is used.");
    const auto alone = parse_c3d_head(file_of(grid_record));
    REQUIRE(alone);
    CHECK(alone->problems.at(0).find("group number 5, which the file does not have") != std::string::npos);
}

} // namespace amentum
