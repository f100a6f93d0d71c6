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
CREATE TABLE block_before (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, number INTEGER NOT NULL, athlete_id TEXT NOT NULL,
  kit_id TEXT NOT NULL, start TEXT NOT NULL, weeks INTEGER NOT NULL, sessions_per_week INTEGER NOT NULL,
  minutes REAL NOT NULL, notes TEXT NOT NULL, model TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id, number),
  FOREIGN KEY (facility_id, block_id, number) REFERENCES block_change (facility_id, block_id, number)
) STRICT;
CREATE TABLE block_change (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, number INTEGER NOT NULL, step TEXT NOT NULL, exercise TEXT NOT NULL,
  swapped_with TEXT NOT NULL, session INTEGER, stood_in TEXT NOT NULL, sets INTEGER, date TEXT NOT NULL, undone_on TEXT,
  PRIMARY KEY (facility_id, block_id, number)
) STRICT;
CREATE TABLE block_line (
  facility_id TEXT NOT NULL, block_id TEXT NOT NULL, week INTEGER NOT NULL, session INTEGER NOT NULL,
  place INTEGER NOT NULL, date TEXT NOT NULL, exercise TEXT NOT NULL, part TEXT NOT NULL, sets INTEGER NOT NULL,
  reps INTEGER NOT NULL, intensity REAL, reps_in_reserve REAL, load_kg REAL, load_words TEXT NOT NULL,
  rest_minutes REAL NOT NULL, purpose TEXT NOT NULL, reason TEXT NOT NULL, overridden TEXT NOT NULL,
  PRIMARY KEY (facility_id, block_id, week, session, place),
  FOREIGN KEY (facility_id, block_id) REFERENCES block (facility_id, block_id) ON DELETE CASCADE
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
, time_zone TEXT NOT NULL DEFAULT '') STRICT;
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
CREATE TABLE pain_clearance (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, date TEXT NOT NULL,
  cleared_by TEXT NOT NULL, recorded_by TEXT NOT NULL, recorded TEXT NOT NULL, words TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id, number) REFERENCES pain_entry (facility_id, athlete_id, number)
) STRICT;
CREATE TRIGGER pain_clearance_as_written BEFORE UPDATE ON pain_clearance
  BEGIN SELECT RAISE(ABORT, 'pain_clearance is only added to'); END;
