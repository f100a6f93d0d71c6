// The reference tables of data/*.csv as values: read once, checked whole, handed to everybody who needs them.
//
// Texts are given by file name ("exercises.csv"); all files of reference_file_names() are needed. Pure: the
// caller reads the disk. The layout of each file is its header line; its first '#' lines say units and how
// values were set. Checks: the columns are those of the file; every key is unique; every key another row
// names exists (qualities, tests, cautions, alternatives, patterns); an alternative is not spoken against by the
// caution it is for; every region of pain has its row, in order, and blocks at least one exercise; every row has a source key; every number is in its range and every choice one of its
// words; bands of age of one rule do not overlap. Refuses with file, line and column in `field`:
// "exercises.csv, line 12, qualities". What it cannot tell: whether a source says what the row claims;
// docs/sources.md names it so that a reader can look.
//
// Example: parse_reference_tables(texts)->exercise("rfe_split_squat_safety_bar")->one_sided == true
#pragma once

#include "body_mechanics/segment_tables.h"
#include "inference/priors.h"
#include "throwing_workload/pitch_rule.h"
#include "values/exercise.h"
#include "values/pain_block.h"
#include "values/refusal.h"
#include "values/test_kind.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace amentum {

// A reason to end a session and see a clinician, in words for athlete and coach.
struct StopSign {
    std::string key;      // "sharp_arm_pain"
    std::string sentence; // "Sharp or sudden pain in the arm, or a pop."
    bool urgent;          // today, not this week
    std::vector<std::string> sources;
};

struct ReferenceTables {
    std::vector<Quality> qualities;
    std::vector<TestKind> test_kinds;
    std::vector<Exercise> exercises;
    std::vector<Caution> cautions;
    std::vector<VelocityPrior> velocity_priors;
    std::vector<AttainableChange> attainable_changes;
    std::vector<PitchRule> pitch_rules;
    std::vector<StopSign> stop_signs;
    std::vector<PainBlock> pain_blocks; // one for each PainRegion, in its order
    SegmentTables segments;             // of the body
    std::string stop_closing;           // the sentence after the last sign: what this tool does not do

    // Null when there is none of that key.
    const Quality* quality(std::string_view key) const;
    const TestKind* test_kind(std::string_view key) const;
    const Exercise* exercise(std::string_view key) const;
    const Caution* caution(std::string_view key) const;
};

std::vector<std::string> reference_file_names();

Result<ReferenceTables> parse_reference_tables(const std::map<std::string, std::string>& texts_by_file_name);

} // namespace amentum
