#include "reports/calendar_text.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr std::size_t longest_line = 75; // octets without CRLF [Rfc5545, section 3.1]

std::string basic_date(Date day) { // 20260608
    std::string text = day.text();
    std::erase(text, '-');
    return text;
}

// The inside of a letter of more than one octet [Rfc3629].
bool continues_a_letter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

void add_event(std::string& text, const CalendarDay& event, const std::string& stamp) {
    text += folded_line("BEGIN", "VEVENT");
    text += folded_line("UID", escaped_text(event.uid));
    text += folded_line("DTSTAMP", stamp);
    text += folded_line("DTSTART;VALUE=DATE", basic_date(event.day));
    text += folded_line("DTEND;VALUE=DATE", basic_date(event.day + 1));
    text += folded_line("SUMMARY", escaped_text(event.summary));
    text += folded_line("DESCRIPTION", escaped_text(event.description));
    text += folded_line("SEQUENCE", "0");
    text += folded_line("TRANSP", "TRANSPARENT");
    text += folded_line("END", "VEVENT");
}

void add_note(std::string& text, const CalendarText& calendar, const std::string& stamp) {
    text += folded_line("BEGIN", "VJOURNAL");
    text += folded_line("UID", escaped_text("no sessions of " + calendar.name));
    text += folded_line("DTSTAMP", stamp);
    text += folded_line("SUMMARY", "No sessions yet");
    text += folded_line("END", "VJOURNAL");
}

} // namespace

std::string escaped_text(std::string_view text) {
    std::string escaped;
    for (const char c : text) {
        if (c == '\n')
            escaped += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            (escaped += '\\') += c;
        else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F)
            escaped += c;
    }
    return escaped;
}

std::string folded_line(std::string_view name, std::string_view value) {
    const std::string whole = std::string(name) + ":" + std::string(value);
    std::string folded;
    std::size_t from = 0;
    std::size_t room = longest_line;
    while (whole.size() - from > room) {
        std::size_t to = from + room;
        while (to > from + 1 && continues_a_letter(whole[to]))
            --to;
        folded += whole.substr(from, to - from) + "\r\n ";
        from = to;
        room = longest_line - 1; // the space counts
    }
    return folded + whole.substr(from) + "\r\n";
}

std::string write_calendar(const CalendarText& calendar) {
    std::string text = folded_line("BEGIN", "VCALENDAR");
    text += folded_line("VERSION", "2.0");
    text += folded_line("PRODID", "-//Amentum//Training blocks//EN");
    text += folded_line("CALSCALE", "GREGORIAN");
    text += folded_line("METHOD", "PUBLISH");
    text += folded_line("NAME", escaped_text(calendar.name));
    text += folded_line("REFRESH-INTERVAL;VALUE=DURATION", "PT6H");
    for (const auto& event : calendar.days)
        add_event(text, event, basic_date(calendar.written) + "T000000Z");
    if (calendar.days.empty())
        add_note(text, calendar, basic_date(calendar.written) + "T000000Z");
    return text + folded_line("END", "VCALENDAR");
}

} // namespace amentum
