// Folding and escaping against the examples printed in the standard [Rfc5545]; a reader by others checks whole feeds in
// tests/http/calendar_feed.mjs.
#include "reports/calendar_text.h"

#include <doctest/doctest.h>

using namespace amentum;

namespace {

std::string unfolded(std::string text) {
    for (std::size_t at = 0; (at = text.find("\r\n ", at)) != std::string::npos;)
        text.erase(at, 3);
    return text;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t from = 0;
    for (std::size_t end; (end = text.find("\r\n", from)) != std::string::npos; from = end + 2)
        lines.push_back(text.substr(from, end - from));
    CHECK(from == text.size()); // the last line has its CRLF too
    return lines;
}

bool begins_inside_a_letter(const std::string& line) {
    return line.size() > 1 && (static_cast<unsigned char>(line[1]) & 0xC0) == 0x80;
}

} // namespace

TEST_CASE("text is escaped as in the standard's example [Rfc5545, section 3.3.11]") {
    CHECK(escaped_text("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.") ==
          "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
    CHECK(escaped_text("a,b;c\\d") == "a\\,b\\;c\\\\d");
    CHECK(escaped_text("bell\a and tab\t\r\n") == "bell and tab\\n");
}

TEST_CASE("a line of 75 octets stays whole, one of 76 is folded") {
    CHECK(folded_line("SUMMARY", std::string(67, 'x')) == "SUMMARY:" + std::string(67, 'x') + "\r\n");
    CHECK(folded_line("SUMMARY", std::string(68, 'x')) == "SUMMARY:" + std::string(67, 'x') + "\r\n x\r\n");
}

TEST_CASE(
    "whatever the letters and the length: lines fit, no letter is cut, unfolding gives the value back") {
    for (const std::string letter : {"x", "\u00fc", "\u20ac", "\U0001f3cb"})
        for (int count = 1; count < 200; ++count) {
            std::string value(static_cast<std::size_t>(count % 5), '-');
            for (int i = 0; i < count; ++i)
                value += letter;
            const std::string folded = folded_line("DESCRIPTION", value);
            for (const auto& line : lines_of(folded)) {
                CHECK(line.size() <= 75);
                CHECK_FALSE(begins_inside_a_letter(line));
            }
            CHECK(unfolded(folded) == "DESCRIPTION:" + value + "\r\n");
        }
}

TEST_CASE("a feed is the object, its days in order, and nothing of the clock") {
    const Date day = *parse_date("2026-12-31", "date");
    const CalendarText feed{"Ona; blocks", *parse_date("2026-06-01", "date"), {{"a@hall", day, "s", "d"}}};
    const auto lines = lines_of(write_calendar(feed));
    const std::vector<std::string> expected{"BEGIN:VCALENDAR",
                                            "VERSION:2.0",
                                            "PRODID:-//Amentum//Training blocks//EN",
                                            "CALSCALE:GREGORIAN",
                                            "METHOD:PUBLISH",
                                            "NAME:Ona\\; blocks",
                                            "REFRESH-INTERVAL;VALUE=DURATION:PT6H",
                                            "BEGIN:VEVENT",
                                            "UID:a@hall",
                                            "DTSTAMP:20260601T000000Z",
                                            "DTSTART;VALUE=DATE:20261231",
                                            "DTEND;VALUE=DATE:20270101",
                                            "SUMMARY:s",
                                            "DESCRIPTION:d",
                                            "SEQUENCE:0",
                                            "TRANSP:TRANSPARENT",
                                            "END:VEVENT",
                                            "END:VCALENDAR"};
    CHECK(lines == expected);
    CHECK(write_calendar(feed) == write_calendar(feed));
}
