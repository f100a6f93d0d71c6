#include "operations/solve_setup.h"

#include "body_mechanics/holds.h"
#include "body_mechanics/search_setup.h"
#include "operations/inside/setup_words.h"
#include "operations/inside/usual_setup.h"
#include "values/shortest_decimal.h"

#include <array>
#include <cmath>

namespace amentum {
namespace {

// Lead-knee bend at foot contact of pitchers, degrees [Kageyama2015, table 2]: adolescents (n = 32), college (n = 30).
constexpr double contact_adolescent = 40.0, contact_college = 46.8;

struct WantedHere {
    Wanted wanted;
    std::string from; // of a start angle
    std::string unit;
    double factor; // shown = engine x factor
};

bool is_moment(Target target) {
    return target == Target::knee_moment || target == Target::hip_moment;
}

Result<Varied> varied_of(const SolveSetupRequest& request) {
    if (!request.vary)
        return refuse_missing("vary", "the setting to change: stance, pad_height, box_height, handle_height, "
                                      "trunk_lean, shin_lean or load");
    if (const auto varied = from_word<Varied>(*request.vary))
        return *varied;
    return refuse_choice("vary", *request.vary, all_words<Varied>());
}

// The athlete's own lead knee at foot contact; otherwise a published mean, and which.
std::pair<double, std::string> contact_angle(const FacilityView& view, const Athlete* athlete, Date today) {
    if (const auto* test = latest_result(view, athlete, "lead_knee_at_contact"))
        return {test->value, "own test of " + test->date.text()};
    const bool young = athlete && whole_years(athlete->birth_date, today) < 18;
    return {young ? contact_adolescent : contact_college,
            std::string("published mean of ") + (young ? "32 adolescent" : "30 college") + " pitchers, SD " +
                (young ? "8.2" : "8.5") + " [Kageyama2015]"};
}

Result<WantedHere> wanted_of(const SolveSetupRequest& request, Varied varied, const BodyGivenHere& given,
                             Lift lift, const FacilityView& view, Date today) {
    const auto ends = varied == Varied::load
                          ? load_slider(given.body, given.facility)
                          : slider_ends(given.body, lift, *setting_varied(varied), given.facility);
    if (*request.want == "start_angle") {
        if (request.wanted)
            return Refusal{RefusalCode::method_does_not_apply,
                           "start_angle asks for the knee angle at landing; it takes no number of its own.",
                           "wanted", format_shortest(*request.wanted), "left out"};
        const auto [angle, from] = contact_angle(view, given.athlete, today);
        return WantedHere{{Target::knee_angle, angle, varied, ends.low, ends.high}, from, "degrees", 1};
    }
    auto targets = all_words<Target>();
    const auto target = from_word<Target>(*request.want);
    if (!target) {
        targets.push_back("start_angle");
        return refuse_choice("want", *request.want, targets);
    }
    const bool share = *target == Target::hip_share;
    const std::string unit = share ? "%" : is_moment(*target) ? "N m" : "degrees";
    if (!request.wanted)
        return refuse_missing("wanted", "how much is wanted, in " + unit);
    const double low = share                ? 0
                       : is_moment(*target) ? -1000
                                            : -60,
                 high = share                ? 200
                        : is_moment(*target) ? 2000
                                             : 180;
    if (!(*request.wanted >= low && *request.wanted <= high))
        return refuse_range("wanted", *request.wanted, low, high, unit);
    return WantedHere{{*target, share ? *request.wanted / 100 : *request.wanted, varied, ends.low, ends.high},
                      "",
                      unit,
                      share ? 100.0 : 1.0};
}

MotionLimits limits_of_athlete(const FacilityView& view, const Athlete* athlete) {
    MotionLimits limits;
    if (const auto* test = latest_result(view, athlete, "ankle_dorsiflexion")) {
        limits.ankle = Angle::degrees(test->value);
        limits.ankle_tested = true;
    }
    return limits;
}

std::string setting_said(Varied varied, double value, const Facility& facility) {
    return varied == Varied::load ? load_said(Mass::kilograms(value), facility)
                                  : value_said(*setting_varied(varied), value, facility);
}

ShownSearch shown_search(const SolveSetupRequest& request, const WantedHere& wanted, const Found& found,
                         const Facility& facility) {
    const auto said = [&](double value) {
        return format_fixed(value * wanted.factor, 0) + (wanted.unit == "%" ? " %" : " " + wanted.unit);
    };
    const std::string what = *request.want == "start_angle" ? "The knee's angle at landing, " + wanted.from
                                                            : target_name(wanted.wanted.target);
    const std::string with =
        varied_name(wanted.wanted.varied) + " " + setting_said(wanted.wanted.varied, found.setting, facility);
    const std::string words = found.reached ? what + ": " + said(wanted.wanted.value) + " with " + with + "."
                                            : what + ": " + said(wanted.wanted.value) +
                                                  " cannot be reached. Nearest: " + said(found.value) +
                                                  " with " + with + ". What stops it: " + found.stopped_by;
    return {*request.want,
            words,
            found.reached,
            wanted.wanted.value * wanted.factor,
            found.value * wanted.factor,
            wanted.unit,
            *request.vary,
            found.stopped_by,
            wanted.from};
}

std::vector<std::string> holds_said(Lift lift) {
    std::vector<std::string> holds;
    for (const Hold hold : holds_of(lift))
        holds.push_back(std::string(word(hold)));
    return holds;
}

SolveSetupAnswer answer_of(const SolvedHere& here, const MotionLimits& limits,
                           std::optional<ShownSearch> search) {
    const auto& facility = here.given.facility;
    const auto mass = shown_mass(facility.mass_unit);
    SolveSetupAnswer answer{here.given.shown,
                            std::string(word(here.setup.lift)),
                            lift_name(here.setup.lift),
                            std::string(word(here.setup.hold)),
                            hold_name(here.setup.hold),
                            shown_load_in(here.setup.load, mass),
                            mass.unit,
                            shown_settings(here),
                            holds_said(here.setup.lift),
                            shown_joints(here),
                            shown_share(here),
                            share_in_words(here),
                            shown_causes(here),
                            drawn_setup(here),
                            drawing_in_words(here),
                            std::move(search),
                            rack_card(here),
                            setup_sentences(here),
                            setup_cautions(here, limits),
                            setup_cannot_tell,
                            setup_sources(here)};
    if (answer.search && answer.search->wanted_from.find("Kageyama2015") != std::string::npos)
        answer.sources.push_back("Kageyama2015");
    return answer;
}

} // namespace

Result<SolveSetupAnswer> solve_setup(Workplace& workplace, const SolveSetupRequest& request) {
    auto& inside = workplace.inside();
    const auto view = inside.view();
    const auto given = body_given(inside, *view, request);
    if (!given)
        return given.refusal();
    if (!request.want && (request.vary || request.wanted))
        return refuse_missing("want", "what is searched for, or leave vary and wanted out");
    std::optional<Varied> varied;
    if (request.want) {
        const auto chosen = varied_of(request);
        if (!chosen)
            return chosen.refusal();
        varied = *chosen;
    }
    const auto asked = setup_given(request, *given, varied);
    if (!asked)
        return asked.refusal();
    const Body& body = given->body;
    const MotionLimits limits = limits_of_athlete(*view, given->athlete);
    if (!request.want) {
        auto pose = solve_pose(body, asked->setup);
        if (!pose)
            return as_typed(pose.refusal(), request, given->facility, asked->usual_words);
        SolvedHere here{*given, *asked, asked->setup, std::nullopt, *std::move(pose), std::nullopt};
        if (here.pose.lead)
            here.band = estimate_pose_band(body, here.setup, here.pose);
        return answer_of(here, limits, std::nullopt);
    }
    const auto wanted = wanted_of(request, *varied, *given, asked->setup.lift, *view, inside.today());
    if (!wanted)
        return wanted.refusal();
    auto found = search_setup(body, asked->setup, limits, wanted->wanted);
    if (!found)
        return found.refusal().field == "vary" || found.refusal().field == "lift"
                   ? found.refusal()
                   : as_typed(found.refusal(), request, given->facility, asked->usual_words);
    const auto search = shown_search(request, *wanted, *found, given->facility);
    SolvedHere here{*given, *asked, found->setup, varied, found->pose, std::nullopt};
    here.band = estimate_pose_band(body, here.setup, here.pose);
    return answer_of(here, limits, search);
}

} // namespace amentum
