// Which answers did a late or edited entry change? Every day from the entry's to a fortnight from today is asked again.
#pragma once

#include "operations/inside/inside.h"
#include "operations/record_throws.h"

namespace amentum {

// Days on which the word was another before; an entry of today changes today's and what follows, and is no news there:
// empty then.
std::vector<ReopenedAnswer> reopened_answers(const ReferenceTables&, const FacilityView& before,
                                             const FacilityView& after, const AthleteId&, Date entry,
                                             Date today);

std::string reopened_words(const std::vector<ReopenedAnswer>&);

} // namespace amentum
