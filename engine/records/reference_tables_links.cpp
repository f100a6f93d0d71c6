#include "records/reference_tables_links.h"

#include "throwing_workload/check_pitch_table.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace amentum {

namespace {

std::string where(const char* file, int line, const char* column) {
    return std::string(file) + ", line " + std::to_string(line) + ", " + column;
}

std::optional<Refusal> refuse(const char* file, int line, const char* column, std::string what,
                              std::string given) {
    std::string field = where(file, line, column);
    return Refusal{RefusalCode::out_of_range, field + ": " + what, field, std::move(given), ""};
}

template <class T, class Key>
std::optional<Refusal> check_unique(const std::vector<T>& rows, const std::vector<int>& lines,
                                    const char* file, const char* column, Key key) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (!seen.insert(key(rows[i])).second)
            return Refusal{RefusalCode::already_held,
                           where(file, lines[i], column) + " stands a second time.",
                           where(file, lines[i], column), key(rows[i]), "each key once"};
    return std::nullopt;
}

template <class T>
std::vector<std::string> keys_of(const std::vector<T>& rows) {
    std::vector<std::string> keys;
    for (const T& row : rows)
        keys.push_back(row.key);
    return keys;
}

std::optional<Refusal> check_known(const std::string& key, const std::vector<std::string>& known,
                                   std::string field) {
    if (std::find(known.begin(), known.end(), key) != known.end())
        return std::nullopt;
    return refuse_unknown(std::move(field), key, known);
}

std::optional<Refusal> check_keys(const ReferenceTables& t, const ReferenceLines& at) {
    auto key = [](const auto& row) { return row.key; };
    auto quality = [](const auto& row) { return row.quality; };
    if (auto r = check_unique(t.qualities, at.qualities, "qualities.csv", "key", key))
        return r;
    if (auto r = check_unique(t.test_kinds, at.test_kinds, "test_kinds.csv", "key", key))
        return r;
    if (auto r = check_unique(t.exercises, at.exercises, "exercises.csv", "key", key))
        return r;
    if (auto r = check_unique(t.cautions, at.cautions, "cautions.csv", "key", key))
        return r;
    if (auto r = check_unique(t.stop_signs, at.stop_signs, "stop_and_refer.csv", "key", key))
        return r;
    if (auto r =
            check_unique(t.velocity_priors, at.velocity_priors, "velocity_priors.csv", "quality", quality))
        return r;
    return check_unique(t.attainable_changes, at.attainable_changes, "attainable_changes.csv", "quality",
                        quality);
}

// Tests that serve something else than velocity: growth, a body's links, the posture of a lift.
bool may_feed_none(Measure measure) {
    return measure == Measure::stature || measure == Measure::reactive_ratio ||
           measure == Measure::taped_length || measure == Measure::joint_angle;
}

std::optional<Refusal> check_tests(const ReferenceTables& t, const ReferenceLines& at) {
    const auto known = keys_of(t.qualities);
    for (std::size_t i = 0; i < t.test_kinds.size(); ++i) {
        const TestKind& kind = t.test_kinds[i];
        if (!(kind.quality.empty() && may_feed_none(kind.measure)))
            if (auto r =
                    check_known(kind.quality, known, where("test_kinds.csv", at.test_kinds[i], "quality")))
                return r;
        if (kind.plausible_low >= kind.plausible_high)
            return refuse("test_kinds.csv", at.test_kinds[i], "plausible_high", "must be above plausible_low",
                          format_shortest(kind.plausible_high));
        if (kind.trial_error <= 0 && kind.day_error <= 0)
            return refuse("test_kinds.csv", at.test_kinds[i], "trial_error", "no test is without error", "0");
        if ((kind.measure == Measure::ball_speed) != kind.ball_mass.has_value())
            return refuse("test_kinds.csv", at.test_kinds[i], "ball_lb",
                          "is for tests of ball speed, and for all of them", "");
    }
    return std::nullopt;
}

std::optional<Refusal> check_exercises(const ReferenceTables& t, const ReferenceLines& at) {
    const auto qualities = keys_of(t.qualities), tests = keys_of(t.test_kinds),
               cautions = keys_of(t.cautions);
    for (std::size_t i = 0; i < t.exercises.size(); ++i) {
        const Exercise& e = t.exercises[i];
        auto field = [&](const char* column) { return where("exercises.csv", at.exercises[i], column); };
        for (const auto& [quality, share] : e.qualities)
            if (auto r = check_known(quality, qualities, field("qualities")))
                return r;
        if (e.load_test)
            if (auto r = check_known(*e.load_test, tests, field("load_test")))
                return r;
        for (const std::string& caution : e.cautions)
            if (auto r = check_known(caution, cautions, field("cautions")))
                return r;
        if (e.lightest && e.heaviest && *e.lightest > *e.heaviest)
            return refuse("exercises.csv", at.exercises[i], "heaviest_lb", "must not be below lightest_lb",
                          format_shortest(e.heaviest->pounds()));
    }
    return std::nullopt;
}

