-- Why: an honest account of the arm: several outings of one day, innings and teams beside the throws; the tables of
-- limits a facility plays by; pain, clearances, steps back to throwing and answered stops, which nobody can delete or
-- change. The time zone is the facility's own, so that a day ends where the throws were made.
-- throw_entry gets a new key (occasion), so it is made again with all of its rows.
-- The guards at the end hold for every program that writes this file. A row of a held key is passed over
-- (RAISE(IGNORE)), so that not even INSERT OR REPLACE can change it.

ALTER TABLE facility ADD COLUMN time_zone TEXT NOT NULL DEFAULT '';

CREATE TABLE throw_entry_by_occasion (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, setting TEXT NOT NULL,
  occasion INTEGER NOT NULL, count INTEGER NOT NULL, effort REAL, speed_ms REAL, distance_m REAL, ball_mass_kg REAL,
  soreness_before REAL, soreness_after REAL, soreness_next_day REAL, note TEXT NOT NULL, team TEXT NOT NULL,
  game TEXT NOT NULL, outs INTEGER, before_last_batter INTEGER, outs_caught INTEGER, accuracy TEXT NOT NULL,
  device TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, date, setting, occasion),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
INSERT INTO throw_entry_by_occasion
  SELECT facility_id, athlete_id, date, setting, 1, count, effort, speed_ms, distance_m, ball_mass_kg, soreness_before,
         soreness_after, soreness_next_day, note, '', '', NULL, NULL, NULL, '', ''
  FROM throw_entry;
DROP TABLE throw_entry;
ALTER TABLE throw_entry_by_occasion RENAME TO throw_entry;

CREATE TABLE team_place (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, team TEXT NOT NULL, date TEXT NOT NULL,
  organisation TEXT NOT NULL, last_date TEXT,
  PRIMARY KEY (facility_id, athlete_id, team, date),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;

CREATE TABLE pitch_table (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, organisation TEXT NOT NULL, sport TEXT NOT NULL,
  author TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number)
) STRICT;

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

CREATE TABLE pain_entry (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, date TEXT NOT NULL, region TEXT NOT NULL,
  sign TEXT NOT NULL, words TEXT NOT NULL, noted_by TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;

CREATE TABLE pain_clearance (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, date TEXT NOT NULL,
  cleared_by TEXT NOT NULL, recorded_by TEXT NOT NULL, recorded TEXT NOT NULL, words TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id, number) REFERENCES pain_entry (facility_id, athlete_id, number)
) STRICT;

CREATE TABLE throw_steps (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, origin TEXT NOT NULL,
  author TEXT NOT NULL, start TEXT NOT NULL, days_between INTEGER NOT NULL, note TEXT NOT NULL,
  recorded_by TEXT NOT NULL, recorded TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;

CREATE TABLE throw_step (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, number INTEGER NOT NULL, step INTEGER NOT NULL,
  throws INTEGER NOT NULL, distance_m REAL, effort REAL, words TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, number, step),
  FOREIGN KEY (facility_id, athlete_id, number) REFERENCES throw_steps (facility_id, athlete_id, number)
) STRICT;

CREATE TABLE stop_answered (
  facility_id TEXT NOT NULL, athlete_id TEXT NOT NULL, code TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  coach TEXT NOT NULL, recorded TEXT NOT NULL,
  PRIMARY KEY (facility_id, athlete_id, code, date),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;

CREATE TABLE throw_correction (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, recorded TEXT NOT NULL, recorded_by TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number)
) STRICT;

-- The entry of a correction as it was ('before') and as it is now ('after'; none when it was taken away).
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

CREATE TRIGGER pitch_table_stays BEFORE DELETE ON pitch_table
  BEGIN SELECT RAISE(ABORT, 'pitch_table is only added to'); END;
CREATE TRIGGER pitch_table_as_written BEFORE UPDATE ON pitch_table
  BEGIN SELECT RAISE(ABORT, 'pitch_table is only added to'); END;
