CREATE TABLE athlete (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, name TEXT NOT NULL, birth_date TEXT NOT NULL, sex TEXT NOT NULL,
  throwing_hand TEXT NOT NULL, sport TEXT NOT NULL, role TEXT NOT NULL, level TEXT NOT NULL, stature_m REAL,
  sitting_height_m REAL, training_years REAL, restrictions TEXT NOT NULL, kit_id TEXT NOT NULL, guardian TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id),
  FOREIGN KEY (facility_id, kit_id) REFERENCES kit (facility_id, kit_id)
) STRICT;
CREATE TABLE block (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, athlete_id TEXT NOT NULL, kit_id TEXT NOT NULL, start TEXT NOT NULL,
  weeks INTEGER NOT NULL, sessions_per_week INTEGER NOT NULL, minutes REAL NOT NULL, notes TEXT NOT NULL,
  model TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE block_line (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, week INTEGER NOT NULL, session INTEGER NOT NULL,
  place INTEGER NOT NULL, date TEXT NOT NULL, exercise TEXT NOT NULL, part TEXT NOT NULL, sets INTEGER NOT NULL,
  reps INTEGER NOT NULL, intensity REAL, reps_in_reserve REAL, load_kg REAL, load_words TEXT NOT NULL,
  rest_minutes REAL NOT NULL, purpose TEXT NOT NULL, reason TEXT NOT NULL, overridden TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id, week, session, place),
  FOREIGN KEY (facility_id, block_id) REFERENCES block (facility_id, block_id) ON DELETE CASCADE
) STRICT;
CREATE TABLE calendar_entry (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, kind TEXT NOT NULL, last_date TEXT NOT NULL,
  note TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, date, kind),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE caution_override (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, exercise TEXT NOT NULL, caution TEXT NOT NULL, date TEXT NOT NULL,
  coach TEXT NOT NULL, reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, exercise, caution, date, coach, reason),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE facility (
  facility_id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL,
  mass_unit TEXT NOT NULL, speed_unit TEXT NOT NULL, length_unit TEXT NOT NULL
) STRICT;
CREATE TABLE force_trace (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, effort TEXT NOT NULL,
  legs TEXT NOT NULL, trial INTEGER NOT NULL, file_name TEXT NOT NULL, file_bytes INTEGER NOT NULL,
  file_digest TEXT NOT NULL, rate_hz REAL NOT NULL, body_mass_kg REAL, box_height_m REAL, device TEXT NOT NULL,
  reading_notes TEXT NOT NULL, note TEXT NOT NULL,
  PRIMARY KEY (facility_id, trace_id),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE force_trace_move (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, place INTEGER NOT NULL, event TEXT NOT NULL, time_s REAL,
  reason TEXT NOT NULL, moved_on TEXT NOT NULL,
  PRIMARY KEY (facility_id, trace_id, place),
  FOREIGN KEY (facility_id, trace_id) REFERENCES force_trace (facility_id, trace_id)
) STRICT;
CREATE INDEX force_trace_of_athlete ON force_trace (facility_id, athlete_id, date);
CREATE TABLE force_trace_plate (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, place INTEGER NOT NULL, name TEXT NOT NULL, side TEXT NOT NULL,
  vertical BLOB NOT NULL, lateral BLOB NOT NULL,
  PRIMARY KEY (facility_id, trace_id, place),
  FOREIGN KEY (facility_id, trace_id) REFERENCES force_trace (facility_id, trace_id)
) STRICT;
CREATE TABLE kit (
  facility_id TEXT NOT NULL, kit_id TEXT NOT NULL, name TEXT NOT NULL, unit TEXT NOT NULL,
  PRIMARY KEY (facility_id, kit_id)
) STRICT;
CREATE TABLE kit_item (
  facility_id TEXT NOT NULL, kit_id TEXT NOT NULL, label TEXT NOT NULL, place INTEGER NOT NULL, kind TEXT NOT NULL,
  count INTEGER NOT NULL, mass_kg REAL, height_m REAL, ratio REAL, step_kg REAL, most_kg REAL,
  PRIMARY KEY (facility_id, kit_id, label),
  FOREIGN KEY (facility_id, kit_id) REFERENCES kit (facility_id, kit_id)
) STRICT;
CREATE TABLE migration (name TEXT NOT NULL PRIMARY KEY) STRICT;
CREATE TABLE reading (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, test TEXT NOT NULL, side TEXT NOT NULL,
  trial INTEGER NOT NULL, load_kg REAL, reps INTEGER, reps_in_reserve REAL, body_mass_kg REAL, speed_ms REAL,
  radar_angle_deg REAL, distance_m REAL, release_height_m REAL, release_angle_deg REAL, flight_time_s REAL,
  height_m REAL, angle_deg REAL, force_n REAL, device TEXT NOT NULL, rater TEXT NOT NULL, place TEXT NOT NULL,
  note TEXT NOT NULL, contact_time_s REAL, power_w REAL,
  PRIMARY KEY (facility_id, athlete_id, date, test, side, trial),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE set_done (
  facility_id TEXT NOT NULL, set_key TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, exercise TEXT NOT NULL,
  set_number INTEGER NOT NULL, load_kg REAL, reps INTEGER, reps_in_reserve REAL, speed_ms REAL, block_id TEXT,
  note TEXT NOT NULL,
  PRIMARY KEY (facility_id, set_key),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE INDEX set_done_of_athlete ON set_done (facility_id, athlete_id, date);
CREATE TABLE throw_entry (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, setting TEXT NOT NULL, count INTEGER NOT NULL,
  effort REAL, speed_ms REAL, distance_m REAL, ball_mass_kg REAL, soreness_before REAL, soreness_after REAL,
  soreness_next_day REAL, note TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, date, setting),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
