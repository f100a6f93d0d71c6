-- Why: what a force plate wrote is kept whole, so that a number can be looked at again, its events moved, and the
-- automatic times still be shown. Two quantities a plate gives join the readings.
-- vertical and lateral are samples of 32-bit IEEE 754 floats, little-endian, newtons, upward positive.

ALTER TABLE reading ADD COLUMN contact_time_s REAL;
ALTER TABLE reading ADD COLUMN power_w REAL;

CREATE TABLE force_trace (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, athlete_id TEXT NOT NULL, date TEXT NOT NULL, effort TEXT NOT NULL,
  legs TEXT NOT NULL, trial INTEGER NOT NULL, file_name TEXT NOT NULL, file_bytes INTEGER NOT NULL,
  file_digest TEXT NOT NULL, rate_hz REAL NOT NULL, body_mass_kg REAL, box_height_m REAL, device TEXT NOT NULL,
  reading_notes TEXT NOT NULL, note TEXT NOT NULL,
  PRIMARY KEY (facility_id, trace_id),
  FOREIGN KEY (facility_id, athlete_id) REFERENCES athlete (facility_id, athlete_id)
) STRICT;
CREATE INDEX force_trace_of_athlete ON force_trace (facility_id, athlete_id, date);

CREATE TABLE force_trace_plate (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, place INTEGER NOT NULL, name TEXT NOT NULL, side TEXT NOT NULL,
  vertical BLOB NOT NULL, lateral BLOB NOT NULL,
  PRIMARY KEY (facility_id, trace_id, place),
  FOREIGN KEY (facility_id, trace_id) REFERENCES force_trace (facility_id, trace_id)
) STRICT;

CREATE TABLE force_trace_move (
  facility_id TEXT NOT NULL, trace_id TEXT NOT NULL, place INTEGER NOT NULL, event TEXT NOT NULL, time_s REAL,
  reason TEXT NOT NULL, moved_on TEXT NOT NULL,
  PRIMARY KEY (facility_id, trace_id, place),
  FOREIGN KEY (facility_id, trace_id) REFERENCES force_trace (facility_id, trace_id)
) STRICT;
