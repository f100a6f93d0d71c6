// A request's lift as a Setup: units read, gaps filled with usual values, every field known by the name it was typed with.
//
// Refuses an unknown lift or hold, a load without a hold for it or none where one is held, two units of one quantity, and
// settings outside the limits of any body (lift_settings.h), each by the field that was typed and in its unit.
#pragma once

#include "operations/inside/body_given.h"
#include "operations/inside/lift_names.h"
#include "operations/solve_setup.h"

namespace amentum {

struct SetupGivenHere {
    Setup setup;
    std::vector<Setting> usual; // filled in
    bool usual_hold;            // the hold was left out
    bool usual_load;            // searched for: half the body's mass to start from
    bool given_ahead;           // load_ahead
    bool given_pressure;        // pressure_share
    bool given_share;           // rear_share
    bool given_rear_force;      // rear_force_n
    std::vector<Setting> given; // typed
    std::string usual_words;    // whole sentence; empty when nothing was filled in
};

// `varied`: the setting that will be searched for; a lean that is searched for is not filled with the other one.
Result<SetupGivenHere> setup_given(const SetupRequest&, const BodyGivenHere&, std::optional<Varied> varied);

// The request's field of a field of setup.h, as typed or else in the facility's unit.
std::string request_field(const std::string& engine_field, const SetupRequest&, const Facility&);
Refusal as_typed(Refusal, const SetupRequest&, const Facility&, const std::string& usual_words);

// A setting's value with its unit: "31.5 in", "20 degrees".
std::string value_said(Setting, double si, const Facility&);
// To the nearest half inch or centimetre: "24.5 in".
std::string taped_said(double metres, const Facility&);
std::string load_said(Mass, const Facility&); // "135 lb"

} // namespace amentum
