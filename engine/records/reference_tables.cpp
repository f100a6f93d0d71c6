#include "records/reference_tables.h"

#include "records/reference_tables_cells.h"
#include "records/reference_tables_links.h"

#include <algorithm>

namespace amentum {

namespace {

using Texts = std::map<std::string, std::string>;
using Columns = std::vector<std::string>;

Quality quality_of(ReferenceCells& cells) {
    return {cells.key("key"), cells.needed("name"), cells.needed("meaning"), cells.yes("trainable")};
}
const Columns quality_columns{"key", "name", "meaning", "trainable"};

TestKind test_kind_of(ReferenceCells& cells) {
    const Scale scale = cells.one_of<Scale>("scale");
    const double most = scale == Scale::logarithmic ? 0.5 : 100;
    cells.needed("errors_from"); // for the reader of the file: how the two errors were set
    TestKind kind{cells.key("key"),
                  cells.needed("name"),
                  cells.text("quality"),
                  cells.one_of<Measure>("measure"),
                  cells.one_of<TestUnit>("unit"),
                  scale,
                  cells.one_of<SideRule>("side_rule"),
                  cells.number("trial_error", 0, most),
                  cells.number("day_error", 0, most),
                  cells.number("plausible_low", -90, 2000),
                  cells.number("plausible_high", 0, 20000),
                  std::nullopt,
                  cells.needed("protocol"),
                  cells.needed_list("sources")};
    if (auto pounds = cells.optional_number("ball_lb", 0.1, 30))
        kind.ball_mass = Mass::pounds(*pounds);
    return kind;
}
const Columns test_kind_columns{"key",       "name",          "quality",        "measure",
                                "unit",      "scale",         "side_rule",      "trial_error",
                                "day_error", "plausible_low", "plausible_high", "ball_lb",
                                "protocol",  "sources",       "errors_from"};

Exercise exercise_of(ReferenceCells& cells) {
    Exercise e{.key = cells.key("key"),
               .name = cells.needed("name"),
               .pattern = cells.key("pattern"),
               .part = cells.one_of<Part>("part"),
               .region = cells.one_of<Region>("region"),
               .means = cells.one_of<LoadMeans>("means"),
               .needs = cells.some_of<ItemKind>("needs"),
               .qualities = cells.shares("qualities"),
               .load_test = {},
               .load_share = cells.number("load_share", 0.05, 3),
               .one_sided = cells.yes("one_sided"),
               .set_minutes = cells.number("set_minutes", 0.25, 10),
               .setup_minutes = cells.number("setup_minutes", 0, 10),
               .youngest = cells.whole("youngest", 6, 30),
               .limiting = cells.list("limiting"),
               .cautions = cells.list("cautions"),
               .setup = cells.needed("setup"),
               .sources = cells.needed_list("sources")};
    if (auto test = cells.text("load_test"); !test.empty())
        e.load_test = test;
    if (auto item = cells.text("item"); !item.empty())
        e.item = item;
    if (auto pounds = cells.optional_number("lightest_lb", 0.1, 1000))
        e.lightest = Mass::pounds(*pounds);
    if (auto pounds = cells.optional_number("heaviest_lb", 0.1, 1000))
        e.heaviest = Mass::pounds(*pounds);
    return e;
}
const Columns exercise_columns{
    "key",       "name",      "pattern",    "part",        "region",      "means",         "needs",
    "qualities", "load_test", "load_share", "one_sided",   "set_minutes", "setup_minutes", "youngest",
    "limiting",  "cautions",  "item",       "lightest_lb", "heaviest_lb", "setup",         "sources"};

Caution caution_of(ReferenceCells& cells) {
    return {cells.key("key"),         cells.needed("condition"),
            cells.needed("sentence"), cells.needed_list("alternatives"),
            cells.yes("overridable"), cells.needed_list("sources")};
}
const Columns caution_columns{"key", "condition", "sentence", "alternatives", "overridable", "sources"};

VelocityPrior velocity_prior_of(ReferenceCells& cells) {
    return {cells.key("quality"), cells.number("mean", -1, 1), cells.number("sd", 0.001, 2),
            cells.needed("why"), cells.needed_list("sources")};
}
AttainableChange attainable_change_of(ReferenceCells& cells) {
    return {cells.key("quality"), cells.number("mean", 0, 3), cells.number("sd", 0.001, 3),
            cells.needed("why"), cells.needed_list("sources")};
}
const Columns prior_columns{"quality", "mean", "sd", "why", "sources"};

// "05-01": the day in the year the age is reckoned on.
void read_age_day(ReferenceCells& cells, PitchRule& rule) {
    if (const auto day = cells.optional_day_of_year("age_on")) {
        rule.age_month = day->first;
        rule.age_day = day->second;
    }
}

PitchRule pitch_rule_of(ReferenceCells& cells) {
    PitchRule rule{cells.needed("organisation"),
                   cells.whole("year", 1990, 2200),
                   cells.one_of<Sport>("sport"),
                   cells.whole("age_low", 4, 99),
                   cells.whole("age_high", 4, 99),
                   cells.whole("daily_max", 1, 400),
                   {},
                   cells.optional_whole("game_max", 1, 400),
                   cells.optional_whole("third_day_max", 0, 400),
                   cells.optional_whole("most_days_running", 1, 30),
                   cells.optional_whole("yearly_innings", 1, 1000),
                   cells.text("note"),
                   cells.needed_list("source")};
    for (std::size_t k = 0; k < rule.rest_to.size(); ++k)
        rule.rest_to[k] = cells.optional_whole("rest_" + std::to_string(k) + "_to", 1, 400);
    read_age_day(cells, rule);
    rule.second_game = cells.one_of<SecondGame>("second_game");
    rule.last_batter = cells.one_of<LastBatter>("last_batter");
    rule.no_catching_from = cells.optional_whole("no_catching_from", 1, 400);
    rule.no_pitching_caught = cells.optional_whole("no_pitching_caught", 1, 20);
    rule.months_off = cells.optional_whole("months_off", 0, 12);
    rule.months_off_running = cells.optional_whole("months_off_running", 0, 12);
    rule.months_off_from = cells.one_of<MonthsOffFrom>("months_off_from");
    return rule;
}
const Columns pitch_rule_columns{"organisation",
                                 "year",
                                 "sport",
                                 "age_low",
                                 "age_high",
                                 "daily_max",
                                 "rest_0_to",
                                 "rest_1_to",
                                 "rest_2_to",
                                 "rest_3_to",
                                 "rest_4_to",
                                 "rest_5_to",
                                 "game_max",
                                 "third_day_max",
                                 "most_days_running",
                                 "yearly_innings",
                                 "age_on",
                                 "second_game",
                                 "last_batter",
                                 "no_catching_from",
                                 "no_pitching_caught",
                                 "months_off",
                                 "months_off_running",
                                 "months_off_from",
                                 "note",
                                 "source"};

StopSign stop_sign_of(ReferenceCells& cells) {
    return {cells.key("key"), cells.needed("sentence"), cells.yes("urgent"), cells.needed_list("sources")};
}
const Columns stop_sign_columns{"key", "sentence", "urgent", "sources"};
const std::string closing_key = "closing";

PainBlock pain_block_of(ReferenceCells& cells) {
    return {cells.one_of<PainRegion>("region"),
            cells.needed("name"),
            cells.yes("throwing"),
            cells.list("patterns"),
            cells.some_of<Region>("regions"),
            cells.list("cautions"),
            cells.needed("sentence"),
            cells.needed_list("sources")};
}
const Columns pain_block_columns{"region",  "name",     "throwing", "patterns",
                                 "regions", "cautions", "sentence", "sources"};

struct BothSexes {
    SegmentRow male, female;
};
BothSexes de_leva_row_of(ReferenceCells& cells) {
    constexpr double tall_man_m = 1.741, tall_woman_m = 1.735; // whose lengths the table prints [DeLeva1996]
    const auto row = [&](const std::string& sex, double stature) {
        return SegmentRow{cells.needed("segment"),
                          cells.needed("ends"),
                          cells.number("mass_" + sex, 0.001, 1),
                          cells.number("length_" + sex, 0.01, 2) / stature,
                          cells.number("centre_" + sex, 0, 1),
                          cells.number("radius_transverse_" + sex, 0.01, 1)};
    };
    cells.needed_list("sources");
    return {row("male", tall_man_m), row("female", tall_woman_m)};
}
const Columns de_leva_columns{"segment",
                              "ends",
                              "mass_male",
                              "mass_female",
                              "length_male",
                              "length_female",
                              "centre_male",
                              "centre_female",
                              "radius_sagittal_male",
                              "radius_sagittal_female",
                              "radius_transverse_male",
                              "radius_transverse_female",
                              "radius_longitudinal_male",
                              "radius_longitudinal_female",
                              "sources"};

SegmentRow winter_row_of(ReferenceCells& cells) {
    cells.needed_list("sources");
    return {cells.needed("segment"),        cells.needed("ends"),
            cells.number("mass", 0.001, 1), cells.optional_number("length", 0.01, 1),
            cells.number("centre", 0, 1),   cells.number("radius", 0.01, 1)};
}
const Columns winter_columns{"segment",         "ends",   "mass", "length", "centre", "radius",
                             "radius_proximal", "sources"};

std::optional<Refusal> check_columns(const std::string& file, const CsvTable& table, const Columns& columns) {
    const std::string where = file + ", line " + std::to_string(table.header_line) + ", ";
    for (const std::string& column : columns)
        if (!table.column(column))
            return refuse_missing(where + column, "a column of this file");
    for (const std::string& given : table.header)
        if (std::find(columns.begin(), columns.end(), given) == columns.end())
            return Refusal{RefusalCode::unknown_field, where + given + ": this file has no such column.",
                           where + given, given, "the columns of the header line in data/" + file};
    return std::nullopt;
}

template <class T>
std::optional<Refusal> parse_rows(const Texts& texts, const std::string& file, const Columns& columns,
                                  T (*row_of)(ReferenceCells&), std::vector<T>& rows,
                                  std::vector<int>& lines) {
    auto text = texts.find(file);
    if (text == texts.end())
        return refuse_missing(file, "a reference table");
    auto table = parse_csv(text->second);
    if (!table) {
        Refusal refusal = table.refusal();
        refusal.field = file + ", " + refusal.field;
        return refusal;
    }
    if (auto refusal = check_columns(file, *table, columns))
        return refusal;
    for (const CsvRow& row : table->rows) {
        ReferenceCells cells(file, *table, row);
        rows.push_back(row_of(cells));
        lines.push_back(row.line);
        if (cells.fault())
            return cells.fault();
    }
    if (rows.empty())
        return refuse_missing(file, "at least one row");
    return std::nullopt;
}

std::optional<Refusal> parse_segments(const Texts& texts, SegmentTables& segments) {
    std::vector<BothSexes> both;
    std::vector<int> lines;
    const std::string file = "segments_de_leva.csv";
    if (auto r = parse_rows(texts, file, de_leva_columns, de_leva_row_of, both, lines))
        return r;
    for (auto& [male, female] : both) {
        segments.de_leva_male.push_back(std::move(male));
        segments.de_leva_female.push_back(std::move(female));
    }
    if (auto r =
            parse_rows(texts, "segments_winter.csv", winter_columns, winter_row_of, segments.winter, lines))
        return r;
    return check_segment_rows(segments);
}

std::optional<Refusal> take_closing_sentence(ReferenceTables& tables, ReferenceLines& lines) {
    auto& signs = tables.stop_signs;
    auto closing =
        std::find_if(signs.begin(), signs.end(), [](const StopSign& s) { return s.key == closing_key; });
    if (closing == signs.end())
        return refuse_missing("stop_and_refer.csv, closing", "the sentence that ends the list");
    tables.stop_closing = closing->sentence;
    lines.stop_signs.erase(lines.stop_signs.begin() + (closing - signs.begin()));
    signs.erase(closing);
    return std::nullopt;
}

template <class T>
const T* find_key(const std::vector<T>& rows, std::string_view key) {
    auto found = std::find_if(rows.begin(), rows.end(), [&](const T& row) { return row.key == key; });
    return found == rows.end() ? nullptr : &*found;
}

} // namespace

const Quality* ReferenceTables::quality(std::string_view key) const {
    return find_key(qualities, key);
}
const TestKind* ReferenceTables::test_kind(std::string_view key) const {
    return find_key(test_kinds, key);
}
const Exercise* ReferenceTables::exercise(std::string_view key) const {
    return find_key(exercises, key);
}
const Caution* ReferenceTables::caution(std::string_view key) const {
    return find_key(cautions, key);
}

std::vector<std::string> reference_file_names() {
    return {"qualities.csv",        "test_kinds.csv",         "exercises.csv",   "cautions.csv",
            "velocity_priors.csv",  "attainable_changes.csv", "pitch_rules.csv", "stop_and_refer.csv",
            "segments_de_leva.csv", "segments_winter.csv",    "pain_regions.csv"};
}

Result<ReferenceTables> parse_reference_tables(const Texts& texts) {
    ReferenceTables t;
    ReferenceLines at;
    if (auto r = parse_rows(texts, "qualities.csv", quality_columns, quality_of, t.qualities, at.qualities))
        return *r;
    if (auto r =
            parse_rows(texts, "test_kinds.csv", test_kind_columns, test_kind_of, t.test_kinds, at.test_kinds))
        return *r;
    if (auto r = parse_rows(texts, "exercises.csv", exercise_columns, exercise_of, t.exercises, at.exercises))
        return *r;
    if (auto r = parse_rows(texts, "cautions.csv", caution_columns, caution_of, t.cautions, at.cautions))
        return *r;
    if (auto r = parse_rows(texts, "velocity_priors.csv", prior_columns, velocity_prior_of, t.velocity_priors,
                            at.velocity_priors))
        return *r;
    if (auto r = parse_rows(texts, "attainable_changes.csv", prior_columns, attainable_change_of,
                            t.attainable_changes, at.attainable_changes))
        return *r;
    if (auto r = parse_rows(texts, "pitch_rules.csv", pitch_rule_columns, pitch_rule_of, t.pitch_rules,
                            at.pitch_rules))
        return *r;
    if (auto r = parse_rows(texts, "stop_and_refer.csv", stop_sign_columns, stop_sign_of, t.stop_signs,
                            at.stop_signs))
        return *r;
    if (auto r = parse_rows(texts, "pain_regions.csv", pain_block_columns, pain_block_of, t.pain_blocks,
                            at.pain_blocks))
        return *r;
    if (auto r = parse_segments(texts, t.segments))
        return *r;
    if (auto r = take_closing_sentence(t, at))
        return *r;
    if (auto r = check_reference_links(t, at))
        return *r;
    return t;
}

} // namespace amentum
