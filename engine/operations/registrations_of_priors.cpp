// The operations on what is believed before the records are asked.
#include "operations/change_prior.h"
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/priors.h"
#include "operations/registrations.h"

namespace amentum {
namespace {

using boost::json::value;

std::string edit_words(const value& edit) {
    return "edit " + number_said(edit.at("number"), 0) + ", " + said(edit.at("date")) + ", " +
           said(edit.at("author")) + ": " + said(edit.at("words")) + ". " + said(edit.at("reason"));
}

std::string history_words(const value& lines, const std::string& what) {
    std::string text;
    for (const auto& line : lines.as_array())
        for (const auto& edit : line.at("edits").as_array())
            text += paragraph(said(line.at("name")) + what + ", " + edit_words(edit));
    return text;
}

std::string priors_words(const value& answer) {
    std::string text = said(answer.at("version")) + "\n\n" + list_said(answer.at("words"), "") + "\n" +
                       padded("  quality", 30) + padded("before your records", 30) +
                       padded("with your records", 30) + "your records' word\n";
    for (const auto& line : answer.at("slopes").as_array()) {
        const auto& learned = line.at("learned");
        text += "  " + padded(said(line.at("name")), 28) + padded(estimate_said(line.at("prior")), 30) +
                padded(estimate_said(line.at("posterior")), 30) +
                (learned.is_null() ? "-" : number_said(value(100 * learned.to_number<double>()), 0) + " %") +
                (line.at("edited").as_bool() ? "  edited" : "") + "\n";
    }
    text += "\nHow far twelve weeks move a quality, in SDs of it:\n";
    for (const auto& line : answer.at("attainable_changes").as_array())
        text += "  " + padded(said(line.at("name")), 28) + estimate_said(line.at("prior")) +
                (line.at("edited").as_bool() ? "  edited" : "") + "\n";
    return text + "\n" + history_words(answer.at("slopes"), "") +
           history_words(answer.at("attainable_changes"), ", in twelve weeks");
}

std::string changed_words(const value& answer) {
    return paragraph(said(answer.at("words")));
}

} // namespace

std::vector<Operation> prior_operations() {
    return {
        make_operation(
            "priors",
            "What is believed before the records are asked, who changed it, what the records make of it.",
            Effect::reads, {}, &priors, &priors_words),
        make_operation(
            "change_prior",
            "Believe something else than what was published, for a reason kept with who and when.",
            Effect::writes,
            {{"quality", "the quality's key, such as jump_power"},
             {"kind", "slope: what velocity goes with it; attainable_change: how far twelve weeks move it"},
             {"mean", "slope: -1 to 1, SDs of velocity for one SD of it; attainable_change: 0 to 2 SDs"},
             {"sd", "how far the mean may be off, one SD: 0.01 to 1"},
             {"published", "yes: back to the published value, without mean and sd"},
             {"author", "who takes the decision"},
             {"reason", "why, at least 10 letters"}},
            &change_prior, &changed_words),
    };
}

} // namespace amentum
