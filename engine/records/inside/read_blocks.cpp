// Blocks and their lines: what was written down to be done.
#include "records/inside/read_line.h"

#include <algorithm>

namespace amentum {
namespace {

const Block* held_block(const LinesBefore& before, const std::string& id) {
    const auto& blocks = before.context.held.blocks;
    const auto found =
        std::find_if(blocks.begin(), blocks.end(), [&](const auto& each) { return each.id.text == id; });
    return found == blocks.end() ? nullptr : &*found;
}

std::string read_block_key(LineReader& reader, const LinesBefore& before) {
    const std::string given = reader.needed("block");
    std::vector<std::string> known;
    for (const auto& each : before.context.held.blocks)
        known.push_back(each.id.text);
    if (!given.empty() && !held_block(before, given))
        reader.refuse(refuse_unknown("block", given, known));
    return given;
}

void check_place(LineReader& reader, const Block& block, const BlockLine& line) {
    if (line.week > block.weeks)
        reader.refuse(refuse_range("week", line.week, 1, block.weeks, "", "The block ends there."));
    const Date last = block.start + (7 * block.weeks - 1);
    if (line.date < block.start || line.date > last)
        reader.refuse({RefusalCode::impossible_date,
                       "The day " + line.date.text() + " is not within the block.", "date", line.date.text(),
                       block.start.text() + " to " + last.text()});
}

} // namespace

RecordOnLine read_block(LineReader& reader, LinesBefore& before) {
    const std::string id = reader.needed("block");
    reader.one_line("block");
    if (reader.tidy("kit").empty())
        reader.needed("kit");
    return Block{{id},
                 read_athlete_name(reader, before),
                 read_kit_name(reader, before),
                 reader.needed_date("start"),
                 reader.needed_whole("weeks", limits::weeks),
                 reader.needed_whole("sessions_per_week", limits::sessions_per_week),
                 reader.needed_number("minutes", limits::session_minutes),
                 {},
                 reader.sentences("notes"),
                 reader.text("model")};
}

RecordOnLine read_block_line(LineReader& reader, LinesBefore& before) {
    const std::string id = read_block_key(reader, before);
    BlockLine line{reader.needed_whole("week", {1, limits::weeks.high}),
                   reader.needed_whole("session", {1, 7}),
                   reader.needed_date("date"),
                   reader.needed_whole("order", limits::line_order),
                   read_exercise(reader, before),
                   reader.needed_choice<Part>("part"),
                   reader.needed_whole("sets", limits::line_sets),
                   reader.needed_whole("reps", limits::reps),
                   reader.number("intensity", limits::intensity),
                   reader.number("reps_in_reserve", limits::reps_in_reserve),
                   reader.mass("load", limits::load_kg),
                   reader.text("load_words"),
                   reader.needed_number("rest_minutes", limits::rest_minutes),
                   reader.tidy("purpose"),
                   reader.text("reason"),
                   read_cautions(reader, before, "overridden")};
    if (const Block* block = held_block(before, id); block && !reader.refusal())
        check_place(reader, *block, line);
    return LineOfBlock{{id}, std::move(line)};
}

} // namespace amentum
