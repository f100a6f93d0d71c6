// Open pain as the rules of guard_rails look at it, and say it.
#pragma once

#include "guard_rails/care_record.h"
#include "guard_rails/finding.h"
#include "values/identifier.h"

#include <string>
#include <vector>

namespace amentum {

inline const std::string pain_rule =
    "An open pain entry stops what loads that region, until a named adult records who cleared it and when.";
inline const std::string pain_source = "common practice in sports medicine, from memory";
inline const std::string refer_words =
    "Stop and refer to a qualified clinician; record who cleared it and when. This tool records and compares "
    "numbers; it does not diagnose, clear or predict injury.";

std::vector<PainEntry> open_pains_of(const CareRecord& care, const AthleteId& athlete, Date day);

bool pain_blocks_exercise(const CareRecord& care, const PainEntry& pain, const Exercise& exercise);
bool pain_blocks_throwing(const CareRecord& care, const PainEntry& pain);

// "pain of the elbow, noted on 2026-03-02 (entry 3)"
std::string describe_pain(const CareRecord& care, const PainEntry& pain);

} // namespace amentum
