// What should be done next, when the block and what was really done have come apart?
//
// The next session is the first of the block, from today on, with sets still to do. Its exercises, sets and day stay as
// written; next_line.h changes loads, repetitions and balls by what was logged. Before that, by sessions missed since
// the last one held (block_so_far.h):
//   none, or one              as written: a few days off keep strength        (proposal of this project, no source)
//   two or more, or one and   the week of the last session held once more: a week's full stop costs strength
//   more than 7 days off      [Coleman2024]; how far to go back: proposal
//   14 days off or more       the intensity at which its run of four weeks began (proposal of this project, no source)
//   nothing logged at all     as if nothing had been done
// A session cut short: main lifts whose sets were not finished come first in the next session that has them; nothing is made
// up by doubling (proposal of this project, no source).
// A line that an open pain entry blocks is left out, and `left_out` says so; nothing takes its place, and no sets move elsewhere.
// A note that speaks of pain changes no number: it brings the words to stop and refer (pain_words.h).
// Refuses (too_few_data): a block whose sessions are all past or done.
// What it cannot tell: what was done and not logged; whether the athlete is fit to train.
//
// Example: Monday 185 lb x 5 with 4 left where 2 were written; on Friday the same lift stands at 195 lb, not 185.
#pragma once

#include "planning/block_so_far.h"
#include "planning/next_line.h"

namespace amentum {

struct NextSessionRequest {
    const BlockRequest&
        today; // athlete, kit, catalogue, open pain, maxima and body mass as of today; the rest is not read
    const Block& block;
    std::span<const SetDone> sets; // those of other athletes are passed over
    Date day;
};

enum class SessionRule { as_written, one_missed, week_again, first_week_again };
template <>
inline constexpr std::array<std::pair<SessionRule, std::string_view>, 4> words_of<SessionRule>{
    {{SessionRule::as_written, "as_written"},
     {SessionRule::one_missed, "one_missed"},
     {SessionRule::week_again, "week_again"},
     {SessionRule::first_week_again, "first_week_again"}}};

struct PainNote {
    Date date;
    std::string exercise;
    std::string note;
};

struct NextSession {
    int week;
    int session;
    Date date;
    SessionRule rule;
    WhyLine rule_words;           // one sentence for the whole session
    int level_week;               // whose intensity holds
    int missed;                   // sessions since the last one held
    std::optional<int> days_off;  // from the last logged set to this session; none when nothing is logged
    std::vector<NextLine> lines;  // in the order in which they are done
    std::vector<WhyLine> ordered; // main lifts that come first, and why
    std::vector<WhyLine> left_out = {}; // lines an open pain entry blocks: no part of `lines`
    std::vector<PainNote> pain;         // notes since the session before; never read further

    // The block with this session as it is now: for the guard rails.
    Block adjusted(const Block& block) const;
};

Result<NextSession> plan_next_session(const NextSessionRequest&);

} // namespace amentum