CREATE TRIGGER pain_clearance_once BEFORE INSERT ON pain_clearance
  WHEN EXISTS (SELECT 1 FROM pain_clearance WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER pain_clearance_stays BEFORE DELETE ON pain_clearance
  BEGIN SELECT RAISE(ABORT, 'pain_clearance is only added to'); END;
CREATE TABLE pain_entry (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, date TEXT NOT NULL, region TEXT NOT NULL,
  sign TEXT NOT NULL, words TEXT NOT NULL, noted_by TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TRIGGER pain_entry_as_written BEFORE UPDATE ON pain_entry
  BEGIN SELECT RAISE(ABORT, 'pain_entry is only added to'); END;
CREATE TRIGGER pain_entry_once BEFORE INSERT ON pain_entry
  WHEN EXISTS (SELECT 1 FROM pain_entry WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER pain_entry_stays BEFORE DELETE ON pain_entry
  BEGIN SELECT RAISE(ABORT, 'pain_entry is only added to'); END;
CREATE TABLE pitch_table (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, organisation TEXT NOT NULL, sport TEXT NOT NULL,
  author TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number)
) STRICT;
CREATE TRIGGER pitch_table_as_written BEFORE UPDATE ON pitch_table
  BEGIN SELECT RAISE(ABORT, 'pitch_table is only added to'); END;
CREATE TRIGGER pitch_table_once BEFORE INSERT ON pitch_table
  WHEN EXISTS (SELECT 1 FROM pitch_table WHERE facility_id = NEW.facility_id AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TABLE pitch_table_rule (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, age_low INTEGER NOT NULL, age_high INTEGER NOT NULL,
  year INTEGER NOT NULL, daily_max INTEGER NOT NULL, rest_0_to INTEGER, rest_1_to INTEGER, rest_2_to INTEGER,
  rest_3_to INTEGER, rest_4_to INTEGER, rest_5_to INTEGER, game_max INTEGER, third_day_max INTEGER,
  most_days_running INTEGER, yearly_innings INTEGER, note TEXT NOT NULL, sources TEXT NOT NULL, age_month INTEGER,
  age_day INTEGER, second_game TEXT NOT NULL, last_batter TEXT NOT NULL, no_catching_from INTEGER,
  no_pitching_caught INTEGER, months_off INTEGER, months_off_running INTEGER, months_off_from TEXT NOT NULL,
  PRIMARY KEY (facility_id, number, age_low),
  FOREIGN KEY (facility_id, number) REFERENCES pitch_table (facility_id, number)
) STRICT;
CREATE TRIGGER pitch_table_rule_as_written BEFORE UPDATE ON pitch_table_rule
  BEGIN SELECT RAISE(ABORT, 'pitch_table_rule is only added to'); END;
CREATE TRIGGER pitch_table_rule_once BEFORE INSERT ON pitch_table_rule
  WHEN EXISTS (SELECT 1 FROM pitch_table_rule WHERE facility_id = NEW.facility_id AND number = NEW.number
       AND age_low = NEW.age_low)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER pitch_table_rule_stays BEFORE DELETE ON pitch_table_rule
  BEGIN SELECT RAISE(ABORT, 'pitch_table_rule is only added to'); END;
CREATE TRIGGER pitch_table_stays BEFORE DELETE ON pitch_table
  BEGIN SELECT RAISE(ABORT, 'pitch_table is only added to'); END;
CREATE TABLE prior_edit (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, kind TEXT NOT NULL, quality TEXT NOT NULL, mean REAL, sd REAL,
  author TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number),
  CHECK ((mean IS NULL) = (sd IS NULL))
) STRICT;
CREATE TABLE reading (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, test TEXT NOT NULL, side TEXT NOT NULL,
  trial INTEGER NOT NULL, load_kg REAL, reps INTEGER, reps_in_reserve REAL, body_mass_kg REAL, speed_ms REAL,
  radar_angle_deg REAL, distance_m REAL, release_height_m REAL, release_angle_deg REAL, flight_time_s REAL,
  height_m REAL, angle_deg REAL, force_n REAL, device TEXT NOT NULL, rater TEXT NOT NULL, place TEXT NOT NULL,
  note TEXT NOT NULL, contact_time_s REAL, power_w REAL,
  PRIMARY KEY (facility_id, athlete_id, date, test, side, trial),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE roster_fit (
  facility_id TEXT NOT NULL PRIMARY KEY, version TEXT NOT NULL, content TEXT NOT NULL
) STRICT;
CREATE TABLE set_done (
  facility_id TEXT NOT NULL, set_key TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, exercise TEXT NOT NULL,
  set_number INTEGER NOT NULL, load_kg REAL, reps INTEGER, reps_in_reserve REAL, speed_ms REAL, block_id TEXT,
  note TEXT NOT NULL,
  PRIMARY KEY (facility_id, set_key),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE INDEX set_done_of_athlete ON set_done (facility_id, athlete_id, date);
CREATE TABLE stop_answered (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, code TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  coach TEXT NOT NULL, recorded TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, code, date),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TRIGGER stop_answered_as_written BEFORE UPDATE ON stop_answered
  BEGIN SELECT RAISE(ABORT, 'stop_answered is only added to'); END;
CREATE TRIGGER stop_answered_once BEFORE INSERT ON stop_answered
  WHEN EXISTS (SELECT 1 FROM stop_answered WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND code = NEW.code AND date = NEW.date)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER stop_answered_stays BEFORE DELETE ON stop_answered
  BEGIN SELECT RAISE(ABORT, 'stop_answered is only added to'); END;
CREATE TABLE team_place (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, team TEXT NOT NULL, date TEXT NOT NULL,
  organisation TEXT NOT NULL, last_date TEXT,
  PRIMARY KEY (facility_id, athlete_id, team, date),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TRIGGER team_place_as_written BEFORE UPDATE ON team_place
  WHEN OLD.last_date IS NOT NULL OR NEW.last_date IS NULL OR OLD.facility_id <> NEW.facility_id OR
       OLD.athlete_id <> NEW.athlete_id OR OLD.team <> NEW.team OR OLD.date <> NEW.date OR
       OLD.organisation <> NEW.organisation
  BEGIN SELECT RAISE(ABORT, 'of team_place only the last day can be added'); END;
CREATE TRIGGER team_place_once BEFORE INSERT ON team_place
  WHEN EXISTS (SELECT 1 FROM team_place WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND team = NEW.team AND date = NEW.date)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER team_place_stays BEFORE DELETE ON team_place
  BEGIN SELECT RAISE(ABORT, 'team_place is only added to'); END;
CREATE TABLE throw_correction (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, recorded TEXT NOT NULL, recorded_by TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number)
) STRICT;
CREATE TRIGGER throw_correction_as_written BEFORE UPDATE ON throw_correction
  BEGIN SELECT RAISE(ABORT, 'throw_correction is only added to'); END;
CREATE TRIGGER throw_correction_once BEFORE INSERT ON throw_correction
  WHEN EXISTS (SELECT 1 FROM throw_correction WHERE facility_id = NEW.facility_id AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER throw_correction_stays BEFORE DELETE ON throw_correction
  BEGIN SELECT RAISE(ABORT, 'throw_correction is only added to'); END;
CREATE TABLE "throw_entry" (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, setting TEXT NOT NULL,
  occasion INTEGER NOT NULL, count INTEGER NOT NULL, effort REAL, speed_ms REAL, distance_m REAL, ball_mass_kg REAL,
  soreness_before REAL, soreness_after REAL, soreness_next_day REAL, note TEXT NOT NULL, team TEXT NOT NULL,
  game TEXT NOT NULL, outs INTEGER, before_last_batter INTEGER, outs_caught INTEGER, accuracy TEXT NOT NULL,
  device TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, date, setting, occasion),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TABLE throw_entry_corrected (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, stood TEXT NOT NULL CHECK (stood IN ('before', 'after')),
  athlete_id TEXT NOT NULL, date TEXT NOT NULL, setting TEXT NOT NULL, occasion INTEGER NOT NULL, count INTEGER NOT NULL,
  effort REAL, speed_ms REAL, distance_m REAL, ball_mass_kg REAL, soreness_before REAL, soreness_after REAL,
  soreness_next_day REAL, note TEXT NOT NULL, team TEXT NOT NULL, game TEXT NOT NULL, outs INTEGER,
  before_last_batter INTEGER, outs_caught INTEGER, accuracy TEXT NOT NULL, device TEXT NOT NULL,
  PRIMARY KEY (facility_id, number, stood),
  FOREIGN KEY (facility_id, number) REFERENCES throw_correction (facility_id, number),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TRIGGER throw_entry_corrected_as_written BEFORE UPDATE ON throw_entry_corrected
  BEGIN SELECT RAISE(ABORT, 'throw_entry_corrected is only added to'); END;
CREATE TRIGGER throw_entry_corrected_once BEFORE INSERT ON throw_entry_corrected
  WHEN EXISTS (SELECT 1 FROM throw_entry_corrected WHERE facility_id = NEW.facility_id AND number = NEW.number
       AND stood = NEW.stood)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER throw_entry_corrected_stays BEFORE DELETE ON throw_entry_corrected
  BEGIN SELECT RAISE(ABORT, 'throw_entry_corrected is only added to'); END;
CREATE TABLE throw_step (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, step INTEGER NOT NULL,
  throws INTEGER NOT NULL, distance_m REAL, effort REAL, words TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number, step),
  FOREIGN KEY (facility_id, athlete_id, number) REFERENCES throw_steps (facility_id, athlete_id, number)
) STRICT;
CREATE TRIGGER throw_step_as_written BEFORE UPDATE ON throw_step
  BEGIN SELECT RAISE(ABORT, 'throw_step is only added to'); END;
CREATE TRIGGER throw_step_once BEFORE INSERT ON throw_step
  WHEN EXISTS (SELECT 1 FROM throw_step WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number AND step = NEW.step)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER throw_step_stays BEFORE DELETE ON throw_step
  BEGIN SELECT RAISE(ABORT, 'throw_step is only added to'); END;
CREATE TABLE throw_steps (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, origin TEXT NOT NULL,
  author TEXT NOT NULL, start TEXT NOT NULL, days_between INTEGER NOT NULL, note TEXT NOT NULL,
  recorded_by TEXT NOT NULL, recorded TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE TRIGGER throw_steps_as_written BEFORE UPDATE ON throw_steps
  BEGIN SELECT RAISE(ABORT, 'throw_steps is only added to'); END;
CREATE TRIGGER throw_steps_once BEFORE INSERT ON throw_steps
  WHEN EXISTS (SELECT 1 FROM throw_steps WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;
CREATE TRIGGER throw_steps_stays BEFORE DELETE ON throw_steps
  BEGIN SELECT RAISE(ABORT, 'throw_steps is only added to'); END;
