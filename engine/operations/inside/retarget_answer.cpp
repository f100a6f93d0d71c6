#include "operations/inside/retarget_answer.h"

#include "operations/inside/finding_answer.h"
#include "operations/inside/retarget_words.h"
#include "operations/inside/throwing_answer.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace amentum {
namespace {

const char* weekday_name(Date date) {
    static const char* names[] = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                  "Friday", "Saturday", "Sunday"};
    return names[date.iso_weekday() - 1];
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

SideOfLine side_of(const Workplace::Inside& inside, const BlockLine& line, const Kit& kit) {
    const Exercise* exercise = inside.tables.exercise(line.exercise);
    const auto unit = shown_mass(kit.unit);
    SideOfLine side{line.exercise,
                    exercise ? exercise->name : line.exercise,
                    word(line.part),
                    line.sets,
                    line.reps,
                    std::to_string(line.sets) + " x " + std::to_string(line.reps),
                    {},
                    unit.unit,
                    line.load_words,
                    intensity_words(line),
                    line.rest_minutes,
                    exercise ? exercise->setup : ""};
    if (exercise && exercise->one_sided)
        side.dose += " a side";
    if (line.load)
        side.load = shown_load_in(*line.load, unit);
    return side;
}

LineInOtherGym shown_line(const Workplace::Inside& inside, const FacilityView& view,
                          const RetargetedHere& here, const RetargetedLine& line, SetupsSaid& setups) {
    const Quality* purpose = inside.tables.quality(line.from.purpose);
    const Kit& there = here.request.to.kit;
    const auto unit = shown_mass(there.unit);
    LineInOtherGym shown{line.from.order,
                         side_of(inside, line.from, here.request.first_kit),
                         {},
                         word(line.change),
                         change_in_words(line.change),
                         purpose ? purpose->name : line.from.purpose,
                         {},
                         "",
                         line.limit,
                         {100 * line.kept, 100 * line.kept_band.low, 100 * line.kept_band.high, "%", 0},
                         line.loads_compared || !line.to,
                         word(line.basis),
                         basis_in_words(line),
                         line.loss,
                         line.to_do,
                         "",
                         line.to ? line.to->reason : ""};
    if (!line.to)
        return shown;
    shown.to = side_of(inside, *line.to, there);
    if (line.equal && line.equal->standard_error > 0) {
        const Estimate load{line.equal->load.kilograms() * unit.factor,
                            line.equal->standard_error * unit.factor};
        auto band = load.central();
        band.low = std::max(0.0, band.low);
        shown.equal = shown_estimate(load.value, band, {unit.unit, 1, 1});
        shown.equal_words = equal_in_words(line);
    }
    const auto facility = view.records.facility.value_or(Facility{"This facility"});
    shown.set_up = setups.said(here.request, line, facility);
    return shown;
}

std::vector<SessionInOtherGym> sessions_of(const Workplace::Inside& inside, const FacilityView& view,
                                           const RetargetedHere& here) {
    std::map<std::pair<int, int>, SessionInOtherGym> sessions;
    SetupsSaid setups;
    for (const auto& line : here.made.lines) {
        auto& session = sessions
                            .try_emplace({line.from.week, line.from.session},
                                         SessionInOtherGym{line.from.week,
                                                           line.from.session,
                                                           line.from.date.text(),
                                                           weekday_name(line.from.date),
                                                           0,
                                                           {}})
                            .first->second;
        const Exercise* exercise = line.to ? inside.tables.exercise(line.to->exercise) : nullptr;
        if (exercise)
            session.minutes += exercise->setup_minutes + line.to->sets * exercise->set_minutes;
        session.lines.push_back(shown_line(inside, view, here, line, setups));
    }
    std::vector<SessionInOtherGym> ordered;
    for (auto& [key, session] : sessions)
        ordered.push_back(std::move(session));
    // A session's number is not its place in the week.
    std::stable_sort(ordered.begin(), ordered.end(), [](const auto& a, const auto& b) {
        return std::tie(a.week, a.date) < std::tie(b.week, b.date);
    });
    return ordered;
}

std::vector<LinesOfChange> changes_of(const RetargetedBlock& made) {
    std::vector<LinesOfChange> changes;
    for (const auto& [change, key] : words_of<Change>) {
        const auto lines = std::count_if(made.lines.begin(), made.lines.end(),
                                         [c = change](const auto& line) { return line.change == c; });
        if (lines > 0)
            changes.push_back({std::string(key), change_in_words(change), static_cast<int>(lines)});
    }
    return changes;
}

std::vector<ShownQualityKept> qualities_of(const Workplace::Inside& inside, const RetargetedBlock& made) {
    std::vector<ShownQualityKept> qualities;
    for (const auto& each : made.qualities) {
        const Quality* quality = inside.tables.quality(each.quality);
        qualities.push_back(
            {each.quality, quality ? quality->name : each.quality, each.sets, 100 * each.kept});
    }
    return qualities;
}

std::vector<ShownPurchase> purchases_of(const RetargetedBlock& made) {
    std::vector<ShownPurchase> purchases;
    for (const auto& each : made.purchases)
        purchases.push_back({each.what, 100 * each.kept,
                             "With " + each.what + " the block keeps " + format_fixed(100 * each.kept, 0) +
                                 " % instead of " + format_fixed(100 * made.kept, 0) + " %."});
    return purchases;
}

} // namespace

RetargetBlockAnswer retarget_answer(const Workplace::Inside& inside, const FacilityView& view,
                                    const RetargetedHere& here) {
    const Kit& there = here.request.to.kit;
    return {here.request.block.id.text,
            here.athlete.id.text,
            here.athlete.name,
            here.request.first_kit.name,
            there.id.text,
            there.name,
            here.request.block.start.text(),
            here.request.block.weeks,
            100 * here.made.kept,
            kept_in_words(here.made, there),
            changes_of(here.made),
            qualities_of(inside, here.made),
            sessions_of(inside, view, here),
            purchases_of(here.made),
            here.made.block.notes,
            block_findings(inside, view, here.made.block, here.athlete, there),
            {},
            stop_and_refer_words(inside.tables),
            retargeting_cannot_tell(),
            "",
            {"Epley1985", "ACSM2009", "Helme2020", "McCurdy2017", "DeLeva1996", "CommonPractice",
             "ProjectProposal"}};
}

} // namespace amentum
