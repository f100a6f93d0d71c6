// A coach's own block line by line: days set from dates, weekdays or nothing, every fault by line and column, and back again.
#include "records/block_sheet.h"
#include "records/tests/small_gym.h"

using namespace amentum;

namespace {

const ReferenceTables tables = [] {
    ReferenceTables all = small_tables();
    for (auto& exercise : all.exercises)
        exercise.qualities = {{"leg_strength", 0.9}, {"grip", 0.2}};
    all.exercises[0].part = Part::main_lift;
    all.qualities = {{"leg_strength", "Leg strength", "", true}, {"grip", "Grip", "", true}};
    return all;
}();

BlockSheet sheet(const std::string& text, std::optional<Date> start = day("2026-06-08")) {
    const auto parsed = parse_block_sheet(text, {tables, start, day("2026-06-15")});
    REQUIRE(parsed);
    return *parsed;
}

std::vector<std::string> fields(const BlockSheet& parsed) {
    std::vector<std::string> all;
    for (const auto& problem : parsed.problems)
        all.push_back(problem.field);
    return all;
}

std::vector<std::string> days(const BlockSheet& parsed) {
    std::vector<std::string> all;
    for (const auto& each : parsed.lines)
        all.push_back(each.line.date.text());
    return all;
}

} // namespace

TEST_CASE("a line says what its columns say, and the catalogue says the rest") {
    const auto parsed =
        sheet("Week,session,weekday,exercise,sets,reps,load_lb,reserve,intensity_percent,rest\n"
              "2,1,Thursday,\"split squat, BAR\",4,5,185,2,80,3\n"
              "1,1,mon,pull_up,3,6,,,,\n");
    CHECK(parsed.problems.empty());
    REQUIRE(parsed.lines.size() == 2);
    const auto& first = parsed.lines[0];
    CHECK(first.line.exercise == "pull_up"); // by week, not by place in the file
    CHECK(first.line.date == day("2026-06-08"));
    CHECK_FALSE(first.rest_given);
    CHECK_FALSE(first.line.load);
    const auto& second = parsed.lines[1];
    CHECK(second.file_line == 2);
    CHECK(second.line.date == day("2026-06-18"));
    CHECK(second.line.exercise == "split_squat_bar");
    CHECK(second.line.part == Part::main_lift);
    CHECK(second.line.purpose == "leg_strength");
    CHECK(second.line.load->kilograms() == doctest::Approx(83.9145885)); // 185 x 0.45359237, exact
    CHECK(*second.line.intensity == doctest::Approx(0.8));
    CHECK(second.line.rest_minutes == 3);
    CHECK(parsed.weeks == 4);
    CHECK(parsed.sessions_per_week == 1);
    CHECK(parsed.notes.front() ==
          "The file ends with week 2; a block has 4 weeks or more, so the weeks after it stand empty.");
}

TEST_CASE("days come from dates, weekdays, other lines of the session, or are spread over the week") {
    const std::string head = "week,session,date,weekday,exercise,sets,reps\n";
    CHECK(days(sheet(head + "1,1,2026-06-09,,pull_up,3,5\n1,1,,,overhead_throw,3,5\n")) ==
          std::vector<std::string>{"2026-06-09", "2026-06-09"});
    CHECK(days(sheet(head + "1,1,,,pull_up,3,5\n1,2,,,pull_up,3,5\n1,3,,,pull_up,3,5\n")) ==
          std::vector<std::string>{"2026-06-08", "2026-06-10", "2026-06-12"});
    CHECK(days(sheet(head + "1,1,,,pull_up,3,5\n1,2,,,pull_up,3,5\n")) ==
          std::vector<std::string>{"2026-06-08", "2026-06-11"});
    // Weeks from Wednesday on: Monday lies at the week's end.
    CHECK(days(sheet(head + "1,1,,monday,pull_up,3,5\n", day("2026-06-10"))) ==
          std::vector<std::string>{"2026-06-15"});
    // No session numbers: the days of a week in their order. No weeks: counted from the first day.
    const auto by_date = sheet(
        "date,exercise,sets,reps\n2026-06-19,pull_up,3,5\n2026-06-10,pull_up,3,5\n2026-06-08,pull_up,3,5\n");
    CHECK(by_date.lines[1].line.session == 2);
    CHECK(by_date.lines[2].line.week == 2);
    CHECK(by_date.lines[2].line.session == 1);
    // No first day: the Monday on or before what the earliest date says is week 1; without a date the day handed in.
    CHECK(sheet("week,date,exercise,sets,reps\n2,2026-06-18,pull_up,3,5\n", std::nullopt).start ==
          day("2026-06-08"));
    CHECK(sheet("week,exercise,sets,reps\n1,pull_up,3,5\n", std::nullopt).start == day("2026-06-15"));
}

