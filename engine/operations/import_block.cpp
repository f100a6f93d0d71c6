#include "operations/import_block.h"

#include "equipment/load_words.h"
#include "guard_rails/finding.h"
#include "operations/inside/block_reach.h"
#include "operations/inside/planned_anew.h"
#include "planning/kit_loads.h"
#include "planning/plan_sets.h"
#include "records/block_sheet.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double a_gram = 0.001; // kg
// Of the load: under the smallest step that counts [ACSM2009]. Weighed plates seldom make the round number of a sheet.
constexpr double near_enough = 0.02;

std::string said_load(const MadeLoad& made, MassUnit unit) {
    return describe_mass(made.total, unit) + " (" + made.words + ")";
}

Refusal refuse_load(const BlockSheetLine& sheet, const LoadChoice& choice, MassUnit unit) {
    std::string near;
    if (choice.not_above)
        near = said_load(*choice.not_above, unit);
    if (choice.above)
        near += (near.empty() ? "" : " or ") + said_load(*choice.above, unit);
    const std::string given = describe_mass(*sheet.line.load, unit);
    const std::string line = "line " + std::to_string(sheet.file_line);
    return {RefusalCode::load_not_makeable,
            "Line " + std::to_string(sheet.file_line) + ": " + given +
                " cannot be made here. Next to it: " + near + ".",
            line + ", " + sheet.field, given, near};
}

// What the file left to the program: how a load is made, rests, words where there is no load.
class Finish {
public:
    Finish(const ReferenceTables& tables, const Athlete& athlete, const Kit& kit, Date start)
        : tables_(tables), kit_(kit), loads_(kit), loading_(loading_of(athlete, start)) {}

    // Loads taken as this gym makes them, each said once.
    const std::vector<std::string>& notes() const { return notes_; }

    std::optional<Refusal> line(BlockSheetLine& sheet) {
        BlockLine& line = sheet.line;
        const Exercise& exercise = *tables_.exercise(line.exercise);
        if (!sheet.rest_given)
            line.rest_minutes = rest_minutes(exercise, loading_);
        const LoadTable* table = loads_.table(exercise);
        if (line.load && table) {
            const LoadChoice choice = table->choose(*line.load);
            const double off = std::abs((choice.nearest.total - *line.load).kilograms());
            if (off > std::abs(line.load->kilograms()) * near_enough && off >= a_gram)
                return refuse_load(sheet, choice, kit_.unit);
            if (off >= a_gram)
                take_as_made(exercise, *line.load, choice.nearest);
            line.load = choice.nearest.total;       // to the last bit
            line.load_words = choice.nearest.words; // whatever gym the file was written in
        }
        if (line.load_words.empty())
            line.load_words = words_without_load(line, exercise);
        return std::nullopt;
    }

private:
    void take_as_made(const Exercise& exercise, Mass wanted, const MadeLoad& made) {
        const std::string note = exercise.name + ": " + describe_mass(wanted, kit_.unit) +
                                 " is made here as " + said_load(made, kit_.unit) + ".";
        if (std::find(notes_.begin(), notes_.end(), note) == notes_.end())
            notes_.push_back(note);
    }

    std::string words_without_load(const BlockLine& line, const Exercise& exercise) const {
        const auto bands = loads_.bands();
        if (line.load)
            return describe_mass(*line.load, kit_.unit);
        if (exercise.means == LoadMeans::body || exercise.means == LoadMeans::added_plate)
            return "body mass";
        if (exercise.means == LoadMeans::band && bands.size() == 1)
            return bands.front();
        if (!line.reps_in_reserve)
            return "no load is written";
        return std::string(exercise.means == LoadMeans::band ? "the band" : "the load") + " that leaves " +
               format_shortest(*line.reps_in_reserve) + " in reserve";
    }

    const ReferenceTables& tables_;
    const Kit& kit_;
    KitLoads loads_;
    Loading loading_;
    std::vector<std::string> notes_;
};

