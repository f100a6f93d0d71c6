// What has become of a block: which sets were done of which line, which sessions were held, cut short or missed?
//
// A set belongs to the line of its exercise that is nearest in days (the earlier of two); done between two lines' days when
// the nearer one, already past, has all of its sets, to the one ahead within a week: it was done early. A set that names no
// block belongs only to a line of its own day. A session is
//   held        every set written was logged
//   cut_short   some were
//   missed      its day is past and none was
//   ahead       its day is today or later, and sets of it are still to be done
// What it cannot tell: whether a session was held and nobody wrote it down; a session without a logged set counts as
// missed.
//
// Example: 12 of 16 sets logged on Monday, none on Wednesday, asked on Thursday -> cut_short, missed, ahead.
#pragma once

#include "values/block.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace amentum {

enum class SessionState { held, cut_short, missed, ahead };

struct SessionSoFar {
    int week;
    int session;
    Date date;
    std::vector<const BlockLine*> lines; // in their order
    SessionState state;
    int sets_written;
    int sets_logged;
    std::optional<Date> last_day; // of a set of it
};

struct BlockSoFar {
    std::vector<SessionSoFar> sessions;                           // by day
    std::map<const BlockLine*, std::vector<const SetDone*>> done; // by date, then set number
};

// Beside the sets the line each belongs to; null: it is no set of this block, or another athlete's.
std::vector<const BlockLine*> lines_of_sets(const Block& block, std::span<const SetDone> sets);

// Sets of other athletes and blocks are passed over.
BlockSoFar block_so_far(const Block& block, std::span<const SetDone> sets, Date today);

} // namespace amentum
