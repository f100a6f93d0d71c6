Story: A test far from expected asks before it is kept, and the same test twice is one test

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label                | item       | mass_lb | count |
  | Loft | hex bar, low handles | hex_bar    | 55      | 1     |
  | Loft | 45 lb plate          | plate      | 45      | 4     |
  | Loft | floor                | open_floor |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   | 62         | 0              |

Given the records test_results
  | athlete   | date       | test      | body_mass_lb |
  | Ona Reyes | 2026-03-02 | body_mass | 150          |
  | Ona Reyes | 2026-04-06 | body_mass | 151          |
  | Ona Reyes | 2026-05-04 | body_mass | 150.5        |
When the coach asks test_day
  | date | 2026-06-01 |
Then the answer
  | squad                     | has | 2 |
  | squad.1.name              | is  | Ona Reyes |
  | squad.1.expected.0.test   | is  | body_mass |
  | squad.1.expected.0.interval.unit | is | lb |
When the coach asks record_test
  | athlete | Ona Reyes |
  | date    | 2026-06-01 |
  | test    | body_mass |
  | trials  | [{"body_mass_lb": 185}] |
Then the answer
  | saved    | is       | false |
  | question | contains | Keep it? |
When the coach asks record_test
  | athlete | Ona Reyes |
  | date    | 2026-06-01 |
  | test    | body_mass |
  | trials  | [{"body_mass_lb": 185}] |
  | keep    | yes |
Then the answer
  | saved | is | true |
When the coach asks record_test
  | athlete | Ona Reyes |
  | date    | 2026-06-01 |
  | test    | body_mass |
  | trials  | [{"body_mass_lb": 185}] |
Then the answer
  | held_before | is | true |
