Story: The roster is fitted and kept; a wrong step is refused; an empty gym is told why there is no fit

Given today is 2026-06-01
When the coach asks fit_roster
  | step | look |
Then the answer
  | state   | is       | none           |
  | fit     | is       | null           |
  | words.0 | contains | No fit is kept |
When the coach asks fit_roster
Then it is refused
  | name     | is       | too_few_data |
When the coach asks demo
  | seed | 1 |
When the coach asks fit_roster
Then the answer
  | state                  | is       | done              |
  | share                  | is       | 1                 |
  | fit.athletes           | is       | 36                |
  | fit.same_records       | is       | true              |
  | fit.checked            | is       | false             |
  | fit.smallest_curvature | between  | 0.01 and 1.01     |
  | fit.gradient           | between  | -0.00001 and 0.00001 |
  | words.1                | contains | quick approximation |
When the coach asks fit_roster
  | step | pause |
Then it is refused
  | field   | is       | step              |
  | given   | is       | pause             |
  | allowed | contains | begin, look, stop |
