-- Why: the numbers a night's fit found, so that the next one starts there and a page answers at once. Made from the records
-- and replaced by the next fit; without it they are only found again. content is JSON.

CREATE TABLE roster_fit (
  facility_id TEXT NOT NULL PRIMARY KEY, version TEXT NOT NULL, content TEXT NOT NULL
) STRICT;
