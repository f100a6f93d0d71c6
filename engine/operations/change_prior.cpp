#include "operations/change_prior.h"

#include "inference/priors_in_force.h"
#include "operations/inside/entry_fields.h"
#include "operations/inside/prior_answer.h"
#include "values/letters.h"

#include <algorithm>

namespace amentum {
namespace {

template <class Lines>
std::vector<std::string> qualities_of(const Lines& lines) {
    std::vector<std::string> keys;
    for (const auto& line : lines)
        keys.push_back(line.quality);
    return keys;
}

template <class Lines>
PriorBelief belief_in(const Lines& lines, const std::string& quality) {
    const auto found =
        std::find_if(lines.begin(), lines.end(), [&](const auto& each) { return each.quality == quality; });
    return {found->mean, found->sd};
}

std::optional<Refusal> check_number(const char* field, const std::optional<double>& given, double low,
                                    double high, const std::string& what) {
    if (!given)
        return refuse_missing(field, what + ", or published: yes to go back");
    if (!(*given >= low && *given <= high))
        return refuse_range(field, *given, low, high, "", what + ".");
    return std::nullopt;
}

// The belief asked for; none: back to the published value.
Result<std::optional<PriorBelief>> belief_given(const ChangePriorRequest& request, PriorKind kind) {
    const bool slope = kind == PriorKind::slope;
    if (request.published.value_or(false)) {
        if (request.mean || request.sd)
            return Refusal{
                RefusalCode::unknown_choice,
                "Going back to the published value and giving another one are two things; keep one.",
                "published", "yes", "published: yes without mean and sd, or mean and sd"};
        return std::optional<PriorBelief>();
    }
    if (const auto refusal =
            check_number("mean", request.mean, slope ? lowest_slope : lowest_attainable_change,
                         slope ? highest_slope : highest_attainable_change,
                         slope ? "SDs of velocity for one SD of the quality" : "SDs of it in twelve weeks"))
        return *refusal;
    if (const auto refusal = check_number("sd", request.sd, least_prior_sd, most_prior_sd,
                                          "how far the mean may be off, one SD"))
        return *refusal;
    return std::optional(PriorBelief{*request.mean, *request.sd});
}

std::optional<Refusal> check_who_and_why(const std::string& author, const std::string& reason) {
    if (author.empty())
        return refuse_missing("author", "who takes this decision");
    if (letters_in(reason) < shortest_reason)
        return Refusal{RefusalCode::missing_field,
                       "Please say why, in a sentence: the reason is kept with the prior.", "reason", reason,
                       "at least 10 letters"};
    return std::nullopt;
}

std::optional<PriorBelief> last_belief(const FacilityView& view, PriorKind kind, const std::string& quality) {
    std::optional<PriorBelief> last;
    for (const auto& edit : view.records.prior_edits)
        if (edit.kind == kind && edit.quality == quality)
            last = edit.belief;
    return last;
}

} // namespace

Result<ChangePriorAnswer> change_prior(Workplace& workplace, const ChangePriorRequest& request) {
    auto& inside = workplace.inside();
    const std::lock_guard writing(inside.writing);
    const auto view = inside.view();
    const auto kind = from_word<PriorKind>(request.kind);
    if (!kind)
        return refuse_choice("kind", request.kind, all_words<PriorKind>());
    const bool slope = *kind == PriorKind::slope;
    const auto known = slope ? qualities_of(view->velocity_priors) : qualities_of(view->attainable_changes);
    if (std::find(known.begin(), known.end(), request.quality) == known.end())
        return refuse_unknown("quality", request.quality, known);
    const auto belief = belief_given(request, *kind);
    if (!belief)
        return belief.refusal();
    const std::string author = trimmed(request.author), reason = trimmed(request.reason);
    if (const auto refusal = check_who_and_why(author, reason))
        return *refusal;
    const PriorBelief held = slope ? belief_in(view->velocity_priors, request.quality)
                                   : belief_in(view->attainable_changes, request.quality);
    const auto last = last_belief(*view, *kind, request.quality);
    if (*belief ? **belief == held : !last)
        return Refusal{RefusalCode::already_held, "This is what holds already; nothing was changed.", "", "",
                       "another mean or sd than the one in force"};
    const auto& edits = view->records.prior_edits;
    const PriorEdit edit{edits.empty() ? 1 : edits.back().number + 1,
                         *kind,
                         request.quality,
                         *belief,
                         author,
                         inside.today(),
                         reason};
    RecordSet more;
    more.prior_edits = {edit};
    inside.store.save_records(more);
    const auto shown = shown_edit(edit);
    const auto version = inside.view()->priors_version;
    return ChangePriorAnswer{
        version, shown,
        "Kept as edit " + std::to_string(edit.number) + " (" + version + "): " + author + " sets it to " +
            shown.words + " (\"" + reason +
            "\"). Answers given from now on say this version; earlier ones keep theirs."};
}

} // namespace amentum
