-- Why: what this facility believes instead of a published prior is kept with who said so, when and why, so that an old
-- answer can be understood. Only ever added to: a later edit is a later row, and going back is a row without mean and sd.

CREATE TABLE prior_edit (
  facility_id TEXT NOT NULL, number INTEGER NOT NULL, kind TEXT NOT NULL, quality TEXT NOT NULL, mean REAL, sd REAL,
  author TEXT NOT NULL, date TEXT NOT NULL, reason TEXT NOT NULL,
  PRIMARY KEY (facility_id, number),
  CHECK ((mean IS NULL) = (sd IS NULL))
) STRICT;
