#include "records/inside/place_sheet.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace amentum {
namespace {

Date monday_before(Date day) {
    return day - (day.iso_weekday() - 1);
}

Date first_day(const std::vector<SheetRow>& rows, const BlockSheetContext& context) {
    if (context.start)
        return *context.start;
    std::optional<Date> start;
    for (const auto& row : rows)
        if (row.date) {
            const Date of_row = monday_before(*row.date) - 7 * (row.week.value_or(1) - 1);
            start = std::min(start.value_or(of_row), of_row);
        }
    return start.value_or(context.otherwise);
}

std::string line_field(const SheetRow& row, const char* column) {
    return "line " + std::to_string(row.line.file_line) + ", " + column;
}

// The week of every row; a day outside the sixteen weeks is a problem.
void set_weeks(std::vector<SheetRow>& rows, BlockSheet& sheet) {
    for (auto& row : rows) {
        if (!row.week) {
            const int days = *row.date - sheet.start;
            const int week = days < 0 ? 0 : days / 7 + 1;
            if (week < 1 || week > limits::weeks.high)
                sheet.problems.push_back({RefusalCode::impossible_date,
                                          "Line " + std::to_string(row.line.file_line) + ": the day " +
                                              row.date->text() + " is not within 16 weeks from " +
                                              sheet.start.text() + ".",
                                          line_field(row, "date"), row.date->text(),
                                          sheet.start.text() + " to " + (sheet.start + 7 * 16 - 1).text()});
            row.week = std::clamp(week, 1, static_cast<int>(limits::weeks.high));
        }
        if (!row.date && row.weekday) {
            const Date week_start = sheet.start + 7 * (*row.week - 1);
            row.date = week_start + (*row.weekday - week_start.iso_weekday() + 7) % 7;
        }
    }
}

// Lines without a number belong to the session of their day; without a day too, to the first.
void set_sessions(std::vector<SheetRow>& rows) {
    std::map<int, std::set<Date>> days;
    for (const auto& row : rows)
        if (row.date)
            days[*row.week].insert(*row.date);
    std::map<std::pair<int, int>, Date> known; // the day other lines of the session give
    for (auto& row : rows) {
        if (!row.session) {
            const auto& of_week = days[*row.week];
            row.session =
                row.date ? 1 + static_cast<int>(std::distance(of_week.begin(), of_week.find(*row.date))) : 1;
        }
        if (row.date)
            known.try_emplace({*row.week, *row.session}, *row.date);
    }
    for (auto& row : rows)
        if (const auto day = known.find({*row.week, *row.session}); !row.date && day != known.end())
            row.date = day->second;
}

void spread_over_week(std::vector<SheetRow>& rows, BlockSheet& sheet) {
    std::map<int, int> last;
    for (const auto& row : rows)
        last[*row.week] = std::max(last[*row.week], *row.session);
    bool spread = false;
    for (auto& row : rows)
        if (!row.date) {
            row.date = sheet.start + (7 * (*row.week - 1) + 7 * (*row.session - 1) / last[*row.week]);
            spread = true;
        }
    if (spread)
        sheet.notes.push_back("Sessions without a day were spread over their week.");
}

void count_sessions(const std::vector<SheetRow>& rows, BlockSheet& sheet) {
    std::map<int, std::set<int>> sessions;
    std::map<int, const SheetRow*> last;
    for (const auto& row : rows) {
        sheet.weeks = std::max(sheet.weeks, *row.week);
        sessions[*row.week].insert(*row.session);
        last[*row.week] = &row;
    }
    const int most = static_cast<int>(limits::sessions_per_week.high);
    for (const auto& [week, of_week] : sessions) {
        const int count = static_cast<int>(of_week.size());
        sheet.sessions_per_week = std::max(sheet.sessions_per_week, count);
        if (count > most)
            sheet.problems.push_back({RefusalCode::out_of_range,
                                      "Week " + std::to_string(week) + " has " + std::to_string(count) +
                                          " sessions; a block has at most " + std::to_string(most) + ".",
                                      line_field(*last[week], "session"), std::to_string(count),
                                      "1 to " + std::to_string(most) + " sessions a week"});
    }
    const int fewest = static_cast<int>(limits::weeks.low);
    if (sheet.weeks < fewest) {
        sheet.notes.push_back("The file ends with week " + std::to_string(sheet.weeks) + "; a block has " +
                              std::to_string(fewest) + " weeks or more, so the weeks after it stand empty.");
        sheet.weeks = fewest;
    }
}

} // namespace

BlockSheet place_sheet(std::vector<SheetRow> rows, const BlockSheetContext& context) {
    BlockSheet sheet{{}, first_day(rows, context), 0, 0, {}, {}};
    set_weeks(rows, sheet);
    set_sessions(rows);
    spread_over_week(rows, sheet);
    count_sessions(rows, sheet);
    std::stable_sort(rows.begin(), rows.end(), [](const SheetRow& a, const SheetRow& b) {
        return std::tuple(*a.week, *a.session, a.order.value_or(1000)) <
               std::tuple(*b.week, *b.session, b.order.value_or(1000));
    });
    std::map<std::pair<int, int>, int> order;
    for (auto& row : rows) {
        BlockLine& line = row.line.line;
        line.week = *row.week;
        line.session = *row.session;
        line.date = *row.date;
        line.order = ++order[{line.week, line.session}];
        sheet.lines.push_back(std::move(row.line));
    }
    return sheet;
}

} // namespace amentum
