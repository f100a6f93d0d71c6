#include "operations/fit_roster.h"

#include "operations/inside/inside.h"
#include "values/shortest_decimal.h"

#include <array>

namespace amentum {
namespace {

using State = FitJob::State;

constexpr double agreeing =
    1.05; // R-hat; proposal of this project, wider than the strict 1.01 for a few hundred draws
constexpr int few_divergences = 10; // of 4,000 draws; proposal

std::string state_word(State state) {
    constexpr std::array words{"none", "running", "done", "stopped", "refused"};
    return words[static_cast<std::size_t>(state)];
}

// Fits as of the last committed write, keeps the result in the store and in memory.
std::optional<Refusal> fit_and_keep(Workplace::Inside& inside, bool thorough,
                                    const std::function<bool(double)>& going) {
    const auto view = inside.view();
    auto model = std::make_shared<RosterModel>(gather_roster(*view, inside.tables));
    std::shared_ptr<const KeptFit> earlier;
    {
        const std::lock_guard lock(inside.modelling);
        earlier = inside.modelled ? inside.modelled->kept : nullptr;
    }
    fit_roster_model(*model, {run_on_threads, going, earlier ? &earlier->fit.mode : nullptr}, thorough);
    if (!model->fit)
        return model->fit.refusal();
    inside.store.save_roster_fit(model->kept->version, kept_fit_text(*model->kept));
    const std::lock_guard lock(inside.modelling);
    inside.modelled = std::move(model);
    inside.modelled_view = view;
    return std::nullopt;
}

KeptFitShown shown_fit(const RosterModel& model) {
    KeptFitShown shown{};
    shown.version = model.kept->version;
    shown.athletes = static_cast<int>(model.data.athletes.size());
    for (const auto& athlete : model.data.athletes)
        shown.test_days += static_cast<int>(athlete.days.size());
    shown.readings = model.fit->readings;
    shown.same_records = model.kept->version == model.version;
    shown.gradient = model.fit->gradient;
    shown.smallest_curvature = model.fit->smallest_curvature;
    if (const auto& checked = model.kept->checked) {
        shown.checked = true;
        shown.sampled = checked->sampled;
        shown.tail_shape = checked->tail_shape;
        shown.shape_limit = checked->shape_limit;
        shown.worst_r_hat = checked->worst_r_hat;
        shown.least_worth = checked->least_worth;
        shown.divergences = checked->divergences;
    }
    return shown;
}

std::vector<std::string> words_beside(const FitRosterAnswer& answer) {
    if (answer.state == "running")
        return {"The fit is running: about " + format_fixed(100 * answer.share, 0) + " % done."};
    std::vector<std::string> words;
    if (answer.state == "stopped")
        words.push_back("The fit was stopped; the one before stays in place.");
    if (!answer.fit)
        return words.empty() ? std::vector<std::string>{"No fit is kept."} : words;
    const auto& fit = *answer.fit;
    words.push_back(
        "The kept fit is of " + std::to_string(fit.readings) + " readings of " +
        std::to_string(fit.athletes) + " throwers" +
        (fit.same_records ? "." : "; a few readings have come since, and throwers stand by those too."));
    if (!fit.checked)
        words.push_back("Its intervals are by the quick approximation and have not been checked; for a small "
                        "roster they are "
                        "often a quarter too short. A thorough fit checks them.");
    else if (!fit.sampled)
        words.push_back("Its intervals were checked by weighted draws, and hold.");
    else if (fit.worst_r_hat < agreeing && fit.divergences <= few_divergences)
        words.push_back("Its intervals were sampled: the four chains agree.");
    else
        words.push_back("Its intervals were sampled, but the four chains do not agree well (R-hat " +
                        format_fixed(fit.worst_r_hat, 2) + "): read them with doubt.");
    return words;
}

} // namespace

Result<FitRosterAnswer> fit_roster(Workplace& workplace, const FitRosterRequest& request) {
    auto& inside = workplace.inside();
    const std::string step = request.step.value_or("begin");
    if (step != "begin" && step != "look" && step != "stop")
        return Refusal{RefusalCode::unknown_choice, "The step must be begin, look or stop.", "step", step,
                       "begin, look, stop"};
    if (step == "begin") // one that runs already goes on
        inside.fit_job.begin([&inside, thorough = request.thorough.value_or(false)](const auto& going) {
            return fit_and_keep(inside, thorough, going);
        });
    if (step == "stop")
        inside.fit_job.stop();
    const bool wait = request.wait.value_or(true) && step != "look";
    const auto seen = wait ? inside.fit_job.wait() : inside.fit_job.look();
    if (seen.state == State::refused)
        return *seen.refusal;
    FitRosterAnswer answer{state_word(seen.state), seen.share, {}, {}};
    if (seen.state != State::running)
        if (const auto model = inside.roster_model(); model->fit)
            answer.fit = shown_fit(*model);
    answer.words = words_beside(answer);
    return answer;
}

} // namespace amentum
