// What is said about a line in another gym: its change, what its intent is measured by, the set-up that keeps the hip's share.
#pragma once

#include "planning/retarget_block.h"
#include "values/facility.h"

#include <map>
#include <string>
#include <vector>

namespace amentum {

std::string change_in_words(Change);               // "held otherwise"
std::string basis_in_words(const RetargetedLine&); // "by the lead leg's demand at the bottom"
std::string equal_in_words(const RetargetedLine&); // "asks the same of one leg"
std::string kept_in_words(const RetargetedBlock&, const Kit& there);
std::vector<std::string> retargeting_cannot_tell();

// Each set-up is solved once: a block asks for the same one in many weeks.
class SetupsSaid {
public:
    // Empty where nothing is known, or nothing changed.
    std::string said(const RetargetRequest&, const RetargetedLine&, const Facility&);

private:
    std::map<std::string, std::string> known_;
};

} // namespace amentum
