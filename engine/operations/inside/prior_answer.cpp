#include "operations/inside/prior_answer.h"

#include "operations/inside/limiter_work.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double usual_attainable =
    0.5;                       // where no row says how far twelve weeks move it, as in the joint model
constexpr double hardly = 0.1; // of the prior's interval: a smaller move is not told from none

template <class Lines>
const auto* line_of(const Lines& lines, const std::string& quality) {
    const auto found =
        std::find_if(lines.begin(), lines.end(), [&](const auto& each) { return each.quality == quality; });
    return found == lines.end() ? nullptr : &*found;
}

std::string name_of(const ReferenceTables& tables, const std::string& key) {
    for (const auto& quality : tables.qualities)
        if (quality.key == key)
            return quality.name;
    return key;
}

std::vector<ShownPriorEdit> edits_of(const FacilityView& view, PriorKind kind, const std::string& quality) {
    std::vector<ShownPriorEdit> edits;
    for (const auto& edit : view.records.prior_edits)
        if (edit.kind == kind && edit.quality == quality)
            edits.push_back(shown_edit(edit));
    return edits;
}

template <class Line>
ShownPrior shown_line(const FacilityView& view, const ReferenceTables& tables, PriorKind kind,
                      const Line& held, const Line& published) {
    ShownPrior shown{};
    shown.kind = word(kind);
    shown.quality = held.quality;
    shown.name = name_of(tables, held.quality);
    shown.mean = held.mean;
    shown.sd = held.sd;
    shown.published_mean = published.mean;
    shown.published_sd = published.sd;
    shown.published_why = published.why;
    shown.published_sources = published.sources;
    shown.edits = edits_of(view, kind, held.quality);
    shown.edited = !shown.edits.empty() && !shown.edits.back().published;
    shown.whose = shown.edited ? shown.edits.back().author + "'s word" : "The literature's word";
    return shown;
}

std::string moved_words(const ShownEstimate& prior, const ShownEstimate& posterior) {
    const double moved = posterior.value - prior.value;
    if (std::abs(moved) < hardly * (prior.high - prior.low))
        return "they hardly moved it";
    return std::string("they moved it ") + (moved > 0 ? "up" : "down") + " by " +
           format_fixed(std::abs(moved), prior.decimals) + " " + prior.unit;
}

// The numbers stand beside it; this says what they come to.
std::string slope_words(const ShownPrior& shown, const std::string& why_not) {
    if (!shown.posterior)
        return shown.whose + " alone: " + why_not + ".";
    const std::string others = shown.edited ? shown.edits.back().author + "'s" : "the literature's";
    return "Your records: " + moved_words(shown.prior, *shown.posterior) + ". " +
           format_fixed(100 * *shown.learned, 0) + " % of what stands is your records' word, the rest is " +
           others + ".";
}

std::string why_not_modelled(const RosterModel& model, const std::string& quality) {
    for (const auto& [left_out, why] : model.left_out)
        if (left_out->key == quality)
            return why;
    return model.fit ? "the joint model does not have it"
                     : "the joint model cannot be fitted to these records";
}

// In velocity for a usual twelve-week improvement, as the joint model takes it and explain_velocity shows it.
void show_in_velocity(ShownPrior& shown, const FacilityView& view, const RosterModel& model) {
    const auto speed =
        shown_unit(TestUnit::metre_per_second, view.records.facility.value_or(Facility{"This facility"}));
    const ShownUnit unit{speed.unit, speed.factor, 2};
    const auto* change = line_of(view.attainable_changes, shown.quality);
    const double step = usual_velocity_spread * (change ? change->mean : usual_attainable);
    const Estimate prior{shown.mean * step, prior_doubt * shown.sd * step};
    shown.prior = shown_estimate(prior.value, prior.central(), unit);
    if (!model.fit)
        return;
    for (std::size_t k = 0; k < model.qualities.size(); ++k) {
        const auto& quality = model.qualities[k];
        if (quality.quality->key != shown.quality)
            continue;
        const Estimate& within = model.fit->within[k];
        const Estimate posterior{within.value * quality.attainable,
                                 within.standard_error * std::abs(quality.attainable)};
        shown.posterior = shown_estimate(posterior.value, posterior.central(), unit);
        shown.learned = std::clamp(model.fit->within_learned[k], 0.0, 1.0);
    }
}

} // namespace

ShownPriorEdit shown_edit(const PriorEdit& edit) {
    ShownPriorEdit shown{edit.number,  edit.date.text(),
                         edit.author,  edit.reason,
                         !edit.belief, {},
                         {},           "back to the published value"};
    if (edit.belief) {
        shown.mean = edit.belief->mean;
        shown.sd = edit.belief->sd;
        shown.words =
            format_shortest(edit.belief->mean) + " give or take " + format_shortest(edit.belief->sd);
    }
    return shown;
}

std::vector<ShownPrior> shown_slopes(const FacilityView& view, const ReferenceTables& tables,
                                     const RosterModel& model) {
    std::vector<ShownPrior> all;
    for (const auto& held : view.velocity_priors) {
        all.push_back(
            shown_line(view, tables, PriorKind::slope, held, *line_of(tables.velocity_priors, held.quality)));
        show_in_velocity(all.back(), view, model);
        all.back().words = slope_words(all.back(), why_not_modelled(model, held.quality));
    }
    return all;
}

std::vector<ShownPrior> shown_attainable_changes(const FacilityView& view, const ReferenceTables& tables) {
    std::vector<ShownPrior> all;
    for (const auto& held : view.attainable_changes) {
        all.push_back(shown_line(view, tables, PriorKind::attainable_change, held,
                                 *line_of(tables.attainable_changes, held.quality)));
        auto& shown = all.back();
        const Estimate change{held.mean, held.sd};
        shown.prior = shown_estimate(change.value, change.central(), {"SD", 1, 2});
        shown.words = shown.whose + " alone.";
    }
    return all;
}

} // namespace amentum
