// Writes columns and rows of the linear model (linear_model.h). A row says where it stands in its name, an entry of a
// line that may not stand is left away, and a row that can never be broken is not written.
#pragma once

#include "planning/linear_model.h"

#include <limits>

namespace amentum {

inline constexpr double loosest_sets = 20; // of a line whose own fewest and most are given up
inline constexpr double unlimited = std::numeric_limits<double>::infinity();

class LinearWriter {
public:
    LinearWriter(const BlockProblem& problem, LinearModel& model) : problem_(problem), model_(model) {}

    int column(std::string name, double lower, double upper, double points) {
        model_.columns.push_back({std::move(name), lower, upper, points, false});
        return static_cast<int>(model_.columns.size()) - 1;
    }
    int whole_column(std::string name, double upper, double points) {
        model_.columns.push_back({std::move(name), 0, upper, points, true});
        return static_cast<int>(model_.columns.size()) - 1;
    }
    void row(std::string name, double lower, double upper, std::vector<LinearEntry> entries,
             std::optional<LimitGroup> group = {}, std::optional<int> number = {}, double give = 1) {
        const bool always_kept = entries.empty() && lower <= 0 && upper >= 0;
        if (!always_kept && (lower > -unlimited || upper < unlimited))
            model_.rows.push_back({std::move(name), lower, upper, std::move(entries), group, number, give});
    }

    int used(int m, int d, int c) const { return at(model_.used, m, d, c); }
    int sets(int m, int d, int c) const { return at(model_.sets, m, d, c); }

    // Adds `of(choice)` for each line of a session that may be used, or for each of its sets.
    template <class Of>
    void add_lines(std::vector<LinearEntry>& entries, int m, int d, Of of) const {
        add(entries, model_.used, m, d, of);
    }
    template <class Of>
    void add_sets(std::vector<LinearEntry>& entries, int m, int d, Of of) const {
        add(entries, model_.sets, m, d, of);
    }
    template <class Of>
    std::vector<LinearEntry> lines_of(int m, int d, Of of) const {
        std::vector<LinearEntry> entries;
        add_lines(entries, m, d, of);
        return entries;
    }
    template <class Of> // of(session, choice's number)
    std::vector<LinearEntry> sets_of_week(int m, Of of) const {
        std::vector<LinearEntry> entries;
        for (int d = 0; d < problem_.sessions; ++d)
            add_sets(entries, m, d, [&](int c) { return of(d, c); });
        return entries;
    }

private:
    static int at(const std::vector<std::vector<std::vector<int>>>& columns, int m, int d, int c) {
        return columns[static_cast<std::size_t>(m)][static_cast<std::size_t>(d)][static_cast<std::size_t>(c)];
    }
    template <class Of>
    void add(std::vector<LinearEntry>& entries, const std::vector<std::vector<std::vector<int>>>& columns,
             int m, int d, Of of) const {
        for (int c = 0; c < static_cast<int>(problem_.choices.size()); ++c)
            if (const int column = at(columns, m, d, c); column >= 0)
                if (const double factor = of(c); factor != 0)
                    entries.push_back({column, factor});
    }

    const BlockProblem& problem_;
    LinearModel& model_;
};

void write_worth(const BlockProblem&, LinearWriter&, int meso);          // linear_worth.cpp
void write_session_limits(const BlockProblem&, LinearWriter&, int meso); // linear_session_limits.cpp
void write_week_limits(const BlockProblem&, LinearWriter&, int meso);    // linear_week_limits.cpp

} // namespace amentum
