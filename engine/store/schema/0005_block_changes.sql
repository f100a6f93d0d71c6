-- Why: a coach's changes of a block are kept in order, each with the block as it was before it, so that any of them can be
-- taken back exactly. A block is replaced when it is planned again; its changes are not: they refer to it by name only.
-- stood_in: numbers of sessions, one a line.
-- The two tables of the block before have the columns of block and block_line, with the change's number in the key.

CREATE TABLE block_change (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, number INTEGER NOT NULL, step TEXT NOT NULL, exercise TEXT NOT NULL,
  swapped_with TEXT NOT NULL, session INTEGER, stood_in TEXT NOT NULL, sets INTEGER, date TEXT NOT NULL, undone_on TEXT,
  PRIMARY KEY (facility_id, block_id, number)
) STRICT;

CREATE TABLE block_before (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, number INTEGER NOT NULL, athlete_id TEXT NOT NULL,
  kit_id TEXT NOT NULL, start TEXT NOT NULL, weeks INTEGER NOT NULL, sessions_per_week INTEGER NOT NULL,
  minutes REAL NOT NULL, notes TEXT NOT NULL, model TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id, number),
  FOREIGN KEY (facility_id, block_id, number) REFERENCES block_change (facility_id, block_id, number)
) STRICT;

CREATE TABLE block_line_before (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, number INTEGER NOT NULL, week INTEGER NOT NULL,
  session INTEGER NOT NULL, place INTEGER NOT NULL, date TEXT NOT NULL, exercise TEXT NOT NULL, part TEXT NOT NULL,
  sets INTEGER NOT NULL, reps INTEGER NOT NULL, intensity REAL, reps_in_reserve REAL, load_kg REAL,
  load_words TEXT NOT NULL, rest_minutes REAL NOT NULL, purpose TEXT NOT NULL, reason TEXT NOT NULL,
  overridden TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id, number, week, session, place),
  FOREIGN KEY (facility_id, block_id, number) REFERENCES block_before (facility_id, block_id, number)
) STRICT;