CREATE TRIGGER pitch_table_once BEFORE INSERT ON pitch_table
  WHEN EXISTS (SELECT 1 FROM pitch_table WHERE facility_id = NEW.facility_id AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER pitch_table_rule_stays BEFORE DELETE ON pitch_table_rule
  BEGIN SELECT RAISE(ABORT, 'pitch_table_rule is only added to'); END;
CREATE TRIGGER pitch_table_rule_as_written BEFORE UPDATE ON pitch_table_rule
  BEGIN SELECT RAISE(ABORT, 'pitch_table_rule is only added to'); END;
CREATE TRIGGER pitch_table_rule_once BEFORE INSERT ON pitch_table_rule
  WHEN EXISTS (SELECT 1 FROM pitch_table_rule WHERE facility_id = NEW.facility_id AND number = NEW.number
       AND age_low = NEW.age_low)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER pain_entry_stays BEFORE DELETE ON pain_entry
  BEGIN SELECT RAISE(ABORT, 'pain_entry is only added to'); END;
CREATE TRIGGER pain_entry_as_written BEFORE UPDATE ON pain_entry
  BEGIN SELECT RAISE(ABORT, 'pain_entry is only added to'); END;
CREATE TRIGGER pain_entry_once BEFORE INSERT ON pain_entry
  WHEN EXISTS (SELECT 1 FROM pain_entry WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER pain_clearance_stays BEFORE DELETE ON pain_clearance
  BEGIN SELECT RAISE(ABORT, 'pain_clearance is only added to'); END;
CREATE TRIGGER pain_clearance_as_written BEFORE UPDATE ON pain_clearance
  BEGIN SELECT RAISE(ABORT, 'pain_clearance is only added to'); END;
CREATE TRIGGER pain_clearance_once BEFORE INSERT ON pain_clearance
  WHEN EXISTS (SELECT 1 FROM pain_clearance WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER throw_steps_stays BEFORE DELETE ON throw_steps
  BEGIN SELECT RAISE(ABORT, 'throw_steps is only added to'); END;
CREATE TRIGGER throw_steps_as_written BEFORE UPDATE ON throw_steps
  BEGIN SELECT RAISE(ABORT, 'throw_steps is only added to'); END;
CREATE TRIGGER throw_steps_once BEFORE INSERT ON throw_steps
  WHEN EXISTS (SELECT 1 FROM throw_steps WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER throw_step_stays BEFORE DELETE ON throw_step
  BEGIN SELECT RAISE(ABORT, 'throw_step is only added to'); END;
CREATE TRIGGER throw_step_as_written BEFORE UPDATE ON throw_step
  BEGIN SELECT RAISE(ABORT, 'throw_step is only added to'); END;
CREATE TRIGGER throw_step_once BEFORE INSERT ON throw_step
  WHEN EXISTS (SELECT 1 FROM throw_step WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND number = NEW.number AND step = NEW.step)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER stop_answered_stays BEFORE DELETE ON stop_answered
  BEGIN SELECT RAISE(ABORT, 'stop_answered is only added to'); END;
CREATE TRIGGER stop_answered_as_written BEFORE UPDATE ON stop_answered
  BEGIN SELECT RAISE(ABORT, 'stop_answered is only added to'); END;
CREATE TRIGGER stop_answered_once BEFORE INSERT ON stop_answered
  WHEN EXISTS (SELECT 1 FROM stop_answered WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND code = NEW.code AND date = NEW.date)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER throw_correction_stays BEFORE DELETE ON throw_correction
  BEGIN SELECT RAISE(ABORT, 'throw_correction is only added to'); END;
CREATE TRIGGER throw_correction_as_written BEFORE UPDATE ON throw_correction
  BEGIN SELECT RAISE(ABORT, 'throw_correction is only added to'); END;
CREATE TRIGGER throw_correction_once BEFORE INSERT ON throw_correction
  WHEN EXISTS (SELECT 1 FROM throw_correction WHERE facility_id = NEW.facility_id AND number = NEW.number)
  BEGIN SELECT RAISE(IGNORE); END;

CREATE TRIGGER throw_entry_corrected_stays BEFORE DELETE ON throw_entry_corrected
  BEGIN SELECT RAISE(ABORT, 'throw_entry_corrected is only added to'); END;
CREATE TRIGGER throw_entry_corrected_as_written BEFORE UPDATE ON throw_entry_corrected
  BEGIN SELECT RAISE(ABORT, 'throw_entry_corrected is only added to'); END;
CREATE TRIGGER throw_entry_corrected_once BEFORE INSERT ON throw_entry_corrected
  WHEN EXISTS (SELECT 1 FROM throw_entry_corrected WHERE facility_id = NEW.facility_id AND number = NEW.number
       AND stood = NEW.stood)
  BEGIN SELECT RAISE(IGNORE); END;

-- A place in a team can end, once.
CREATE TRIGGER team_place_stays BEFORE DELETE ON team_place
  BEGIN SELECT RAISE(ABORT, 'team_place is only added to'); END;
CREATE TRIGGER team_place_as_written BEFORE UPDATE ON team_place
  WHEN OLD.last_date IS NOT NULL OR NEW.last_date IS NULL OR OLD.facility_id <> NEW.facility_id OR
       OLD.athlete_id <> NEW.athlete_id OR OLD.team <> NEW.team OR OLD.date <> NEW.date OR
       OLD.organisation <> NEW.organisation
  BEGIN SELECT RAISE(ABORT, 'of team_place only the last day can be added'); END;
CREATE TRIGGER team_place_once BEFORE INSERT ON team_place
  WHEN EXISTS (SELECT 1 FROM team_place WHERE facility_id = NEW.facility_id AND athlete_id = NEW.athlete_id
       AND team = NEW.team AND date = NEW.date)
  BEGIN SELECT RAISE(IGNORE); END;
