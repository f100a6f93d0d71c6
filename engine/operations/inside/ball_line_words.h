// A line over ball masses in sentences: what it says, what speaks against throwing, what to throw next.
#pragma once

#include "operations/inside/ball_days.h"
#include "reports/shown_units.h"

#include <string>
#include <vector>

namespace amentum {

struct BallUnits {
    ShownUnit mass; // with the decimals that tell balls apart
    ShownUnit speed;
};
BallUnits ball_units(const Facility&);

std::string family_name(const ReferenceTables&, const std::string& family);

std::vector<std::string> ball_line_words(const BallMassLine&, const BallDay&, const BallUnits&);
// Warnings of the line, throws left out, and the athlete's own restrictions that speak against this throw.
std::vector<std::string> ball_line_cautions(const BallMassLine&, const BallDay&, const Athlete&,
                                            const ReferenceTables&, const std::string& family);
std::vector<std::string> ball_line_next(const BallMassLine&);
std::vector<std::string> ball_line_sources(const BallDay&);

Refusal refuse_no_balls(const Athlete&);
Refusal refuse_line(const Athlete&, const BallDay&,
                    Refusal); // says whose, when, and what was thrown that day

} // namespace amentum
