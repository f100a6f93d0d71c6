#include "store/sqlite/new_rows.h"
#include "store/sqlite/rows.h"
#include "store/sqlite/statement.h"

namespace amentum {

void save_prior_edits(SQLite::Database& database, const std::vector<PriorEdit>& edits) {
    NewRows row(database, "prior_edit", "facility_id, number, kind, quality, mean, sd, author, date, reason");
    for (const auto& e : edits) {
        const auto mean = e.belief ? std::optional(e.belief->mean) : std::nullopt;
        const auto sd = e.belief ? std::optional(e.belief->sd) : std::nullopt;
        row.save(this_facility, e.number, word(e.kind), e.quality, mean, sd, e.author, e.date, e.reason);
    }
}

std::vector<PriorEdit> load_prior_edits(SQLite::Database& database) {
    Statement query(database, "SELECT number, kind, quality, mean, sd, author, date, reason FROM prior_edit "
                              "WHERE facility_id = $1 ORDER BY number");
    query.bind(this_facility);
    std::vector<PriorEdit> edits;
    while (query.step()) {
        query.begin_row();
        const int number = query.whole();
        const auto kind = query.choice<PriorKind>();
        std::string quality = query.text();
        const auto mean = query.maybe_number(), sd = query.maybe_number();
        std::string author = query.text();
        const Date date = query.date();
        const auto belief = mean && sd ? std::optional(PriorBelief{*mean, *sd}) : std::nullopt;
        edits.push_back({number, kind, std::move(quality), belief, std::move(author), date, query.text()});
    }
    return edits;
}

} // namespace amentum
