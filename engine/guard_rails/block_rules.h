// The rules behind check_block, one function a file; each reads the whole case and returns what it found.
#pragma once

#include "guard_rails/check_block.h"

#include <string>
#include <vector>

namespace amentum {

inline const std::string common_practice = "common practice, no source";
inline const std::string own_proposal = "proposal of this project, no source";

struct BlockCase {
    const Block& block;
    const Athlete& athlete;
    const Kit& kit;
    std::span<const Exercise> catalogue;
    std::span<const Caution> cautions;
    std::span<const CalendarEntry> calendar;
    std::span<const Override> overrides;
    Date today;
    const CareRecord& care;

    const Exercise* exercise(const BlockLine& line) const; // null: not in the catalogue
    std::string name(const BlockLine& line) const;
    std::vector<Date> starts() const; // every day of every start of this athlete
    bool heavy_for_legs(const BlockLine& line) const;
    bool close_before_a_start(Date day) const; // its day, or one of the two before
};

PlaceInBlock place_of(const BlockLine& line);

std::vector<Finding> check_loads(const BlockCase&);
std::vector<Finding> check_cautions(const BlockCase&);
std::vector<Finding> check_calendar(const BlockCase&);
std::vector<Finding> check_youth(const BlockCase&);
std::vector<Finding> check_structure(const BlockCase&);
std::vector<Finding> check_pain(const BlockCase&);

} // namespace amentum