std::optional<Refusal> check_alternatives(const ReferenceTables& t, const ReferenceLines& at) {
    const auto exercises = keys_of(t.exercises);
    for (std::size_t i = 0; i < t.cautions.size(); ++i)
        for (const std::string& key : t.cautions[i].alternatives) {
            if (auto r = check_known(key, exercises, where("cautions.csv", at.cautions[i], "alternatives")))
                return r;
            const auto& against = t.exercise(key)->cautions;
            if (std::find(against.begin(), against.end(), t.cautions[i].key) != against.end())
                return refuse("cautions.csv", at.cautions[i], "alternatives",
                              "the same caution speaks against this alternative", key);
        }
    return std::nullopt;
}

std::optional<Refusal> check_priors(const ReferenceTables& t, const ReferenceLines& at) {
    const auto known = keys_of(t.qualities);
    for (std::size_t i = 0; i < t.velocity_priors.size(); ++i)
        if (auto r = check_known(t.velocity_priors[i].quality, known,
                                 where("velocity_priors.csv", at.velocity_priors[i], "quality")))
            return r;
    for (std::size_t i = 0; i < t.attainable_changes.size(); ++i)
        if (auto r = check_known(t.attainable_changes[i].quality, known,
                                 where("attainable_changes.csv", at.attainable_changes[i], "quality")))
            return r;
    return std::nullopt;
}

// Rest bands ascend without a gap among those given; after the first empty one all are empty.
bool ascend(const PitchRule& rule) {
    int last = 0;
    bool ended = false;
    for (const auto& to : rule.rest_to) {
        if (!to) {
            ended = true;
            continue;
        }
        if (ended || *to <= last)
            return false;
        last = *to;
    }
    return true;
}

// Each organisation's table of one year and sport as it would be checked on saving.
std::optional<Refusal> check_whole_tables(const ReferenceTables& t) {
    std::map<std::tuple<std::string, int, Sport>, std::vector<PitchRule>> tables;
    for (const PitchRule& rule : t.pitch_rules)
        tables[{rule.organisation, rule.year, rule.sport}].push_back(rule);
    for (const auto& [whose, rows] : tables)
        if (auto whole = check_pitch_table(rows); !whole) {
            Refusal refusal = whole.refusal();
            refusal.field = "pitch_rules.csv, " + std::get<0>(whose) + ", " + refusal.field;
            return refusal;
        }
    return std::nullopt;
}

std::optional<Refusal> check_rules(const ReferenceTables& t, const ReferenceLines& at) {
    for (std::size_t i = 0; i < t.pitch_rules.size(); ++i) {
        const PitchRule& a = t.pitch_rules[i];
        if (a.age_low > a.age_high)
            return refuse("pitch_rules.csv", at.pitch_rules[i], "age_high", "must not be below age_low",
                          std::to_string(a.age_high));
        if (!ascend(a))
            return refuse("pitch_rules.csv", at.pitch_rules[i], "rest_0_to",
                          "rest bands must ascend without a gap", "");
        for (std::size_t j = 0; j < i; ++j) {
            const PitchRule& b = t.pitch_rules[j];
            const bool same = a.organisation == b.organisation && a.year == b.year && a.sport == b.sport;
            if (same && a.age_low <= b.age_high && b.age_low <= a.age_high)
                return refuse("pitch_rules.csv", at.pitch_rules[i], "age_low",
                              "these ages are already covered by line " + std::to_string(at.pitch_rules[j]),
                              std::to_string(a.age_low));
        }
    }
    return check_whole_tables(t);
}

// A region without its row would block nothing: all of them, in order.
std::optional<Refusal> check_pain_blocks(const ReferenceTables& t, const ReferenceLines& at) {
    constexpr auto& regions = words_of<PainRegion>;
    std::vector<std::string> patterns;
    for (const Exercise& e : t.exercises)
        patterns.push_back(e.pattern);
    const auto cautions = keys_of(t.cautions);
    for (std::size_t i = 0; i < t.pain_blocks.size(); ++i) {
        const PainBlock& row = t.pain_blocks[i];
        const auto field = [&](const char* column) {
            return where("pain_regions.csv", at.pain_blocks[i], column);
        };
        if (i >= regions.size() || row.region != regions[i].first)
            return refuse("pain_regions.csv", at.pain_blocks[i], "region",
                          "every region has one row, in this order", word(row.region));
        for (const std::string& pattern : row.patterns)
            if (auto r = check_known(pattern, patterns, field("patterns")))
                return r;
        for (const std::string& caution : row.cautions)
            if (auto r = check_known(caution, cautions, field("cautions")))
                return r;
        if (std::none_of(t.exercises.begin(), t.exercises.end(),
                         [&](const auto& e) { return blocks(row, e); }))
            return refuse("pain_regions.csv", at.pain_blocks[i], "patterns", "this row blocks no exercise",
                          "");
    }
    if (t.pain_blocks.size() < regions.size())
        return refuse_missing("pain_regions.csv, " + std::string(regions[t.pain_blocks.size()].second),
                              "a row for every region of pain");
    return std::nullopt;
}

} // namespace

std::optional<Refusal> check_reference_links(const ReferenceTables& tables, const ReferenceLines& lines) {
    if (auto r = check_keys(tables, lines))
        return r;
    if (auto r = check_tests(tables, lines))
        return r;
    if (auto r = check_exercises(tables, lines))
        return r;
    if (auto r = check_alternatives(tables, lines))
        return r;
    if (auto r = check_priors(tables, lines))
        return r;
    if (auto r = check_pain_blocks(tables, lines))
        return r;
    return check_rules(tables, lines);
}

} // namespace amentum
