// Comma-separated text against the rules and the examples printed in RFC 4180, section 2.
#include "records/csv.h"

#include <doctest/doctest.h>
#include <random>

using namespace amentum;
using Fields = std::vector<std::string>;

namespace {

CsvTable table_of(std::string_view text) {
    auto table = parse_csv(text);
    REQUIRE_MESSAGE(table, (table ? "" : table.refusal().sentence));
    return *table;
}

Refusal refusal_of(std::string_view text) {
    auto table = parse_csv(text);
    REQUIRE_FALSE(table);
    CHECK(table.refusal().code == RefusalCode::unreadable_file);
    return table.refusal();
}

} // namespace

TEST_CASE("the examples of RFC 4180 section 2 read as it says") {
    // 2.1 and 2.3: records end with CRLF, the first is a header
    auto with_header = table_of("field_name,field_name_2,field_name_3\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    CHECK(with_header.header == Fields{"field_name", "field_name_2", "field_name_3"});
    CHECK(with_header.rows.at(0).fields == Fields{"aaa", "bbb", "ccc"});
    CHECK(with_header.rows.at(1).fields == Fields{"zzz", "yyy", "xxx"});
    // 2.2: the last record may lack its line break
    CHECK(table_of("a,b,c\r\naaa,bbb,ccc\r\nzzz,yyy,xxx").rows.at(1).fields == Fields{"zzz", "yyy", "xxx"});
    // 2.4: spaces are part of a field
    CHECK(table_of("a,b\r\n aaa , bbb\r\n").rows.at(0).fields == Fields{" aaa ", " bbb"});
    // 2.5: fields may be quoted
    CHECK(table_of("a,b,c\r\n\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx").rows.at(0).fields ==
          Fields{"aaa", "bbb", "ccc"});
    // 2.6: a line break inside quotes belongs to the field
    auto broken = table_of("a,b,c\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx");
    CHECK(broken.rows.at(0).fields == Fields{"aaa", "b\r\nbb", "ccc"});
    CHECK(broken.rows.at(0).line == 2);
    CHECK(broken.rows.at(1).line == 4);
    // 2.7: a quote inside a quoted field is doubled
    CHECK(table_of("a,b,c\r\n\"aaa\",\"b\"\"bb\",\"ccc\"").rows.at(0).fields ==
          Fields{"aaa", "b\"bb", "ccc"});
}

TEST_CASE("what spreadsheets write besides the standard is read too") {
    Fields row{"Ona", "82,5"};
    CHECK(table_of("name;load_kg\nOna;82,5\n").rows.at(0).fields == row);
    CHECK(table_of("\xEF\xBB\xBFname;load_kg\rOna;82,5\r").rows.at(0).fields == row);
    auto commented = table_of("# units: kg, s\n#\n\n\"name\",\"a;b;c\"\n\nOna,1\n,\nPim,2\n");
    CHECK(commented.comments == Fields{"units: kg, s", ""});
    CHECK(commented.separator == ',');
    CHECK(commented.header_line == 4);
    REQUIRE(commented.rows.size() == 2);
    CHECK(commented.rows[0].line == 6);
    CHECK(commented.rows[1].line == 8);
    CHECK(commented.column("a;b;c") == 1u);
    CHECK_FALSE(commented.column("name ").has_value());
    CHECK(table_of("a,b\n#1,2\n").rows.at(0).fields == Fields{"#1", "2"});
}

TEST_CASE("a broken file is refused with the line that is to blame") {
    CHECK(refusal_of("").sentence == "The file has no header line.");
    CHECK(refusal_of("# only a comment\n").field == "line 2");
    CHECK(refusal_of("a,b\n1,2\n1,2,3\n").field == "line 3");
    CHECK(refusal_of("a,b\n1,2\n1\n").given == "1 fields");
    CHECK(refusal_of("a,a\n1,2\n").given == "a");
    CHECK(refusal_of("a,\n1,2\n").field == "line 1");
    CHECK(refusal_of("a,b\n1,2\n6 \"lb\" ball,2\n").field == "line 3");
    CHECK(refusal_of("a,b\n1,2\n\"x\"y,2\n").field == "line 3");
    CHECK(refusal_of("a,b\n1,2\n\"never\nclosed\n").field == "line 3");
    CHECK(refusal_of(std::string("a,b\n1,\0", 7)).field == "line 2");
}

TEST_CASE("only well-formed UTF-8 passes (Unicode 15, table 3-7)") {
    for (const char* good :
         {"\xC3\xA9", "\xE2\x82\xAC", "\xED\x9F\xBF", "\xF0\x9F\x8F\x80", "\xF4\x8F\xBF\xBF"})
        CHECK(table_of(std::string("a,b\n") + good + ",1\n").rows.at(0).fields.at(0) == good);
    // Latin-1 e-acute; overlong slash; half a surrogate pair; above U+10FFFF; a tail without a lead; a cut
    // sequence
    for (const char* bad : {"\xE9", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\x80", "\xE2\x82"})
        CHECK(refusal_of(std::string("a,b\n") + bad + ",1\n").field == "line 2");
}

TEST_CASE("law: what is written reads back as it was") {
    std::mt19937_64 random(20260314);
    const std::string letters = "ab ,;\"\r\n#\xC3\xA9";
    auto pick = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
    for (int round = 0; round < 500; ++round) {
        char separator = pick(2) ? ',' : ';';
        Fields header, row;
        std::size_t columns = 1 + pick(4);
        for (std::size_t c = 0; c < columns; ++c) {
            header.push_back("column " + std::to_string(c));
            std::string field = c == 0 ? "x" : ""; // never a row that is empty throughout
            for (std::size_t n = pick(6); n > 0; --n) {
                std::size_t at = pick(letters.size() - 1);
                field += at == letters.size() - 2 ? letters.substr(at) : letters.substr(at, 1);
            }
            row.push_back(field);
        }
        std::string text = write_csv_line(header, separator) + write_csv_line(row, separator);
        auto back = table_of(text);
        CHECK(back.header == header);
        REQUIRE(back.rows.size() == 1);
        CHECK(back.rows[0].fields == row);
    }
    CHECK(write_csv_line(Fields{"a;b", "1"}) == "\"a;b\",1\r\n");
    CHECK(write_csv_line(Fields{"a", "b c", "d\"e", "f,g"}) == "a,b c,\"d\"\"e\",\"f,g\"\r\n");
    CHECK(write_csv_line(Fields{"#1", "2"}) == "\"#1\",2\r\n");
}
