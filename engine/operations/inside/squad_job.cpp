#include "operations/inside/squad_job.h"

#include "operations/inside/block_reach.h"
#include "operations/inside/moved_lines.h"
#include "operations/inside/planned_anew.h"

#include <algorithm>
#include <atomic>
#include <exception>

namespace amentum {
namespace {

constexpr const char* begun_words = "Sets of its block are logged: it stays as it is.";
constexpr const char* changed_words = "Its block was changed by hand meanwhile: it stays as it was changed.";

std::string failed(const std::exception& failure) {
    return std::string("It failed: ") + failure.what();
}

struct SquadMember {
    const Athlete& athlete;
    BlockId id;
    const Block* kept;                 // of the same start; may be null
    std::vector<BlockChange> in_force; // the coach's words on it
};

Result<Block> planned_for(const Workplace::Inside& inside, const FacilityView& view, const RosterModel& model,
                          const SquadAsked& asked, const SquadMember& member,
                          const std::function<bool(double)>& going) {
    const auto kit = kit_named(view, member.athlete.kit.text);
    if (!kit)
        return kit.refusal();
    const auto work = limiter_work(view, inside.tables, model, member.athlete, inside.today());
    auto request = block_request(inside, view, member.athlete, **kit, asked.block, work);
    request.effort = asked.effort;
    request.going = going;
    if (!member.in_force.empty()) {
        request.own_lines = own_lines(member.in_force, member.kept->sessions_per_week);
        request.previous = *member.kept;
        if (asked.block.sessions_per_week == member.kept->sessions_per_week)
            request.weekdays = asked_of(*member.kept).weekdays;
    }
    auto block = plan_block(request);
    if (block && !work.answer.can_tell)
        block->notes.insert(block->notes.begin(), records_undecided);
    return block;
}

bool changed_meanwhile(Workplace::Inside& inside, const SquadMember& member) {
    const auto now = inside.store.load_block(member.id);
    const bool same_block = now && member.kept ? *now == *member.kept : !now && !member.kept;
    return !same_block || changes_in_force(inside.store.list_block_changes(), member.id) != member.in_force;
}

// Kept at once; a set logged or a change by hand while it was planned leaves the block as it is, in these words.
std::string keep(Workplace::Inside& inside, const SquadMember& member, const Block& block) {
    const std::lock_guard writing(inside.writing);
    if (!check_not_begun(inside, block))
        return begun_words;
    if (changed_meanwhile(inside, member))
        return changed_words;
    if (member.in_force.empty())
        save_planned_anew(inside, block);
    else
        inside.store.save_block(block);
    return "";
}

SquadRow planned_row(Workplace::Inside& inside, const FacilityView& view, const RosterModel& model,
                     const SquadAsked& asked, const SquadMember& member,
                     const std::function<bool(double)>& going) {
    SquadRow row{member.athlete.id, member.athlete.name};
    const auto ended = [&](SquadOutcome outcome, std::string words) {
        row.outcome = outcome;
        row.words = std::move(words);
        return row;
    };
    if (!going(0))
        return ended(SquadOutcome::stopped, "");
    if (member.kept)
        row.block = member.id.text;
    if (inside.store.any_set_of(member.id))
        return ended(SquadOutcome::left, begun_words);
    const auto block = planned_for(inside, view, model, asked, member, going);
    if (!going(0)) // what the planner had by then is not its best
        return ended(SquadOutcome::stopped, "");
    if (!block)
        return ended(SquadOutcome::refused, block.refusal().sentence);
    const auto answer = priced_answer(inside, view, *block);
    if (const std::string left = keep(inside, member, *block); !left.empty())
        return ended(SquadOutcome::left, left);
    row.block = block->id.text;
    if (answer.reach)
        row.points = answer.reach->points;
    return ended(SquadOutcome::planned, member.in_force.empty() ? "" : "Planned around your changes of it.");
}

SquadRow row_for(Workplace::Inside& inside, const FacilityView& view, const RosterModel& model,
                 const SquadAsked& asked, const AthleteId& id, const std::function<bool(double)>& going) {
    const Athlete& athlete = *view.athlete(id.text);
    try {
        SquadMember member{athlete, {id.text + "-" + asked.block.start.text()}, nullptr, {}};
        for (const auto& block : view.records.blocks)
            if (block.id == member.id)
                member.kept = &block;
        if (member.kept)
            member.in_force = changes_in_force(view.block_changes, member.id);
        return planned_row(inside, view, model, asked, member, going);
    } catch (
        const std::exception& failure) { // a full disk, or a fault of ours: this thrower's row, nobody else's
        return {id, athlete.name, SquadOutcome::refused, "", {}, failed(failure)};
    }
}

} // namespace

bool SquadJob::begin(Workplace::Inside& inside, SquadAsked asked) {
    const std::lock_guard one_at_a_time(beginning_);
    if (job_.look().state == FitJob::State::running)
        return false;
    const auto view = inside.view();
    {
        const std::lock_guard lock(mutex_);
        rows_.clear();
        for (const auto& id : asked.athletes)
            rows_.push_back({id, view->athlete(id.text)->name});
        asked_ = std::move(asked);
    }
    return job_.begin([this, &inside](const auto& going) { return plan_all(inside, going); });
}

std::optional<Refusal> SquadJob::plan_all(Workplace::Inside& inside,
                                          const std::function<bool(double)>& going) {
    const SquadAsked asked = *asked_; // only begin() writes it, and not while this runs
    try {
        const auto view = inside.view();
        const auto model = inside.roster_model();
        std::atomic<std::size_t> ended = 0;
        const double all = static_cast<double>(asked.athletes.size());
        const auto share = [&](double) { return going(static_cast<double>(ended) / all); };
        run_on_threads(asked.athletes.size(), [&](std::size_t place) {
            set_row(place, row_for(inside, *view, *model, asked, asked.athletes[place], share));
            ++ended;
            share(0);
        });
    } catch (
        const std::exception& failure) { // before anybody's turn: nobody is planned, and the program goes on
        const std::lock_guard lock(mutex_);
        for (auto& row : rows_)
            row = {row.athlete, row.name, SquadOutcome::refused, "", {}, failed(failure)};
    }
    const std::lock_guard lock(mutex_);
    const bool stopped = std::any_of(rows_.begin(), rows_.end(),
                                     [](const auto& row) { return row.outcome == SquadOutcome::stopped; });
    if (stopped)
        return Refusal{RefusalCode::stopped, "The squad was stopped.", "", "", ""};
    return std::nullopt;
}

void SquadJob::set_row(std::size_t place, SquadRow row) {
    const std::lock_guard lock(mutex_);
    rows_[place] = std::move(row);
}

SquadJob::Seen SquadJob::with_rows(FitJob::Seen job) {
    const std::lock_guard lock(mutex_);
    return {job, asked_, rows_};
}

SquadJob::Seen SquadJob::look() {
    return with_rows(job_.look());
}

SquadJob::Seen SquadJob::wait() {
    return with_rows(job_.wait());
}

} // namespace amentum