std::string count_of(std::size_t count, const std::string& what) {
    return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

ImportBlockAnswer with_problems(const std::vector<Refusal>& problems) {
    ImportBlockAnswer answer{false,
                             false,
                             "Nothing is kept: " + count_of(problems.size(), "problem") +
                                 ". Mend them and bring the whole file again.",
                             {},
                             {}};
    for (const auto& problem : problems)
        answer.problems.push_back(shown_refusal(problem));
    return answer;
}

const Block* held_block(const FacilityView& view, const Block& block) {
    for (const auto& each : view.records.blocks)
        if (each.id == block.id)
            return &each;
    return nullptr;
}

Block block_of(const BlockSheet& sheet, const Athlete& athlete, const Kit& kit, double minutes) {
    Block block{BlockId{athlete.id.text + "-" + sheet.start.text()},
                athlete.id,
                kit.id,
                sheet.start,
                sheet.weeks,
                sheet.sessions_per_week,
                minutes,
                {},
                sheet.notes,
                "a coach's own block, from a file"};
    for (const auto& each : sheet.lines)
        block.lines.push_back(each.line);
    return block;
}

std::size_t stops_among(const std::vector<ShownFinding>& findings) {
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(),
                      [](const ShownFinding& finding) { return finding.severity == word(Severity::stops); }));
}

std::string summary(const Block& block, const Block* held, std::size_t stops, bool kept) {
    const std::string what = count_of(block.lines.size(), "line") + " in " + std::to_string(block.weeks) +
                             " weeks from " + block.start.text();
    if (held && held->lines == block.lines && held->minutes == block.minutes && held->kit == block.kit)
        return what + ": already held as it is.";
    const std::string replaces = held ? " in place of the block held from that day" : "";
    if (kept)
        return "Kept: " + what + replaces + ".";
    if (stops > 0)
        return "Not kept: " + count_of(stops, "check") + " below " + (stops == 1 ? "stops" : "stop") +
               " it. " + what + ".";
    return what + ". Nothing is kept yet; it would be kept" + replaces + ".";
}

} // namespace

Result<ImportBlockAnswer> import_block(Workplace& workplace, const ImportBlockRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto athlete = athlete_named(*view, request.athlete);
    if (!athlete)
        return athlete.refusal();
    const auto kit = kit_named(*view, request.kit.value_or((*athlete)->kit.text));
    if (!kit)
        return kit.refusal();
    const double minutes = request.minutes.value_or(60);
    if (minutes < shortest_session_minutes || minutes > longest_session_minutes)
        return refuse_range("minutes", minutes, shortest_session_minutes, longest_session_minutes, "minutes");
    const Date today = inside.today();
    BlockSheetContext context{inside.tables, {}, today + (8 - today.iso_weekday())};
    if (request.start) {
        const auto start = parse_date(*request.start, "start");
        if (!start)
            return start.refusal();
        context.start = *start;
    }
    auto sheet = parse_block_sheet(request.text, context);
    if (!sheet)
        return sheet.refusal();
    std::vector<Refusal> problems = sheet->problems;
    Finish finish(inside.tables, **athlete, **kit, sheet->start);
    if (problems.empty())
        for (auto& line : sheet->lines)
            if (const auto problem = finish.line(line))
                problems.push_back(*problem);
    if (!problems.empty())
        return with_problems(problems);
    sheet->notes.insert(sheet->notes.end(), finish.notes().begin(), finish.notes().end());

    const Block block = block_of(*sheet, **athlete, **kit, minutes);
    const Block* held = held_block(*view, block);
    const bool same = held && *held == block;
    ImportBlockAnswer answer{false, false, "", {}, priced_answer(inside, *view, block)};
    const auto stops = stops_among(answer.block->findings);
    answer.can_be_kept = stops == 0;
    const std::lock_guard writing(inside.writing); // sets are logged while a block is priced
    if (request.keep.value_or(false) && !same)
        if (const auto free = check_not_begun(inside, block); !free)
            return free.refusal();
    if (request.keep.value_or(false) && answer.can_be_kept) {
        const auto ended = same ? std::string() : save_planned_anew(inside, block);
        if (!ended.empty())
            answer.block->notes.push_back(ended);
        answer.kept = true;
    }
    answer.words = summary(block, held, stops, answer.kept);
    return answer;
}

} // namespace amentum
