Story: A 14-year-old's pitches are held against the published table

Given today is 2026-06-01
Given the records facility
  | name         | mass_unit | speed_unit |
  | Harbour Loft | lb        | mph        |
Given the records kit
  | kit  | label               | item         | mass_lb | count |
  | Loft | straight bar        | straight_bar | 45      | 1     |
  | Loft | 45 lb plate         | plate        | 45      | 6     |
  | Loft | 35 lb plate         | plate        | 35      | 2     |
  | Loft | 25 lb plate         | plate        | 25      | 2     |
  | Loft | 10 lb plate         | plate        | 10      | 4     |
  | Loft | 5 lb plate          | plate        | 5       | 2     |
  | Loft | 2.5 lb plate        | plate        | 2.5     | 2     |
  | Loft | rack                | rack         |         | 1     |
  | Loft | bench               | bench        |         | 1     |
  | Loft | hex bar, low handles | hex_bar     | 55      | 1     |
  | Loft | 40 lb dumbbell      | dumbbell     | 40      | 2     |
  | Loft | 25 lb dumbbell      | dumbbell     | 25      | 2     |
  | Loft | 4 lb ball           | ball         | 4       | 2     |
  | Loft | wall                | wall_bay     |         | 1     |
  | Loft | floor               | open_floor   |         | 1     |
  | Loft | red band            | band         |         | 2     |
  | Garage | 15 lb dumbbell    | dumbbell     | 15      | 2     |
  | Garage | 30 lb dumbbell    | dumbbell     | 30      | 2     |
  | Garage | 50 lb dumbbell    | dumbbell     | 50      | 2     |
  | Garage | bench             | bench        |         | 1     |
  | Garage | blue band         | band         |         | 1     |
  | Garage | floor             | open_floor   |         | 1     |
Given the records athletes
  | name      | birth_date | sex    | throwing_hand | sport    | role    | level   | stature_in | training_years | restrictions          | kit    |
  | Ona Reyes | 2004-02-01 | female | right         | softball | pitcher | college | 68         | 3              |                       | Loft   |
  | Bo Tarn   | 2012-05-11 | male   | right         | baseball | pitcher | youth   | 62         | 0              |                       | Loft   |
  | Cy Weld   | 2002-07-21 | male   | left          | baseball | pitcher | amateur | 74         | 5              | medial_elbow_symptoms | Loft   |
  | Dov Lark  | 2003-01-30 | male   | right         | baseball | fielder | amateur | 72         | 2              |                       | Garage |

When the coach asks record_throws
  | athlete | Bo Tarn |
  | date    | 2026-05-31 |
  | setting | game |
  | count   | 97 |
Then the answer
  | findings.0.severity | is       | warns |
  | findings.0.sentence | contains | above the daily maximum |
  | stop_and_refer.0    | contains | pain |
When the coach asks record_throws
  | athlete | Bo Tarn |
  | date    | 2026-05-31 |
  | setting | gane |
  | count   | 20 |
Then it is refused
  | sentence | contains | Did you mean "game" |