TEST_CASE("every fault is listed, by line and column, and nothing is read past them") {
    const auto parsed = sheet("week,weekday,exercise,sets,reps,load_lb,reserve\n"
                              "1,monday,splitt squat bar,4,five,185,2\n"
                              "1,someday,pull_up,99,5,9000,30\n"
                              ",,overhead_throw,3,,,\n");
    CHECK(fields(parsed) == std::vector<std::string>{"line 2, exercise", "line 2, reps", "line 3, weekday",
                                                     "line 3, sets", "line 3, reserve", "line 3, load_lb",
                                                     "line 4, reps", "line 4, week"});
    CHECK(parsed.lines.empty());
    CHECK(parsed.problems[0].sentence.find("Did you mean \"") != std::string::npos);
    CHECK(fields(sheet("week,exercise,sets,reps\n17,pull_up,3,5\n")) ==
          std::vector<std::string>{"line 2, week"});
    CHECK(fields(sheet("date,exercise,sets,reps\n2026-06-07,pull_up,3,5\n")) ==
          std::vector<std::string>{"line 2, date"});
    const auto six =
        sheet("week,session,exercise,sets,reps\n1,1,pull_up,1,5\n1,2,pull_up,1,5\n1,3,pull_up,1,5\n"
              "1,4,pull_up,1,5\n1,5,pull_up,1,5\n1,6,pull_up,1,5\n");
    CHECK(fields(six) == std::vector<std::string>{"line 7, session"});
}

TEST_CASE("header faults are listed too, and text that is no table is refused") {
    const auto parsed = sheet("week,excercise,sets,reps,load\n1,pull_up,3,5,20\n");
    REQUIRE(parsed.problems.size() == 3);
    CHECK(parsed.problems[0].sentence.find("Did you mean \"exercise\"?") != std::string::npos);
    CHECK(parsed.problems[1].sentence.find("load_kg") != std::string::npos);
    CHECK(parsed.problems[2].sentence.find("\"exercise\" is missing") != std::string::npos);
    CHECK(fields(sheet("week,exercise,sets,reps\n")) == std::vector<std::string>{"line 1"});
    CHECK_FALSE(parse_block_sheet("", {tables, {}, day("2026-06-08")}));
}

TEST_CASE("an exercise named by some of its words is offered by them") {
    const auto parsed = sheet("week,exercise,sets,reps\n1,bar squat,3,5\n");
    REQUIRE(parsed.problems.size() == 1);
    CHECK(parsed.problems[0].sentence ==
          "Line 2: There is no exercise \"bar squat\". Its words are in \"Split squat, bar\".");
}

TEST_CASE("what is written is read again as it was, in pounds and in kilograms") {
    Block block{
        {"ona-reyes-2026-06-08"}, {"ona-reyes"}, {"main-hall"}, day("2026-06-08"), 4, 2, 60, {}, {}, ""};
    block.lines = {{1,
                    1,
                    day("2026-06-08"),
                    1,
                    "split_squat_bar",
                    Part::main_lift,
                    4,
                    5,
                    0.8125,
                    2.0,
                    Mass::pounds(187.5),
                    "bar + 45, 25 a side",
                    3,
                    "leg_strength",
                    "Because, as said; \"so\".",
                    {"sore_shoulder", "wrist_pain"}},
                   {1,
                    2,
                    day("2026-06-11"),
                    1,
                    "pull_up",
                    Part::assistance,
                    3,
                    8,
                    {},
                    {},
                    {},
                    "body mass",
                    1.5,
                    "grip",
                    "",
                    {}},
                   {4,
                    1,
                    day("2026-06-29"),
                    1,
                    "overhead_throw",
                    Part::speed,
                    2,
                    5,
                    {},
                    {},
                    Mass::pounds(4),
                    "4 lb ball",
                    1,
                    "grip",
                    "",
                    {}}};
    for (const MassUnit unit : {MassUnit::lb, MassUnit::kg}) {
        const auto parsed = sheet(write_block_sheet(block, unit), std::nullopt);
        CHECK(parsed.problems.empty());
        CHECK(parsed.start == block.start);
        CHECK(parsed.weeks == 4);
        REQUIRE(parsed.lines.size() == block.lines.size());
        for (std::size_t i = 0; i < block.lines.size(); ++i) {
            BlockLine read = parsed.lines[i].line;
            if (read.load) {
                CHECK(read.load->kilograms() ==
                      doctest::Approx(block.lines[i].load->kilograms()).epsilon(1e-6));
                read.load = block.lines[i].load;
            }
            CHECK(read == block.lines[i]);
        }
    }
}
