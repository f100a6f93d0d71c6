// Blocks to their rows and back, and the changes made to them by hand: the block before a change has rows of its own, of the
// same columns with the change's number in the key.
#include "store/sqlite/new_rows.h"
#include "store/sqlite/rows.h"
#include "store/sqlite/statement.h"

#include <cstdlib>

namespace amentum {
namespace {

constexpr const char* head_columns =
    "athlete_id, kit_id, start, weeks, sessions_per_week, minutes, notes, model";
constexpr const char* line_columns = "week, session, place, date, exercise, part, sets, reps, intensity, "
                                     "reps_in_reserve, load_kg, load_words, "
                                     "rest_minutes, purpose, reason, overridden";

struct BlockTables {
    std::string head, line;
    std::string key; // "facility_id, block_id", and what else stands before the columns above
};
const BlockTables kept_tables{"block", "block_line", "facility_id, block_id"};
const BlockTables before_tables{"block_before", "block_line_before", "facility_id, block_id, number"};

template <class... Key>
void save_block_rows(SQLite::Database& database, const BlockTables& tables, const Block& b,
                     const Key&... key) {
    NewRows head(database, tables.head, tables.key + ", " + head_columns);
    NewRows row(database, tables.line, tables.key + ", " + line_columns);
    head.save(key..., b.athlete.text, b.kit.text, b.start, b.weeks, b.sessions_per_week, b.minutes,
              joined_lines(b.notes), b.model);
    for (const auto& l : b.lines) {
        const auto load_kg = l.load ? std::optional(l.load->kilograms()) : std::nullopt;
        row.save(key..., l.week, l.session, l.order, l.date, l.exercise, word(l.part), l.sets, l.reps,
                 l.intensity, l.reps_in_reserve, load_kg, l.load_words, l.rest_minutes, l.purpose, l.reason,
                 joined_lines(l.overridden));
    }
}

BlockLine line_in(Statement& query) {
    query.begin_row();
    const int week = query.whole(), session = query.whole(), place = query.whole();
    const Date date = query.date();
    std::string exercise = query.text();
    const auto part = query.choice<Part>();
    const int sets = query.whole(), reps = query.whole();
    BlockLine l{week, session, date, place, std::move(exercise), part, sets, reps, {}, {}, {}, {},
                0,    {},      {},   {}};
    l.intensity = query.maybe_number();
    l.reps_in_reserve = query.maybe_number();
    if (const auto load_kg = query.maybe_number())
        l.load = Mass::kilograms(*load_kg);
    l.load_words = query.text();
    l.rest_minutes = query.number();
    l.purpose = query.text();
    l.reason = query.text();
    l.overridden = split_lines(query.text());
    return l;
}

// A block without its lines, from the columns after its id.
Block head_in(Statement& query, BlockId id) {
    AthleteId athlete{query.text()};
    KitId kit{query.text()};
    const Date start = query.date();
    const int weeks = query.whole(), sessions = query.whole();
    const double minutes = query.number();
    auto notes = split_lines(query.text());
    return {std::move(id), athlete, kit, start, weeks, sessions, minutes, {}, std::move(notes), query.text()};
}

std::vector<BlockLine> lines_in(Statement& query) {
    std::vector<BlockLine> lines;
    while (query.step())
        lines.push_back(line_in(query));
    return lines;
}

template <class... Key>
std::optional<Block> one_block(SQLite::Database& database, const BlockTables& tables,
                               const std::string& where, const BlockId& id, const Key&... key) {
    Statement query(database, std::string("SELECT ") + head_columns + " FROM " + tables.head + where);
    if (!query.bind(key...).step())
        return std::nullopt;
    query.begin_row();
    Block block = head_in(query, id);
    Statement lines(database, std::string("SELECT ") + line_columns + " FROM " + tables.line + where +
                                  " ORDER BY week, session, place");
    block.lines = lines_in(lines.bind(key...));
    return block;
}

std::vector<std::string> texts_of(const std::vector<int>& numbers) {
    std::vector<std::string> texts;
    for (const int each : numbers)
        texts.push_back(std::to_string(each));
    return texts;
}

std::vector<int> numbers_of(const std::vector<std::string>& texts) {
    std::vector<int> numbers;
    for (const auto& each : texts)
        numbers.push_back(std::atoi(each.c_str()));
    return numbers;
}

} // namespace

void save_blocks(SQLite::Database& database, const std::vector<Block>& blocks) {
    for (const auto& block : blocks)
        save_block_rows(database, kept_tables, block, this_facility, block.id.text);
}

void replace_block(SQLite::Database& database, const Block& block) {
    for (const char* table : {"block_line", "block"})
        Statement(database, std::string("DELETE FROM ") + table + " WHERE facility_id = $1 AND block_id = $2")
            .bind(this_facility, block.id.text)
            .run();
    save_blocks(database, {block});
}

std::vector<Block> load_blocks(SQLite::Database& database) {
    Statement query(database, std::string("SELECT block_id, ") + head_columns +
                                  " FROM block WHERE facility_id = $1 ORDER BY block_id");
    Statement lines(database, std::string("SELECT ") + line_columns +
                                  " FROM block_line WHERE facility_id = $1 AND block_id = $2 "
                                  "ORDER BY week, session, place");
    query.bind(this_facility);
    std::vector<Block> blocks;
    while (query.step()) {
        query.begin_row();
        BlockId id{query.text()};
        blocks.push_back(head_in(query, id));
        blocks.back().lines = lines_in(lines.bind(this_facility, id.text));
    }
    return blocks;
}

void save_block_change(SQLite::Database& database, const BlockChange& c, const Block& before) {
    NewRows row(database, "block_change",
                "facility_id, block_id, number, step, exercise, swapped_with, session, stood_in, sets, date, "
                "undone_on");
    const auto undone = c.undone ? std::optional(c.undone->text()) : std::nullopt;
    row.save(this_facility, c.block.text, c.number, word(c.step), c.exercise, c.with, c.session,
             joined_lines(texts_of(c.stood)), c.sets, c.date, undone);
    save_block_rows(database, before_tables, before, this_facility, c.block.text, c.number);
}

std::vector<BlockChange> load_block_changes(SQLite::Database& database) {
    Statement query(database,
                    "SELECT block_id, number, step, exercise, swapped_with, session, stood_in, sets, "
                    "date, undone_on FROM block_change WHERE facility_id = $1 ORDER BY block_id, number");
    query.bind(this_facility);
    std::vector<BlockChange> changes;
    while (query.step()) {
        query.begin_row();
        BlockId block{query.text()};
        const int number = query.whole();
        const auto step = query.choice<OwnStep>();
        std::string exercise = query.text(), with = query.text();
        const auto session = query.maybe_whole();
        auto stood = numbers_of(split_lines(query.text()));
        const auto sets = query.maybe_whole();
        BlockChange change{block,   number,           step, std::move(exercise), std::move(with),
                           session, std::move(stood), sets, query.date(),        {}};
        if (const auto day = query.maybe_text()) {
            const auto undone = parse_date(*day, "undone_on");
            if (!undone)
                throw StoreFailure("the store holds \"" + *day + "\" where a day should stand");
            change.undone = *undone;
        }
        changes.push_back(std::move(change));
    }
    return changes;
}

std::optional<Block> load_block(SQLite::Database& database, const BlockId& id) {
    return one_block(database, kept_tables, " WHERE facility_id = $1 AND block_id = $2", id, this_facility,
                     id.text);
}

std::optional<Block> load_block_before(SQLite::Database& database, const BlockId& id, int number) {
    return one_block(database, before_tables, " WHERE facility_id = $1 AND block_id = $2 AND number = $3", id,
                     this_facility, id.text, number);
}

bool undo_block_change(SQLite::Database& database, const BlockId& id, int number, const Date& day) {
    return Statement(database, "UPDATE block_change SET undone_on = $4 WHERE facility_id = $1 AND "
                               "block_id = $2 AND number = $3 AND undone_on IS NULL")
               .bind(this_facility, id.text, number, day)
               .run() == 1;
}

} // namespace amentum
