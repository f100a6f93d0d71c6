#include "operations/priors.h"

#include "operations/inside/prior_answer.h"

#include <algorithm>
#include <set>

namespace amentum {
namespace {

std::vector<std::string> words_about(const PriorsAnswer& answer) {
    const auto edited = std::count_if(answer.slopes.begin(), answer.slopes.end(),
                                      [](const auto& line) { return line.edited; }) +
                        std::count_if(answer.attainable_changes.begin(), answer.attainable_changes.end(),
                                      [](const auto& line) { return line.edited; });
    std::vector<std::string> words{
        "What is believed of each quality before your records are asked, and what your records make of it. "
        "Both say how much "
        "velocity goes with a usual twelve-week improvement; the bars are 80 % intervals.",
        edited == 0 ? "Every belief here is the published one."
                    : std::to_string(edited) + " of these beliefs " + (edited == 1 ? "is" : "are") +
                          " your own instead of the published one."};
    if (!answer.no_posterior.empty())
        words.push_back("Your records say nothing of it yet. " + answer.no_posterior);
    return words;
}

} // namespace

Result<PriorsAnswer> priors(Workplace& workplace, const PriorsRequest&) {
    auto& inside = workplace.inside();
    const auto model = inside.roster_model();
    const auto view = inside.view();
    PriorsAnswer answer{};
    answer.version = view->priors_version;
    answer.edits = static_cast<int>(view->records.prior_edits.size());
    answer.no_posterior = model->fit ? "" : model->fit.refusal().sentence;
    answer.slopes = shown_slopes(*view, inside.tables, *model);
    answer.attainable_changes = shown_attainable_changes(*view, inside.tables);
    answer.words = words_about(answer);
    answer.model = model->version;
    std::set<std::string> sources;
    for (const auto* lines : {&answer.slopes, &answer.attainable_changes})
        for (const auto& line : *lines)
            sources.insert(line.published_sources.begin(), line.published_sources.end());
    answer.sources.assign(sources.begin(), sources.end());
    return answer;
}

} // namespace amentum
