// The operations about what stands in a gym: the kit, a weighed item, the plates of several racks.
#include "operations/inside/terminal_text.h"
#include "operations/kit.h"
#include "operations/load_racks.h"
#include "operations/make_operation.h"
#include "operations/registrations.h"
#include "operations/weigh_item.h"

namespace amentum {
namespace {

using boost::json::value;

std::string kit_words(const value& answer) {
    const std::string unit = " " + said(answer.at("unit"));
    std::string text = said(answer.at("name")) + "\n\n";
    for (const auto& item : answer.at("items").as_array())
        text += padded(number_said(item.at("count"), 0), 4) + padded(said(item.at("label")), 30) + " " +
                said(item.at("words")) + "\n";
    text += "\n" + padded("", 30) + padded("loads", 7) + padded("from", 9) + padded("to", 9) +
            padded("smallest", 10) + "usual step\n";
    for (const auto& line : answer.at("loads").as_array()) {
        text += padded(said(line.at("what")), 30) + padded(number_said(line.at("loads"), 0), 7) +
                padded(number_said(line.at("lightest"), 1), 9) +
                padded(number_said(line.at("heaviest"), 1), 9) +
                padded(number_said(line.at("smallest_step"), 2), 10) + number_said(line.at("usual_step"), 2) +
                unit + "\n";
        for (const auto& gap : line.at("gaps").as_array())
            text += "    " + number_said(gap.at("from"), 1) + " to " + number_said(gap.at("to"), 1) + unit +
                    ": " + number_said(gap.at("percent"), 0) + " % apart\n";
    }
    const auto& prescribed = answer.at("prescribed");
    text += "\n" + paragraph(said(prescribed.at("words")));
    for (const auto& each : prescribed.at("purchases").as_array())
        text += "  " + padded(said(each.at("what")), 34) + number_said(each.at("more"), 0) + " sets more, " +
                number_said(each.at("exactly"), 0) + " exactly\n";
    return text + list_said(answer.at("notes"), "Note: ");
}

std::string weigh_words(const value& answer) {
    if (!said(answer.at("question")).empty())
        return paragraph(said(answer.at("question")) + " Send it again with --keep yes to keep it.");
    return list_said(answer.at("words"), "");
}

std::string moves_said(const value& moves) {
    const std::string number = number_said(moves, 0);
    return number + (number == "1" ? " move" : " moves");
}

std::string racks_words(const value& answer) {
    const std::string unit = " " + said(answer.at("unit"));
    std::string text;
    for (const auto& rack : answer.at("racks").as_array()) {
        text += said(rack.at("name")) + ", beside it:";
        for (const auto& plates : rack.at("plates").as_array())
            text += " " + number_said(plates.at("count"), 0) + " x " + said(plates.at("label")) + ";";
        text += "\n";
        for (const auto& bar : rack.at("bars").as_array()) {
            text += "  " + said(bar.at("item")) + ", plates from the inside:\n";
            for (const auto& set : bar.at("sets").as_array())
                text += "    " + padded(said(set.at("what")) + " " + said(set.at("dose")), 44) +
                        padded(number_said(set.at("load").at("total"), 1) + unit, 10) +
                        padded(moves_said(set.at("moves")), 9) + said(set.at("load").at("words")) + "\n";
            text += "    strip: " + moves_said(bar.at("strip")) + "\n";
        }
        text += list_said(rack.at("notes"), "  Note: ");
    }
    return text + list_said(answer.at("words"), "");
}

} // namespace

std::vector<Operation> kit_operations() {
    return {
        make_operation(
            "kit", "What stands in a gym, label beside weighed mass, the loads it makes, and what to buy.",
            Effect::reads, {{"kit", "the gym; left out: the first"}}, &kit, &kit_words),
        make_operation("weigh_item",
                       "Put the mass an item was weighed at in the place of what it counted as.",
                       Effect::writes,
                       {{"kit", "the gym; left out: the first"},
                        {"item", "its label"},
                        {"mass_kg", "what the scale shows, in kg"},
                        {"mass_lb", "or in lb"},
                        {"keep", "yes: keep it although it is far off the stamp"}},
                       &weigh_item, &weigh_words),
        make_operation(
            "load_racks", "The plates of up to four racks at once, set after set, with the fewest handled.",
            Effect::asks,
            {{"kit", "the gym; left out: the block's, or the first"},
             {"racks", "as JSON text: [{\"means\": \"straight_bar\", \"loads_lb\": [135, 185]}], or "
                       "[{\"block\": \"a thrower\", \"week\": 1, \"session\": 1}]; the last gives way"}},
            &load_racks, &racks_words),
    };
}

} // namespace amentum
