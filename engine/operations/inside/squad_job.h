// A squad planned on threads of its own, one thrower after another, none of whom can stop the others.
#pragma once

#include "operations/inside/block_request.h"
#include "operations/inside/fit_job.h"

#include <mutex>
#include <string>
#include <vector>

namespace amentum {

enum class SquadOutcome { waiting, planned, refused, left, stopped };
template <>
inline constexpr std::array<std::pair<SquadOutcome, std::string_view>, 5> words_of<SquadOutcome>{
    {{SquadOutcome::waiting, "waiting"},
     {SquadOutcome::planned, "planned"},
     {SquadOutcome::refused, "refused"},
     {SquadOutcome::left, "left"},
     {SquadOutcome::stopped, "stopped"}}};

struct SquadAsked {
    BlockAsked block;
    Effort effort = Effort::brief;
    std::vector<AthleteId> athletes;
};

struct SquadRow {
    AthleteId athlete;
    std::string name;
    SquadOutcome outcome = SquadOutcome::waiting;
    std::string block = {};
    std::optional<double> points = {};
    std::string words = {};
};

class SquadJob {
public:
    struct Seen {
        FitJob::Seen job;
        std::optional<SquadAsked> asked; // of the one that runs or ran last
        std::vector<SquadRow> rows;
    };

    bool begin(Workplace::Inside&, SquadAsked); // false: one runs already
    void stop() { job_.stop(); }
    Seen look();
    Seen wait();
    void tell(std::function<void(double)> listener) { job_.listener = std::move(listener); }

private:
    std::optional<Refusal> plan_all(Workplace::Inside&, const std::function<bool(double)>& going);
    void set_row(std::size_t place, SquadRow row);
    Seen with_rows(FitJob::Seen);

    std::mutex beginning_;
    std::mutex mutex_; // guards the two below
    std::optional<SquadAsked> asked_;
    std::vector<SquadRow> rows_;
    FitJob job_; // last: it ends before what it works on
};

} // namespace amentum
