#include "operations/inside/setup_words.h"

#include "body_mechanics/rear_share.h"
#include "values/shortest_decimal.h"

#include <cmath>
#include <numbers>

namespace amentum {
namespace {

constexpr double degree = std::numbers::pi / 180;

std::string degrees_said(double radians) {
    const double whole = std::round(radians / degree);
    return format_fixed(whole == 0 ? 0 : whole, 0) + " degrees";
}

std::string number(double value) {
    return format_fixed(value, 0);
}

std::string held_said(const SolvedHere& here) {
    const std::string hold = hold_name(here.setup.hold);
    return here.setup.hold == Hold::body ? hold
                                         : load_said(here.setup.load, here.given.facility) + ", " + hold;
}

std::string leans(const char* what, double radians) {
    return std::string(what) + (radians < -0.5 * degree ? " leans back " : " leans ") +
           degrees_said(std::abs(radians));
}

std::string depth_line(const SolvedHere& here) {
    if (here.setup.clearance)
        return "Down until the back knee is " +
               taped_said(here.setup.clearance->metres(), here.given.facility) + " off the floor";
    if (here.setup.knee)
        return "Down until the knees bend " + number(here.setup.knee->degrees()) + " degrees";
    const double thigh = here.pose.thigh / degree;
    const bool split = on_split_feet(here.setup.lift);
    if (std::abs(thigh - 90) < 2)
        return split ? "Down to a level front thigh" : "Down to level thighs";
    return (split ? "Down until the front thigh is " : "Down until the thighs are ") +
           number(std::abs(90 - thigh)) + " degrees " + (thigh < 90 ? "short of level" : "below level");
}

std::string place_line(const SolvedHere& here) {
    const auto& facility = here.given.facility;
    const std::string apart = taped_said(stance_from_pad(here), facility);
    switch (here.setup.lift) {
    case Lift::rear_foot_raised_split_squat:
        return "Front heel " + apart + " from the pad's edge, pad " +
               taped_said(here.setup.pad_height->metres(), facility) + " high";
    case Lift::step_up:
        return "Box " + taped_said(here.setup.box_height->metres(), facility) +
               " high, ball of the back foot " + apart + " behind the front heel";
    default:
        return "Front heel " + apart + " ahead of the ball of the back foot";
    }
}

std::vector<std::string> pull_lines(const SolvedHere& here) {
    const bool hex = here.setup.lift == Lift::hex_bar_deadlift;
    return {(hex ? "Handles at " : "Bar at ") +
                taped_said(here.setup.handle_height->metres(), here.given.facility) + " over the floor",
            leans("Shin", here.pose.shin) + " at the start, knees bent " + degrees_said(here.pose.knee()),
            leans("Trunk", here.pose.trunk)};
}

std::string joint_sentence(const SolvedHere& here, const Estimate& both, const char* joint) {
    const double value = both.value / here.pose.legs;
    const auto band = Estimate{value, both.standard_error / here.pose.legs}.central();
    return std::string(joint) + " " + number(value) + " N m (80 %: " + number(band.low) + " to " +
           number(band.high) + ")";
}

} // namespace

std::string share_in_words(const SolvedHere& here) {
    if (!here.pose.lead)
        return "A pull-up asks nothing of hip and knee.";
    const auto share = shown_share(here);
    if (!share)
        return "Hip and knee together do not straighten here, so the hip has no share of it.";
    return "Of what straightens hip and knee, the hip does " + number(share->value) +
           " % (80 %: " + number(share->low) + " to " + number(share->high) +
           "). A ratio of hip to knee is not given: it has no bound where the knee's moment passes through "
           "zero.";
}

std::string drawing_in_words(const SolvedHere& here) {
    const Pose& pose = here.pose;
    if (!pose.lead)
        return "Side view, facing right: hanging from a bar, elbows bent " +
               number(here.setup.elbow->degrees()) + " degrees, forearms leaning " +
               degrees_said(pose.forearm) + ", body and legs straight down, " + held_said(here) + ".";
    std::string text = "Side view, facing right: " + leans("shin", pose.shin) + ", thigh " +
                       degrees_said(pose.thigh) + " from upright, " + leans("trunk", pose.trunk) +
                       "; knee bent " + degrees_said(pose.knee()) + ", hip bent " + degrees_said(pose.hip()) +
                       ". " + held_said(here) + ". ";
    text += joint_sentence(here, here.band->knee, "At the knee") + ", " +
            joint_sentence(here, here.band->hip, "at the hip") + "; a number above 0 straightens. ";
    const double ahead = pose.front.p_WP.x / here.given.body.foot_length;
    text += "The weight under the " + std::string(pose.legs == 2 ? "feet" : "lead foot") + " stands " +
            number(100 * (ahead + 0.25)) + " % of the foot's length from the heel";
    if (pose.rear)
        text += "; the back foot carries " + number(100 * pose.rear_share) + " % of the weight";
    return text + ".";
}

std::vector<std::string> rack_card(const SolvedHere& here) {
    std::vector<std::string> card{lift_name(here.setup.lift) + ", " + held_said(here)};
    const Lift lift = here.setup.lift;
    if (lift == Lift::pull_up) {
        card.push_back("Palms facing each other, from long arms (common practice, no source)");
        return card;
    }
    if (lift == Lift::hex_bar_deadlift || lift == Lift::straight_bar_deadlift) {
        const auto lines = pull_lines(here);
        card.insert(card.end(), lines.begin(), lines.end());
        return card;
    }
    if (on_split_feet(lift))
        card.push_back(place_line(here));
    card.push_back(depth_line(here));
    card.push_back(leans("Trunk", here.pose.trunk) + ", " +
                   leans(on_split_feet(lift) ? "front shin" : "each shin", here.pose.shin));
    return card;
}

std::vector<std::string> setup_sentences(const SolvedHere& here) {
    std::vector<std::string> words;
    if (!here.asked.usual_words.empty())
        words.push_back(here.asked.usual_words);
    if (!here.pose.lead) {
        words.push_back(
            "Grips cannot be told apart here: they load the arms sideways, which a side view does not see. "
            "What can be said is the bend of the elbow and what it takes.");
        return words;
    }
    const bool shin_solved = here.setup.trunk_lean.has_value() || !here.setup.shin_lean;
    words.push_back(std::string("Balance decides the lean of the ") + (shin_solved ? "shin: " : "trunk: ") +
                    degrees_said(shin_solved ? here.pose.shin : here.pose.trunk) + ", give or take " +
                    format_fixed(here.band->solved_angle_error, 1) + ".");
    if (const auto share = rear_share_of(here.setup.lift); share && !here.asked.given_share)
        words.push_back(
            here.setup.lift == Lift::step_up
                ? "The back foot is taken to have just left the floor: pushing off with it eases the lead "
                  "leg, by how much is not known."
            : here.setup.lift == Lift::rear_foot_raised_split_squat
                ? "The back foot is taken to carry 16 % of the weight, give or take 4 [Helme2020]; two "
                  "force plates would tell this athlete's own."
                : "The back foot is taken to carry 25 % of the weight [McCurdy2017], give or take 4, a "
                  "spread lent from another lift; two force plates would tell.");
    return words;
}

std::vector<std::string> setup_cautions(const SolvedHere& here, const MotionLimits& limits) {
    std::vector<std::string> cautions = here.given.cautions;
    if (const auto beyond = beyond_motion(here.pose, limits); here.pose.lead && !beyond.empty())
        cautions.push_back(beyond + " Change the set-up or test again before loading it.");
    constexpr double grip_lb = 200;
    if (here.setup.hold == Hold::dumbbells && here.setup.load.pounds() >= grip_lb - 0.01)
        cautions.push_back(
            "Grip gives out before the leg with dumbbells this heavy: a pair of 100 lb is only 200 lb "
            "(common practice, no source).");
    if (here.setup.lift == Lift::hex_bar_deadlift && here.setup.load.pounds() > 600.01)
        cautions.push_back(
            "Strong athletes pull up to 600 lb on a hex bar (common practice, no source); this is more.");
    return cautions;
}

std::vector<std::string> setup_sources(const SolvedHere& here) {
    std::vector<std::string> sources = here.given.sources;
    sources.push_back("DuarteWatanabe");
    if (here.setup.lift == Lift::rear_foot_raised_split_squat)
        sources.push_back("Helme2020");
    else if (on_split_feet(here.setup.lift))
        sources.insert(sources.end(), {"McCurdy2017", "Helme2020"});
    sources.insert(sources.end(), {"CommonPractice", "ProjectProposal"});
    return sources;
}

} // namespace amentum
