// On which day may a test be done before the choice is made: the last one the calendar and the arm leave free.
//
// A length, an angle, a weight: not on a game, a start, a day off or of travel. Every test to the limit: nor within 48 h of a
// start, nor the day after one; thrown ones nor while a pitch rule asks for rest (common practice, no source).
#pragma once

#include "operations/inside/facility_view.h"
#include "operations/next_test.h"

namespace amentum {

struct ChoiceDay {
    Date day;
    std::string words; // where it comes from
};
// The next kept block's start, or four weeks from today.
ChoiceDay usual_choice_day(const FacilityView&, const Athlete&, Date today);

struct FreeDay {
    std::optional<Date> day;             // none: no day from today is free
    std::vector<PassedOver> passed_over; // the later ones, and why not; the last first
};
FreeDay last_free_day(const FacilityView&, const ReferenceTables&, const Athlete&, const TestKind&,
                      Date today, Date before);

} // namespace amentum
