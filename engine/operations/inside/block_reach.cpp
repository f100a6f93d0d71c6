#include "operations/inside/block_reach.h"

#include "operations/inside/block_request.h"
#include "values/shortest_decimal.h"

#include <algorithm>

namespace amentum {
namespace {

std::string words_of_reach(const ShownReach& reach) {
    std::string words =
        "Of 100 points, every quality trained to its full dose in every week, this block reaches " +
        format_fixed(reach.points, 1) + ".";
    if (reach.at_most_more)
        words += " Within these limits no block could have more than " +
                 format_fixed(*reach.at_most_more, 1) + " above it.";
    return words + " Points order blocks; they forecast no velocity.";
}

ShownReach shown_reach(const Workplace::Inside& inside, const BlockRequest& request,
                       const PricedBlock& priced) {
    ShownReach reach{priced.price.total(),
                     {},
                     priced.price.worth,
                     priced.price.fatigue,
                     priced.price.lines,
                     priced.price.ready,
                     {},
                     {},
                     ""};
    if (priced.bound)
        reach.at_most_more = std::max(0.0, *priced.bound - reach.points);
    for (std::size_t q = 0; q < priced.qualities.size(); ++q) {
        const std::string& key = priced.qualities[q];
        const Quality* quality = inside.tables.quality(key);
        const Interval between = priced.share_between[q];
        ShownShare share{key,
                         quality ? quality->name : key,
                         priced.price.weekly_sets[q],
                         100 * priced.price.share_of_quality[q],
                         100 * between.low,
                         100 * between.high,
                         100 * priced.weights[q],
                         ""};
        for (const auto& priority : request.priorities)
            if (priority.quality == key)
                share.words = priority.words;
        reach.shares.push_back(std::move(share));
    }
    std::stable_sort(reach.shares.begin(), reach.shares.end(),
                     [](const auto& a, const auto& b) { return a.weight > b.weight; });
    for (const auto& breach : priced.breaches)
        reach.broken.push_back(breach.words);
    reach.words = words_of_reach(reach);
    return reach;
}

} // namespace

BlockAnswer priced_answer(Workplace::Inside& inside, const FacilityView& view, const Block& block,
                          std::optional<int> week, const LimiterWork* known) {
    BlockAnswer answer = block_answer(inside, view, block, week);
    const Athlete* athlete = view.athlete(block.athlete.text);
    const auto kit = kit_named(view, block.kit.text);
    if (!athlete || !kit)
        return answer;
    std::optional<LimiterWork> work;
    if (!known)
        known = &work.emplace(
            limiter_work(view, inside.tables, *inside.roster_model(), *athlete, inside.today()));
    const BlockRequest request = block_request(inside, view, *athlete, **kit, asked_of(block), *known);
    const auto priced = price_block(request, block);
    if (!priced)
        return answer;
    answer.reach = shown_reach(inside, request, *priced);
    for (auto& session : answer.sessions)
        for (auto& line : session.lines)
            for (std::size_t i = 0; i < block.lines.size(); ++i)
                if (const BlockLine& kept = block.lines[i]; kept.week == session.week &&
                                                            kept.session == session.session &&
                                                            kept.order == line.order) {
                    line.dropping = priced->lines[i].dropping;
                    line.held_back = priced->lines[i].held_back;
                }
    return answer;
}

} // namespace amentum
