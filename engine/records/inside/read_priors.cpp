// What was changed in the priors here, by whom, when and why.
#include "records/inside/read_line.h"

#include "inference/priors_in_force.h"
#include "values/letters.h"

#include <algorithm>

namespace amentum {
namespace {

// Numbers run without a gap: a file that begins in the middle has lost edits.
int read_number(LineReader& reader, LinesBefore& before) {
    const int number = reader.needed_whole("number", limits::prior_edit);
    if (number > before.last_prior_edit + 1)
        reader.refuse(
            {RefusalCode::missing_field,
             "Edit " + std::to_string(number) + " comes before edit " +
                 std::to_string(before.last_prior_edit + 1) + " is held: edits come in order, none left out.",
             "number", std::to_string(number), "up to " + std::to_string(before.last_prior_edit + 1)});
    before.last_prior_edit = std::max(before.last_prior_edit, number);
    return number;
}

std::string read_quality(LineReader& reader, const LinesBefore& before, PriorKind kind) {
    const std::string given = reader.needed("quality");
    std::vector<std::string> known;
    if (kind == PriorKind::slope)
        for (const auto& prior : before.context.tables.velocity_priors)
            known.push_back(prior.quality);
    else
        for (const auto& change : before.context.tables.attainable_changes)
            known.push_back(change.quality);
    if (!given.empty() && std::find(known.begin(), known.end(), given) == known.end())
        reader.refuse(refuse_unknown("quality", given, known));
    return given;
}

enum class Published { yes, no };

} // namespace

template <>
inline constexpr std::array<std::pair<Published, std::string_view>, 2> words_of<Published>{
    {{Published::yes, "yes"}, {Published::no, "no"}}};

namespace {

// Both numbers, or "published: yes" and neither.
std::optional<PriorBelief> read_belief(LineReader& reader, PriorKind kind) {
    const bool slope = kind == PriorKind::slope;
    const Limits means = slope ? Limits{lowest_slope, highest_slope}
                               : Limits{lowest_attainable_change, highest_attainable_change};
    if (reader.choice<Published>("published").value_or(Published::no) == Published::no)
        return PriorBelief{reader.needed_number("mean", means),
                           reader.needed_number("sd", {least_prior_sd, most_prior_sd})};
    const std::string given = reader.tidy("mean") + reader.tidy("sd");
    if (!given.empty())
        reader.refuse({RefusalCode::unknown_choice,
                       "The line goes back to the published value and gives another one; keep one of them.",
                       "published", given, "\"yes\" without mean and sd, or mean and sd"});
    return std::nullopt;
}

} // namespace

RecordOnLine read_prior_edit(LineReader& reader, LinesBefore& before) {
    const int number = read_number(reader, before);
    const auto kind = reader.needed_choice<PriorKind>("kind");
    std::string quality = read_quality(reader, before, kind);
    const auto belief = read_belief(reader, kind);
    PriorEdit edit{number,
                   kind,
                   std::move(quality),
                   belief,
                   reader.needed("author"),
                   reader.needed_date("date"),
                   reader.text("reason")};
    if (edit.date > before.context.today)
        reader.refuse({RefusalCode::impossible_date, "The day " + edit.date.text() + " is after today.",
                       "date", edit.date.text(), "up to " + before.context.today.text()});
    if (letters_in(edit.reason) < shortest_reason)
        reader.refuse({RefusalCode::missing_field, "Please say why the prior is changed, in a sentence.",
                       "reason", edit.reason, "at least 10 letters"});
    return edit;
}

} // namespace amentum
