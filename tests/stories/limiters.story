Story: A split squat that lags behind comes near the top, and what was never tested is said to be untested

Given today is 2026-06-01
Given the records facility
  | name          | mass_unit | speed_unit |
  | Harbour Loft  | lb        | mph        |
Given the records kit
  | kit  | label        | item         | mass_lb | count |
  | Loft | straight bar | straight_bar | 45      | 1     |
Given the records athletes
  | name        | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in | kit  |
  | Ona Reyes   | 2004-02-01 | male | right         | baseball | pitcher | college | 73         | Loft |
  | Bo Tarn     | 2003-05-11 | male | right         | baseball | pitcher | college | 72         | Loft |
  | Cy Weld     | 2002-07-21 | male | right         | baseball | pitcher | college | 74         | Loft |
  | Dov Lark    | 2003-01-30 | male | right         | baseball | pitcher | college | 73         | Loft |
  | Eli Marsh   | 2004-09-09 | male | right         | baseball | pitcher | college | 72         | Loft |
  | Fin Stroud  | 2003-03-03 | male | right         | baseball | pitcher | college | 74         | Loft |
  | Gus Pell    | 2004-12-12 | male | right         | baseball | pitcher | college | 73         | Loft |
  | Hal Quill   | 2002-10-10 | male | right         | baseball | pitcher | college | 73         | Loft |
Given the records test_results
  | athlete    | date       | test            | side | load_lb | reps | body_mass_lb |
  | Ona Reyes  | 2026-05-04 | split_squat_max | left | 95      | 5    |              |
  | Bo Tarn    | 2026-05-04 | split_squat_max | left | 190     | 5    |              |
  | Cy Weld    | 2026-05-04 | split_squat_max | left | 205     | 5    |              |
  | Dov Lark   | 2026-05-04 | split_squat_max | left | 195     | 5    |              |
  | Eli Marsh  | 2026-05-04 | split_squat_max | left | 185     | 5    |              |
  | Fin Stroud | 2026-05-04 | split_squat_max | left | 210     | 5    |              |
  | Gus Pell   | 2026-05-04 | split_squat_max | left | 200     | 5    |              |
  | Hal Quill  | 2026-05-04 | split_squat_max | left | 190     | 5    |              |
  | Ona Reyes  | 2026-05-04 | body_mass       |      |         |      | 190          |
  | Bo Tarn    | 2026-05-04 | body_mass       |      |         |      | 188          |
  | Cy Weld    | 2026-05-04 | body_mass       |      |         |      | 195          |
  | Dov Lark   | 2026-05-04 | body_mass       |      |         |      | 191          |
  | Eli Marsh  | 2026-05-04 | body_mass       |      |         |      | 187          |
  | Fin Stroud | 2026-05-04 | body_mass       |      |         |      | 196          |
  | Gus Pell   | 2026-05-04 | body_mass       |      |         |      | 192          |
  | Hal Quill  | 2026-05-04 | body_mass       |      |         |      | 189          |
When the coach asks find_limiters
  | athlete | Ona Reyes |
Then the answer
  | limiters.0.quality     | is       | single_leg_strength |
  | limiters.0.tested      | is       | true                |
  | limiters.0.level.value | between  | -9 and -0.5          |
  | limiters.0.gain.unit   | is       | mph                 |
  | limiters.1.tested      | is       | false               |
  | limiters.1.level       | is       | null                |
  | verdict                | is       | cannot_tell         |
  | words.0                | contains | Cannot tell         |
  | test_next_words        | contains | Test this next      |
When the coach asks find_limiters
  | athlete | Ona Reyez |
Then it is refused
  | sentence | contains | Did you mean "Ona Reyes" |
