Story: A split squat that lags behind leads the ranking, and what was never tested is said to be untested

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label | item       | count |
  | Loft | floor | open_floor | 1     |
Given the records athletes
  | name       | birth_date | sex  | throwing_hand | sport    | role    | level   | stature_in |
  | Abe Rusk   | 2004-02-01 | male | right         | baseball | pitcher | college | 74         |
  | Bo Tarn    | 2004-05-11 | male | right         | baseball | pitcher | college | 74         |
  | Cy Weld    | 2003-07-21 | male | right         | baseball | pitcher | college | 75         |
  | Dov Lark   | 2004-01-30 | male | right         | baseball | pitcher | college | 73         |
  | Eli Marsh  | 2003-09-14 | male | right         | baseball | pitcher | college | 74         |
  | Fin Stroud | 2004-03-02 | male | right         | baseball | pitcher | college | 75         |
  | Gus Pell   | 2003-12-19 | male | right         | baseball | pitcher | college | 74         |
  | Hal Quill  | 2004-06-25 | male | right         | baseball | pitcher | college | 73         |

# Before any test the literature alone speaks, so nothing is certain.
When the coach asks find_limiters
  | athlete | Abe Rusk |
Then the answer
  | verdict           | is       | cannot_tell    |
  | limiters.0.tested | is       | false          |
  | test_next_words   | contains | Test this next |

Given the records test_results
  | athlete    | date       | test            | side | load_lb | reps | body_mass_lb |
  | Abe Rusk   | 2026-05-04 | split_squat_max | left | 95      | 5    |              |
  | Bo Tarn    | 2026-05-04 | split_squat_max | left | 190     | 5    |              |
  | Cy Weld    | 2026-05-04 | split_squat_max | left | 205     | 5    |              |
  | Dov Lark   | 2026-05-04 | split_squat_max | left | 195     | 5    |              |
  | Eli Marsh  | 2026-05-04 | split_squat_max | left | 185     | 5    |              |
  | Fin Stroud | 2026-05-04 | split_squat_max | left | 210     | 5    |              |
  | Gus Pell   | 2026-05-04 | split_squat_max | left | 200     | 5    |              |
  | Hal Quill  | 2026-05-04 | split_squat_max | left | 190     | 5    |              |
  | Abe Rusk   | 2026-05-04 | body_mass       |      |         |      | 190          |
  | Bo Tarn    | 2026-05-04 | body_mass       |      |         |      | 188          |
  | Cy Weld    | 2026-05-04 | body_mass       |      |         |      | 195          |
  | Dov Lark   | 2026-05-04 | body_mass       |      |         |      | 191          |
  | Eli Marsh  | 2026-05-04 | body_mass       |      |         |      | 187          |
  | Fin Stroud | 2026-05-04 | body_mass       |      |         |      | 196          |
  | Gus Pell   | 2026-05-04 | body_mass       |      |         |      | 192          |
  | Hal Quill  | 2026-05-04 | body_mass       |      |         |      | 189          |

# Half of what the others lift puts it first, with a chance beside it, and the rest is still said to be untested.
When the coach asks find_limiters
  | athlete | Abe Rusk |
Then the answer
  | limiters.0.quality     | is       | single_leg_strength |
  | limiters.0.tested      | is       | true                |
  | limiters.0.level.value | between  | -9 and -0.5         |
  | limiters.0.gain.unit   | is       | mph                 |
  | limiters.1.tested      | is       | false               |
  | limiters.1.level       | is       | null                |
  | words                  | lacks    | causes              |
# One who lifts the most of them stands on the other side of usual.
When the coach asks find_limiters
  | athlete | Fin Stroud |
Then the answer
  | limiters.0.quality | lacks | single_leg_strength   |
  | verdict            | is    | cannot_tell           |
When the coach asks find_limiters
  | athlete | Abe Rusc |
Then it is refused
  | sentence | contains | Did you mean "Abe Rusk" |
