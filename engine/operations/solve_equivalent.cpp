#include "operations/solve_equivalent.h"

#include "body_mechanics/equivalent_load.h"
#include "body_mechanics/holds.h"
#include "equipment/solve_load.h"
#include "operations/inside/setup_given.h"
#include "operations/inside/setup_words.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <cmath>

namespace amentum {
namespace {

constexpr double grip_lb = 200; // a pair of 100-lb dumbbells (common practice, no source)

struct Asked {
    const BodyGivenHere& given;
    const SetupGivenHere& setup;
    Demand demand;
    const Kit* kit; // null: none is held
};

const Kit* kit_of(const FacilityView& view, const Athlete* athlete) {
    const auto& kits = view.records.kits;
    if (athlete)
        for (const auto& kit : kits)
            if (kit.id == athlete->kit)
                return &kit;
    return kits.empty() ? nullptr : &kits.front();
}

Result<std::vector<Hold>> holds_asked(const SolveEquivalentRequest& request, Lift lift, Hold from) {
    const auto all = holds_of(lift);
    std::vector<std::string> names;
    for (const Hold hold : all)
        names.push_back(std::string(word(hold)));
    std::vector<Hold> holds;
    for (const auto& name : request.to_holds) {
        const auto hold = from_word<Hold>(name);
        if (!hold || std::find(all.begin(), all.end(), *hold) == all.end())
            return refuse_choice("to_holds", name, names);
        holds.push_back(*hold);
    }
    if (request.to_holds.empty())
        for (const Hold hold : all)
            if (hold != from && hold != Hold::body)
                holds.push_back(hold);
    return holds;
}

// What ends a set before the lead leg does, held this way (common practice, no source).
std::string limit_of(Hold hold) {
    return hold == Hold::dumbbells                           ? "grip"
           : hold == Hold::goblet || hold == Hold::front_bar ? "upper back"
                                                             : "";
}

void add_makeable(ShownEquivalent& shown, const Asked& asked, Hold hold, Mass load, const ShownUnit& unit) {
    if (!asked.kit) {
        shown.made_of = "no kit is held, so what can be made is not known";
        return;
    }
    const auto means = means_of(hold);
    const auto choice = means ? solve_load(*asked.kit, *means, load) : Result<LoadChoice>(Refusal{});
    if (!choice) {
        shown.made_of = choice.refusal().sentence;
        return;
    }
    shown.makeable = shown_load_in(choice->nearest.total, unit);
    shown.made_of = choice->nearest.words;
    if (choice->nearest.total < 0.95 * load)
        shown.words += " The most " + asked.kit->name + " makes is " +
                       format_fixed(100 * (choice->nearest.total / load), 0) + " % of it.";
}

ShownEquivalent shown_equivalent(const Asked& asked, Hold hold, const ShownUnit& unit) {
    ShownEquivalent shown{std::string(word(hold)), hold_name(hold), {}, {}, "", {}, limit_of(hold), "", ""};
    Setup to = asked.setup.setup;
    to.hold = hold;
    to.load_ahead.reset(); // belongs to the hold it was measured for
    const auto same = solve_equivalent_load(asked.given.body, asked.setup.setup, to, asked.demand);
    if (!same) {
        shown.why_not = same.refusal().sentence;
        return shown;
    }
    const Estimate load{same->load.kilograms() * unit.factor, same->standard_error * unit.factor};
    auto band = load.central();
    band.low = std::max(0.0, band.low);
    shown.load = shown_estimate(load.value, band, {unit.unit, 1, unit.unit == "kg" ? 1 : 0});
    if (const auto share = same->to.hip_share()) {
        shown.hip_share = 100 * *share;
        shown.words = "The hip does " + format_fixed(*shown.hip_share, 0) + " % of it";
        if (const auto before = same->from.hip_share())
            shown.words += ", where it does " + format_fixed(100 * *before, 0) + " % now";
        shown.words += ".";
    }
    if (!same->not_moved.empty())
        shown.words += " The interval leaves out what could not be moved, and is too narrow.";
    if (shown.limit == "grip")
        shown.words +=
            same->load.pounds() < grip_lb - 0.01
                ? " Grip may end the set before the leg (common practice, no source)."
                : " Grip gives out first: a pair of 100 lb is only 200 lb (common practice, no source).";
    if (shown.limit == "upper back")
        shown.words += " The upper back may end the set before the leg (common practice, no source).";
    add_makeable(shown, asked, hold, same->load, unit);
    return shown;
}

ShownEstimate shown_demand(const Asked& asked, const Pose& pose) {
    const auto of = [&](double hip, double knee) {
        return ((asked.demand == Demand::knee ? 0 : hip) + (asked.demand == Demand::hip ? 0 : knee)) /
               pose.legs;
    };
    double variance = 0;
    for (const auto& cause : estimate_pose_band(asked.given.body, asked.setup.setup, pose).causes)
        variance += std::pow(of(cause.hip, cause.knee), 2);
    const Estimate demand{of(pose.lead->hip, pose.lead->knee), std::sqrt(variance)};
    return shown_estimate(demand.value, demand.central(), {"N m", 1, 0});
}

std::vector<std::string> sentences_of(const Asked& asked, bool others) {
    std::vector<std::string> words;
    if (!asked.setup.usual_words.empty())
        words.push_back(asked.setup.usual_words);
    if (!others)
        words.push_back("This lift is held in one way only.");
    else if (asked.demand == Demand::leg && on_split_feet(asked.setup.setup.lift))
        words.push_back(
            "At one depth hip and knee together ask for the same load however it is held; what moves is "
            "how they share it. To keep the knee's work, or the hip's, ask for that.");
    return words;
}

} // namespace

Result<SolveEquivalentAnswer> solve_equivalent(Workplace& workplace, const SolveEquivalentRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto given = body_given(inside, *view, request);
    if (!given)
        return given.refusal();
    const auto setup = setup_given(request, *given, std::nullopt);
    if (!setup)
        return setup.refusal();
    const auto demand = from_word<Demand>(request.demand.value_or("leg"));
    if (!demand)
        return refuse_choice("demand", *request.demand, all_words<Demand>());
    const auto pose = solve_pose(given->body, setup->setup);
    if (!pose)
        return as_typed(pose.refusal(), request, given->facility, setup->usual_words);
    if (!pose->lead)
        return Refusal{RefusalCode::method_does_not_apply, "A pull-up asks nothing of the legs.", "lift",
                       request.lift, "a lift on the feet"};
    const auto holds = holds_asked(request, setup->setup.lift, setup->setup.hold);
    if (!holds)
        return holds.refusal();
    const Asked asked{*given, *setup, *demand, kit_of(*view, given->athlete)};
    const auto unit = shown_mass(asked.kit ? asked.kit->unit : given->facility.mass_unit);
    const auto mass = shown_mass(given->facility.mass_unit);
    SolveEquivalentAnswer answer{given->shown,
                                 std::string(word(setup->setup.lift)),
                                 lift_name(setup->setup.lift),
                                 hold_name(setup->setup.hold),
                                 shown_load_in(setup->setup.load, mass),
                                 mass.unit,
                                 std::string(word(*demand)),
                                 shown_demand(asked, *pose),
                                 asked.kit ? asked.kit->name : "",
                                 {},
                                 sentences_of(asked, !holds->empty()),
                                 given->cautions,
                                 given->sources};
    for (const Hold hold : *holds)
        answer.equivalents.push_back(shown_equivalent(asked, hold, unit));
    answer.sources.insert(answer.sources.end(),
                          {"DuarteWatanabe", "Helme2020", "CommonPractice", "ProjectProposal"});
    return answer;
}

} // namespace amentum
