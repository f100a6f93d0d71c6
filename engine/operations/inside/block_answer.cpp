#include "operations/inside/block_answer.h"

#include "guard_rails/check_block.h"
#include "operations/inside/finding_answer.h"
#include "operations/inside/own_words.h"
#include "operations/inside/throwing_answer.h"
#include "planning/block_so_far.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace amentum {
namespace {

const char* weekday_name(Date date) {
    static const char* names[] = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                  "Friday", "Saturday", "Sunday"};
    return names[date.iso_weekday() - 1];
}

std::string dose_words(const BlockLine& line, const Exercise* exercise) {
    std::string words = std::to_string(line.sets) + " x " + std::to_string(line.reps);
    if (exercise && exercise->one_sided)
        words += " a side";
    return words;
}

std::string intensity_words(const BlockLine& line) {
    std::string words;
    if (line.intensity)
        words = "about " + format_fixed(100 * *line.intensity, 0) + " % of the estimated maximum";
    if (line.reps_in_reserve)
        words += (words.empty() ? "" : ", ") + std::string("leave ") +
                 format_fixed(*line.reps_in_reserve, 0) + " in reserve";
    return words;
}

std::vector<std::string> cautions_against(const ReferenceTables& tables, const Athlete& athlete,
                                          const Exercise& exercise) {
    std::vector<std::string> words;
    for (const auto& key : exercise.cautions)
        if (std::find(athlete.restrictions.begin(), athlete.restrictions.end(), key) !=
            athlete.restrictions.end())
            if (const Caution* caution = tables.caution(key))
                words.push_back(caution->sentence);
    return words;
}

ShownLine shown_line(const Workplace::Inside& inside, const FacilityView& view, const Block& block,
                     const BlockLine& line, int sets_logged, const ShownUnit& unit) {
    const Exercise* exercise = inside.tables.exercise(line.exercise);
    const Quality* purpose = inside.tables.quality(line.purpose);
    ShownLine shown{line.order,
                    line.exercise,
                    exercise ? exercise->name : line.exercise,
                    word(line.part),
                    line.sets,
                    line.reps,
                    dose_words(line, exercise),
                    {},
                    unit.unit,
                    line.load_words,
                    intensity_words(line),
                    line.rest_minutes,
                    exercise ? exercise->setup : "",
                    purpose ? purpose->name : line.purpose,
                    line.reason,
                    {},
                    sets_logged,
                    exercise ? exercise->setup_minutes + line.sets * exercise->set_minutes : 0,
                    {},
                    "",
                    ""};
    if (line.load)
        shown.load = shown_load_in(*line.load, unit);
    if (const Athlete* athlete = view.athlete(block.athlete.text); athlete && exercise)
        shown.cautions = cautions_against(inside.tables, *athlete, *exercise);
    return shown;
}

// A week with much fewer sets than the fullest week is a reduced one.
std::string week_words(const Block& block, int week) {
    std::map<int, int> sets;
    for (const auto& line : block.lines)
        sets[line.week] += line.sets;
    int most = 0;
    for (const auto& [each, count] : sets)
        most = std::max(most, count);
    return sets[week] * 10 <= most * 7 ? "reduced volume" : "";
}

double minutes_of(const Workplace::Inside& inside, const std::vector<const BlockLine*>& lines) {
    double minutes = 0;
    for (const auto* line : lines)
        if (const Exercise* exercise = inside.tables.exercise(line->exercise))
            minutes += exercise->setup_minutes + line->sets * exercise->set_minutes;
    return minutes;
}

// A session keeps its number through the block; a sheet shows a week's in the order of their days.
bool by_week_and_day(const ShownSession& a, const ShownSession& b) {
    return std::tie(a.week, a.date) < std::tie(b.week, b.date);
}

std::vector<ShownSession> sessions_of(const Workplace::Inside& inside, const FacilityView& view,
                                      const Block& block, std::optional<int> week, const ShownUnit& unit) {
    std::map<std::pair<int, int>, std::vector<const BlockLine*>> grouped;
    for (const auto& line : block.lines)
        if (!week || line.week == *week)
            grouped[{line.week, line.session}].push_back(&line);
    std::map<const BlockLine*, int> logged;
    for (const BlockLine* line : lines_of_sets(block, view.records.sets))
        ++logged[line];
    std::vector<ShownSession> sessions;
    for (const auto& [key, lines] : grouped) {
        const Date date = lines.front()->date;
        ShownSession session{key.first,
                             key.second,
                             date.text(),
                             weekday_name(date),
                             week_words(block, key.first),
                             minutes_of(inside, lines),
                             {}};
        for (const auto* line : lines)
            session.lines.push_back(shown_line(inside, view, block, *line, logged[line], unit));
        sessions.push_back(std::move(session));
    }
    std::stable_sort(sessions.begin(), sessions.end(), by_week_and_day);
    return sessions;
}

std::vector<std::string> aims_of(const Workplace::Inside& inside, const Block& block) {
    std::map<std::string, int> sets;
    for (const auto& line : block.lines)
        sets[line.purpose] += line.sets;
    std::vector<std::pair<int, std::string>> ordered;
    for (const auto& [key, count] : sets) {
        const Quality* quality = inside.tables.quality(key);
        ordered.emplace_back(-count,
                             (quality ? quality->name : key) + ": " + std::to_string(count) + " sets");
    }
    std::sort(ordered.begin(), ordered.end());
    std::vector<std::string> aims;
    for (const auto& [count, words] : ordered)
        aims.push_back(words);
    return aims;
}

void fill_own_words(BlockAnswer& answer, const Workplace::Inside& inside, const FacilityView& view,
                    const Block& block) {
    const auto in_force = changes_in_force(view.block_changes, block.id);
    for (const auto& change : in_force)
        answer.own_words.push_back(change_words(change, inside.tables) + " (" + change.date.text() + ")");
    for (const auto& own : own_lines(in_force, block.sessions_per_week))
        for (auto& session : answer.sessions)
            for (auto& line : session.lines)
                if (own.word == OwnLine::Word::hold && own.exercise == line.exercise &&
                    own.session.value_or(session.session) == session.session)
                    line.own_word = "held";
}

} // namespace

BlockAnswer block_answer(const Workplace::Inside& inside, const FacilityView& view, const Block& block,
                         std::optional<int> week) {
    const Athlete& athlete = *view.athlete(block.athlete.text);
    const auto kit = std::find_if(view.records.kits.begin(), view.records.kits.end(),
                                  [&](const auto& k) { return k.id == block.kit; });
    const auto unit = shown_mass(kit == view.records.kits.end() ? MassUnit::kg : kit->unit);
    BlockAnswer answer{block.id.text,
                       athlete.id.text,
                       athlete.name,
                       kit == view.records.kits.end() ? block.kit.text : kit->name,
                       block.start.text(),
                       block.weeks,
                       block.sessions_per_week,
                       block.minutes,
                       aims_of(inside, block),
                       sessions_of(inside, view, block, week, unit),
                       block.notes,
                       {},
                       stop_and_refer_words(inside.tables),
                       block.model,
                       {},
                       {}};
    if (kit != view.records.kits.end())
        answer.findings = block_findings(inside, view, block, athlete, *kit);
    fill_own_words(answer, inside, view, block);
    return answer;
}

} // namespace amentum
