#include "values/refusal.h"

#include "values/nearest_name.h"
#include "values/shortest_decimal.h"

#include <array>

namespace amentum {
namespace {

using enum RefusalCode;
constexpr std::array<RefusalKind, 29> table{{
    {missing_field, "missing_field", "A field that is needed was not given."},
    {unknown_field, "unknown_field", "The request has no field of that name."},
    {wrong_type, "wrong_type", "The field holds text where a number is needed, or the like."},
    {out_of_range, "out_of_range",
     "The number lies outside what is possible, or outside the published range."},
    {unknown_choice, "unknown_choice", "The word is not one of the words allowed there."},
    {impossible_date, "impossible_date",
     "The day does not exist, or cannot be meant (a birth date in the future)."},
    {unreadable_file, "unreadable_file",
     "The file is not readable as a table: quoting, encoding or header line."},
    {unknown_name, "unknown_name", "Nothing of that name is held."},
    {already_held, "already_held", "The same record is held with other values."},
    {two_units, "two_units", "One quantity is given twice, in two units."},
    {method_does_not_apply, "method_does_not_apply", "The published method does not reach this case."},
    {too_few_data, "too_few_data", "The records cannot answer this yet."},
    {load_not_makeable, "load_not_makeable", "The gym's equipment cannot make such a load."},
    {no_block_fits, "no_block_fits", "The limits given leave no block."},
    {caution_needs_reason, "caution_needs_reason",
     "A caution stands; overriding it needs a reason, which is kept."},
    {blocked_by_guard_rail, "blocked_by_guard_rail",
     "A rule forbids it, and the rule cannot be overridden here."},
    {quiet_too_short, "quiet_too_short",
     "The trace has no second of quiet standing before the effort, so nothing says what the athlete weighs."},
    {quiet_too_noisy, "quiet_too_noisy", "The athlete moved, or the plate shook, while being weighed."},
    {no_flight, "no_flight", "The force never falls to an empty plate: nobody left it."},
    {second_hop, "second_hop", "There is another take-off before the landing has settled."},
    {offset_too_large, "offset_too_large", "The empty plate reads too far from zero to be corrected."},
    {saturated_plate, "saturated_plate",
     "The force stays at the top of the plate's range: its peak was not recorded."},
    {wrong_rate, "wrong_rate", "There are too few samples a second, or they are not evenly spaced."},
    {peak_at_end, "peak_at_end", "The pull was still rising when the trace ended."},
    {trials_disagree, "trials_disagree", "Trials of one test lie further apart than its method allows."},
    {not_this_effort, "not_this_effort", "The trace does not show the effort it is said to show."},
    {no_such_posture, "no_such_posture", "No posture of this body stands in balance in this set-up."},
    {over_determined, "over_determined",
     "More settings are given than the lift leaves free: posture and balance would contradict each other."},
    {stopped, "stopped", "A long calculation was stopped by whoever asked for it; nothing of it is kept."},
}};

std::string joined(std::span<const std::string> words) {
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string did_you_mean(const std::string& given, std::span<const std::string> known) {
    const auto near = nearest_name(given, known);
    return near ? " Did you mean \"" + *near + "\"?" : "";
}

} // namespace

std::span<const RefusalKind> refusal_kinds() {
    return table;
}

const RefusalKind& refusal_kind(RefusalCode code) {
    for (const auto& kind : table)
        if (kind.code == code)
            return kind;
    assert(!"every RefusalCode stands in the table");
    return table.front();
}

Refusal refuse_missing(std::string field, std::string what_it_is) {
    return {missing_field, "Please give " + field + ": " + what_it_is + ".", field, "", what_it_is};
}

Refusal refuse_range(std::string field, double given, double low, double high, std::string unit,
                     std::string why) {
    const std::string space = unit.empty() ? "" : " " + unit;
    const std::string allowed = format_shortest(low) + " to " + format_shortest(high) + space;
    std::string sentence = field + " is " + format_shortest(given) + space + ", but must be " + allowed + ".";
    if (!why.empty())
        sentence += " " + why;
    return {out_of_range, sentence, field, format_shortest(given), allowed};
}

Refusal refuse_choice(std::string field, std::string given, std::span<const std::string> choices) {
    const std::string allowed = "one of " + joined(choices);
    return {unknown_choice,
            field + " is \"" + given + "\", but must be " + allowed + "." + did_you_mean(given, choices),
            field, given, allowed};
}

Refusal refuse_unknown(std::string field, std::string given, std::span<const std::string> known) {
    return {unknown_name, "There is no " + field + " \"" + given + "\"." + did_you_mean(given, known), field,
            given, known.size() <= 12 ? joined(known) : std::to_string(known.size()) + " names are known"};
}

} // namespace amentum
