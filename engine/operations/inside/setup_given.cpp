#include "operations/inside/setup_given.h"

#include "body_mechanics/holds.h"
#include "body_mechanics/rear_share.h"
#include "operations/inside/typed_quantity.h"
#include "operations/inside/usual_setup.h"
#include "values/shortest_decimal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace amentum {
namespace {

using Number = std::optional<double>;

struct LengthField {
    Setting setting;
    const char* name;
    Number SetupRequest::*cm;
    Number SetupRequest::*in;
};
constexpr std::array<LengthField, 5> length_fields{{
    {Setting::stance, "stance", &SetupRequest::stance_cm, &SetupRequest::stance_in},
    {Setting::pad_height, "pad", &SetupRequest::pad_cm, &SetupRequest::pad_in},
    {Setting::box_height, "box", &SetupRequest::box_cm, &SetupRequest::box_in},
    {Setting::handle_height, "handle", &SetupRequest::handle_cm, &SetupRequest::handle_in},
    {Setting::clearance, "clearance", &SetupRequest::clearance_cm, &SetupRequest::clearance_in},
}};

struct AngleField {
    Setting setting;
    const char* field;
    Number SetupRequest::*degrees;
};
constexpr std::array<AngleField, 5> angle_fields{{
    {Setting::trunk_lean, "trunk_lean_deg", &SetupRequest::trunk_lean_deg},
    {Setting::shin_lean, "shin_lean_deg", &SetupRequest::shin_lean_deg},
    {Setting::thigh, "thigh_deg", &SetupRequest::thigh_deg},
    {Setting::knee, "knee_deg", &SetupRequest::knee_deg},
    {Setting::elbow, "elbow_deg", &SetupRequest::elbow_deg},
}};

const ShownUnit degrees_unit{"degrees", 1, 1};

Refusal not_of_this(const std::string& field, const std::string& sentence) {
    return {RefusalCode::method_does_not_apply, sentence, field, "", "left out"};
}

std::vector<std::string> words_of_holds(Lift lift) {
    std::vector<std::string> words;
    for (const Hold hold : holds_of(lift))
        words.push_back(word(hold));
    return words;
}

Result<Hold> hold_given(const SetupRequest& request, Lift lift, bool loaded) {
    if (!request.hold)
        return lift == Lift::pull_up && loaded ? Hold::belt : holds_of(lift).front();
    const auto hold = from_word<Hold>(*request.hold);
    const auto allowed = words_of_holds(lift);
    if (!hold || std::find(allowed.begin(), allowed.end(), *request.hold) == allowed.end())
        return refuse_choice("hold", *request.hold, allowed);
    return *hold;
}

bool may_be_bare(Lift lift) {
    const auto holds = holds_of(lift);
    return std::find(holds.begin(), holds.end(), Hold::body) != holds.end();
}

Result<Mass> load_given(const TypedMass& typed, Lift lift, Hold hold, const Body& body, bool searched) {
    if (hold == Hold::body) {
        if (typed.mass && typed.mass->kilograms() != 0)
            return not_of_this(typed.field,
                               "Nothing is held this way: leave the load out, or choose a hold for it.");
        return Mass::kilograms(0);
    }
    if (!typed.mass && !searched)
        return refuse_missing(typed.field, std::string("what is held, bar and plates or both dumbbells") +
                                               (may_be_bare(lift) ? "; for none, hold = body" : ""));
    const Mass load = typed.mass.value_or(0.5 * body.given.mass);
    if (const auto refused = outside_limits(typed.field, load.kilograms(), 0, 500, typed.unit))
        return *refused;
    return load;
}

Result<Done> put_lengths(SetupGivenHere& here, const SetupRequest& request, const Facility& facility) {
    for (const auto& each : length_fields) {
        const auto typed = typed_length(each.name, request.*each.cm, request.*each.in, facility);
        if (!typed)
            return typed.refusal();
        if (!typed->length)
            continue;
        const auto [low, high, unit] = limits_of(each.setting);
        if (const auto refused =
                outside_limits(typed->field, typed->length->metres(), low, high, typed->unit))
            return *refused;
        put_setting(here.setup, each.setting, typed->length->metres());
        here.given.push_back(each.setting);
    }
    return Done{};
}

Result<Done> put_angles(SetupGivenHere& here, const SetupRequest& request) {
    for (const auto& each : angle_fields) {
        const Number typed = request.*each.degrees;
        if (!typed)
            continue;
        const auto [low, high, unit] = limits_of(each.setting);
        if (const auto refused = outside_limits(each.field, *typed, low, high, degrees_unit))
            return *refused;
        put_setting(here.setup, each.setting, *typed);
        here.given.push_back(each.setting);
    }
    return Done{};
}

Result<Done> put_assumptions(SetupGivenHere& here, const SetupRequest& request, const Facility& facility) {
    Setup& setup = here.setup;
    const auto ahead = typed_length("load_ahead", request.load_ahead_cm, request.load_ahead_in, facility);
    if (!ahead)
        return ahead.refusal();
    if (ahead->length) {
        if (!on_trunk(setup.hold))
            return not_of_this(ahead->field, "Only a load on the trunk has a place ahead of it.");
        if (const auto refused =
                outside_limits(ahead->field, ahead->length->metres(), -0.3, 0.6, ahead->unit))
            return *refused;
        setup.load_ahead = ahead->length;
    }
    if (request.pressure_share && setup.lift == Lift::pull_up)
        return not_of_this("pressure_share", "No foot presses on the floor in a pull-up.");
    if ((request.rear_share || request.rear_force_n) && !rear_share_of(setup.lift))
        return not_of_this(request.rear_share ? "rear_share" : "rear_force_n",
                           "No foot stands behind the other in this lift.");
    setup.pressure_share = request.pressure_share.value_or(setup.pressure_share);
    setup.rear_share = request.rear_share;
    if (request.rear_force_n)
        setup.rear_force_x = Force::newtons(*request.rear_force_n);
    here.given_ahead = ahead->length.has_value();
    here.given_pressure = request.pressure_share.has_value();
    here.given_share = request.rear_share.has_value();
    here.given_rear_force = request.rear_force_n.has_value();
    return Done{};
}

std::string filled_in_words(const SetupGivenHere& here, const Facility& facility) {
    std::string list;
    const auto add = [&list](const std::string& text) { list += (list.empty() ? "" : ", ") + text; };
    if (here.usual_hold)
        add(hold_name(here.setup.hold));
    for (const Setting setting : here.usual)
        add(short_name(setting) + " " + value_said(setting, *setting_value(here.setup, setting), facility));
    return list.empty() ? "" : "Left out and taken as usual (common practice, no source): " + list + ".";
}

} // namespace

