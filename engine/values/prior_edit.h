// A prior as someone here changed it: what was believed from then on, who said so, when and why.
//
// Identified by its number, which runs through the whole facility: 1, 2, 3 ... Only ever added to; going back to the
// published value is an edit of its own.
#pragma once

#include "values/calendar_date.h"
#include "values/enum_words.h"

#include <optional>
#include <string>

namespace amentum {

// slope: SDs of velocity that go with one SD of the quality. attainable_change: SDs of the quality in twelve weeks.
enum class PriorKind { slope, attainable_change };
template <>
inline constexpr std::array<std::pair<PriorKind, std::string_view>, 2> words_of<PriorKind>{
    {{PriorKind::slope, "slope"}, {PriorKind::attainable_change, "attainable_change"}}};

struct PriorBelief {
    double mean;
    double sd; // above 0

    friend bool operator==(const PriorBelief&, const PriorBelief&) = default;
};

struct PriorEdit {
    int number; // 1 ...
    PriorKind kind;
    std::string quality;               // key
    std::optional<PriorBelief> belief; // none: back to the published value
    std::string author;
    Date date;
    std::string reason; // at least 10 letters

    friend bool operator==(const PriorEdit&, const PriorEdit&) = default;
};

} // namespace amentum
