#include "operations/compare_blocks.h"

#include "operations/inside/block_reach.h"
#include "operations/inside/kept_block.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

// A week that is not reduced (wave.h): the block's own words on it are empty.
bool is_full(const ShownSession& session) {
    return session.week_words.empty();
}

int full_weeks(const BlockAnswer& block) {
    std::vector<int> weeks;
    for (const auto& session : block.sessions)
        if (is_full(session) && std::find(weeks.begin(), weeks.end(), session.week) == weeks.end())
            weeks.push_back(session.week);
    return static_cast<int>(weeks.size());
}

ComparedLine& line_of(std::vector<ComparedLine>& lines, const ShownLine& line) {
    const auto found =
        std::find_if(lines.begin(), lines.end(), [&](const auto& l) { return l.exercise == line.exercise; });
    if (found != lines.end())
        return *found;
    lines.push_back({line.exercise, line.name, line.part, 0, 0, "", ""});
    return lines.back();
}

// Adds one block's sets of its full weeks, over their number, and the load it ends with.
void add_block(std::vector<ComparedLine>& lines, const BlockAnswer& block, double ComparedLine::*sets,
               std::string ComparedLine::*load) {
    const int weeks = full_weeks(block);
    for (const auto& session : block.sessions)
        for (const auto& line : session.lines)
            if (is_full(session)) {
                ComparedLine& compared = line_of(lines, line);
                compared.*sets += static_cast<double>(line.sets) / weeks;
                compared.*load = line.load_words;
            }
}

std::vector<ComparedLine> compared_lines(const BlockAnswer& first, const BlockAnswer& second) {
    std::vector<ComparedLine> lines;
    add_block(lines, first, &ComparedLine::sets_a_week, &ComparedLine::load_words);
    add_block(lines, second, &ComparedLine::sets_a_week_with, &ComparedLine::load_words_with);
    const auto apart = [](const ComparedLine& line) {
        return std::abs(line.sets_a_week - line.sets_a_week_with);
    };
    std::stable_sort(lines.begin(), lines.end(), [&](const auto& a, const auto& b) {
        if (std::abs(apart(a) - apart(b)) > 1e-9)
            return apart(a) > apart(b);
        return (a.load_words != a.load_words_with) > (b.load_words != b.load_words_with);
    });
    return lines;
}

ComparedBlock compared_block(const BlockAnswer& block) {
    const auto speaks = [](const ShownFinding& finding) { return finding.severity != "notes"; };
    return {block.block,
            block.kit,
            block.start,
            block.weeks,
            block.sessions_per_week,
            block.minutes,
            block.reach,
            static_cast<int>(std::count_if(block.findings.begin(), block.findings.end(), speaks))};
}

std::string points_words(const ComparedBlock& first, const ComparedBlock& second) {
    if (!first.reach || !second.reach)
        return "Cannot tell what they give: nothing can be planned for this thrower by today's records.";
    const double more = first.reach->points - second.reach->points;
    const std::string points = "The first has " + format_fixed(first.reach->points, 1) +
                               " points of 100, the second " + format_fixed(second.reach->points, 1);
    return points + (std::abs(more) < 0.05 ? ": the same." : ".");
}

std::string lines_words(const std::vector<ComparedLine>& lines) {
    const auto only_first = std::count_if(lines.begin(), lines.end(),
                                          [](const auto& line) { return line.sets_a_week_with == 0; });
    const auto only_second =
        std::count_if(lines.begin(), lines.end(), [](const auto& line) { return line.sets_a_week == 0; });
    const auto both = static_cast<std::ptrdiff_t>(lines.size()) - only_first - only_second;
    return " Exercises of the full weeks: " + std::to_string(both) + " in both, " +
           std::to_string(only_first) + " only in the first, " + std::to_string(only_second) +
           " only in the second.";
}

Refusal two_throwers(const FacilityView& view, const Block& first, const Block& second) {
    std::string allowed;
    for (const auto* own : blocks_of(view, first.athlete))
        allowed += (allowed.empty() ? "" : ", ") + own->id.text;
    return {RefusalCode::unknown_choice,
            "The blocks are of two throwers, " + view.athlete(first.athlete.text)->name + " and " +
                view.athlete(second.athlete.text)->name + "; two blocks of one thrower are compared.",
            "with", second.id.text, allowed};
}

} // namespace

Result<CompareBlocksAnswer> compare_blocks(Workplace& workplace, const CompareBlocksRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto block = kept_block(*view, request.block, "block");
    if (!block)
        return block.refusal();
    const auto with = kept_block(*view, request.with, "with");
    if (!with)
        return with.refusal();
    if ((*block)->athlete != (*with)->athlete)
        return two_throwers(*view, **block, **with);
    const auto first = priced_answer(inside, *view, **block);
    const auto second = priced_answer(inside, *view, **with);
    CompareBlocksAnswer answer{first.athlete,
                               first.name,
                               compared_block(first),
                               compared_block(second),
                               compared_lines(first, second),
                               "",
                               {}};
    answer.words = first.block == second.block
                       ? "Both are the same block."
                       : points_words(answer.first, answer.second) + lines_words(answer.lines);
    for (const auto* own : blocks_of(*view, (*block)->athlete))
        answer.blocks.push_back(own->id.text);
    return answer;
}

} // namespace amentum