Result<SetupGivenHere> setup_given(const SetupRequest& request, const BodyGivenHere& body,
                                   std::optional<Varied> varied) {
    const auto lift = from_word<Lift>(request.lift);
    if (!lift)
        return refuse_choice("lift", request.lift, all_words<Lift>());
    const auto load = typed_mass("load", request.load_kg, request.load_lb, body.facility);
    if (!load)
        return load.refusal();
    const auto hold = hold_given(request, *lift, load->mass && load->mass->kilograms() > 0);
    if (!hold)
        return hold.refusal();
    const bool searched = varied == Varied::load;
    const auto mass = load_given(*load, *lift, *hold, body.body, searched);
    if (!mass)
        return mass.refusal();
    SetupGivenHere here{Setup{*lift, *hold, *mass},
                        {},
                        !request.hold,
                        searched && !load->mass,
                        false,
                        false,
                        false,
                        false,
                        {},
                        ""};
    if (const auto put = put_lengths(here, request, body.facility); !put)
        return put.refusal();
    if (const auto put = put_angles(here, request); !put)
        return put.refusal();
    if (const auto put = put_assumptions(here, request, body.facility); !put)
        return put.refusal();
    const auto fill = [&](Setting setting) {
        put_setting(here.setup, setting, usual_value(body.body, *lift, setting, body.facility));
        here.usual.push_back(setting);
    };
    if (varied == Varied::shin_lean && !here.setup.shin_lean && !here.setup.trunk_lean && !here.setup.knee &&
        *lift != Lift::pull_up)
        fill(Setting::shin_lean);
    for (const Setting setting : settings_missing(here.setup))
        fill(setting);
    here.usual_words = filled_in_words(here, body.facility);
    if (const auto checked = check_settings(here.setup); !checked)
        return as_typed(checked.refusal(), request, body.facility, here.usual_words);
    return here;
}

std::string request_field(const std::string& engine_field, const SetupRequest& request,
                          const Facility& facility) {
    const bool inches = facility.length_unit == LengthUnit::inches;
    for (const auto& each : length_fields)
        if (word(each.setting) == engine_field)
            return std::string(each.name) + (request.*each.in   ? "_in"
                                             : request.*each.cm ? "_cm"
                                             : inches           ? "_in"
                                                                : "_cm");
    for (const auto& each : angle_fields)
        if (word(each.setting) == engine_field)
            return each.field;
    if (engine_field == "load")
        return request.load_lb                      ? "load_lb"
               : request.load_kg                    ? "load_kg"
               : facility.mass_unit == MassUnit::lb ? "load_lb"
                                                    : "load_kg";
    if (engine_field == "load_ahead")
        return request.load_ahead_in || (!request.load_ahead_cm && inches) ? "load_ahead_in"
                                                                           : "load_ahead_cm";
    if (engine_field == "rear_force_x")
        return "rear_force_n";
    return engine_field;
}

Refusal as_typed(Refusal refusal, const SetupRequest& request, const Facility& facility,
                 const std::string& usual_words) {
    refusal.field = request_field(refusal.field, request, facility);
    if (refusal.code == RefusalCode::no_such_posture && !usual_words.empty())
        refusal.sentence += " " + usual_words;
    return refusal;
}

std::string value_said(Setting setting, double si, const Facility& facility) {
    if (!is_length(setting))
        return format_fixed(si, 0) + " degrees";
    const auto unit = shown_unit(TestUnit::metre, facility);
    return format_shortest(std::round(si * unit.factor * 10) / 10) + " " + unit.unit;
}

std::string taped_said(double metres, const Facility& facility) {
    const auto unit = shown_unit(TestUnit::metre, facility);
    const double step = tape_step(facility) * unit.factor;
    return format_shortest(std::round(metres * unit.factor / step) * step) + " " + unit.unit;
}

std::string load_said(Mass mass, const Facility& facility) {
    const auto unit = shown_mass(facility.mass_unit);
    return format_shortest(std::round(shown_load_in(mass, unit) * 10) / 10) + " " + unit.unit;
}

} // namespace amentum
