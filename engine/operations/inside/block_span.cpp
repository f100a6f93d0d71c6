#include "operations/inside/judged_block.h"

#include <algorithm>

namespace amentum {
namespace {

constexpr double emphasised_share = 0.15;             // of the sets (proposal of this project, no source)
constexpr int after_end_days = 42, soonest_days = 14; // (proposal of this project, no source)

std::vector<std::string> emphasised_in(const Block& block) {
    std::map<std::string, int> sets;
    int all = 0;
    for (const auto& line : block.lines) {
        sets[line.purpose] += line.sets;
        all += line.sets;
    }
    std::vector<std::pair<int, std::string>> ordered;
    for (const auto& [key, count] : sets)
        if (count >= emphasised_share * all)
            ordered.emplace_back(-count, key);
    std::sort(ordered.begin(), ordered.end());
    std::vector<std::string> keys;
    for (const auto& [count, key] : ordered)
        keys.push_back(key);
    return keys;
}

BlockSpan span_of(const Block& block, Date today) {
    const Date last = block.start + (7 * block.weeks - 1);
    return {block.id.text, block.start, last, last <= today, emphasised_in(block)};
}

Result<BlockSpan> span_of_dates(const JudgeBlockRequest& request, Date today) {
    if (!request.from_date)
        return refuse_missing("from_date", "the first day of the block");
    if (!request.to_date)
        return refuse_missing("to_date", "the last day of the block");
    const auto first = parse_date(*request.from_date, "from_date"),
               last = parse_date(*request.to_date, "to_date");
    if (!first)
        return first.refusal();
    if (!last)
        return last.refusal();
    if (*last - *first < soonest_days)
        return Refusal{RefusalCode::impossible_date,
                       "A block lasts two weeks or more: to_date must lie that far after from_date.",
                       "to_date", *request.to_date, "from " + (*first + soonest_days).text()};
    if (*first > today)
        return Refusal{RefusalCode::impossible_date, "The block has not begun.", "from_date",
                       *request.from_date, "up to " + today.text()};
    return BlockSpan{"", *first, *last, *last <= today, {}};
}

} // namespace

BlockDays BlockSpan::days() const {
    const int first = start.days_since_1970(), end = last.days_since_1970();
    if (!finished)
        return {first, first + soonest_days, end + after_end_days, true};
    return {first, std::max(end - 6, first + 1), end + after_end_days};
}

Result<BlockSpan> span_of_block(const FacilityView& view, const Athlete& athlete,
                                const JudgeBlockRequest& request, Date today) {
    if (request.from_date || request.to_date)
        return span_of_dates(request, today);
    const Block* found = nullptr;
    std::vector<std::string> known;
    for (const auto& each : view.records.blocks) {
        if (each.athlete != athlete.id)
            continue;
        known.push_back(each.id.text);
        const bool wanted = request.block ? each.id.text == *request.block : each.start <= today;
        if (wanted && (!found || found->start < each.start))
            found = &each;
    }
    if (request.block && !found)
        return refuse_unknown("block", *request.block, known);
    if (!found)
        return Refusal{
            RefusalCode::too_few_data,
            athlete.name +
                " has no kept block that has begun. Give from_date and to_date of what was trained.",
            "block", "", "a kept block, or from_date and to_date"};
    if (found->start > today)
        return Refusal{RefusalCode::impossible_date,
                       "The block " + found->id.text + " has not begun: it starts on " + found->start.text() +
                           ".",
                       "block", found->id.text, "a block that starts up to " + today.text()};
    return span_of(*found, today);
}

} // namespace amentum
