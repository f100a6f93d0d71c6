// The operations on pain: the signs to stop, an entry, and whose clearance ended it.
#include "operations/inside/terminal_text.h"
#include "operations/make_operation.h"
#include "operations/record_clearance.h"
#include "operations/record_pain.h"
#include "operations/registrations.h"
#include "operations/stop_and_refer.h"

namespace amentum {
namespace {

using boost::json::value;

std::string pain_words(const value& pain) {
    return paragraph("Pain entry " + number_said(pain.at("number"), 0) + ", " + said(pain.at("date")) + ", " +
                     said(pain.at("region_name")) + ": \"" + said(pain.at("words")) + "\" (" +
                     said(pain.at("noted_by")) + "). " +
                     (pain.at("open").as_bool() ? "Open." : said(pain.at("clearance"))));
}

std::string signs_words(const value& answer) {
    std::string text = list_said(answer.at("words"), "") + "\n";
    for (const auto& sign : answer.at("signs").as_array())
        text +=
            paragraph("- " + said(sign.at("sentence")) + (sign.at("today").as_bool() ? " (today)" : ""), 2);
    text += "\n" + paragraph(said(answer.at("closing")));
    if (!said(answer.at("name")).empty())
        text += "\n" + said(answer.at("name")) + "\n" +
                (said(answer.at("guardian")).empty() ? "" : "Tell " + said(answer.at("guardian")) + ".\n");
    for (const auto& pain : answer.at("pains").as_array())
        text += pain_words(pain);
    return text;
}

std::string recorded_words(const value& answer) {
    return pain_words(answer.at("pain")) + list_said(answer.at("words"), "") +
           list_said(answer.at("stop_and_refer"), "- ");
}

std::string cleared_words(const value& answer) {
    return pain_words(answer.at("pain")) + list_said(answer.at("words"), "");
}

} // namespace

std::vector<Operation> care_operations() {
    return {
        make_operation("stop_and_refer",
                       "The plain signs at which a session ends and a clinician takes over.", Effect::reads,
                       {{"athlete", "with this thrower's pain entries; left out: the signs alone"}},
                       &stop_and_refer, &signs_words),
        make_operation("record_pain",
                       "Somebody hurts: keep where and in whose words; it stops what loads it.",
                       Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"region", "shoulder, elbow, forearm_and_hand, neck_and_upper_back, low_back, "
                                   "hip_and_groin, knee or ankle_and_foot"},
                        {"date", "YYYY-MM-DD, when it was felt; left out: today"},
                        {"sign", "key of a sign of stop_and_refer, when it is one"},
                        {"words", "as the thrower says it"},
                        {"noted_by", "who writes it down, by name"}},
                       &record_pain, &recorded_words),
        make_operation("record_clearance", "Keep who cleared a pain entry, when, and who entered it.",
                       Effect::writes,
                       {{"athlete", "the thrower's name or id"},
                        {"number", "of the pain entry"},
                        {"cleared_by", "the clinician, by name and trade"},
                        {"date", "YYYY-MM-DD; left out: today"},
                        {"recorded_by", "the adult who enters it, by name"},
                        {"words", "limits and conditions, as they were said"}},
                       &record_clearance, &cleared_words),
    };
}

} // namespace amentum
